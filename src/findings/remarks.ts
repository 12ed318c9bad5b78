import { findMaterial, knownMaterials, nearestMaterial } from "../cutting/materials.js";
import type { Remark } from "../machine/problem.js";
import type { Findings, HandwheelFinding } from "./findings.js";

/** What the file says that only computing shows to be wrong or doubtful, with the path of the value it is about. */
export function remarks(findings: Findings): Remark[] {
  return [...unknownMaterials(findings), ...findings.handwheels.flatMap(dialRemarks), ...driveRemarks(findings)];
}

function unknownMaterials({ machine }: Findings): Remark[] {
  return machine.work.materials.flatMap((name, index) => {
    const own = machine.work.cuttingSpeeds?.some(({ material }) => material.toLowerCase() === name.toLowerCase());
    if (own || findMaterial(name)) return [];
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

function dialRemarks({ handwheel, feed, dial }: HandwheelFinding, index: number): Remark[] {
  const path = ["handwheels", index, "dial"];
  if (handwheel.dial === undefined || dial !== undefined) return [];
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

function driveRemarks({ drive }: Findings): Remark[] {
  return (drive?.remarks ?? []).map((what) => ({
    severity: "warning",
    code: "drive",
    path: ["drive", "tachometer"],
    what,
    remedy: "measure that speed again, and the pulleys where the belt runs",
  }));
}
