import type { FeedFinding } from "../feed/finding.js";
import type { Closure, DialWish, Handwheel, Units } from "../machine/machine.js";
import type { Case, ChoiceOptions } from "./case.js";
import { type Division, divideEvenly, divideInRows, divideTruly } from "./closure.js";
import { type DivisionValue, divisionValues, inUnit, leadingDigits, namedDivisionValue } from "./divisionValue.js";
import type { DialChoice } from "./finding.js";
import { LEAST_SPACING, penalty, ROWS_SHARE_OF_DOUBT, USUAL_TRAVEL, WIDEST_SPACING } from "./ranking.js";
import { divisionLabel, remarksOn } from "./remarks.js";
import { bandWidth, spacing } from "./strip.js";

/** What a dial shows for each mm that the slide goes: twice as much where it reads the diameter. */
export const readingFactor = ({ reads }: Pick<Handwheel, "reads">): number => (reads === "diameter" ? 2 : 1);

/** What a dial reads in one turn, mm: the feed, or twice the feed where it reads the diameter. */
export function readingPerTurn(feed: Pick<FeedFinding, "perTurn">, reads: Handwheel["reads"]): number {
  return feed.perTurn * readingFactor({ reads });
}

const CLOSURES: readonly Closure[] = ["even", "true", "rows"];

/** Ways to divide the dial of a feed (per turn > 0), best first. What `wish` forces stands first whatever it costs; the
 *  rest follow by rank, each with marks that an eye can part. Never empty. */
export function dialChoices(
  feed: FeedFinding,
  reads: Handwheel["reads"],
  wish: DialWish,
  options: ChoiceOptions,
): DialChoice[] {
  const onDiameter = reads === "diameter";
  const turn = readingPerTurn(feed, reads);
  const doubt = feed.uncertainty === undefined ? undefined : readingPerTurn({ perTurn: feed.uncertainty }, reads);
  const dial: Case = {
    ...options,
    feed,
    turn,
    onDiameter,
    // A second scale takes its half of the room.
    band: bandWidth(wish) / (wish.second === undefined ? 1 : 2),
    ...(doubt !== undefined && { doubt }),
  };
  const offered = legibleValues(dial);

  const free = offered.flatMap((value) => CLOSURES.map((closure) => choose(dial, value, closure)));
  const ranked = free.filter((choice) => worthOffering(dial, choice, free)).sort(byRank(options.units));

  const forced = forcedChoice(dial, wish, offered);
  if (forced === undefined) return ranked;
  return [forced, ...ranked.filter((choice) => !sameDial(choice, forced))];
}

function legibleValues(dial: Case): DivisionValue[] {
  const worthAt = (distance: number) => (dial.turn * distance) / dial.stripLength;
  const least = worthAt(LEAST_SPACING);
  const most = worthAt(WIDEST_SPACING);
  return [...divisionValues("mm", least, most), ...divisionValues("in", least, most)];
}

function forcedChoice(dial: Case, wish: DialWish, offered: readonly DivisionValue[]): DialChoice | undefined {
  if (wish.divisions === undefined && wish.closure === undefined) return undefined;
  const values = wish.divisions === undefined ? offered : [namedDivisionValue(wish.divisions, dial.units)];
  const closures = wish.closure === undefined ? CLOSURES : [wish.closure];
  return values.flatMap((value) => closures.map((closure) => choose(dial, value, closure))).sort(byRank(dial.units))[0];
}

/** Leaves out what no one could read, rows that do not close, and true marks or rows where even marks close so well
 *  that the feed is not known better. */
function worthOffering(dial: Case, choice: DialChoice, all: readonly DialChoice[]): boolean {
  if (choice.spacing < LEAST_SPACING * (1 - 1e-9)) return false;
  if (choice.closure === "even") return true;
  if (choice.closure === "rows" && (choice.rows === 1 || !choice.closes)) return false;
  return !all.some(
    (other) =>
      other.closure === "even" &&
      other.divisionValue === choice.divisionValue &&
      other.unit === choice.unit &&
      Math.abs(other.errorPerTurn) <= ROWS_SHARE_OF_DOUBT * (dial.doubt ?? 0),
  );
}

function sameDial(one: DialChoice, other: DialChoice): boolean {
  const near = Math.abs(one.divisionValue - other.divisionValue) < 1e-9 * one.divisionValue;
  return near && one.closure === other.closure && one.unit === other.unit;
}

/** Ties are settled by the unit of the file, then the plainer closure, then the coarser value: never by chance. */
function byRank(units: Units): (one: DialChoice, other: DialChoice) => number {
  return (one, other) => {
    if (Math.abs(one.penalty - other.penalty) > 1e-9) return one.penalty - other.penalty;
    if (one.unit !== other.unit) return one.unit === units ? -1 : 1;
    const plainer = CLOSURES.indexOf(one.closure) - CLOSURES.indexOf(other.closure);
    return plainer === 0 ? other.divisionValue - one.divisionValue : plainer;
  };
}

function divide(dial: Case, value: number, closure: Closure): Division {
  switch (closure) {
    case "even":
      return divideEvenly(dial.turn, value);
    case "true":
      return divideTruly(dial.turn, value);
    case "rows":
      return divideInRows(dial.turn, value, ROWS_SHARE_OF_DOUBT * (dial.doubt ?? 0));
  }
}

function choose(dial: Case, named: DivisionValue, closure: Closure): DialChoice {
  const { value, unit } = named;
  const division = divide(dial, value, closure);
  const overTravel = dial.travel ?? USUAL_TRAVEL[dial.units];
  const turns = overTravel / dial.feed.perTurn;
  const doubtOverTravel = dial.doubt === undefined ? undefined : dial.doubt * turns;
  const errorOverTravel = division.errorPerTurn * turns;
  // Even marks and rows share the turn out among themselves; true marks stand where the value puts them.
  const step = closure === "true" ? Math.min(value, dial.turn) : (division.rows * dial.turn) / division.divisions;
  const distance = spacing(dial.stripLength, dial.turn, step);
  const countTurns = closure === "true" && !division.exact;
  const facts = {
    closure,
    divisionValue: value,
    divisionLabel: divisionLabel(named),
    unit,
    divisions: division.divisions,
    rows: division.rows,
    leftOver: division.leftOver,
    errorPerTurn: division.errorPerTurn,
    errorOverTravel,
    ...(doubtOverTravel !== undefined && { doubtOverTravel }),
    overTravel,
    spacing: distance,
    closes: closes(dial, division, closure),
  };
  const shortGap = countTurns ? { shortGap: spacing(dial.stripLength, dial.turn, division.leftOver) } : {};
  const rank = penalty({
    ...facts,
    doubtOverTravel: doubtOverTravel ?? 0,
    leadingDigits: leadingDigits(inUnit(named)),
    otherUnit: unit !== dial.units,
    rowsDoNotClose: closure === "rows" && !facts.closes,
    rowHeight: dial.band / division.rows,
    countTurns,
    ...shortGap,
  });
  return { ...facts, penalty: rank, remarks: remarksOn(dial, { ...facts, ...shortGap }) };
}

/** Whether one can go on turning and trust the dial, as far as the feed itself can be trusted. */
function closes(dial: Case, division: Division, closure: Closure): boolean {
  if (closure === "true") return division.exact;
  if (closure === "rows") return Math.abs(division.errorPerTurn) <= ROWS_SHARE_OF_DOUBT * (dial.doubt ?? 0);
  return Math.abs(division.errorPerTurn) <= (dial.doubt ?? 0);
}
