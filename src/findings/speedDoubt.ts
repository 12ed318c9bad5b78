import type { DriveFinding } from "../drive/finding.js";
import { capital, formatFixed } from "../quantity/format.js";
import type { Findings } from "./findings.js";
import { measureFirst } from "./limits.js";
import { motorRemarks } from "./motorRemarks.js";

/** What every sheet with speeds says of them before one trusts them, a line each: readings that serve nothing, and speeds that
 *  nobody measured just below a limit. */
export function speedDoubt({ drive, machine }: Pick<Findings, "drive" | "machine">): string[] {
  if (drive === undefined) return [];
  const near = drive.speeds.filter((speed) => speed.from !== "unknown" && measureFirst(speed, machine.limits));
  const names = near.map(({ position }) => position.name).join("; ");
  return [
    ...(machine.drive ? motorRemarks(machine.drive) : []).map(
      ({ what }) => `${capital(what)}: measure before you trust a speed.`,
    ),
    ...readingDoubt(drive),
    ...(near.length === 0 ? [] : [`Near the limit and not measured: ${names}. Measure first.`]),
  ];
}

function readingDoubt({ doubtful, astray, strays = [] }: DriveFinding): string[] {
  if (doubtful === undefined) return [];
  const alone = doubtful.length === 1 && doubtful[0]?.rpms.length === 1;
  const which = doubtful
    .map(({ name, rpms }) => `${name} (${rpms.map((rpm) => formatFixed(rpm, 0)).join(", ")} rpm)`)
    .join("; ");
  return [
    ...strays.map(
      ({ name }) => `A pulley of ${name} is not what the file says: no speed through it is known; measure first.`,
    ),
    astray
      ? `Reading of ${which} doubtful: ${alone ? "it is wrong, or " : ""}the motor or a pulley is not what the file says. No speed is known; measure first.`
      : `Reading of ${which} doubtful: not used, but held against the limits. Measure again.`,
  ];
}
