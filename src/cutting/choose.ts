import type { SpeedFinding } from "../drive/finding.js";
import { limitRpm } from "../machine/limits.js";
import type { Limits } from "../machine/machine.js";
import type { CuttingSpeed, SpeedChoice } from "./finding.js";
import { diameterFor, metresPerMinuteAt, rpmFor } from "./rates.js";

/** The fastest position that stays within the band and the limits; below the band when none lies in it; none at all when
 *  even the slowest is faster than the band. Safe side first: between two positions the slower. */
export function chooseSpeed(
  diameter: number,
  band: CuttingSpeed,
  all: readonly SpeedFinding[],
  limits: Limits,
): SpeedChoice {
  const speeds = all.filter(isKnown);
  if (speeds.length === 0) return { diameter, band, verdict: "no speed is known" };
  const limit = limitRpm(limits);
  const heldBy =
    limits.spindleRpm !== undefined && limits.spindleRpm < (limits.chuckRpm ?? Number.POSITIVE_INFINITY)
      ? "spindle"
      : "chuck";
  const wanted = rpmFor(band.most, diameter);
  const fastest = fastestWithin(speeds, wanted, limit);
  const free = fastestWithin(speeds, wanted);
  if (fastest === undefined)
    return free === undefined
      ? { diameter, band, verdict: "slowest is too fast" }
      : { diameter, band, verdict: "held by a limit", heldBy };
  const metresPerMinute = metresPerMinuteAt(fastest.rpm, diameter);
  const chosen = { diameter, band, speed: fastest.speed, rpm: fastest.rpm, metresPerMinute };
  if (metresPerMinute >= band.slowest * (1 - 1e-9)) return { ...chosen, verdict: "in the band" };
  const held = free !== undefined && free.rpm > fastest.rpm * (1 + 1e-9);
  return held ? { ...chosen, verdict: "held by a limit", heldBy } : { ...chosen, verdict: "slower than the band" };
}

/** Facing or parting from the outside in: the first position by the outside diameter, then each faster one with the
 *  diameter below which it may be used. Positions beyond a limit never appear. */
export function inward(
  outside: number,
  band: CuttingSpeed,
  speeds: readonly SpeedFinding[],
  limits: Limits,
): { readonly first: SpeedChoice; readonly then: readonly { readonly speed: SpeedFinding; readonly below: number }[] } {
  const first = chooseSpeed(outside, band, speeds, limits);
  const limit = limitRpm(limits);
  const then = speeds
    .filter((speed) => isKnown(speed) && speed.rpm > (first.rpm ?? 0) * (1 + 1e-9) && speed.highestRpm <= limit)
    .map((speed) => ({ speed, below: diameterFor(band.most, speed.rpm) }))
    .filter(({ below }) => below < outside)
    .sort((a, b) => b.below - a.below);
  return { first, then };
}

type Running = { readonly speed: SpeedFinding; readonly rpm: number };

const isKnown = ({ from }: SpeedFinding): boolean => from !== "unknown";

/** A variable motor runs a position anywhere between its slowest and its fastest; others at the one speed alone. What may
 *  truly turn faster than it says stays as much further below the limit. */
function fastestWithin(
  speeds: readonly SpeedFinding[],
  wanted: number,
  limit = Number.POSITIVE_INFINITY,
): Running | undefined {
  let best: Running | undefined;
  for (const speed of speeds) {
    const rpm = Math.min(wanted, (limit * speed.rpm) / speed.highestRpm);
    if (speed.slowestRpm > rpm * (1 + 1e-12)) continue;
    const running = { speed, rpm: Math.min(speed.rpm, rpm) };
    if (best === undefined || running.rpm > best.rpm) best = running;
  }
  return best;
}
