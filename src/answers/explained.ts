import { calledInFull } from "../blocks/shared/stepSigns.js";
import { cuttingSpeedUnit } from "../cutting/rates.js";
import type { Findings } from "../findings/findings.js";
import { closest } from "../machine/closest.js";
import type { Units } from "../machine/machine.js";
import type { Path, Places } from "../machine/problem.js";
import { largestOf } from "../quantity/extremes.js";
import { formatFixed, formatUncertain, trimmed } from "../quantity/format.js";
import { fromMm } from "../quantity/length.js";
import { type QuantityName, quantities } from "../working/registry.js";
import type { Amount, Source, Working } from "../working/working.js";
import type { Laid } from "./laid.js";
import { Unanswered } from "./unanswered.js";

/** A quantity that can be explained, and the names of what has it in this file. */
export type Explainable = { readonly name: string; readonly about: string; readonly subjects: readonly string[] };

export const explainables = (findings: Findings): Explainable[] =>
  Object.entries(quantities).map(([name, { about, subjects }]) => ({
    ...{ name, about },
    subjects: subjects(findings).map((subject) => subject.name),
  }));

/** What can be explained of a machine, a line for each quantity. */
export function explainable(findings: Findings): string[] {
  return [
    "What can be explained, and of what in this file:",
    ...explainables(findings).map(({ name, about, subjects: names }) => {
      return `  ${name.padEnd(14)} ${about}${names.length === 0 ? " (nothing in this file)" : `: ${shortened(names)}`}`;
    }),
  ];
}

/** How a number came about: formula, what was put in, where each came from, the result. `of` picks one subject by its name, a belt
 *  position also by the signs that cards call it by, or all that have these words in theirs. `places`: lines of the file. @throws Unanswered */
export function workings(findings: Findings, places: Places, quantity: string, of: string | undefined): Laid[] {
  const known = Object.keys(quantities);
  if (!known.includes(quantity)) {
    const nearest = closest(quantity, known);
    throw new Unanswered(
      `"${quantity}" is not a quantity that can be explained; ${nearest ? `did you mean "${nearest}"?` : `there are ${known.join(", ")}`}`,
    );
  }
  const all = quantities[quantity as QuantityName].subjects(findings);
  const wanted = of && calledInFull(of, findings).toLowerCase();
  // A whole name is meant alone, though it may be a part of others.
  const same = all.filter(({ name }) => name.toLowerCase() === wanted);
  const subjects =
    wanted === undefined ? all : same.length > 0 ? same : all.filter(({ name }) => name.toLowerCase().includes(wanted));
  if (subjects.length === 0)
    throw new Unanswered(
      all.length === 0
        ? `the file holds nothing that has a ${quantity}`
        : `no ${quantity} of "${of}"; there are ${shortened(all.map(({ name }) => name))}`,
    );
  return subjects.map((subject) => {
    const working = subject.explain();
    return "missing" in working
      ? { heading: `${subject.name}: ${working.missing}`, rows: [] }
      : laid(inUnit(working, findings.machine.units), (place) => source(place, places));
  });
}

/** The same as a terminal shows it, an empty line before each. @throws Unanswered */
export const explained = (findings: Findings, places: Places, quantity: string, of: string | undefined): string[] =>
  explainedLines(workings(findings, places, quantity, of));

export const explainedLines = (parts: readonly Laid[]): string[] => parts.flatMap((one) => ["", ...lines(one)]);

const shortened = (names: readonly string[]): string =>
  names.length > 6 ? `${names.slice(0, 6).join("; ")}; and ${names.length - 6} more` : names.join("; ");

/** A working's lengths, mm, and cutting speeds, m/min, in the reader's units. */
function inUnit(working: Working, units: Units): Working {
  const size = (value: number) => fromMm(value, units);
  const { name, metresPerMinute } = cuttingSpeedUnit[units];
  const told = <T extends Amount>(amount: T): T => {
    const speed = amount.unit === "m/min";
    if (!speed && !/^mm\b/.test(amount.unit)) return amount;
    const as = speed ? (value: number) => value / metresPerMinute : size;
    const { value } = amount;
    const shown = typeof value === "string" ? value : typeof value === "number" ? as(value) : value.map(as);
    return { ...amount, value: shown, unit: speed ? name : amount.unit.replace("mm", units) };
  };
  return {
    ...working,
    inputs: working.inputs.map(told),
    result: told(working.result),
    ...(working.uncertainty !== undefined && {
      uncertainty: /^mm\b/.test(working.result.unit) ? size(working.uncertainty) : working.uncertainty,
    }),
  };
}

/** A working in words: the title, the formula, of each input its name, amount and source, then the result and the notes. */
function laid(working: Working, from: (source: Source) => string): Laid {
  const { title, formula, inputs, result, uncertainty, notes = [] } = working;
  return {
    heading: title,
    about: formula,
    rows: inputs.map((input) => ({ cells: [input.name, amount(input), from(input.source)] })),
    after: [
      `${result.name} = ${resultFigure(result, uncertainty)}${unit(result)}${uncertainty === undefined ? "" : " (95 %)"}`,
      ...notes.map((note) => `${note}.`),
    ],
  };
}

function lines({ heading, about, rows, after = [] }: Laid): string[] {
  const width = Math.max(0, largestOf(rows.map(({ cells: [name = ""] }) => name.length)));
  return [
    heading,
    ...(about === undefined ? [] : [`  ${about}`]),
    ...rows.map(({ cells: [name = "", value, from] }) => `    ${name.padEnd(width)} = ${value}   (${from})`),
    ...after.map((line) => `  ${line}`),
  ];
}

/** No more figures than the ± carries; a speed without one is known to no tenth of a turn. */
function resultFigure({ value, unit }: Amount, uncertainty: number | undefined): string {
  if (typeof value !== "number") return shown(value);
  if (uncertainty !== undefined) {
    const { value: figure, uncertainty: either } = formatUncertain(value, uncertainty);
    return `${figure} ± ${either}`;
  }
  return unit === "rpm" ? formatFixed(value, value < 10 ? 1 : 0) : shown(value);
}

const unit = ({ unit }: Amount): string => (unit === "" ? "" : ` ${unit}`);
const amount = (value: Amount): string => `${shown(value.value)}${unit(value)}`;

function shown(value: Amount["value"]): string {
  if (typeof value === "string") return value;
  if (typeof value === "number") return figure(value);
  return value.length > 12
    ? `${value.slice(0, 12).map(figure).join(", ")}, … (${value.length})`
    : value.map(figure).join(", ");
}

/** Enough figures to compute again: six that count, never fewer than the whole part. */
function figure(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return String(value);
  const places = Math.max(0, Math.min(10, 5 - Math.floor(Math.log10(Math.abs(value)))));
  return places === 0 ? formatFixed(value, 0) : trimmed(value, places);
}

/** The file is named once, above all. */
function source(source: Source, places: Places): string {
  const at = (path: Path) => `line ${places(path).line}`;
  switch (source.from) {
    case "measured":
      return `measured, ${source.file ?? at(source.path)}`;
    case "stated":
      return places(source.path).leftOut ? "usual, when left out" : `stated, ${at(source.path)}`;
    case "looked up":
      return `looked up: ${source.source}`;
    case "assumed":
      return `assumed: ${source.why}`;
    case "computed":
      return `computed: ${source.how}`;
  }
}
