import type { Remark } from "../machine/problem.js";
import type { Findings } from "./findings.js";

/** What the tachometer's readings cannot mean, each at its own speed in the file, with the usual mistake as a question. */
export function driveRemarks({ drive }: Pick<Findings, "drive">): Remark[] {
  return (drive?.remarks ?? []).map(({ what, reading, factor }) => ({
    severity: "warning",
    code: "drive",
    path: reading === undefined ? ["drive", "motor"] : ["drive", "tachometer", reading, "speed"],
    what,
    remedy:
      likelySlip(factor, drive?.astray !== undefined) +
      (reading === undefined
        ? "read the plate again, measure the pulleys where the belt runs, then the speed"
        : "measure that speed again, and the pulleys where the belt runs"),
  }));
}

/** Room for slip and for an unloaded motor. */
const NEAR = 1.08;

/** The usual mistake that leaves a reading this many times too fast, as a question before the remedy; empty where none comes
 *  near. Of the mains and the poles only where all readings say so. Common practice. */
function likelySlip(factor: number | undefined, all: boolean): string {
  const mistakes = [
    ...[10, 0.1].map((times) => ({ times, words: "is the decimal point right" })),
    ...(all
      ? [
          { times: 2, words: "has the motor half as many poles, or does what the tachometer sees bear two marks" },
          { times: 0.5, words: "has the motor twice as many poles" },
          { times: 1.2, words: "is the plate for 50 Hz and the mains 60 Hz" },
          { times: 1 / 1.2, words: "is the plate for 60 Hz and the mains 50 Hz" },
        ]
      : []),
  ];
  const found = mistakes.find(({ times }) => factor !== undefined && factor > times / NEAR && factor < times * NEAR);
  return found === undefined ? "" : `${found.words}? `;
}
