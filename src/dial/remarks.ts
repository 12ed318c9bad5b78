import type { Units } from "../machine/machine.js";
import { formatLength, plural, trimmed, trimmedSize } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import type { DialBlank } from "./blank.js";
import { MOST_ROWS } from "./division.js";
import { type DivisionValue, inUnit } from "./divisionValue.js";
import type { DialChoice } from "./finding.js";
import { blurs, strains } from "./legibility.js";
import { LEAST_ROW_HEIGHT, LEAST_SHORT_GAP, MOST_MARKS } from "./penalty.js";

type Facts = Omit<DialChoice, "penalty" | "remarks"> & {
  /** Width on paper of a true dial's short last division, where it has one. */
  readonly shortGap?: number;
};

/** As the maker of a dial would say it: "0.02 mm", "0.001 in". */
export function divisionLabel(named: DivisionValue): string {
  return `${trimmed(inUnit(named), 6)} ${named.unit}`;
}

/** What speaks for and against a choice, the closing first, each a short sentence without its full stop. */
export function remarksOn(blank: DialBlank, facts: Facts): string[] {
  return [...closing(blank, facts), ...doubt(blank, facts), ...sight(blank, facts), ...unit(blank, facts)];
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
  if (facts.errorPerTurn === 0) return `closes exactly: ${plural(facts.divisions, "division")} to a turn`;
  return facts.closes ? `closes within the doubt of the feed: ${errorTold(blank, facts)}` : errorTold(blank, facts);
}

function trueClosing(blank: DialBlank, facts: Facts): string[] {
  if (facts.shortGap === undefined) return [`closes exactly: ${plural(facts.divisions, "division")} to a turn`];
  const short = fine(facts.leftOver, facts.unit);
  return [
    `the last division is short: ${short} instead of ${facts.divisionLabel}, ${trimmedSize(facts.shortGap, blank.units)} wide on paper`,
    `starts again at zero each turn: count whole turns, each worth ${fine(blank.turn, blank.units)}${diameter(blank)}`,
    ...(facts.shortGap < LEAST_SHORT_GAP ? ["the short division is so narrow that it blurs into the zero mark"] : []),
  ];
}

function rowsClosing(blank: DialBlank, facts: Facts): string {
  const turns = `${plural(facts.rows, "row")}, one for each of ${plural(facts.rows, "turn")}`;
  if (facts.errorPerTurn === 0) return `${turns}: closes exactly after ${plural(facts.divisions, "division")}`;
  if (facts.closes) return `${turns}: closes within the doubt of the feed; ${errorTold(blank, facts)}`;
  return `does not close in ${plural(MOST_ROWS, "row")} or fewer; with ${plural(facts.rows, "row")} it ${errorTold(blank, facts)}`;
}

/** "reads 0.0127 mm too much each turn; 0.20 mm over 25 mm". */
function errorTold(blank: DialBlank, facts: Facts): string {
  const sense = facts.errorPerTurn > 0 ? "too much" : "too little";
  const over = coarse(Math.abs(facts.errorOverTravel), blank.units);
  const each = fine(Math.abs(facts.errorPerTurn), blank.units);
  const travel = `${length(facts.overTravel, blank.units, 3)} of travel${blank.travel === undefined ? " (none stated)" : ""}`;
  return `reads ${each} ${sense}${diameter(blank)} each turn; ${over} over ${travel}`;
}

function doubt(blank: DialBlank, { doubtOverTravel, overTravel }: Facts): string[] {
  if (doubtOverTravel === undefined) return [];
  const over = length(overTravel, blank.units, 3);
  return [`the feed itself leaves a doubt of ${coarse(doubtOverTravel, blank.units)}${diameter(blank)} over ${over}`];
}

function sight(blank: DialBlank, { spacing, rows, divisions, divisionValue }: Facts): string[] {
  const row = blank.band / rows;
  return [
    ...(divisions > MOST_MARKS ? [`${divisions} marks are too many to draw`] : []),
    ...(divisionValue > blank.turn ? ["one division is more than one turn"] : []),
    ...(blurs(spacing) ? [`marks ${trimmedSize(spacing, blank.units)} apart are too close to read`] : []),
    ...(strains(spacing) ? [`marks are close: ${trimmedSize(spacing, blank.units)} apart`] : []),
    ...(rows > 1 && row < LEAST_ROW_HEIGHT
      ? [`each row is only ${trimmedSize(row, blank.units)} high: too low for its numbers`]
      : []),
  ];
}

function unit(blank: DialBlank, facts: Facts): string[] {
  return facts.unit === blank.units ? [] : [facts.unit === "in" ? "reads in inches" : "reads in millimetres"];
}

function diameter(blank: DialBlank): string {
  return blank.onDiameter ? " on diameter" : "";
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
  return tooSmall ? `under ${formatLength(least * mmPer[units], units, places)}` : undefined;
}

function length(value: number, units: Units, places: number): string {
  return `${trimmed(value / mmPer[units], places)} ${units}`;
}
