import type { SpeedFinding } from "../drive/finding.js";
import type { Limits } from "../machine/machine.js";
import type { CuttingSpeed, SpeedChoice } from "./finding.js";
import { metresPerMinuteAt, rpmFor } from "./rates.js";

/** The fastest position that stays within the band and the limits; below the band when none lies in it; none at all when
 *  even the slowest is faster than the band. Safe side first: between two positions the slower. */
export function chooseSpeed(diameter: number, band: CuttingSpeed, speeds: readonly SpeedFinding[], limits: Limits): SpeedChoice {
  const limit = Math.min(limits.chuckRpm ?? Number.POSITIVE_INFINITY, limits.spindleRpm ?? Number.POSITIVE_INFINITY);
  const wanted = rpmFor(band.fastest, diameter);
  const fastest = fastestWithin(speeds, Math.min(wanted, limit));
  if (fastest === undefined) {
    const limited = fastestWithin(speeds, wanted) !== undefined;
    return { diameter, band, verdict: limited ? "held by a limit" : "slowest is too fast" };
  }
  const metresPerMinute = metresPerMinuteAt(fastest.rpm, diameter);
  const chosen = { diameter, band, speed: fastest.speed, rpm: fastest.rpm, metresPerMinute };
  if (metresPerMinute >= band.slowest * (1 - 1e-9)) return { ...chosen, verdict: "in the band" };
  const free = fastestWithin(speeds, wanted);
  const held = free !== undefined && free.rpm > fastest.rpm * (1 + 1e-9);
  return { ...chosen, verdict: held ? "held by a limit" : "slower than the band" };
}

/** A variable motor runs a position anywhere between its slowest and its fastest; others at the one speed alone. */
function fastestWithin(speeds: readonly SpeedFinding[], rpm: number): { speed: SpeedFinding; rpm: number } | undefined {
  const able = speeds.filter(({ slowestRpm }) => slowestRpm <= rpm * (1 + 1e-12));
  return able.map((speed) => ({ speed, rpm: Math.min(speed.rpm, rpm) })).reduce<{ speed: SpeedFinding; rpm: number } | undefined>((best, next) => (best === undefined || next.rpm > best.rpm ? next : best), undefined);
}
