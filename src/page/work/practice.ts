import { compute } from "../../findings/compute.js";
import type { Findings } from "../../findings/findings.js";
import { settingToRead } from "../../findings/settings.js";
import { figureUnit, shownAt } from "../../findings/settingWords.js";
import { type Use, usesOf } from "../../findings/uses.js";
import type { Units } from "../../machine/machine.js";
import { formatLength, unitName } from "../../quantity/format.js";
import { parseLength } from "../../quantity/length.js";
import { splitUnit } from "../../quantity/number.js";
import { type Exercise, exercises } from "../../student/exercises.js";
import { markNumber, markPosition, markSetting } from "../../student/marking.js";
import { turnsWritten } from "../../student/turnsWritten.js";
import type { WantedNumber, WantedPosition, WantedSetting } from "../../student/wanted.js";
import { inLanguage } from "../../words/language.js";
import { wheelNamed } from "./inHand.js";
import type { ExerciseSeen, Given, Marked } from "./protocol.js";

type Asked = Exercise & { readonly use: Use };

/** The exercises of the student's sheets, word for word: those of each use that the machine has, one after the other. */
function allOf(findings: Findings | undefined): Asked[] {
  if (findings === undefined) return [];
  const { language = "en" } = findings.machine;
  return inLanguage(language, () => {
    const told = language === "en" ? findings : compute(findings.machine);
    return usesOf(told.machine).flatMap((use) => exercises(told, use).map((one) => ({ ...one, use })));
  });
}

export const exercisesSeen = (findings: Findings | undefined): ExerciseSeen[] =>
  allOf(findings).map(({ question, use, wanted }) => ({
    ...{ question, use },
    ...(findings && wanted ? seen(wanted, findings, use) : { by: "nothing" }),
  }));

/** How it is answered; nothing of what is right. */
function seen(wanted: WantedSetting | WantedNumber | WantedPosition, findings: Findings, use: Use) {
  if (wanted.by === "position")
    return {
      ...{ by: wanted.by, positions: [...wanted.positions.map(({ name }) => name), NOWHERE] },
      sheet: use === "drilling" ? "drilling-card" : "belt-card",
    } as const;
  if (wanted.by === "number") {
    const { shownBy } = wanted;
    return {
      ...{ by: wanted.by, unit: unitAsked(wanted, findings.machine.units) },
      ...(shownBy && { wheel: shownBy.wheel, from: shownBy.turns }),
    } as const;
  }
  const { wheel, from, turns } = wanted;
  // Where one begins too far on, the line that was meant must be told.
  return { by: wanted.by, wheel, from, ...(from > 0 && { stands: lineMeant(findings, wheel, turns) }) } as const;
}

/** Turns that are asked for in eighths may be written in either. */
const byEighths = ({ of, step }: WantedNumber): boolean => of === "turns" && step?.of === "eighth";
const unitAsked = (wanted: WantedNumber, units: Units): string =>
  wanted.of === "length" ? unitName(units) : byEighths(wanted) ? "turns, eighths" : wanted.of;

function lineMeant(findings: Findings, name: string, turns: number): string {
  const wheel = wheelNamed(findings, name);
  const setting = wheel?.reading && settingToRead(wheel, turns * wheel.reading.perTurn);
  const shown = wheel && setting && shownAt(wheel, setting);
  if (shown === undefined) return "";
  const row = shown.row === undefined ? "" : `, row ${shown.row}`;
  return `The right line was ${shown.figure} ${figureUnit(wheel as NonNullable<typeof wheel>)}${row}, after ${counted(setting?.wholeTurns ?? 0, "turn")}.`;
}

export const answerOf = (findings: Findings | undefined, at: number): string => allOf(findings)[at]?.answer ?? "";

/** Right or wrong, and by how much. */
export function marked(findings: Findings | undefined, at: number, given: Given): Marked {
  const wanted = allOf(findings)[at]?.wanted;
  if (findings === undefined || wanted === undefined) return { right: false, said: "Nothing can be marked here." };
  if (wanted.by === "turning") return turnedMark(wanted, given);
  if (wanted.by === "position") return positionMark(wanted, given);
  return numberMark(wanted, given, findings.machine.units);
}

