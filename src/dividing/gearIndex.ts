import { greatestCommonDivisor } from "../quantity/fraction.js";

/** A gear on the spindle with a detent that drops between its teeth. `detents` of them, set apart by a whole number of
 *  teeth and 1/detents of a tooth, used in turn, part every tooth again: the vernier's trick. */
export type GearIndex = {
  readonly teeth: number;
  /** Detent positions to go on for one division: teeth × detents ÷ divisions. */
  readonly step: number;
  readonly detents: number;
};

/** Gears of the list that divide a turn into `divisions` with up to `mostDetents`; the simplest first. */
export function gearIndexes(divisions: number, gears: readonly number[], mostDetents = 4): GearIndex[] {
  const found: GearIndex[] = [];
  for (let detents = 1; detents <= mostDetents; detents++)
    for (const teeth of gears)
      if ((teeth * detents) % divisions === 0 && !found.some((other) => other.teeth === teeth))
        found.push({ teeth, step: (teeth * detents) / divisions, detents });
  return found.sort((one, other) => one.detents - other.detents || one.teeth - other.teeth);
}

/** Two gears side by side on the spindle's line, the second held by the bed's detent, the first turning with the spindle
 *  against a detent that the second carries: one division is `first` teeth of the one and `second` teeth of the other,
 *  back where negative. Exact always. */
export type GearPairIndex = {
  readonly gears: readonly [number, number];
  readonly first: number;
  readonly second: number;
};

/** Pairs of the list that divide a turn exactly where no single gear does, fewest teeth to count first. */
export function gearPairIndexes(divisions: number, gears: readonly number[], most = 3): GearPairIndex[] {
  const found: GearPairIndex[] = [];
  for (const [index, a] of gears.entries())
    for (const b of gears.slice(index + 1)) {
      const common = (a * b) / greatestCommonDivisor(a, b);
      if (common % divisions !== 0) continue;
      const best = counts(a, b, divisions).reduce((least, one) => (size(one) < size(least) ? one : least));
      found.push(best);
    }
  return found.sort((one, other) => size(one) - size(other)).slice(0, most);
}

const size = ({ first, second }: GearPairIndex): number => Math.abs(first) + Math.abs(second);

/** All x, y with x/a + y/b = 1/divisions, each less than a turn. Whole numbers alone, so exact. */
function counts(a: number, b: number, divisions: number): GearPairIndex[] {
  const found: GearPairIndex[] = [];
  for (let first = 1 - a; first < a; first++) {
    // y = b/n − x·b/a  =  b (a − n x) / (n a)
    const above = b * (a - divisions * first);
    const below = divisions * a;
    if (above % below !== 0) continue;
    const second = above / below;
    if (Math.abs(second) < b) found.push({ gears: [a, b], first, second });
  }
  return found;
}
