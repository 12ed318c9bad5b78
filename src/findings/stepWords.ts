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
    all.some((one) => one !== written && alike(one, word)) ||
    steps.some((one) => asWritten(one) !== written && alike(wordFor(one), word));
  const printed = (step: Step): string => {
    const [word, written] = [wordFor(step), asWritten(step)];
    return word !== written && isTaken(word, written) ? written : word;
  };
  // A machine whose words were one language's may come once more, for paper in another.
  const stages = drive.stages.map((stage) => ({
    ...stage,
    steps: stage.steps.map((step) => ({ ...step, label: printed(step), written: asWritten(step) })),
  }));
  // A reading has one label of each stage that offers a choice.
  const choices = drive.stages.flatMap(({ steps }, at) =>
    steps.length > 1 ? [{ steps, printed: stages[at]?.steps }] : [],
  );
  const as = (label: string, at: number) => {
    const choice = choices[at];
    return choice?.printed?.[choice.steps.findIndex((step) => step.label === label)]?.label ?? label;
  };
  return {
    ...drive,
    stages,
    tachometer: drive.tachometer.map((reading) => ({ ...reading, labels: reading.labels.map(as) })),
  };
}

const asWritten = ({ label, written }: Step): string => written ?? label;

const alike = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** A belt is in no such state: one that is called open lies beside a crossed one. */
function wordFor(step: Step): string {
  const label = asWritten(step);
  if (step.kind === "belt") return label;
  const has = (words: readonly string[]) => words.some((word) => alike(word, label));
  for (const state of statesOf(step.kind)) {
    if (has(state.map(wordOf))) return label;
    if (has(state.flatMap(inEveryTongue))) return wordOf(state[0]);
  }
  return label;
}
