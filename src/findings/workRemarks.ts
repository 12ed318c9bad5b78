import { findOperation, operations } from "../cutting/operations.js";
import { findTool, knownTools, nearestTool } from "../cutting/tools.js";
import { closest } from "../machine/closest.js";
import type { Work } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";

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
  return [...tool, ...unknown];
}

const remedy = (nearest: string | undefined, known: readonly string[]): string =>
  nearest ? `did you mean "${nearest}"?` : `known are ${known.join(", ")}`;
