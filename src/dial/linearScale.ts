import type { Units } from "../machine/machine.js";
import { mmPer } from "../quantity/length.js";
import type { Graduation } from "./finding.js";
import { stepMarks } from "./stepMarks.js";

/** A straight scale: what one division is worth in mm, what a number 1 stands for, and how many divisions to a long, a
 *  middling and a numbered mark. */
export type LinearDivision = {
  readonly value: number;
  readonly per: number;
  readonly unit: string;
  readonly long: number;
  readonly middle: number;
  readonly numbered: number;
  /** Each half of a half is shorter than it. */
  readonly halved?: true;
};

const isPartOfInch = (value: number) => {
  const parts = mmPer.in / value;
  return Math.abs(parts - Math.round(parts)) < 1e-6 && [2, 4, 8, 16, 32, 64].includes(Math.round(parts));
};

/** How a scale of such divisions, mm, is marked and numbered in a unit: halves to sixty-fourths of an inch by inches, all else by tens
 *  (MIL-HDBK-759B: three lengths of mark, numbers by tens), numbered as often as `LEAST_NUMBER_GAP` allows. */
export function linearDivision(value: number, unit: Units): LinearDivision {
  if (unit === "in" && isPartOfInch(value)) {
    const inch = Math.round(mmPer.in / value);
    return { value, per: mmPer.in, unit, long: inch, middle: Math.max(1, inch / 4), numbered: inch, halved: true };
  }
  const [long, middle] = isQuarter(value / mmPer[unit]) ? [4, 2] : [10, 5];
  return { value, per: mmPer[unit], unit, long, middle, numbered: numberedEvery(value, long, middle) };
}

const isQuarter = (value: number) => /^(25|2\.5|0\.25|0\.025)$/.test(String(Number(value.toPrecision(6))));

/** Turns of a handwheel as the unit: `parts` divisions to a turn of `perTurn` mm. */
export function turnsDivision(perTurn: number, parts: number): LinearDivision {
  const middle = parts % 2 === 0 ? parts / 2 : parts;
  return {
    value: perTurn / parts,
    per: perTurn,
    unit: "turns",
    long: parts,
    middle,
    numbered: numberedEvery(perTurn / parts, parts, parts),
  };
}

const LEAST_NUMBER_GAP = 5;

function numberedEvery(value: number, long: number, middle: number): number {
  for (const every of [middle, long, 2 * long, 5 * long, 10 * long])
    if (every * value >= LEAST_NUMBER_GAP) return every;
  return 10 * long;
}

/** Of an inch's mark the smallest division has. */
const SHORTEST = 0.35;

/** Halves, quarters, eighths and on, each shorter than the last by as much, as on a steel rule. `inch`: divisions in one. */
function partOfInch(step: number, inch: number): number {
  const halvings = Array.from({ length: Math.log2(inch) + 1 }, (_, at) => at);
  const own = halvings.find((at) => step % (inch / 2 ** at) === 0) ?? halvings.length - 1;
  return 1 - ((1 - SHORTEST) * own) / (halvings.length - 1);
}

/** Marks from 0 to `length`, mm; `angle` is the place in mm. */
export function linearMarks(division: LinearDivision, length: number): Graduation[] {
  const { value, per, long, middle, numbered, halved } = division;
  const part = halved && ((step: number) => partOfInch(step, long));
  return stepMarks({ from: 0, to: length, step: value, per, long, middle, numbered, ...(part && { part }) });
}
