import { feedDoubtOver } from "../feed/doubtOver.js";
import type { FeedFinding } from "../feed/finding.js";
import type { Closure, DialWish, Handwheel, Units } from "../machine/machine.js";
import { sharedBand } from "./bandRoom.js";
import type { ChoiceOptions, DialBlank } from "./blank.js";
import { type Division, divideEvenly, divideInRows, divideTruly } from "./division.js";
import {
  type DivisionValue,
  divisionValues,
  FOURS,
  inUnit,
  leadingDigits,
  namedDivisionValue,
} from "./divisionValue.js";
import type { DialChoice } from "./finding.js";
import { blurs, strains } from "./legibility.js";
import {
  FARTHEST_TOLD,
  LEAST_SHORT_GAP,
  LEAST_SPACING,
  penalty,
  ROWS_SHARE_OF_DOUBT,
  USUAL_TRAVEL,
  WIDEST_SPACING,
} from "./penalty.js";
import { readingOf, withinATurn } from "./reading.js";
import { divisionLabel, remarksOn } from "./remarks.js";
import { bandWidth, spacing } from "./strip.js";

const CLOSURES: readonly Closure[] = ["even", "true", "rows"];

/** Ways to divide the dial of a feed (per turn > 0), best first. What `wish` forces stands first whatever it costs; the
 *  rest follow, the least penalty first, each with marks that an eye can part. Never empty. */
export function choicesFor(
  feed: FeedFinding,
  reads: Handwheel["reads"],
  wish: DialWish,
  options: ChoiceOptions,
): DialChoice[] {
  const { factor, perTurn: turn } = readingOf(feed, { reads });
  const doubt = feed.uncertainty === undefined ? undefined : feed.uncertainty * factor;
  const blank: DialBlank = {
    ...options,
    feed,
    turn,
    onDiameter: reads === "diameter",
    // A second scale takes its half of the room.
    band: bandWidth(wish) / (wish.second === undefined ? 1 : 2),
    ...(doubt !== undefined && { doubt }),
  };
  const offered = legibleValues(blank);

  const free = withoutFours(offered.flatMap((value) => choicesOf(blank, value, CLOSURES)));
  const ranked = free.filter((choice) => worthOffering(blank, choice, free)).sort(byPenalty(options.units));

  const forced = forcedChoice(blank, wish, offered);
  if (forced === undefined) return ranked;
  return [forced, ...ranked.filter((choice) => !sameDial(choice, forced))];
}

function legibleValues(blank: DialBlank): DivisionValue[] {
  const worthAt = (distance: number) => (blank.turn * distance) / blank.stripLength;
  const least = worthAt(LEAST_SPACING);
  const most = worthAt(WIDEST_SPACING);
  return [...divisionValues("mm", least, most), ...divisionValues("in", least, most)];
}

function forcedChoice(blank: DialBlank, wish: DialWish, offered: readonly DivisionValue[]): DialChoice | undefined {
  if (wish.divisions === undefined && wish.closure === undefined) return undefined;
  const values = wish.divisions === undefined ? offered : [namedDivisionValue(wish.divisions, blank.units)];
  const closures = wish.closure === undefined ? CLOSURES : [wish.closure];
  const meant =
    wish.divisions === undefined
      ? withoutFours(values.flatMap((value) => choicesOf(blank, value, closures))).filter(
          (choice) => !tooLow(blank, choice),
        )
      : [];
  const all =
    meant.length > 0
      ? meant
      : values
          .filter((value) => wish.divisions !== undefined || !byFours(value.value, value.unit))
          .flatMap((value) => closures.map((closure) => choose(blank, value, closure)));
  const wished = wish.divisions === undefined ? asMeant(all, blank) : all;
  return [...wished].sort(byPenalty(blank.units))[0];
}

/** Who asks for a closure alone means such as can be read, that close, in the file's unit: as far as there are such, in this order.
 *  True marks are for feeds on which nothing closes. */
