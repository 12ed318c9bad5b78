import { cuttingSpeeds, publishedFeeds } from "../cutting/data.js";
import type { SpeedChoice } from "../cutting/finding.js";
import { fastestFedRpm } from "../cutting/handFeed.js";
import { fastestThreadedRpm } from "../cutting/powerTapping.js";
import { diameterFor } from "../cutting/rates.js";
import type { SpeedFinding } from "../drive/finding.js";
import { limitRpm } from "../machine/limits.js";
import { fromMm, inMm } from "../quantity/length.js";
import { diametersFor, largestDrill, makesHoles } from "./drills.js";
import type { Findings } from "./findings.js";
import { bandFor, leastFed, speedFor, speedForHole, speedInBand } from "./speedChoice.js";

/** Diameters over `from`, up to and with `to`, mm, at which one position is chosen; without one where even the slowest is too fast,
 *  or beyond a limit. */
export type Served = {
  readonly from: number;
  readonly to: number;
  readonly speed?: SpeedFinding;
  /** What a variable motor is set to give at the two ends, rpm; equal where there is nothing to set. */
  readonly rpm?: { readonly at: number; readonly end: number };
};

/** Thinner than any work or drill, mm: from there down the same holds. */
export const LEAST = 0.05;
/** Points to look at besides, where a hand that must keep up has a say as well. */
const LOOKS = 24;

/** Sheets ask for the same several times, and it takes its time. */
const found = new WeakMap<Findings, Map<string, Served[] | undefined>>();

/** From the smallest diameter to the largest, which position serves which: what the choice of a speed gives at each diameter, asked
 *  the other way round. Undefined where nothing is known of the material with the file's tool. The first begins at 0, the
 *  last ends at the largest diameter there is. */
export function servedDiameters(material: string, operation: string, findings: Findings): Served[] | undefined {
  const known = found.get(findings) ?? new Map<string, Served[] | undefined>();
  found.set(findings, known);
  const key = JSON.stringify([material, operation]);
  if (!known.has(key)) known.set(key, servedBy(material, operation, findings));
  return known.get(key);
}

function servedBy(material: string, operation: string, findings: Findings): Served[] | undefined {
  const most = largestDiameter(operation, findings);
  const sizes = sizesOfChange(most);
  const spans = sizes
    .concat(most)
    .map((to, index) => spanOf(material, operation, findings, sizes[index - 1] ?? LEAST, to));
  if (spans.every(({ known }) => !known)) return undefined;
  const spanAt = (diameter: number) => spans.find(({ to }) => diameter <= to) ?? (spans.at(-1) as Span);
  const chosenAt = (diameter: number) => spanAt(diameter).chosenAt(diameter);
  const choiceAt = (diameter: number) => chosenAt(diameter)?.speed;
  const points = [...sizes, ...spans.flatMap(({ points }) => points)]
    .filter((point) => point > LEAST && point < most)
    .sort((a, b) => a - b)
    .filter((one, at, all) => one > (all[at - 1] ?? 0) * 1.000001);
  const pieces: Served[] = [];
  let here = choiceAt(LEAST);
  let from = 0;
  let before = LEAST;
  const close = (to: number) => {
    const rpm = [Math.max(LEAST, from * (1 + 1e-9)), to].map((diameter) => chosenAt(diameter)?.rpm ?? 0);
    pieces.push({ from, to, ...(here && { speed: here, rpm: { at: rpm[0] ?? 0, end: rpm[1] ?? 0 } }) });
  };
  for (const [index, point] of points.entries()) {
    const middle = Math.sqrt(point * (points[index + 1] ?? most));
    const next = choiceAt(middle);
    if (next !== here) {
      const changes = choiceAt(point) === here && choiceAt(point * (1 + 1e-9)) === next;
      const at = changes ? point : between(before, middle, here, choiceAt);
      close(at);
      [from, here] = [at, next];
    }
    before = middle;
  }
  close(most);
  return pieces;
}

/** Up to which diameters are told, mm: what is held or driven is rarely twice as large as the largest that the file names. Own choice. */
export function largestDiameter(operation: string, { machine }: Findings): number {
  const { units } = machine;
  const holes = makesHoles(operation);
  const { least, step } = reaches[units][holes ? "drill" : "work"];
  const named = fromMm(Math.max(0, ...diametersFor(operation, machine)), units);
  const most = inMm(step * Math.ceil(Math.max(least, 2 * named) / step - 1e-9), units);
  return holes ? Math.min(most, largestDrill(machine.limits)) : most;
}

