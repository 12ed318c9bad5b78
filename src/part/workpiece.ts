import {
  between,
  cylinder,
  diameterOf,
  greatest,
  HAIR,
  least,
  lowered,
  mirrored,
  moved,
  type Outline,
  raised,
  type Stretch,
  volumeOf,
} from "./outline.js";

/** A surface that is more than its diameter: what jaws spoil, and what stands on the drawing. */
export type Surface = {
  readonly kind: "thread" | "knurl";
  readonly side: "outside" | "inside";
  readonly from: number;
  readonly to: number;
  readonly name: string;
};

/** Round work as it stands in the machine: `z` grows from the free end's finished face towards the chuck, so that what is still to
 *  be faced off lies below 0. `bore` has gaps where the metal is whole. All mm. */
export type Workpiece = {
  readonly outside: Outline;
  readonly bore: Outline;
  readonly surfaces: readonly Surface[];
};

export const bar = (diameter: number, from: number, to: number, bore = 0): Workpiece => ({
  outside: [cylinder(from, to, diameter)],
  bore: bore > 0 ? [cylinder(from, to, bore)] : [],
  surfaces: [],
});

export const endsOf = ({ outside }: Workpiece): { readonly from: number; readonly to: number } => ({
  from: outside[0]?.from ?? 0,
  to: outside.at(-1)?.to ?? 0,
});

export function turned(work: Workpiece, cut: Stretch): Workpiece {
  const outside = lowered(work.outside, cut);
  return { ...work, outside, surfaces: spared(work, "outside", cut, outside) };
}

/** Holes end with the metal, wherever a drill went on. */
export function bored(work: Workpiece, cut: Stretch): Workpiece {
  const { from, to } = endsOf(work);
  const within = between([cut], from, to);
  const bore = within.reduce(raised, work.bore);
  return { ...work, bore, surfaces: spared(work, "inside", cut, bore) };
}

/** Threads and knurls but where a cut took their metal. */
function spared(work: Workpiece, side: Surface["side"], cut: Stretch, after: Outline): readonly Surface[] {
  const before = side === "inside" ? work.bore : work.outside;
  const taken = (from: number, to: number) =>
    Math.abs(volumeOf(between(before, from, to)) - volumeOf(between(after, from, to))) > HAIR;
  return work.surfaces.flatMap((surface) => {
    const [from, to] = [Math.max(surface.from, cut.from), Math.min(surface.to, cut.to)];
    if (surface.side !== side || !taken(from, to)) return [surface];
    return [
      { ...surface, to: from },
      { ...surface, from: to },
    ].filter((piece) => piece.to - piece.from > HAIR);
  });
}

const clipped = (work: Workpiece, from: number, to: number): Workpiece => ({
  outside: between(work.outside, from, to),
  bore: between(work.bore, from, to),
  surfaces: work.surfaces.flatMap((surface) => {
    const [left, right] = [Math.max(from, surface.from), Math.min(to, surface.to)];
    return right - left > HAIR ? [{ ...surface, from: left, to: right }] : [];
  }),
});

/** Everything nearer to the free end than `at` is gone. */
export const facedTo = (work: Workpiece, at: number): Workpiece => clipped(work, at, Number.POSITIVE_INFINITY);

/** What falls off is kept: the part, from its free end to `at`. */
export const partedAt = (work: Workpiece, at: number): Workpiece => clipped(work, Number.NEGATIVE_INFINITY, at);

/** Turned end for end: the end that was in the chuck is free, and lies at `end`. */
export function turnedRound(work: Workpiece, end: number): Workpiece {
  const about = endsOf(work).to + end;
  return {
    outside: mirrored(work.outside, about),
    bore: mirrored(work.bore, about),
    surfaces: work.surfaces
      .map((surface) => ({ ...surface, from: about - surface.to, to: about - surface.from }))
      .reverse(),
  };
}

/** The same work with its free end counted from elsewhere. */
export const shifted = (work: Workpiece, by: number): Workpiece => ({
  outside: moved(work.outside, by),
  bore: moved(work.bore, by),
  surfaces: work.surfaces.map((surface) => ({ ...surface, from: surface.from + by, to: surface.to + by })),
});

export const marked = (work: Workpiece, surface: Surface): Workpiece => ({
  ...work,
  surfaces: [...work.surfaces, surface],
});

/** Largest diameter between two places, or 0. */
export const outsideOver = ({ outside }: Workpiece, from: number, to: number): number => greatest(outside, from, to);

/** Largest bore between two places, or 0. */
export const boreOver = ({ bore }: Workpiece, from: number, to: number): number => greatest(bore, from, to);

/** Smallest bore over a whole length; 0 where the metal is whole anywhere in it. */
export function openOver({ bore }: Workpiece, from: number, to: number): number {
  const covered = between(bore, from, to).reduce((sum, stretch) => sum + stretch.to - stretch.from, 0);
  return covered === 0 || covered < to - from - 10 * HAIR ? 0 : least(bore, from, to);
}

/** How deep the hole is as wide as that from the free end. */
export function depthOfHole(work: Workpiece, diameter: number): number {
  let deep = endsOf(work).from;
  for (const { from, to, start, end } of work.bore) {
    if (from > deep + 1e-6 || Math.min(start, end) < diameter - 1e-6) break;
    deep = to;
  }
  return deep;
}

/** The thinnest metal between bore and outside, on the radius, where there is a bore; undefined where there is none. */
export function thinnestWall({ outside, bore }: Workpiece): { readonly wall: number; readonly at: number } | undefined {
  let thinnest: { wall: number; at: number } | undefined;
  for (const hole of bore)
    for (const around of between(outside, hole.from, hole.to))
      for (const at of [around.from, around.to]) {
        const wall = (diameterOf(around, at) - diameterOf(hole, at)) / 2;
        if (thinnest === undefined || wall < thinnest.wall) thinnest = { wall, at };
      }
  return thinnest;
}

/** Metal, mm³. */
export const metalOf = ({ outside, bore }: Workpiece): number => volumeOf(outside) - volumeOf(bore);

/** Where a hole from the free end first is narrower than that: past a countersink or a wider bore; the end itself where there is none.
 *  What is narrower nowhere gives the end of the hole. */
export function narrowsAt(work: Workpiece, diameter: number): number {
  let at = endsOf(work).from;
  for (const { from, to, start, end } of work.bore) {
    if (from > at + 1e-6) break;
    if (start < diameter - 1e-9) return Math.max(at, from);
    if (end < diameter - 1e-9) return from + ((to - from) * (start - diameter)) / (start - end);
    at = to;
  }
  return at;
}
