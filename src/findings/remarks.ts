import { findMaterial, knownMaterials, nearestMaterial } from "../cutting/materials.js";
import { workingDoubt } from "../dial/dialFinding.js";
import type { DialFinding } from "../dial/finding.js";
import { blurs } from "../dial/legibility.js";
import type { Remark } from "../machine/problem.js";
import { formatBound, formatFixed, formatLength } from "../quantity/format.js";
import type { Findings, HandwheelFinding } from "./findings.js";
import { readingRemarks } from "./readingRemarks.js";
import { workRemarks } from "./workRemarks.js";

/** What the file says that only computing shows to be wrong or doubtful, with the path of the value it is about. */
export function remarks(findings: Findings): Remark[] {
  return [
    ...unknownMaterials(findings),
    ...workRemarks(findings.machine.work),
    ...findings.handwheels.flatMap(readingRemarks),
    ...findings.handwheels.flatMap(dialRemarks),
    ...driveRemarks(findings),
  ];
}

function unknownMaterials({ machine }: Findings): Remark[] {
  const own = new Set(machine.work.cuttingSpeeds?.map(({ material }) => material.toLowerCase()));
  return machine.work.materials.flatMap((name, index) => {
    if (own.has(name.toLowerCase()) || findMaterial(name)) return [];
    const nearest = nearestMaterial(name);
    return [
      {
        severity: "error",
        code: "unknown-material",
        path: ["work", "materials", index],
        what: `no cutting speeds are known for ${JSON.stringify(name)}`,
        remedy: nearest ? `did you mean "${nearest}"?` : `known are ${knownMaterials().join(", ")}`,
      } satisfies Remark,
    ];
  });
}

function dialRemarks(finding: HandwheelFinding, index: number): Remark[] {
  const path = ["handwheels", index, "dial"];
  const { handwheel, feed, dial, doubtful } = finding;
  if (handwheel.dial === undefined) return [];
  // The miscounted turn is told at its reading.
  if (finding.miscounted) return [];
  if (doubtful !== undefined) return [tooDoubtful(finding, doubtful, path)];
  if (dial !== undefined)
    return [
      ...tooClose(handwheel.name, dial, path),
      ...(handwheel.dial.vernier !== undefined && dial.vernier === undefined
        ? [noVernier(handwheel.name, handwheel.dial.vernier, dial, path)]
        : []),
    ];
  return [
    {
      severity: "warning",
      code: "no-dial",
      path,
      what: `no dial can be made for "${handwheel.name}"`,
      remedy: feed
        ? "give the drum's diameter, or the wrap length measured round it"
        : "say its feed per turn: measured readings, a screw or a length",
    },
  ];
}

function tooDoubtful({ handwheel, feed }: HandwheelFinding, { chosen }: DialFinding, path: Remark["path"]): Remark {
  const { unit, divisionLabel } = chosen;
  const { doubt = 0, travel = 0 } = (feed && workingDoubt(chosen, handwheel, feed)) ?? {};
  const over = formatLength(travel, unit, unit === "mm" ? 0 : 1);
  return {
    severity: "warning",
    code: "doubtful-dial",
    path,
    what: `no dial is made for "${handwheel.name}": its feed is in doubt by ${formatBound(doubt, unit)} over ${over}${chosen.measuredOnly ? `, of which ${formatLength(chosen.overTravel, unit, unit === "mm" ? 0 : 1)} was measured` : ""}, and the division would be ${divisionLabel}`,
    remedy: `${feed?.measured?.uneven?.wave ? "build the once-per-turn error into the marks with oncePerTurn: true" : "measure over more of the travel (the measuring-form sheet says how)"}, or force a dial with divisions: or closure:, which then carries its doubt`,
  };
}

function noVernier(name: string, parts: number, { chosen }: DialFinding, path: Remark["path"]): Remark {
  return {
    severity: "warning",
    code: "no-vernier",
    path: [...path, "vernier"],
    what: `a vernier of ${parts} spans ${parts - 1} divisions of ${chosen.divisionLabel}, more than there is room for beside "${name}"`,
    remedy: "take fewer parts, or a finer division",
  };
}

/** A dial too small for the divisions that the file forces on it. */
function tooClose(name: string, { chosen, second }: DialFinding, path: Remark["path"]): Remark[] {
  return [
    { scale: chosen, key: "divisions" },
    { scale: second?.chosen, key: "second" },
  ].flatMap(({ scale, key }): Remark[] =>
    scale === undefined || !blurs(scale.spacing)
      ? []
      : [
          {
            severity: "warning",
            code: "too-close",
            path: [...path, key],
            what: `on "${name}" marks of ${scale.divisionLabel} stand only ${formatFixed(scale.spacing, 2)} mm apart and blur`,
            remedy: "take a coarser division, a larger dial, or a coarser division with a vernier",
          },
        ],
  );
}

function driveRemarks({ drive }: Findings): Remark[] {
  return (drive?.remarks ?? []).map((what) => ({
    severity: "warning",
    code: "drive",
    path: ["drive", "tachometer"],
    what,
    remedy: "measure that speed again, and the pulleys where the belt runs",
  }));
}
