import { largestOf, smallestOf } from "../quantity/extremes.js";

/** Half of a section through round work: along the axis, from the free end towards the chuck, diameters that go straight from
 *  one place to the next. All mm. */

/** One straight stretch: a cylinder where both diameters are the same, else a cone. `to` > `from`. */
export type Stretch = {
  readonly from: number;
  readonly to: number;
  /** Diameter at `from`, and at `to`. */
  readonly start: number;
  readonly end: number;
};

/** In their order, none over another; between two may be a gap, where nothing is (no bore). */
export type Outline = readonly Stretch[];

/** Shorter than this, mm, nothing is cut or left. */
export const HAIR = 1e-7;

export const isCylinder = ({ start, end }: Stretch): boolean => Math.abs(start - end) < HAIR;

export const cylinder = (from: number, to: number, diameter: number): Stretch => ({
  from,
  to,
  start: diameter,
  end: diameter,
});

/** Diameter of a stretch at a place that it covers. */
export function diameterOf({ from, to, start, end }: Stretch, at: number): number {
  return start === end ? start : start + ((end - start) * (at - from)) / (to - from);
}

/** The part of an outline between two places. */
export const between = (outline: Outline, from: number, to: number): Outline =>
  outline.flatMap((stretch) => {
    const [left, right] = [Math.max(from, stretch.from), Math.min(to, stretch.to)];
    if (right - left <= HAIR) return [];
    if (left === stretch.from && right === stretch.to) return [stretch];
    return [{ from: left, to: right, start: diameterOf(stretch, left), end: diameterOf(stretch, right) }];
  });

/** Diameters that an outline has between two places; none where it has nothing there. */
const diametersOf = (outline: Outline, from: number, to: number): number[] =>
  between(outline, from, to).flatMap(({ start, end }) => [start, end]);

/** 0 where nothing is there. */
export const greatest = (outline: Outline, from: number, to: number): number =>
  Math.max(0, largestOf(diametersOf(outline, from, to)));

/** Infinite where nothing is there. */
export const least = (outline: Outline, from: number, to: number): number => smallestOf(diametersOf(outline, from, to));

/** The diameter just on the chuck's side of a place, or (`side: -1`) just on the free end's; 0 where nothing is there. */
export function diameterAt(outline: Outline, at: number, side: 1 | -1 = 1): number {
  const found = outline.find(({ from, to }) =>
    side === 1 ? from <= at + HAIR && at < to - HAIR : from < at - HAIR && at <= to + HAIR,
  );
  return found === undefined ? 0 : diameterOf(found, Math.min(Math.max(at, found.from), found.to));
}

/** Cut down to a stretch wherever it lies below: a tool from outside. Where nothing is, nothing comes. */
export const lowered = (outline: Outline, cut: Stretch): Outline =>
  joined([
    ...between(outline, Number.NEGATIVE_INFINITY, cut.from),
    ...between(outline, cut.from, cut.to).flatMap((stretch) => eitherOf(stretch, cut, Math.min)),
    ...between(outline, cut.to, Number.POSITIVE_INFINITY),
  ]);

/** Opened up to a stretch wherever it lies above, and where nothing was: a tool from inside. */
export function raised(outline: Outline, cut: Stretch): Outline {
  const inside = between(outline, cut.from, cut.to);
  const gaps: Stretch[] = [];
  let at = cut.from;
  for (const { from, to } of [...inside, cylinder(cut.to, cut.to, 0)]) {
    gaps.push(...between([cut], at, from));
    at = to;
  }
  return joined([
    ...between(outline, Number.NEGATIVE_INFINITY, cut.from),
    ...inside.flatMap((stretch) => eitherOf(stretch, cut, Math.max)),
    ...gaps,
    ...between(outline, cut.to, Number.POSITIVE_INFINITY),
  ]);
}

/** The lower or the higher of two stretches over the first one's length, parted where they cross. */
function eitherOf(stretch: Stretch, cut: Stretch, choose: (a: number, b: number) => number): Stretch[] {
  const { from, to } = stretch;
  const [a, b] = [diameterOf(cut, from) - stretch.start, diameterOf(cut, to) - stretch.end];
  const crossing = a * b < 0 ? from + ((to - from) * a) / (a - b) : undefined;
  const parts =
    crossing === undefined
      ? [[from, to]]
      : [
          [from, crossing],
          [crossing, to],
        ];
  return parts.flatMap(([left = from, right = to]) => {
    if (right - left <= HAIR) return [];
    const middle = (left + right) / 2;
    const own = diameterOf(stretch, middle);
    const taken = choose(own, diameterOf(cut, middle)) === own ? stretch : cut;
    return [{ from: left, to: right, start: diameterOf(taken, left), end: diameterOf(taken, right) }];
  });
}

/** In their order; stretches that go on in one line are one. */
function joined(stretches: readonly Stretch[]): Outline {
  const sorted = [...stretches].sort((a, b) => a.from - b.from);
  const result: Stretch[] = [];
  for (const next of sorted) {
    const last = result.at(-1);
    const slope = ({ from, to, start, end }: Stretch) => (end - start) / (to - from);
    if (
      last !== undefined &&
      Math.abs(last.to - next.from) <= HAIR &&
      Math.abs(last.end - next.start) <= 1e-9 &&
      Math.abs(slope(last) - slope(next)) <= 1e-9
    )
      result[result.length - 1] = { from: last.from, to: next.to, start: last.start, end: next.end };
    else result.push(next);
  }
  return result;
}

/** Further from the free end by so much. */
export const moved = (outline: Outline, by: number): Outline =>
  outline.map((stretch) => ({ ...stretch, from: stretch.from + by, to: stretch.to + by }));

/** Turned end for end: what lay at `z` lies at `about − z`. */
export const mirrored = (outline: Outline, about: number): Outline =>
  outline.map(({ from, to, start, end }) => ({ from: about - to, to: about - from, start: end, end: start })).reverse();

/** What a solid of that outline fills, mm³. Frusta: h π (a² + ab + b²) / 12. */
export const volumeOf = (outline: Outline): number =>
  outline.reduce(
    (sum, { from, to, start, end }) => sum + ((to - from) * Math.PI * (start ** 2 + start * end + end ** 2)) / 12,
    0,
  );
