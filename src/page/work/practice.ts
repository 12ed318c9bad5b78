import { compute } from "../../findings/compute.js";
import type { Findings } from "../../findings/findings.js";
import { settingToRead } from "../../findings/settings.js";
import { figureUnit, shownAt } from "../../findings/settingWords.js";
import { type Use, usesOf } from "../../findings/uses.js";
import type { Units } from "../../machine/machine.js";
import { formatLength, unitName } from "../../quantity/format.js";
import { fromMm, parseLength } from "../../quantity/length.js";
import { splitUnit } from "../../quantity/number.js";
import { type Exercise, exercises } from "../../student/exercises.js";
import { markNumber, markPosition, markSetting } from "../../student/marking.js";
import { readTurns } from "../../student/readTurns.js";
import type { WantedNumber, WantedPosition, WantedSetting } from "../../student/wanted.js";
import { inLanguage } from "../../words/language.js";
import { say } from "../../words/say.js";
import { wheelNamed } from "./inHand.js";
import type { ExerciseSeen, Given, Marked } from "./protocol.js";

type Asked = Exercise & { readonly use: Use };

/** The exercises of the student's sheets, word for word: those of each use that the machine has, one after the other. */
function allOf(findings: Findings): Asked[] {
  const told = (findings.machine.language ?? "en") === "en" ? findings : compute(findings.machine);
  return usesOf(told.machine).flatMap((use) => exercises(told, use).map((one) => ({ ...one, use })));
}

/** In the language of the paper: so is all that is said of an answer. */
const onPaper = <T>(findings: Findings, work: () => T): T => inLanguage(findings.machine.language ?? "en", work);

export const exercisesSeen = (findings: Findings | undefined): ExerciseSeen[] =>
  findings === undefined
    ? []
    : onPaper(findings, () =>
        allOf(findings).map(({ question, use, wanted }) => ({
          ...{ question, use },
          ...(wanted ? seen(wanted, findings, use) : { by: "nothing" }),
        })),
      );

/** How it is answered; nothing of what is right. */
function seen(wanted: WantedSetting | WantedNumber | WantedPosition, findings: Findings, use: Use) {
  if (wanted.by === "position")
    return {
      ...{ by: wanted.by, positions: [...wanted.positions.map(({ name }) => name), nowhere()] },
      sheet: use === "drilling" ? "drilling-card" : "belt-card",
    } as const;
  if (wanted.by === "number") {
    const { shownBy } = wanted;
    return {
      ...{ by: wanted.by, unit: unitAsked(wanted, unitsOf(wanted, findings)) },
      ...(shownBy && { wheel: shownBy.wheel, from: shownBy.turns }),
    } as const;
  }
  const { wheel, from, turns } = wanted;
  // Where one begins too far on, the line that was meant must be told.
  return { by: wanted.by, wheel, from, ...(from > 0 && { stands: lineMeant(findings, wheel, turns) }) } as const;
}

/** Turns that are asked for in eighths may be written in either. */
const byEighths = ({ of, step }: WantedNumber): boolean => of === "turns" && step?.of === "eighth";

const unitsOf = ({ units }: WantedNumber, { machine }: Findings): Units => units ?? machine.units;

function unitAsked(wanted: WantedNumber, units: Units): string {
  if (wanted.of === "length") return unitName(units);
  return byEighths(wanted) ? say("practice.unit eighths") : say(`practice.unit ${wanted.of}`);
}

function lineMeant(findings: Findings, name: string, turns: number): string {
  const wheel = wheelNamed(findings, name);
  const setting = wheel?.reading && settingToRead(wheel, turns * wheel.reading.perTurn);
  const shown = wheel && setting && shownAt(wheel, setting);
  if (wheel === undefined || setting === undefined || shown === undefined) return "";
  const told = { figure: shown.figure, unit: figureUnit(wheel), turns: counted(setting.wholeTurns, "turn") };
  return shown.row === undefined
    ? say("practice.line meant", told)
    : say("practice.line meant in row", { ...told, row: shown.row });
}

export const answerOf = (findings: Findings | undefined, at: number): string =>
  (findings && onPaper(findings, () => allOf(findings)[at]?.answer)) ?? "";

/** Right or wrong, and by how much. */
export function marked(findings: Findings | undefined, at: number, given: Given): Marked {
  if (findings === undefined) return { right: false, said: say("practice.not marked") };
  return onPaper(findings, () => {
    const wanted = allOf(findings)[at]?.wanted;
    if (wanted === undefined) return { right: false, said: say("practice.not marked") };
    if (wanted.by === "turning") return turnedMark(wanted, given);
    if (wanted.by === "position") return positionMark(wanted, given);
    return numberMark(wanted, given, unitsOf(wanted, findings));
  });
}

