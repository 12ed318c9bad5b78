import { chooseSpeed } from "../cutting/choose.js";
import { cuttingSpeed } from "../cutting/cuttingSpeeds.js";
import { feedPerRevolution } from "../cutting/feeds.js";
import type { SpeedChoice } from "../cutting/finding.js";
import type { Findings } from "../findings/findings.js";
import { handFeed } from "../handFeed/handFeed.js";
import type { Job } from "../job/job.js";
import type { PlannedStep } from "./plan.js";
import type { Wheel } from "./wheels.js";

export function speedFor(
  { drive, machine }: Findings,
  { material, tool }: Job,
  operation: string,
  diameter: number,
): SpeedChoice | undefined {
  if (drive === undefined) return undefined;
  const band = cuttingSpeed(material, tool, operation, { ...machine.work, diameter });
  return band && chooseSpeed(diameter, band, drive.speeds, machine.limits);
}

/** Light feeds for a light machine: the finishing feeds of the sources, their upper end for cuts, their lower for the last. */
export function feedsFor(
  { material }: Job,
  kind: "turning" | "drilling" | "parting",
  diameter: number,
  rpm: number | undefined,
  wheel: Wheel | undefined,
): PlannedStep["feeds"] {
  const found = feedPerRevolution(material, kind === "turning" ? "finishing" : kind, diameter);
  if (found === undefined || rpm === undefined || wheel === undefined) return [];
  const chosen = wheel.finding.dial?.chosen;
  const divisions = chosen && chosen.divisions / chosen.rows;
  const count = (what: string, perRevolution: number) => ({
    what,
    perRevolution,
    count: handFeed(perRevolution, rpm, wheel.perTurn / wheel.factor, divisions).count,
  });
  return kind === "turning"
    ? [count("cuts", found.to), count("last cut", found.from)]
    : [count(kind === "drilling" ? "drill" : "blade", found.from)];
}