function turnedMark(wanted: WantedSetting, given: Given): Marked {
  if (!("turned" in given)) return { right: false, said: "Turn the dial." };
  const { right, turnsOff, linesOff, turnedBack } = markSetting(wanted, given.turned);
  if (right) return { right, said: "Right." };
  const off = [
    ...(turnsOff === 0 ? [] : [`${counted(Math.abs(turnsOff), "turn")} ${turnsOff > 0 ? "too many" : "too few"}`]),
    ...(linesOff === 0 ? [] : [`${counted(tenth(linesOff), "line")} ${linesOff > 0 ? "too far" : "short"}`]),
  ];
  const waits = "you came back to it, and the slide waits: go back half a turn and come on";
  if (off.length > 0) return { right, said: `${off.join(", and ")}${turnedBack ? `; and ${waits}` : ""}.` };
  return { right, said: `The line is right, but ${waits}.` };
}

function numberMark(wanted: WantedNumber, given: Given, units: Units): Marked {
  const words = "words" in given ? given.words : "";
  // A whole number alone might be either, and be marked as what was not meant.
  if (byEighths(wanted) && /^\s*[1-9]\d*\s*$/.test(words))
    return { said: `${words.trim()} turns, or ${words.trim()} eighths? Write which.` };
  const value = numberWritten(words, wanted.of, units);
  if (value === undefined) return { said: `Write ${exampleOf(wanted.of, units)}.` };
  const { right, off, steps } = markNumber(wanted, value);
  if (right) return { right, said: "Right." };
  const [many, much] = off > 0 ? ["too many", "too much"] : ["too few", "too little"];
  if (steps !== undefined && wanted.step !== undefined && wanted.step.worth !== 1) {
    const as = `${counted(Math.abs(steps), wanted.step.of)} ${many}`;
    return { right, said: wanted.of === "turns" ? `${as}.` : `${lengthOf(off, units)} ${much}: ${as}.` };
  }
  if (wanted.of === "length") return { right, said: `${lengthOf(off, units)} ${much}.` };
  return { right, said: `${counted(tenth(off), wanted.of.slice(0, -1))} ${many}.` };
}

/** As on the sheet, where lines come before the length that they make. */
function numberWritten(words: string, of: WantedNumber["of"], units: Units): number | undefined {
  if (of === "turns") return turnsWritten(words);
  if (of === "lines") return splitUnit(words)?.number;
  return parseLength(words.split(":").at(-1) ?? "", units);
}

function exampleOf(of: WantedNumber["of"], units: Units): string {
  if (of === "turns") return "turns, as 2.5, 2 5/8, or 2 turns and 5 eighths";
  return of === "lines" ? "a number, as 2.5" : `a length, as ${units === "mm" ? "2.5" : "1/8"}`;
}

const lengthOf = (mm: number, units: Units): string => formatLength(Math.abs(mm), units, units === "mm" ? 2 : 3);

function positionMark(wanted: WantedPosition, given: Given): Marked {
  const name = "words" in given ? given.words : "";
  if (name === "") return { said: "Choose a position." };
  const { right, places } = markPosition(wanted, name === NOWHERE ? undefined : name);
  if (right) return { right, said: "Right." };
  if (name === NOWHERE) return { right, said: "There is a place for the belt." };
  if (places === undefined) return { right, said: "That is no place for it." };
  return { right, said: `${counted(Math.abs(places), "position")} too ${places > 0 ? "fast" : "slow"}.` };
}

/** As an answer: there is no place for the belt. */
export const NOWHERE = "nowhere: ask";

const tenth = (off: number): number => Math.round(Math.abs(off) * 10) / 10;
function counted(count: number, one: string): string {
  if (count > 0 && count < 1) return `${count} of a ${one}`;
  return `${count} ${one}${count === 1 ? "" : "s"}`;
}