const isRight = (): Marked => ({ right: true, said: say("practice.right") });

function turnedMark(wanted: WantedSetting, given: Given): Marked {
  if (!("turned" in given)) return { right: false, said: say("practice.turn the dial") };
  const { right, turnsOff, linesOff, turnedBack } = markSetting(wanted, given.turned);
  if (right) return isRight();
  const turns = counted(Math.abs(turnsOff), "turn");
  const lines = counted(tenth(linesOff), "line");
  const [one, other] = [
    ...(turnsOff === 0 ? [] : [turnsOff > 0 ? many(turns) : few(turns)]),
    ...(linesOff === 0
      ? []
      : [linesOff > 0 ? say("practice.too far", { counted: lines }) : say("practice.short", { counted: lines })]),
  ];
  if (one === undefined) return { right, said: say("practice.waits") };
  const off = other === undefined ? one : say("practice.and also", { one, other });
  return { right, said: turnedBack ? say("practice.waits too", { off }) : `${off}.` };
}

const many = (words: string): string => say("practice.too many", { counted: words });
const few = (words: string): string => say("practice.too few", { counted: words });

/** By how much, in what is asked for, an answer is so far off that nobody reads how far. Own choice. */
const FAR = { much: 100, times: 10 } as const;

function numberMark(wanted: WantedNumber, given: Given, units: Units): Marked {
  const words = "words" in given ? given.words : "";
  // A whole number alone might be either, and be marked as what was not meant.
  if (byEighths(wanted) && /^\s*[1-9]\d*\s*$/.test(words)) return { said: say("practice.which", { n: words.trim() }) };
  const value = numberWritten(words, wanted.of, units);
  if (value === undefined) return { said: say("practice.write", { example: exampleOf(wanted.of, units) }) };
  const { right, off, steps } = markNumber(wanted, value);
  if (right) return isRight();
  const asked = wanted.of === "length" ? fromMm(off, units) : off;
  if (asked > FAR.much && off > FAR.times * wanted.value) return { right, said: say("practice.far too much") };
  const length = lengthOf(off, units);
  const much = off > 0 ? say("practice.too much", { length }) : say("practice.too little", { length });
  const numbered = (count: number, of: Counted) => (off > 0 ? many : few)(counted(count, of));
  if (steps !== undefined && wanted.step !== undefined && wanted.step.worth !== 1) {
    const as = numbered(Math.abs(steps), wanted.step.of);
    return { right, said: `${wanted.of === "turns" ? as : say("practice.too much or far", { much, counted: as })}.` };
  }
  if (wanted.of === "length") return { right, said: `${much}.` };
  return { right, said: `${numbered(tenth(off), wanted.of === "turns" ? "turn" : "line")}.` };
}

/** As on the sheet, where lines come before the length that they make. */
function numberWritten(words: string, of: WantedNumber["of"], units: Units): number | undefined {
  if (of === "turns") return readTurns(words);
  if (of === "lines") return splitUnit(words)?.number;
  return parseLength(words.split(":").at(-1) ?? "", units);
}

function exampleOf(of: WantedNumber["of"], units: Units): string {
  if (of === "turns") return say("practice.turns as");
  return of === "lines" ? say("practice.lines as") : say(`practice.length as ${units}`);
}

const lengthOf = (mm: number, units: Units): string => formatLength(Math.abs(mm), units, units === "mm" ? 2 : 3);

function positionMark(wanted: WantedPosition, given: Given): Marked {
  const name = "words" in given ? given.words : "";
  if (name === "") return { said: say("practice.choose") };
  const { right, places } = markPosition(wanted, name === nowhere() ? undefined : name);
  if (right) return isRight();
  if (name === nowhere()) return { right, said: say("practice.there is one") };
  if (places === undefined) return { right, said: say("practice.no place") };
  const told = { counted: counted(Math.abs(places), "position") };
  return { right, said: places > 0 ? say("practice.too fast", told) : say("practice.too slow", told) };
}

/** As an answer: there is no place for the belt. */
export const nowhere = (): string => say("practice.nowhere");

const tenth = (off: number): number => Math.round(Math.abs(off) * 10) / 10;

type Counted = "turn" | "line" | "eighth" | "position";

function counted(count: number, one: Counted): string {
  if (count > 0 && count < 1 && one !== "position") return say(`practice.part of ${one}`, { part: count });
  if (one === "position") return say("practice.positions", { n: count });
  return say(`student.${one}s`, { n: count });
}
