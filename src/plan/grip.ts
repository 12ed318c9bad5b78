import type { Units } from "../machine/machine.js";
import { between, isCylinder, type Stretch } from "../part/outline.js";
import { endsOf, type Surface, type Workpiece } from "../part/workpiece.js";
import { largestOf } from "../quantity/extremes.js";
import { settableOut, settableWithin } from "./settableOut.js";

/** A groove or a broken edge up to this share of the diameter behind it is bridged by the jaws. Own figure. */
const BRIDGED = 0.25;

/** Jaws hold by at least this share of the diameter. Common practice. */
export const LEAST_GRIP = 0.5;
/** Work of which so many times what the jaws hold stands out of a chuck alone levers itself out. Own figure. */
export const LEVER = 5;

const NEAR = 1e-6;

/** What straight jaws close on. All mm. */
export type Grip = {
  /** Where they touch first: at their mouth, or behind what they bridge. */
  readonly from: number;
  readonly to: number;
  readonly diameter: number;
  /** How much of a cylinder they touch; 0 on a cone. */
  readonly length: number;
  /** The thickest that follows behind it, where that is thicker. */
  readonly thicker?: number;
};

const thick = ({ start, end }: Stretch): number => Math.max(start, end);

/** What jaws whose mouth is there close on; undefined where there is nothing. How long they are nobody said: they lie on the first
 *  cylinder, and over what is narrow and short in it. */
export function gripOf(work: Workpiece, jaws: number): Grip | undefined {
  const behind = between(work.outside, jaws, endsOf(work).to);
  const first = behind.reduce<Stretch | undefined>((held, next) => {
    if (held === undefined) return next;
    const wider = thick(next) > thick(held) + NEAR;
    const straight = isCylinder(next) && !isCylinder(held) && thick(next) > thick(held) - NEAR;
    return (wider || straight) && next.from - jaws <= BRIDGED * thick(next) + NEAR ? next : held;
  }, undefined);
  if (first === undefined) return undefined;
  const diameter = first.start;
  const after = behind.slice(behind.indexOf(first));
  const thicker = largestOf(after.map(thick));
  let [to, length] = [first.from, 0];
  for (const stretch of isCylinder(first) ? after : []) {
    if (thick(stretch) > diameter + NEAR) break;
    if (stretch.from - to > BRIDGED * diameter + NEAR) break;
    if (!isCylinder(stretch) || stretch.start < diameter - NEAR) continue;
    length += stretch.to - stretch.from;
    to = stretch.to;
  }
  return { from: first.from, to, diameter, length, ...(thicker > diameter + NEAR && { thicker }) };
}

/** How far to let the work stand out so that the jaws hold it well: by a whole diameter before all others, then as a rule can set it, then
 *  nearest to what was asked. `least`: what is cut stands out so far; undefined where nothing holds. */
export function soundGrip(
  work: Workpiece,
  {
    jaws,
    least,
    alone,
    units,
  }: { readonly jaws: number; readonly least: number; readonly alone: boolean; readonly units: Units },
): { readonly out: number; readonly grip: Grip } | undefined {
  const { from } = endsOf(work);
  const asSet = (mouth: number, set: typeof settableOut) => [
    { mouth: from + set(mouth - from, units), set: true },
    { mouth, set: false },
  ];
  const [best] = work.outside
    .flatMap((stretch) => [
      ...asSet(stretch.from, settableOut),
      ...[1, LEAST_GRIP].flatMap((share) => asSet(stretch.to - share * thick(stretch), settableWithin)),
    ])
    .filter(({ mouth }) => mouth > from + NEAR && mouth >= least - NEAR)
    .flatMap(({ mouth, set }) => {
      const grip = gripOf(work, mouth);
      return grip !== undefined && holdsWell(grip, mouth - from, alone) && !bears(work, grip)
        ? [{ mouth, grip, set }]
        : [];
    })
    .sort(
      (one, other) =>
        Number(isWhole(other.grip)) - Number(isWhole(one.grip)) ||
        Number(other.set) - Number(one.set) ||
        Math.abs(one.mouth - jaws) - Math.abs(other.mouth - jaws),
    );
  return best && { out: best.mouth - from, grip: best.grip };
}

/** The thread or knurl that lies under the jaws. */
export const bears = ({ surfaces }: Workpiece, { from, to }: Grip): Surface | undefined =>
  surfaces.find((one) => one.side === "outside" && one.to > from + NEAR && one.from < to - NEAR);

const isWhole = ({ length, diameter }: Grip): boolean => length >= diameter - NEAR;

/** `alone`: nothing but the chuck holds it. */
const holdsWell = (grip: Grip, out: number, alone: boolean): boolean =>
  grip.thicker === undefined &&
  grip.length >= LEAST_GRIP * grip.diameter - NEAR &&
  (!alone || isWhole(grip) || out <= LEVER * grip.length + NEAR);
