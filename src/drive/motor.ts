import type { Motor } from "../machine/machine.js";

/** Speed of the turning field, rpm: 120 f / poles. DOE-HDBK-1011/4, AC Motors, eq. 12-2. */
export const synchronousRpm = (hertz: number, poles: number): number => (120 * hertz) / poles;

/** How much slower than its field a motor turns, as a fraction of the field's speed. */
export const motorSlip = (rpm: number, synchronous: number): number => (synchronous - rpm) / synchronous;

/** Poles and slip that a name plate means: the even number of poles whose field is the nearest above its speed.
 *  Undefined for a speed that no mains motor has (beyond two poles, or slower than twelve). */
export function plate(rpm: number, hertz: number): { readonly poles: number; readonly slip: number } | undefined {
  for (let poles = 12; poles >= 2; poles -= 2) {
    const slip = motorSlip(rpm, synchronousRpm(hertz, poles));
    // 20 %: the field of the next pole pair lies further away, so that no plate means two motors; but for ten and twelve poles, of which
    // the nearer is asked first.
    if (slip >= 0 && slip < 0.2) return { poles, slip };
  }
  return undefined;
}

/** Without mains and poles to tell it, an induction motor runs up to this much above its plate when nothing loads it.
 *  Common practice: small motors slip by 3 to 6 %. */
export const USUAL_RISE = 0.06;

/** Speed of an unloaded motor over `rpm` of its plate: up to its field's where the mains are known, which an induction motor
 *  nears but never passes (DOE-HDBK-1011/4, AC Motors, eq. 12-2). A treadle or a hand has no plate to rise above. */
export function noLoadShare({ hertz, by, slowestRpm, fastestRpm }: Motor, rpm: number): number {
  if (by !== undefined) return 1;
  // A motor of variable speed is not bound to its mains.
  if (hertz === undefined || slowestRpm !== fastestRpm) return 1 + USUAL_RISE;
  const known = plate(rpm, hertz);
  if (known !== undefined) return synchronousRpm(hertz, known.poles) / rpm;
  // No plate for these mains: if it is for the other ones, it turns as fast as these drive so many poles.
  const other = plate(rpm, otherMains(hertz));
  return Math.max(1 + USUAL_RISE, other === undefined ? 0 : synchronousRpm(hertz, other.poles) / rpm);
}

/** The world has two. */
export const otherMains = (hertz: number): number => (hertz === 50 ? 60 : 50);

/** The same motor on other mains, rpm: its slip is taken to stay the same fraction, which is common practice; the plate of
 *  a motor made for both mains says it better. Undefined where the speed is no mains motor's. */
export function onOtherMains(rpm: number, hertz: number, otherHertz: number): number | undefined {
  const known = plate(rpm, hertz);
  return known && synchronousRpm(otherHertz, known.poles) * (1 - known.slip);
}
