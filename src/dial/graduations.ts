import { TURN } from "../quantity/angle.js";
import type { DialChoice, Graduation } from "./finding.js";
import { type Labelling, labelling } from "./labelling.js";
import { MOST_MARKS } from "./penalty.js";

/** The marks of a dial, one list for each row, angles growing with the reading from the zero mark. `turn`, mm, is what
 *  the dial reads in one turn; `known`: the dial's labelling, where it is at hand.
 *
 *  Even marks part the circle equally, the last gap too. True marks stand at value / turn, so that what is left over
 *  shows as a short last division. Row r of k holds the marks from r · turn to (r + 1) · turn, at equal steps of k turns
 *  shared among all, so that the last row closes on the first; numbers run on through the rows.
 *  A true mark so near to the zero that both would print as one is none of the choice's divisions: the zero stands for it.
 *  No rows at all where there are more marks than can be drawn (`MOST_MARKS`); a remark of the choice says so. */
export function graduations(choice: DialChoice, turn: number, known?: Labelling): Graduation[][] {
  if (choice.divisions > MOST_MARKS) return [];
  const numbers = known ?? labelling(choice);
  const rows: Graduation[][] = Array.from({ length: choice.rows }, () => []);
  for (let division = 0; division < choice.divisions; division++) {
    const { row, angle } = placeOf(division, choice, turn);
    rows[row]?.push({
      angle,
      rank: rankOf(division, numbers),
      ...(division % numbers.every === 0 && { label: numbers.labelAt(division) }),
      value: division * choice.divisionValue,
    });
  }
  const circle = circleOf(choice, turn);
  return rows.map((row) => clearOfFirst(row, (numbers.room / circle) * TURN));
}

/** Whole numbers as long as may be: no sum of many small angles, so nothing gathers towards the last mark. */
function placeOf(division: number, choice: DialChoice, turn: number): { row: number; angle: number } {
  if (choice.closure === "true") return { row: 0, angle: ((division * choice.divisionValue) / turn) * TURN };
  const parts = division * choice.rows;
  return {
    row: Math.floor(parts / choice.divisions),
    angle: ((parts % choice.divisions) / choice.divisions) * TURN,
  };
}

/** Every numbered mark is of the first rank. */
function rankOf(division: number, { pattern, every }: Labelling): Graduation["rank"] {
  if (division % pattern.long === 0 || division % every === 0) return 1;
  return division % pattern.middle === 0 ? 2 : 3;
}

function circleOf(choice: DialChoice, turn: number): number {
  if (choice.closure === "true") return (choice.spacing * turn) / Math.min(choice.divisionValue, turn);
  return (choice.spacing * choice.divisions) / choice.rows;
}

/** Where a turn does not end on a numbered mark, its last number can run into the first one, once round: drop it. */
function clearOfFirst(row: Graduation[], room: number): Graduation[] {
  const first = row.find((mark) => mark.label !== undefined);
  if (first === undefined) return row;
  return row.map((mark) => {
    if (mark === first || mark.label === undefined || first.angle + TURN - mark.angle >= room) return mark;
    // Without its number a long mark beside the first would be read for it.
    const { label: _, ...bare } = mark;
    return { ...bare, rank: 2 };
  });
}
