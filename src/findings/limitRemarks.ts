import type { SpeedFinding } from "../drive/finding.js";
import { limitRpm } from "../machine/limits.js";
import type { Limits, Machine } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import { asGiven } from "../machine/written.js";
import { trimmed } from "../quantity/format.js";
import { beyondTheDrillLimit, drillsOf } from "./drills.js";
import { heldByLimit } from "./limits.js";

/** Limits, rpm, between which those of small machines and their chucks lie. Own choice, wide: chucks of bench lathes are marked
 *  with some thousands, engraving spindles reach 20 000. */
const usual = { chuck: { least: 20, most: 10_000 }, spindle: { least: 20, most: 20_000 } } as const;

/** Drills that the file names and its own limit leaves out, and a limit that leaves none. */
export function drillRemarks(machine: Machine): Remark[] {
  const { work, limits, units } = machine;
  if (limits.largestDrill === undefined) return [];
  const size = (mm: number) => asGiven(mm, machine);
  const most = size(limits.largestDrill);
  const beyond = (work.drills ?? []).flatMap((drill, index): Remark[] =>
    !beyondTheDrillLimit(drill, limits)
      ? []
      : [
          {
            severity: "warning",
            code: "beyond-limit",
            path: ["work", "drills", index],
            what: `a drill of ${size(drill)} is larger than limits: drill: ${most}, and is left out`,
            remedy: "take one of the two out, or mend it",
          },
        ],
  );
  if (beyond.length > 0 || drillsOf(machine).length > 0) return beyond;
  return [
    {
      severity: "warning",
      code: "unlikely-limit",
      path: ["limits", "drill"],
      what: `a largest drill of ${most} leaves none of the usual ones`,
      remedy: `mind the unit, ${units} here; or name your own under work: drills:`,
    },
  ];
}

/** A limit that no small machine has: one too high guards against nothing. And limits that forbid every position. */
export function limitRemarks(limits: Limits, speeds: readonly SpeedFinding[]): Remark[] {
  const { chuckRpm, spindleRpm } = limits;
  const odd = (
    [
      ["chuck", chuckRpm],
      ["spindle", spindleRpm],
    ] as const
  ).flatMap(([key, rpm]): Remark[] => {
    const { least, most } = usual[key];
    if (rpm === undefined || (rpm >= least && rpm <= most)) return [];
    return [
      {
        severity: "warning",
        code: "unlikely-limit",
        path: ["limits", key],
        what: `a ${key} limited to ${trimmed(rpm, 3)} rpm is unusual for a small machine: ${least} to ${most} rpm are usual`,
        remedy:
          rpm < least
            ? "a point parts decimals, never thousands: write 1800, not 1.8"
            : `read the marking on the ${key} again, and count its figures`,
      },
    ];
  });
  if (speeds.length === 0 || speeds.some((speed) => heldByLimit(speed, limits) !== "wholly")) return odd;
  return [
    ...odd,
    {
      severity: "warning",
      code: "all-beyond-limit",
      path: ["limits"],
      what: `every position may be faster than ${trimmed(limitRpm(limits), 0)} rpm, the lower of the limits: none may be used`,
      remedy: "check the limits, the motor and the pulleys, and measure the slowest position",
    },
  ];
}
