import type { Drive } from "../machine/machine.js";
import { say } from "../words/say.js";

/** A step that is called in English what every such step is, a coupling or a back gear in or out of mesh, is called so on paper in its
 *  language; one that a machine calls otherwise, as it calls it. */
export function inPrintedWords(drive: Drive): Drive {
  const words: Readonly<Record<string, string>> = {
    open: say("step labels.open"),
    direct: say("step labels.direct"),
    geared: say("step labels.geared"),
  };
  const printed = (label: string, others: readonly string[]): string => {
    const word = Object.hasOwn(words, label) ? (words[label] as string) : label;
    return word !== label && others.includes(word) ? label : word;
  };
  const all = drive.stages.flatMap(({ steps }) => steps.map(({ label }) => label));
  return {
    ...drive,
    stages: drive.stages.map((stage) => ({
      ...stage,
      steps: stage.steps.map((step) => ({ ...step, label: printed(step.label, all) })),
    })),
    tachometer: drive.tachometer.map((reading) => ({
      ...reading,
      labels: reading.labels.map((label) => printed(label, all)),
    })),
  };
}
