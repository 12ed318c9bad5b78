import { greatestCommonDivisor } from "../quantity/fraction.js";

/** A gear on the handwheel's shaft driving one that carries the dial: a turn of the dial is `perDialTurn` mm nominally
 *  and out by `error` mm (dial less truth). */
export type DialGears = {
  readonly driver: number;
  readonly driven: number;
  readonly perDialTurn: number;
  readonly error: number;
};

/** Round travels that a dial can go by in one turn, mm: 1, 2, 2.5, 5 and their tens, and inches. */
const ROUND_MM = [1, 2, 2.5, 5, 10, 20, 25, 50, 100];
const ROUND_IN = [0.05, 0.1, 0.125, 0.2, 0.25, 0.5, 1, 2].map((inches) => inches * 25.4);
/** A ratio beyond this needs gears that no handwheel has room for. */
const LARGEST_RATIO = 3;

/** Gear pairs from a list of tooth counts that make a dial on a feed of `perTurn` mm round, least error for each round
 *  travel first. Dial turns for one of the handwheel: driver ÷ driven. */
export function dialGears(perTurn: number, teeth: readonly number[], units: "mm" | "in", most = 5): DialGears[] {
  const counts = [...new Set(teeth)].sort((a, b) => a - b);
  const found = (units === "mm" ? ROUND_MM : ROUND_IN).flatMap((round): DialGears[] => {
    const pairs = counts.flatMap((driver) =>
      counts.map((driven): DialGears => {
        const travel = (perTurn * driven) / driver;
        return { driver, driven, perDialTurn: round, error: round - travel };
      }),
    );
    const possible = pairs.filter(
      ({ driver, driven }) => Math.max(driver, driven) / Math.min(driver, driven) <= LARGEST_RATIO,
    );
    const best = possible.reduce<DialGears | undefined>(
      (least, pair) => (better(pair, least) ? pair : least),
      undefined,
    );
    return best && Math.abs(best.error) / round < 0.02 ? [best] : [];
  });
  return found
    .sort((one, other) => Math.abs(one.error) / one.perDialTurn - Math.abs(other.error) / other.perDialTurn)
    .slice(0, most);
}

/** Nearer, or as near with fewer teeth. */
function better(pair: DialGears, least: DialGears | undefined): boolean {
  if (least === undefined) return true;
  const gain = Math.abs(least.error) - Math.abs(pair.error);
  return Math.abs(gain) > 1e-9 ? gain > 0 : pair.driver + pair.driven < least.driver + least.driven;
}

/** The ratio in lowest terms, for who would cut the gears: "124 : 127". */
export function lowestTerms(driver: number, driven: number): string {
  const common = greatestCommonDivisor(driver, driven);
  return `${driver / common} : ${driven / common}`;
}
