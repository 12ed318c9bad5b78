/** Words that stand in rows over a drawing, each with a leader down to its place: which row, and where, so that no word lies on
 *  another or on a leader, and no two leaders cross. */

/** `x`: where its leader ends, on paper. `left` and `right`: how far it reaches to either side of the leader when its words run to the
 *  right; they may run to the left as well, mirrored. */
export type Label = { readonly x: number; readonly left: number; readonly right: number };

export type Placed = {
  /** Of its leader in the rows. */
  readonly x: number;
  /** From 0, the one next to the drawing. */
  readonly row: number;
  /** Which way its words run. */
  readonly side: 1 | -1;
};

const GAP = 1.8;
/** From a leader to what stands beside it. */
const CLEAR = 0.9;
/** What a row more is worth, mm of leader aside. */
const ROW_COST = 2.5;
const BEAM = 24;

type State = {
  readonly last: number;
  /** How far each row is taken. */
  readonly taken: readonly number[];
  readonly cost: number;
  readonly placed: readonly Placed[];
};

/** All words to the right of their leaders, between two limits: a beam search from left to right. Labels in the order of x. */
function toTheRight(labels: readonly Label[], from: number, to: number, rows: number): State | undefined {
  // A leader that must give way to the next ones at the right edge.
  const wished: number[] = [];
  let limit = Number.POSITIVE_INFINITY;
  for (const { x, left, right } of [...labels].reverse()) {
    const at = Math.min(x, to - right, limit);
    wished.unshift(at);
    limit = at - left - CLEAR;
  }
  let beam: State[] = [
    { last: Number.NEGATIVE_INFINITY, taken: Array(rows).fill(Number.NEGATIVE_INFINITY), cost: 0, placed: [] },
  ];
  for (const [index, { x, left, right }] of labels.entries()) {
    const next: State[] = [];
    for (const state of beam)
      for (let row = 0; row < rows; row++) {
        const free = Math.max(...state.taken.slice(0, row + 1)) + GAP + left;
        const at = Math.max(wished[index] ?? x, from + left, state.last + left + CLEAR, free);
        if (at + right > to + 1e-9) continue;
        const taken = state.taken.map((reach, which) => (which === row ? Math.max(reach, at + right) : reach));
        const cost =
          state.cost + Math.abs(at - x) + (state.placed.some((other) => other.row >= row) ? 0 : ROW_COST * (row + 1));
        next.push({ last: at, taken, cost, placed: [...state.placed, { x: at, row, side: 1 }] });
      }
    beam = next.sort((a, b) => a.cost - b.cost).slice(0, BEAM);
    if (beam.length === 0) return undefined;
  }
  return beam[0];
}

function toTheLeft(labels: readonly Label[], from: number, to: number, rows: number): State | undefined {
  const mirrored = [...labels].reverse().map((label) => ({ ...label, x: -label.x }));
  const found = toTheRight(mirrored, -to, -from, rows);
  return (
    found && {
      ...found,
      placed: found.placed.map(({ x, row }): Placed => ({ x: -x, row, side: -1 })).reverse(),
    }
  );
}

/** Places for all labels, in the order of x; undefined where they have no room. Those on the left run to the left, those on the
 *  right to the right, parted where it costs least. */
export function placeLabels(labels: readonly Label[], width: number, rows: number): Placed[] | undefined {
  let best: State | undefined;
  for (let parted = 0; parted <= labels.length; parted++) {
    const [left, right] = [labels.slice(0, parted), labels.slice(parted)];
    const last = left.at(-1);
    const next = right[0];
    const border =
      last === undefined ? 0 : next === undefined ? width : Math.min(Math.max((last.x + next.x) / 2, 0), width);
    const room = left.length > 0 && right.length > 0 ? GAP / 2 : 0;
    const one = toTheLeft(left, 0, border - room, rows);
    const other = toTheRight(right, border + room, width, rows);
    if (one === undefined || other === undefined) continue;
    const cost = one.cost + other.cost;
    if (best === undefined || cost < best.cost - 1e-9)
      best = { last: 0, taken: [], cost, placed: [...one.placed, ...other.placed] };
  }
  return best && [...best.placed];
}
