import { type Explainable, explainables, workings } from "../../answers/explained.js";
import type { Laid } from "../../answers/laid.js";
import { supposed, supposedLaid } from "../../answers/supposed.js";
import { Unanswered } from "../../answers/unanswered.js";
import { verified } from "../../answers/verified.js";
import { wishesFor } from "../../answers/wishes.js";
import type { Findings } from "../../findings/findings.js";
import type { Places } from "../../machine/problem.js";
import { measuresOf } from "../../paper/measuredPiece.js";
import type { AnsweredParts, AnswerTo, Asked, WheelMeasures } from "./protocol.js";

/** What the command line answers to explain, verify and suppose: the same, and the same words where it refuses. */

export const workingsNow = (
  findings: Findings | undefined,
  places: Places,
  { quantity, of }: Asked<"explain">,
): AnsweredParts => inParts(findings, (found) => workings(found, places, quantity, of));

export function verifiedNow(findings: Findings | undefined, asked: Asked<"verify">): AnswerTo<"verify"> {
  const { given, refused } = answered(findings, (found) => verified(found, asked));
  return { lines: [], ...given, ...(refused !== undefined && { refused }) };
}

export const supposedAnswer = (findings: Findings | undefined, { wishes }: Asked<"suppose">): AnsweredParts =>
  inParts(findings, (found) => supposedLaid(found, supposed(found, wishes)));

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

const inParts = (findings: Findings | undefined, answer: (found: Findings) => readonly Laid[]): AnsweredParts => {
  const { given = [], refused } = answered(findings, answer);
  return { parts: given, ...(refused !== undefined && { refused }) };
};

function answered<T>(
  findings: Findings | undefined,
  answer: (found: Findings) => T,
): { readonly given?: T; readonly refused?: string } {
  if (findings === undefined) return { refused: "the file has something to mend first" };
  try {
    return { given: answer(findings) };
  } catch (fault) {
    if (!(fault instanceof Unanswered)) throw fault;
    return { refused: fault.message };
  }
}
