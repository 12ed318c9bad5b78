import type { DriveFinding } from "../drive/finding.js";
import { capital, formatFixed } from "../quantity/format.js";
import { say } from "../words/say.js";
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
    ...(machine.drive ? motorRemarks(machine.drive) : []).map(({ what }) =>
      say("remarks.motor doubtful", { what: capital(what) }),
    ),
    ...readingDoubt(drive),
    ...(near.length === 0 ? [] : [say("remarks.near limit", { positions: names })]),
  ];
}

function readingDoubt({ doubtful, astray, strays = [] }: DriveFinding): string[] {
  if (doubtful === undefined) return [];
  const alone = doubtful.length === 1 && doubtful[0]?.rpms.length === 1;
  const which = doubtful
    .map(({ name, rpms }) =>
      say("remarks.position read", { position: name, speeds: rpms.map((rpm) => formatFixed(rpm, 0)).join(", ") }),
    )
    .join("; ");
  return [
    ...strays.map(({ name }) => say("remarks.pulley astray", { pulley: name })),
    astray
      ? say(alone ? "remarks.one reading astray" : "remarks.readings astray", { which })
      : say("remarks.reading not used", { which }),
  ];
}
