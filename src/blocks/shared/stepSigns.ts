import { textWidth } from "../../drawing/text.js";
import { calledBy } from "../../drive/positions.js";
import type { Findings } from "../../findings/findings.js";
import type { Step } from "../../machine/machine.js";
import { say } from "../../words/say.js";
import { size } from "./style.js";

/** Steps whose names are too long for a card, called by a letter or a number, and what each stands for. */
export type Signed = { readonly findings: Findings; readonly key: string };

/** Of a drive with one belt's name too long all that are no signs themselves are called by a sign: names and signs in one row would read
 *  as one name. */
const SIGN = 2;

/** The longest name that is no sign's business, in 13 pt, mm: of a belt's step it stands on its pulley, of a gear beside the rows. */
const longest = { belt: 9, other: 26 };

/** Of a drive with long names the same drive with short ones; undefined where all are short. Two positions never get the same. */
export function withSigns(findings: Findings): Signed | undefined {
  const { machine, drive: found } = findings;
  const { drive } = machine;
  if (drive === undefined || found === undefined) return undefined;
  const renamed = new Map<Step, Step>();
  const signs: string[] = [];
  const all = drive.stages.flatMap(({ steps }) => steps);
  const taken = new Set(all.map(({ label }) => label));
  const belts = all.some((step) => step.kind === "belt" && isLong(step));
  const isRenamed = (step: Step) => isLong(step) || (belts && step.kind === "belt" && step.label.length > SIGN);
  // The spindle's own first: it has the letters.
  for (const stage of [...drive.stages].reverse()) {
    const own = signsOf(stage.steps, isRenamed, taken);
    for (const [step, sign] of own) {
      renamed.set(step, { ...step, label: sign });
      signs.push(say("belt card.sign", { sign, name: step.label }));
    }
  }
  if (renamed.size === 0) return undefined;
  const called = (step: Step): Step => renamed.get(step) ?? step;
  const stages = drive.stages.map((stage) => ({ ...stage, steps: stage.steps.map(called) }));
  const speeds = found.speeds.map((speed) => {
    const steps = speed.position.steps.map(called);
    const chosen = steps.filter((_, index) => (stages[index]?.steps.length ?? 0) > 1);
    const labels = chosen.map(({ label }) => label);
    return { ...speed, position: { ...speed.position, steps, labels, name: calledBy(chosen) } };
  });
  return {
    findings: { ...findings, machine: { ...machine, drive: { ...drive, stages } }, drive: { ...found, speeds } },
    key: signs.join(" · "),
  };
}

/** The whole name of a position that is called by a card's signs; what is none stays as it is. */
export function calledInFull(name: string, findings: Findings): string {
  const signed = withSigns(findings)?.findings.drive?.speeds ?? [];
  const at = signed.findIndex(({ position }) => position.name.toLowerCase() === name.toLowerCase());
  return findings.drive?.speeds[at]?.position.name ?? name;
}

/** The longest name of a position in lines and tables of text, mm: longer ones are called as on the belt card, at which they are then
 *  looked for. */
export const LONG_POSITION = 32;

/** True where plan, hand feed and drilling card call the belts by signs. */
export const calledBySigns = ({ drive }: Findings): boolean => namesBeyond(drive, LONG_POSITION);

const namesBeyond = (drive: Findings["drive"], room: number): boolean =>
  drive?.speeds.some(({ position }) => textWidth(position.name, size.text, "bold") > room) === true;

/** The machine with signs where a position's name is longer than so much in text, else as it is; and what the signs stand for. */
export function signedBeyond(findings: Findings, room: number): Signed {
  // A table that has room for longer names calls them as all else does.
  const long = namesBeyond(findings.drive, Math.min(room, LONG_POSITION));
  return (long ? withSigns(findings) : undefined) ?? { findings, key: "" };
}

const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
const alphabets: readonly (readonly string[])[] = [
  letters,
  Array.from({ length: 99 }, (_, index) => String(index + 1)),
  letters.map((letter) => letter.toLowerCase()),
  Array.from({ length: 99 }, (_, index) => `N${index + 1}`),
];

const isLong = ({ kind, label }: Step): boolean =>
  textWidth(label, size.card, "bold") > (kind === "belt" ? longest.belt : longest.other);

/** For each step to rename a sign that no other step of the drive has; adds them to `taken`. */
function signsOf(steps: readonly Step[], isRenamed: (step: Step) => boolean, taken: Set<string>): Map<Step, string> {
  const found = new Map<Step, string>();
  const long = steps.filter(isRenamed);
  if (steps.length < 2 || long.length === 0) return found;
  const short = steps.filter((step) => !long.includes(step)).map(({ label }) => label);
  // A row of signs that the stage has begun itself, else the first that no other stage uses.
  const strange = (alphabet: readonly string[]) =>
    alphabet.some((sign) => taken.has(sign) && !short.includes(sign)) ? 1 : 0;
  const begun = (alphabet: readonly string[]) => -short.filter((label) => alphabet.includes(label)).length;
  const fitting = alphabets
    .filter(({ length }) => length >= steps.length)
    .sort((a, b) => strange(a) - strange(b) || begun(a) - begun(b));
  for (const step of long) {
    const at = steps.indexOf(step);
    const [alphabet = []] = fitting;
    const sign = [...alphabet.slice(at), ...fitting.flat()].find((one) => !taken.has(one)) ?? step.label;
    taken.add(sign);
    found.set(step, sign);
  }
  return found;
}
