import type { Units } from "../machine/machine.js";
import { formatLength, trimmed, trimmedSize, unitName } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { say } from "../words/say.js";
import type { DialBlank } from "./blank.js";
import { MOST_ROWS } from "./division.js";
import { type DivisionValue, inUnit } from "./divisionValue.js";
import type { DialChoice } from "./finding.js";
import { blurs, isLong, strains } from "./legibility.js";
import { overOnDial } from "./overOnDial.js";
import { LEAST_ROW_HEIGHT, LEAST_SHORT_GAP, MOST_MARKS } from "./penalty.js";

type Facts = Omit<DialChoice, "penalty" | "remarks"> & {
  /** Width on paper of a true dial's short last division, where it has one. */
  readonly shortGap?: number;
  /** In place of so many rows, the last of which the travel never reaches. */
  readonly notReached?: number;
};

/** As the maker of a dial would say it: "0.02 mm", "0.001 in". */
export function divisionLabel(named: DivisionValue): string {
  return `${trimmed(inUnit(named), 6)} ${unitName(named.unit)}`;
}

/** What speaks for and against a choice, the closing first, each a short sentence without its full stop. */
export function remarksOn(blank: DialBlank, facts: Facts): string[] {
  const { notReached: n } = facts;
  const instead = n === undefined ? [] : [say("dials.rows not reached", { n })];
  return [...instead, ...closing(blank, facts), ...doubt(blank, facts), ...sight(blank, facts), ...unit(blank, facts)];
}

function closing(blank: DialBlank, facts: Facts): string[] {
  switch (facts.closure) {
    case "even":
      return [evenClosing(blank, facts)];
    case "true":
      return trueClosing(blank, facts);
    case "rows":
      return [rowsClosing(blank, facts)];
  }
}

function evenClosing(blank: DialBlank, facts: Facts): string {
  if (facts.errorPerTurn === 0) return say("remarks.closes exactly", { n: facts.divisions });
  return facts.closes ? say("dials.closes within doubt", { error: errorTold(blank, facts) }) : errorTold(blank, facts);
}

function trueClosing(blank: DialBlank, facts: Facts): string[] {
  if (facts.shortGap === undefined) return [say("remarks.closes exactly", { n: facts.divisions })];
  if (facts.onceRound) return [say("dials.once round")];
  const [last, division] = [fine(facts.last ?? facts.leftOver, facts.unit), facts.divisionLabel];
  const long = isLong(facts);
  return [
    long
      ? say("dials.long division", { last, division })
      : say("dials.short division", { short: last, division, width: trimmedSize(facts.shortGap, blank.units) }),
    say("dials.starts again", { turn: `${fine(blank.turn, blank.units)}${diameter(blank)}` }),
    ...(!long && facts.shortGap < LEAST_SHORT_GAP ? [say("dials.short division blurs")] : []),
  ];
}

function rowsClosing(blank: DialBlank, facts: Facts): string {
  const { rows: n, divisions } = facts;
  if (facts.errorPerTurn === 0) return say("dials.rows close exactly", { n, divisions });
  const error = errorTold(blank, facts);
  return facts.closes
    ? say("dials.rows close within doubt", { n, error })
    : say("dials.rows do not close", { most: MOST_ROWS, n, error });
}

/** "reads 0.0127 mm too much each turn; 0.20 mm over 25 mm". */
function errorTold(blank: DialBlank, facts: Facts): string {
  const over = coarse(Math.abs(facts.errorOverTravel), blank.units);
  const each = `${fine(Math.abs(facts.errorPerTurn), blank.units)}${diameter(blank)}`;
  const told = { each, over, travel: wayTold(blank, facts) };
  return facts.errorPerTurn > 0 ? say("remarks.reads too much", told) : say("remarks.reads too little", told);
}

function wayTold(blank: DialBlank, facts: Facts): string {
  const travel = overOnDial(facts, (mm) => length(mm, blank.units, 3));
  if (facts.onDiameter) return blank.travel === undefined ? say("dials.no travel stated", { travel }) : travel;
  return blank.travel === undefined ? say("dials.travel not stated", { travel }) : say("dials.of travel", { travel });
}

function doubt(blank: DialBlank, facts: Facts): string[] {
  const { doubtOverTravel } = facts;
  if (doubtOverTravel === undefined) return [];
  const over = overOnDial(facts, (mm) => length(mm, blank.units, 3));
  return [say("dials.feed doubt", { off: `${coarse(doubtOverTravel, blank.units)}${diameter(blank)}`, over })];
}

function sight(blank: DialBlank, { spacing, rows, divisions, divisionValue }: Facts): string[] {
  const row = blank.band / rows;
  return [
    ...(divisions > MOST_MARKS ? [say("dials.too many marks", { marks: divisions })] : []),
    ...(divisionValue > blank.turn ? [say("dials.more than a turn")] : []),
    ...(blurs(spacing) ? [say("dials.marks blur", { apart: trimmedSize(spacing, blank.units) })] : []),
    ...(strains(spacing) ? [say("dials.marks close", { apart: trimmedSize(spacing, blank.units) })] : []),
    ...(rows > 1 && row < LEAST_ROW_HEIGHT
      ? [say("dials.row too low", { height: trimmedSize(row, blank.units) })]
      : []),
  ];
}

function unit(blank: DialBlank, facts: Facts): string[] {
  return facts.unit === blank.units ? [] : [say(`dials.reads in ${facts.unit}`)];
}

function diameter(blank: DialBlank): string {
  return blank.onDiameter ? ` ${say("dials.on diameter")}` : "";
}

/** For what one turn adds: to a tenth of a thousandth of a millimetre, or a hundredth of a thousandth of an inch. */
function fine(value: number, units: Units): string {
  const places = units === "mm" ? 4 : 5;
  return notNothing(value, units, places) ?? length(value, units, places);
}

/** As fine as a gauge shows, or one figure finer where that would show little of it. */
function coarse(value: number, units: Units): string {
  const [usual, little] = units === "mm" ? [2, 0.01] : [4, 0.0005];
  const places = value / mmPer[units] < little ? usual + 1 : usual;
  return notNothing(value, units, places) ?? formatLength(value, units, places);
}

/** What is there but too small for the figures shown: "under 0.0001 mm", never a bare nought. */
function notNothing(value: number, units: Units, places: number): string | undefined {
  const least = 10 ** -places;
  const tooSmall = value > 0 && value / mmPer[units] < least / 2;
  return tooSmall ? say("dials.under", { least: formatLength(least * mmPer[units], units, places) }) : undefined;
}

function length(value: number, units: Units, places: number): string {
  return `${trimmed(value / mmPer[units], places)} ${unitName(units)}`;
}
