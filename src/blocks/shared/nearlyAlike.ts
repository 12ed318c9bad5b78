import { nearlySame } from "../../drive/alike.js";
import type { SpeedFinding } from "../../drive/finding.js";
import type { Findings } from "../../findings/findings.js";
import { heldByLimit, measureFirst } from "../../findings/limits.js";
import type { Limits } from "../../machine/machine.js";

/** The positions that a card can do without, since one that it keeps gives nearly the same speed; `keep` is never among them, nor
 *  one of which there is something to mind. */
export function nearlyAlike(
  speeds: readonly SpeedFinding[],
  limits: Limits,
  keep: SpeedFinding | undefined,
): SpeedFinding[] {
  const plain = (speed: SpeedFinding) =>
    speed !== keep &&
    speed.from !== "unknown" &&
    speed.doubtful === undefined &&
    speed.slowestRpm >= speed.rpm * 0.999 &&
    heldByLimit(speed, limits) === undefined &&
    !measureFirst(speed, limits);
  // A measured one is the better of two.
  const worth = (speed: SpeedFinding) => (plain(speed) ? 0 : 2) + (speed.from === "measured" ? 1 : 0);
  const kept: SpeedFinding[] = [];
  const omitted: SpeedFinding[] = [];
  for (const speed of [...speeds].sort((a, b) => worth(b) - worth(a) || b.rpm - a.rpm)) {
    const near = kept.some(
      (one) => heldByLimit(one, limits) === undefined && one.from !== "unknown" && nearlySame(one.rpm, speed.rpm),
    );
    if (near && plain(speed)) omitted.push(speed);
    else kept.push(speed);
  }
  return omitted;
}

/** The same machine without them, and which they are. */
export function withoutNearlyAlike(findings: Findings): { findings: Findings; omitted: readonly SpeedFinding[] } {
  const { drive, machine } = findings;
  if (drive === undefined) return { findings, omitted: [] };
  const omitted = nearlyAlike(drive.speeds, machine.limits, undefined);
  const speeds = drive.speeds.filter((speed) => !omitted.includes(speed));
  return { findings: { ...findings, drive: { ...drive, speeds } }, omitted };
}
