/** How a whole number of divisions fits into one turn. Pure arithmetic; lengths in any one unit.
 *  `turn` is what the dial reads in one turn (twice the travel when it reads diameter), `value` one division's worth. */

/** Below this a difference is the rounding of binary fractions (1.27 / 0.01), not a truth about the machine.
 *  Parts of a division. */
const ROUNDING = 1e-9;

/** More rows than this no one can tell apart on a handwheel. */
export const MOST_ROWS = 6;

export type Division = {
  /** Divisions in one turn, the short one included; for rows, in all rows together. */
  readonly divisions: number;
  readonly rows: number;
  /** One turn less the whole divisions in it. Signed. */
  readonly leftOver: number;
  /** What one turn adds to the error of the reading. Positive: the dial reads too much. */
  readonly errorPerTurn: number;
  /** True where nothing is left over but the rounding of the computer. */
  readonly exact: boolean;
};

/** Nearest whole number. A tie goes up whichever way the last binary digit fell: the dial then reads too much, the
 *  slide has moved less than it says, and the metal is still on the work. */
function nearest(quotient: number): number {
  return Math.floor(quotient + 0.5 + ROUNDING);
}

/** Error that one turn adds when it is cut into `divisions` equal parts, each printed as worth `value`. */
export function evenError(turn: number, value: number, divisions: number): number {
  return withoutRounding(divisions * value - turn, value);
}

function withoutRounding(difference: number, value: number): number {
  return Math.abs(difference) <= ROUNDING * value ? 0 : difference;
}

/** Equal divisions, the whole number of them nearest to the wanted value; at least one. Both lengths > 0. */
export function divideEvenly(turn: number, value: number): Division {
  const divisions = Math.max(1, nearest(turn / value));
  const errorPerTurn = evenError(turn, value, divisions);
  return { divisions, rows: 1, leftOver: 0 - errorPerTurn, errorPerTurn, exact: errorPerTurn === 0 };
}

/** True marks, and one short division before zero where they do not close. Within a turn such a dial has no error;
 *  it begins again at zero each turn, so whole turns are counted and each is worth `turn`. Both lengths > 0. */
export function divideTruly(turn: number, value: number): Division {
  const whole = Math.floor(turn / value + ROUNDING);
  const leftOver = withoutRounding(turn - whole * value, value);
  return {
    divisions: leftOver === 0 ? whole : whole + 1,
    rows: 1,
    leftOver,
    errorPerTurn: 0,
    exact: leftOver === 0,
  };
}

/** The fewest rows, up to `most`, in which the divisions close with an error of at most `tolerance` for each turn;
 *  where none does, the number of rows that comes nearest. One row means that even divisions close. Lengths > 0. */
export function divideInRows(turn: number, value: number, tolerance = 0, most = MOST_ROWS): Division {
  let best: Division | undefined;
  for (let rows = 1; rows <= most; rows++) {
    const divisions = Math.max(1, nearest((rows * turn) / value));
    const errorPerTurn = evenError(rows * turn, value, divisions) / rows;
    const division = { divisions, rows, leftOver: 0 - errorPerTurn, errorPerTurn, exact: errorPerTurn === 0 };
    if (Math.abs(errorPerTurn) <= tolerance) return division;
    if (best === undefined || Math.abs(errorPerTurn) < Math.abs(best.errorPerTurn) - ROUNDING * value) best = division;
  }
  return best ?? divideEvenly(turn, value);
}
