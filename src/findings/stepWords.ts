import type { Drive, Step } from "../machine/machine.js";
import { inEveryTongue, wordOf } from "../words/say.js";
import type { Key } from "../words/words.generated.js";

/** What a step is that hands the speed on as it is, or is in gear, and the other words for it that are not its owner's own. A coupling
 *  and a gear pair in mesh are one word in one language and two in another. */
const statesOf = (kind: Step["kind"]): readonly (readonly [Key, ...Key[]])[] => [
  ["step labels.open", "step labels.open otherwise"],
  ["step labels.direct"],
  kind === "gears" ? ["step labels.geared", "step labels.engaged"] : ["step labels.engaged", "step labels.geared"],
];

/** A step that is called, in any language that paper speaks, what every such step is, a coupling or a back gear in or out of mesh, is
 *  called so on paper in its language; one that a machine calls otherwise, as it calls it. */
export function inPrintedWords(drive: Drive): Drive {
  const steps = drive.stages.flatMap(({ steps }) => steps);
  const all = steps.map(asWritten);
  // Two steps of one name could not be told apart.
  const isTaken = (word: string, written: string) =>
    all.includes(word) || steps.some((one) => asWritten(one) !== written && wordFor(one) === word);
  const printed = new Map(
    steps.map((step) => {
      const [word, written] = [wordFor(step), asWritten(step)];
      return [step.label, word !== written && isTaken(word, written) ? written : word] as const;
    }),
  );
  const as = (label: string) => printed.get(label) ?? label;
  return {
    ...drive,
    stages: drive.stages.map((stage) => ({
      ...stage,
      // A machine whose words were one language's may come once more, for paper in another.
      steps: stage.steps.map((step) => ({ ...step, label: as(step.label), written: asWritten(step) })),
    })),
    tachometer: drive.tachometer.map((reading) => ({ ...reading, labels: reading.labels.map(as) })),
  };
}

const asWritten = ({ label, written }: Step): string => written ?? label;

function wordFor(step: Step): string {
  const label = asWritten(step);
  const written = label.toLowerCase();
  const has = (words: readonly string[]) => words.some((word) => word.toLowerCase() === written);
  for (const state of statesOf(step.kind)) {
    if (has(state.map(wordOf))) return label;
    if (has(state.flatMap(inEveryTongue))) return wordOf(state[0]);
  }
  return label;
}
