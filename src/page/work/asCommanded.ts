import { type Explainable, explainables, explained } from "../../answers/explained.js";
import { supposed, supposedLines } from "../../answers/supposed.js";
import { Unanswered } from "../../answers/unanswered.js";
import { verified } from "../../answers/verified.js";
import { wishesFor } from "../../answers/wishes.js";
import type { Findings } from "../../findings/findings.js";
import type { Places } from "../../machine/problem.js";
import { measuresOf } from "../../paper/measuredPiece.js";
import type { AnsweredLines, Asked, WheelMeasures } from "./protocol.js";

/** What the command line answers to explain, verify and suppose: the same lines, and the same words where it refuses. */

export const explainedLines = (
  findings: Findings | undefined,
  places: Places,
  { quantity, of }: Asked<"explain">,
): AnsweredLines => answered(findings, (found) => explained(found, places, quantity, of));

export const verifiedLines = (findings: Findings | undefined, asked: Asked<"verify">): AnsweredLines =>
  answered(findings, (found) => verified(found, asked).lines);

export const supposedAnswer = (findings: Findings | undefined, { wishes }: Asked<"suppose">): AnsweredLines =>
  answered(findings, (found) => supposedLines(found, supposed(found, wishes)));

export const explainableNow = (findings: Findings | undefined): Explainable[] =>
  findings === undefined ? [] : explainables(findings);

export const wishesNow = (findings: Findings | undefined): string[] =>
  findings === undefined ? [] : wishesFor(findings);

export const measuresNow = (findings: Findings | undefined): WheelMeasures[] =>
  (findings?.handwheels ?? []).flatMap(({ handwheel, dial }) =>
    dial === undefined || findings === undefined
      ? []
      : [
          {
            wheel: handwheel.name,
            measures: measuresOf(dial, findings.machine.units).map(({ by, what }) => ({ by, what })),
          },
        ],
  );

/** An empty line before the first is a terminal's, to part it from the command. */
function answered(findings: Findings | undefined, answer: (found: Findings) => readonly string[]): AnsweredLines {
  if (findings === undefined) return { lines: [], refused: "the file has something to mend first" };
  try {
    const lines = answer(findings);
    return { lines: lines.slice(lines.findIndex((line) => line !== "")) };
  } catch (fault) {
    if (!(fault instanceof Unanswered)) throw fault;
    return { lines: [], refused: fault.message };
  }
}
