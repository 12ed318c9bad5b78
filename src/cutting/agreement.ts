import type { PublishedSpeed } from "./published/source.js";

/** What one source gives for a cut, m/min, factors included, and the rows that it stands on. */
export type SourceRange = {
  readonly source: string;
  readonly slowest: number;
  readonly fastest: number;
  readonly rows: readonly PublishedSpeed[];
};

/** The source to go by, and what the others say of it. */
export type Weighed = {
  readonly nearest: SourceRange;
  /** With the nearest. */
  readonly agreeing: readonly SourceRange[];
  readonly apart: readonly SourceRange[];
};

/** Sources whose middles stand this many times apart contradict each other: one range over both would be nobody's. */
const APART = 2;

/** `ranges` in the order of `sources`, at least one. Where the tool is at risk the most cautious source is gone by, else
 *  the nearest to the cut in question. */
export function weigh(ranges: readonly SourceRange[], cautious: boolean): Weighed | undefined {
  const before = cautious
    ? (one: SourceRange, other: SourceRange) => one.fastest < other.fastest
    : (one: SourceRange, other: SourceRange) => distance(one) < distance(other);
  const [first, ...rest] = ranges;
  if (first === undefined) return undefined;
  const nearest = rest.reduce((best, one) => (before(one, best) ? one : best), first);
  const agrees = (one: SourceRange) => {
    const times = middle(one) / middle(nearest);
    return Math.max(times, 1 / times) < APART;
  };
  return { nearest, agreeing: ranges.filter(agrees), apart: ranges.filter((one) => !agrees(one)) };
}

/** By ratio: 20 stands as far from 10 as from 40. */
const middle = ({ slowest, fastest }: SourceRange): number => Math.sqrt(slowest * fastest);

/** How far a source is from the cut in question, the weightiest first: it does not say of what the tool is; it prints the
 *  figure for another material; it gives one figure where others give a range; it does not tell roughing from finishing. */
function distance({ rows, slowest, fastest }: SourceRange): number {
  const weights = [
    rows.every(({ toolUnnamed }) => toolUnnamed === true),
    rows.every(({ figureFor }) => figureFor !== undefined),
    slowest === fastest,
    rows.every(({ namesCut }) => namesCut === undefined),
  ];
  return weights.reduce((sum, far) => 2 * sum + (far ? 1 : 0), 0);
}
