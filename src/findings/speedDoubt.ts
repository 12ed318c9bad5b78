import { formatFixed } from "../quantity/format.js";
import type { Findings } from "./findings.js";

/** What every sheet with speeds says of readings that serve nothing, one line or none. */
export function speedDoubt({ drive }: Pick<Findings, "drive">): string[] {
  if (drive?.doubtful === undefined) return [];
  const which = drive.doubtful
    .map(({ name, rpms }) => `${name} (${rpms.map((rpm) => formatFixed(rpm, 0)).join(", ")} rpm)`)
    .join("; ");
  return [
    drive.astray
      ? `Reading of ${which} doubtful: the motor or a pulley is not what the file says. No speed is known; measure first.`
      : `Reading of ${which} doubtful: not used, but held against the limits. Measure again.`,
  ];
}