const reaches = {
  mm: { work: { least: 100, step: 50 }, drill: { least: 13, step: 1 } },
  in: { work: { least: 4, step: 2 }, drill: { least: 0.5, step: 0.25 } },
} as const;

/** The last diameter at which the choice is still `here`. */
function between(
  low: number,
  high: number,
  here: SpeedFinding | undefined,
  choiceAt: (diameter: number) => SpeedFinding | undefined,
): number {
  let [from, to] = [low, high];
  while (to - from > 1e-12 * to) {
    const middle = (from + to) / 2;
    if (middle === from || middle === to) break;
    if (choiceAt(middle) === here) from = middle;
    else to = middle;
  }
  return from;
}

/** Where a source, or a feed, goes by size. */
const sizesOfChange = (most: number): number[] =>
  [...new Set([...cuttingSpeeds, ...publishedFeeds].flatMap((row) => row.upTo ?? []))]
    .filter((upTo) => upTo > LEAST && upTo < most)
    .sort((a, b) => a - b);

/** Diameters up to one of those sizes: how a speed is chosen there, and where the choice may change. */
type Span = {
  readonly to: number;
  readonly known: boolean;
  readonly points: readonly number[];
  readonly chosenAt: (diameter: number) => SpeedChoice | undefined;
};

function spanOf(material: string, operation: string, findings: Findings, from: number, to: number): Span {
  const { machine, drive } = findings;
  const holes = makesHoles(operation);
  const cut = { material, operation, diameter: Math.sqrt(from * to) };
  const band = bandFor(cut, findings);
  const fed = holes ? leastFed(cut, findings) : undefined;
  const speedOf = holes ? speedForHole : speedFor;
  const asked = (diameter: number) => speedOf({ ...cut, diameter }, findings);
  // By spindle speed whatever the diameter: the band goes by it, and the position does not change.
  if (band === undefined || band.rpm !== undefined)
    return { to, known: band !== undefined, points: fed ? looks(from, to) : [], chosenAt: asked };
  const speeds = drive?.speeds ?? [];
  const limit = limitRpm(machine.limits);
  const hand = fed ? fastestFedRpm(fed.feed, fed.perTurn) : fastestThreadedRpm(band);
  const limits = [limit, Math.min(hand, limit)].filter(Number.isFinite);
  const rpms = speeds.flatMap(({ rpm, slowestRpm, highestRpm }) => [
    rpm,
    slowestRpm,
    ...limits.map((one) => (one * rpm) / highestRpm),
  ]);
  const points = [...rpms, hand].filter(Number.isFinite).map((rpm) => diameterFor(band.most, rpm));
  return {
    to,
    known: true,
    points: [...points.filter((point) => point > from && point < to), ...(fed ? looks(from, to) : [])],
    // The band is the same all over: it is looked up once.
    chosenAt: fed ? asked : (diameter) => speedInBand(diameter, band, findings),
  };
}

const looks = (from: number, to: number): number[] =>
  Array.from({ length: LOOKS - 1 }, (_, at) => from * (to / from) ** ((at + 1) / LOOKS));

/** The same with ends that a caliper or a drill's stamp shows: `rounded` gives a size at most as large, or at least, in steps of so
 *  many. Every end moves into the faster of the two ranges that meet there, so that no diameter comes to a position that is
 *  too fast for it. What rounding leaves nothing of is given to its slower neighbour. */
export function roundedServed(pieces: readonly Served[], down: Round, up: Round): Served[] {
  const rpmOf = ({ speed }: Served) => (speed === undefined ? -1 : speed.rpm);
  const ends = pieces.map((piece, index): number => {
    const next = pieces[index + 1];
    if (next === undefined) return piece.to;
    return rpmOf(next) < rpmOf(piece) ? down(piece.to) : up(piece.to);
  });
  return pieces.flatMap((piece, index): Served[] => {
    const from = index === 0 ? 0 : (ends[index - 1] as number);
    const to = ends[index] as number;
    return to - from > 1e-9 ? [{ ...piece, from, to }] : [];
  });
}

type Round = (diameter: number) => number;
