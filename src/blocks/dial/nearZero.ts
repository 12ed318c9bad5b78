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

/** Numbers of a part of a circle in one step throughout, which is the finest whose numbers have room as far as `sure` degrees; beyond it they go on as long as
 *  they have. `along`: where they stand, mm; `most`: how far either way. */
export function clearOfEachOther(
  seen: readonly Seen[],
  along: (one: Seen) => number,
  most: number,
  sure = 180,
): { readonly degrees: number; readonly label: string }[] {
  const numbers = seen
    .flatMap((one) => {
      const { degrees, label } = one;
      if (label === undefined) return [];
      return [{ degrees, label, at: along(one), half: textWidth(label, size.source, "bold") / 2 }];
    })
    .sort((a, b) => a.degrees - b.degrees);
  if (numbers.length === 0) return [];
  type Number = (typeof numbers)[number];
  const from = numbers.reduce((best, { degrees }, index) => {
    return Math.abs(degrees) < Math.abs(numbers[best]?.degrees ?? 0) ? index : best;
  }, 0);
  const clear = (one: Number, other: Number) => Math.abs(one.at - other.at) >= one.half + other.half + CLEAR;
  const inside = ({ at, half }: Number) => Math.abs(at) + half <= most;
  /** Outwards from the zero, till one has no room. */
  const side = (step: number): Number[] => {
    const kept: Number[] = [];
    for (let index = from; index >= 0 && index < numbers.length; index += step) {
      const [one, last] = [numbers[index] as Number, kept.at(-1)];
      if (!inside(one) || (last && !clear(one, last))) break;
      kept.push(one);
    }
    return kept;
  };
  const fits = (step: number): boolean =>
    [step, -step].every((one) => {
      const next = numbers[from + one * side(one).length];
      return next === undefined || !inside(next) || Math.abs(next.degrees) > sure;
    });
  const step = numbers.map((_, index) => index + 1).find(fits) ?? numbers.length;
  return [...side(step), ...side(-step).slice(1)];
}
