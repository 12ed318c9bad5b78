import type { Graduation } from "../../dial/finding.js";
import { textWidth } from "../../drawing/text.js";
import { TURN } from "../../quantity/angle.js";
import { size } from "../shared/style.js";

/** A mark of a dial as a picture shows it, so many degrees from the index at zero, growing with the reading. */
export type Seen = { readonly degrees: number; readonly rank: Graduation["rank"]; readonly label?: string };

/** Where the next number of a picture lies, and the least and the largest step between two marks, degrees. */
export const NEXT_NUMBER = 40;
const LEAST_STEP = 1.8;
const LARGEST_STEP = 20;
/** Between two numbers of a picture, mm. */
const CLEAR = 0.9;

const fromZero = ({ angle }: Graduation): number => (angle > TURN / 2 ? angle - TURN : angle);

/** Degrees for one division of a picture in which the number beside the zero can be seen. `pitch`: of a division, radians. */
export function magnified(bands: readonly (readonly Graduation[])[], pitch: number): number {
  const next = Math.min(
    ...(bands[0] ?? []).flatMap((mark) => (mark.label !== undefined && fromZero(mark) > 1e-9 ? [fromZero(mark)] : [])),
  );
  const wanted = Number.isFinite(next) ? (NEXT_NUMBER * pitch) / next : LARGEST_STEP / 2;
  return Math.min(LARGEST_STEP, Math.max(LEAST_STEP, wanted));
}

/** A band's own marks on either side of zero, as far as `reach` degrees, `step` degrees apart. */
export const aboutZero = (band: readonly Graduation[], pitch: number, step: number, reach: number): Seen[] =>
  band
    .map((mark) => ({ ...mark, degrees: (fromZero(mark) / pitch) * step }))
    .filter(({ degrees }) => Math.abs(degrees) <= reach + 1e-9)
    .map(({ degrees, rank, label }) => ({ degrees, rank, ...(label !== undefined && { label }) }));

/** Of the numbers once round a whole dial every second, third and so on, from the zero on, so that they stand evenly: as many as have
 *  room, in a part that goes into all of them where there is one. `perRadian`: mm of the circle in whose line they stand. */
export function evenlyRound(
  seen: readonly Seen[],
  perRadian: number,
): readonly { readonly degrees: number; readonly label: string }[] {
  const numbered = seen
    .flatMap(({ degrees, label }) => (label === undefined ? [] : [{ degrees, label }]))
    .sort((a, b) => a.degrees - b.degrees);
  const count = numbered.length;
  const zero = numbered.reduce(
    (best, one, at) => (Math.abs(one.degrees) < Math.abs(numbered[best]?.degrees ?? 360) ? at : best),
    0,
  );
  const every = (n: number) => numbered.filter((_, at) => (at - zero) % n === 0);
  const isClear = (kept: ReturnType<typeof every>) =>
    kept.every(({ degrees, label }, at) => {
      const next = kept[(at + 1) % kept.length] as Seen;
      const way = (((next.degrees - degrees + 360) % 360 || 360) * Math.PI * perRadian) / 180;
      return (
        way >= (textWidth(label, size.source, "bold") + textWidth(next.label ?? "", size.source, "bold")) / 2 + CLEAR
      );
    });
  const steps = Array.from({ length: count }, (_, at) => at + 1);
  const even = steps.filter((n) => count % n === 0 && n < count);
  return every([...even, ...steps].find((n) => isClear(every(n))) ?? count);
}

/** The numbers that have room, those next to zero first. `along`: where they stand, mm; `most`: how far either way. */
export function clearOfEachOther(
  seen: readonly Seen[],
  along: (one: Seen) => number,
  most: number,
): { readonly degrees: number; readonly label: string }[] {
  const kept: { at: number; half: number; degrees: number; label: string }[] = [];
  for (const one of [...seen].sort((a, b) => Math.abs(a.degrees) - Math.abs(b.degrees))) {
    if (one.label === undefined) continue;
    const [at, half] = [along(one), textWidth(one.label, size.source, "bold") / 2];
    const room =
      Math.abs(at) + half <= most && kept.every((other) => Math.abs(other.at - at) >= other.half + half + CLEAR);
    if (room) kept.push({ at, half, degrees: one.degrees, label: one.label });
  }
  return kept;
}