function asMeant(all: readonly DialChoice[], { units }: DialBlank): readonly DialChoice[] {
  const wishes: ((choice: DialChoice) => boolean)[] = [
    ({ spacing }) => !blurs(spacing),
    ({ closure, closes }) => closes === true || closure === "true",
    ({ unit }) => unit === units,
  ];
  return wishes.reduce<readonly DialChoice[]>((kept, wish) => (kept.some(wish) ? kept.filter(wish) : kept), all);
}

/** Those that such closures really make: rows of which one is as good as many are even divisions. */
const choicesOf = (blank: DialBlank, value: DivisionValue, closures: readonly Closure[]): DialChoice[] =>
  closures.map((closure) => choose(blank, value, closure)).filter(({ closure }, index) => closure === closures[index]);

const byFours = (value: number, unit: Units): boolean => leadingDigits(inUnit({ value, unit })) === FOURS;

/** Divisions of fours only where they are equal and close, and nothing rounder of their unit does that can be read at ease. */
function withoutFours(all: readonly DialChoice[]): DialChoice[] {
  const isFours = ({ divisionValue, unit }: DialChoice) => byFours(divisionValue, unit);
  const closesEvenly = ({ closure, closes }: DialChoice) => closure === "even" && closes === true;
  const rounder = all.filter((choice) => closesEvenly(choice) && !isFours(choice) && !strains(choice.spacing));
  return all.filter(
    (choice) => !isFours(choice) || (closesEvenly(choice) && rounder.every(({ unit }) => unit !== choice.unit)),
  );
}

/** Rows that have no room for the numbers which tell them apart. */
const tooLow = ({ band, leastRow = 0, round }: DialBlank, { rows }: DialChoice): boolean =>
  rows > 1 && sharedBand(band, round) / rows < leastRow;

/** Leaves out what no one could read, rows that do not close, and true marks or rows where even marks close so well
 *  that the feed is not known better. */
function worthOffering(blank: DialBlank, choice: DialChoice, all: readonly DialChoice[]): boolean {
  if (blurs(choice.spacing)) return false;
  if (choice.closure === "even") return true;
  if (choice.closure === "rows" && (tooLow(blank, choice) || !choice.closes)) return false;
  return !all.some(
    (other) =>
      other.closure === "even" &&
      other.divisionValue === choice.divisionValue &&
      other.unit === choice.unit &&
      Math.abs(other.errorPerTurn) <= ROWS_SHARE_OF_DOUBT * (blank.doubt ?? 0),
  );
}

function sameDial(one: DialChoice, other: DialChoice): boolean {
  const near = Math.abs(one.divisionValue - other.divisionValue) < 1e-9 * one.divisionValue;
  return near && one.closure === other.closure && one.unit === other.unit;
}

/** Ties are settled by the unit of the file, then the plainer closure, then the coarser value: never by chance. */
function byPenalty(units: Units): (one: DialChoice, other: DialChoice) => number {
  return (one, other) => {
    if (Math.abs(one.penalty - other.penalty) > 1e-9) return one.penalty - other.penalty;
    if (one.unit !== other.unit) return one.unit === units ? -1 : 1;
    const plainer = CLOSURES.indexOf(one.closure) - CLOSURES.indexOf(other.closure);
    return plainer === 0 ? other.divisionValue - one.divisionValue : plainer;
  };
}

function divide(blank: DialBlank, value: number, closure: Closure): Division {
  switch (closure) {
    case "even":
      return divideEvenly(blank.turn, value);
    case "true":
      return divideTruly(blank.turn, value);
    case "rows":
      return divideInRows(blank.turn, value, ROWS_SHARE_OF_DOUBT * (blank.doubt ?? 0));
  }
}

