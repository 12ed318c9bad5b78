import { hazardOf } from "../cutting/hazards.js";
import { findOperation, operations } from "../cutting/operations.js";
import { findTool, knownTools, nearestTool } from "../cutting/tools.js";
import { closest } from "../machine/closest.js";
import type { OwnCuttingSpeed, Work } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import { trimmed } from "../quantity/format.js";
import { MM_PER_FOOT } from "../quantity/length.js";

/** Tools and operations that the cutting-speed data does not know. */
export function workRemarks(work: Work): Remark[] {
  const own = work.cuttingSpeeds ?? [];
  const ownTool = own.some(({ tool }) => tool?.trim().toLowerCase() === work.tool.trim().toLowerCase());
  const tool: Remark[] =
    ownTool || findTool(work.tool) !== undefined
      ? []
      : [
          {
            severity: "error",
            code: "unknown-tool",
            path: ["work", "tool"],
            what: `no cutting speeds are known for a tool of ${JSON.stringify(work.tool)}`,
            remedy: remedy(nearestTool(work.tool), knownTools()),
          },
        ];
  const names = operations.map(({ name }) => name);
  const unknown = own.flatMap(({ operation }, index): Remark[] =>
    operation === undefined || findOperation(operation) !== undefined
      ? []
      : [
          {
            severity: "error",
            code: "unknown-operation",
            path: ["work", "cuttingSpeeds", index, "operation"],
            what: `${JSON.stringify(operation)} is no operation with a cutting speed`,
            remedy: remedy(closest(operation, names), names),
          },
        ],
  );
  return [...tool, ...unknown, ...own.flatMap(tooFast)];
}

/** Above the speed at which chips of that material are the likelier to burn. */
function tooFast({ material, fastest }: OwnCuttingSpeed, index: number): Remark[] {
  const hazard = hazardOf(material);
  if (hazard?.fastest === undefined || fastest <= hazard.fastest * (1 + 1e-9)) return [];
  const limit = `${trimmed(hazard.fastest, 0)} m/min (${trimmed((hazard.fastest * 1000) / MM_PER_FOOT, 0)} ft/min)`;
  return [
    {
      severity: "warning",
      code: "may-burn",
      path: ["work", "cuttingSpeeds", index, "speed"],
      what: `${JSON.stringify(material)} is cut at up to ${trimmed(fastest, 0)} m/min, and above ${limit} its chips are the likelier to catch fire`,
      remedy: `${limit} is taken as its most; mind the unit`,
    },
  ];
}

const remedy = (nearest: string | undefined, known: readonly string[]): string =>
  nearest ? `did you mean "${nearest}"?` : `known are ${known.join(", ")}`;
