import type { Limits } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import { trimmed } from "../quantity/format.js";

/** Limits, rpm, between which those of small machines and their chucks lie. Own choice, wide: chucks of bench lathes are marked
 *  with some thousands, engraving spindles reach 20 000. */
const usual = { least: 20, most: 20_000 } as const;

/** A limit that no small machine has: one too high guards against nothing. */
export function limitRemarks({ chuckRpm, spindleRpm }: Limits): Remark[] {
  return (
    [
      ["chuck", chuckRpm],
      ["spindle", spindleRpm],
    ] as const
  ).flatMap(([key, rpm]): Remark[] =>
    rpm === undefined || (rpm >= usual.least && rpm <= usual.most)
      ? []
      : [
          {
            severity: "warning",
            code: "unlikely-limit",
            path: ["limits", key],
            what: `a ${key} limited to ${trimmed(rpm, 3)} rpm is unusual for a small machine: ${usual.least} to ${usual.most} rpm are usual`,
            remedy:
              rpm < usual.least
                ? "a point parts decimals, never thousands: write 1800, not 1.8"
                : `read the marking on the ${key} again, and count its figures`,
          },
        ],
  );
}