function choose(
  blank: DialBlank,
  named: DivisionValue,
  wished: Closure,
  instead: { readonly notReached?: number } = {},
): DialChoice {
  const { value, unit } = named;
  const division = divide(blank, value, wished);
  if (division.rows > 1 && neverReached(blank, division.rows))
    return choose(blank, named, "true", { notReached: division.rows });
  const closure = wished === "rows" && division.rows === 1 ? "even" : wished;
  const { overTravel, measuredOnly } = toldOver(blank);
  const turns = overTravel / blank.feed.perTurn;
  const doubt = feedDoubtOver(turns, blank.feed);
  const doubtOverTravel = doubt === undefined ? undefined : doubt * (blank.onDiameter ? 2 : 1);
  const errorOverTravel = division.errorPerTurn * turns;
  // Even marks and rows share the turn out among themselves; true marks stand where the value puts them.
  const step = closure === "true" ? Math.min(value, blank.turn) : (division.rows * blank.turn) / division.divisions;
  const distance = spacing(blank.stripLength, blank.turn, step);
  const beginsAgain = closure === "true" && !division.exact;
  const shortGap = beginsAgain ? { shortGap: spacing(blank.stripLength, blank.turn, division.leftOver) } : {};
  // The last mark would print as one with the zero, where others do not: the zero stands for it.
  const leftOut =
    closure === "true" && distance > 2 * LEAST_SHORT_GAP && (shortGap.shortGap ?? distance) < LEAST_SHORT_GAP;
  const divisions = division.divisions - (leftOut ? 1 : 0);
  // Where the slide is at its end before the dial is, nobody counts turns or reads the short division.
  const { travel, feed } = blank;
  const onceRound = withinATurn({ perTurn: feed.perTurn, ...(travel !== undefined && { overTravel: travel }) });
  const facts = {
    closure,
    divisionValue: value,
    divisionLabel: divisionLabel(named),
    unit,
    divisions,
    rows: division.rows,
    divisionsPerTurn: divisions / division.rows,
    leftOver: division.leftOver,
    ...(beginsAgain && { last: division.leftOver + (leftOut ? value : 0) }),
    errorPerTurn: division.errorPerTurn,
    errorOverTravel,
    ...(doubtOverTravel !== undefined && { doubtOverTravel }),
    overTravel,
    ...(blank.onDiameter && { onDiameter: true as const }),
    ...(measuredOnly && { measuredOnly }),
    spacing: distance,
    closes: closes(blank, division, closure),
    beginsAgain,
    ...(onceRound && { onceRound }),
  };
  const against = penalty({
    ...facts,
    doubtOverTravel: doubtOverTravel ?? 0,
    leadingDigits: leadingDigits(inUnit(named)),
    otherUnit: unit !== blank.units,
    rowsDoNotClose: closure === "rows" && !facts.closes,
    rowHeight: blank.band / division.rows,
    ...(onceRound ? { beginsAgain: false } : shortGap),
  });
  return {
    ...facts,
    penalty: against,
    // Dozens of choices are weighed for each one that is asked why.
    get remarks() {
      return remarksOn(blank, { ...facts, ...shortGap, ...instead });
    },
  };
}

/** Whether the slide is at its end before the last of so many rows begins. */
const neverReached = ({ travel, feed }: DialBlank, rows: number): boolean =>
  travel !== undefined && (rows - 1) * feed.perTurn >= travel - 1e-9;

/** Over how much travel error and doubt are told: the working travel, unless the readings reach over so little of it that
 *  the rest is unproven. */
function toldOver({ travel, units, feed }: DialBlank): { readonly overTravel: number; readonly measuredOnly?: true } {
  const wanted = travel ?? USUAL_TRAVEL[units];
  if (feed.measured === undefined) return { overTravel: wanted };
  const read = (feed.measured.to - feed.measured.from) * feed.perTurn;
  return wanted > FARTHEST_TOLD * read ? { overTravel: read, measuredOnly: true } : { overTravel: wanted };
}

/** Whether one can go on turning and trust the dial, as far as the feed itself can be trusted. */
function closes(blank: DialBlank, division: Division, closure: Closure): boolean {
  if (closure === "true") return division.exact;
  if (closure === "rows") return Math.abs(division.errorPerTurn) <= ROWS_SHARE_OF_DOUBT * (blank.doubt ?? 0);
  return Math.abs(division.errorPerTurn) <= (blank.doubt ?? 0);
}
