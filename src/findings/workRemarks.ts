import { cuttingSpeed } from "../cutting/cuttingSpeeds.js";
import { hazardOf } from "../cutting/hazards.js";
import { findOperation, operations } from "../cutting/operations.js";
import { highSpeedSteel } from "../cutting/published/source.js";
import { cuttingSpeedUnit } from "../cutting/rates.js";
import { findTool, knownTools, nearestTool } from "../cutting/tools.js";
import { closest } from "../machine/closest.js";
import type { OwnCuttingSpeed, Units, Work } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import { trimmed } from "../quantity/format.js";

/** Tools and operations that the cutting-speed data does not know. */
export function workRemarks(work: Work, units: Units): Remark[] {
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
  return [
    ...tool,
    ...unknown,
    ...own.flatMap((row, index) => tooFast(row, index, units)),
    ...own.flatMap((row, index) => unlikely(row, index, units)),
  ];
}

/** Above the speed at which chips of that material are the likelier to burn. */
function tooFast({ material, fastest }: OwnCuttingSpeed, index: number, units: Units): Remark[] {
  const hazard = hazardOf(material);
  if (hazard?.fastest === undefined || fastest <= hazard.fastest * (1 + 1e-9)) return [];
  const limit = speedWords(hazard.fastest, units, 0);
  return [
    {
      severity: "warning",
      code: "may-burn",
      path: ["work", "cuttingSpeeds", index, "speed"],
      what: `${JSON.stringify(material)} is cut at up to ${speedWords(fastest, units, 0)}, and above ${limit} its chips are the likelier to catch fire`,
      remedy: `${limit} is taken as its most; mind the unit`,
    },
  ];
}

/** In the unit of the file's reader. */
const speedWords = (speed: number, units: Units, places: number): string =>
  `${trimmed(speed / cuttingSpeedUnit[units].metresPerMinute, places)} ${cuttingSpeedUnit[units].name}`;

/** Own speeds as many times those that are published, or as much less, are the other unit's more often than a trial's. Own
 *  choice: a foot is 0.3048 m. */
const UNLIKELY = 2.5;

function unlikely(
  { material, tool, operation, slowest, fastest }: OwnCuttingSpeed,
  index: number,
  units: Units,
): Remark[] {
  const published = cuttingSpeed(material, tool ?? highSpeedSteel, operation ?? "turning", {
    firmness: "firm",
    diameter: 20,
  });
  if (published === undefined || published.rpm) return [];
  const times = Math.sqrt((slowest * fastest) / (published.slowest * published.fastest));
  if (times < UNLIKELY && times > 1 / UNLIKELY) return [];
  const range = (from: number, to: number) =>
    `${trimmed(from / cuttingSpeedUnit[units].metresPerMinute, 1)} to ${speedWords(to, units, 1)}`;
  return [
    {
      severity: "warning",
      code: "unlikely-speed",
      path: ["work", "cuttingSpeeds", index, "speed"],
      what: `${range(slowest, fastest)} for ${JSON.stringify(material)} is ${trimmed(times, 1)} times what is published, ${range(published.slowest, published.fastest)}`,
      remedy: "mind the unit: write m/min or ft/min behind both; leave it where it is meant",
    },
  ];
}

const remedy = (nearest: string | undefined, known: readonly string[]): string =>
  nearest ? `did you mean "${nearest}"?` : `known are ${known.join(", ")}`;
