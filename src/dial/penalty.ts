import { FOURS } from "./divisionValue.js";

/** What makes one way of dividing a turn better than another. All weights of the choosing stand here; one point is
 *  about what a machinist would give up an easy dial for. Lengths in mm; errors in what the dial reads.
 *
 *  - Error: the reading's error over the working travel, so far as the doubt of the feed does not hide it, in steps of
 *    doubling, since an error ten times too large is not ten times as useless. An error below a quarter of a
 *    division, or below one thousandth of an inch, hardly shows.
 *  - Spacing: 10 to 15 minutes of arc between marks are read best (Rockafellow, RIT thesis, 1983): 0.9 to 1.7 mm from
 *    300 to 400 mm away. A line of 0.2 mm with 0.5 mm clear beside it is the least (NIST Handbook 44, memory), and 0.7 mm
 *    is what a small collar of 25 mm with 90 to 100 marks has (common practice).
 *  - Roundness: 1, 2 or 5 times a power of ten (MIL-HDBK-759B); 2.5 only because inch and eighth-inch screws need it, 4
 *    only on dials that close by it and by nothing rounder that is read at ease.
 *  - Unit: what is measured in one unit and dialled in another is a sum at every reading, and one that goes wrong.
 *  - Attention: rows ask which turn one is on; a true dial asks to count turns and to add at the short division.
 */

/** Least distance between marks that a sheet will offer of its own accord. */
export const LEAST_SPACING = 0.7;
/** Widest distance offered; beyond it the dial gives away reading that the drum has room for. */
export const WIDEST_SPACING = 6;
export const COMFORTABLE_FROM = 1.0;
const COMFORTABLE_TO = 2.0;
/** A short division narrower than this blurs into the zero mark. */
export const LEAST_SHORT_GAP = 0.4;
/** Height of one row with a mark and a figure that can be read (figures of 2 mm, a mark of 1 mm). */
export const LEAST_ROW_HEIGHT = 3;
/** Working travel supposed where a handwheel states none, by the unit of the file: 25 mm, 1 in. */
export const USUAL_TRAVEL = { mm: 25, in: 25.4 };
/** An error is told over at most so many times the travel that was measured. */
export const FARTHEST_TOLD = 2;
/** More marks than any handwheel has room for at a line's width each; such a dial is told of but not drawn. */
export const MOST_MARKS = 5000;
/** Part of the feed's doubt within which rows count as closing: they are drawn to be exact for ever. */
export const ROWS_SHARE_OF_DOUBT = 0.25;

const TOLERABLE_ERROR = 0.025;
const TOLERABLE_PART_OF_DIVISION = 0.25;

const PER_DOUBLING_OF_ERROR = 1.0;
const HIDDEN_ERROR = 0.3;
/** For a mark distance of 0.7 mm, falling to nothing at 1.0 mm. */
const CROWDED = 1.2;
const PER_DOUBLING_OF_SPACING = 0.8;
const ROUNDNESS = new Map([
  [1, 0],
  [2, 0.2],
  [5, 0.3],
  [2.5, 0.6],
  [FOURS, 0.8],
]);
const ODD_VALUE = 2;
const OTHER_UNIT = 3;
const NOT_BY_TENS = 0.3;
const NOT_BY_FIVES = 0.4;
const SECOND_ROW = 0.7;
const EACH_FURTHER_ROW = 0.7;
const CRAMPED_ROWS = 2;
const COUNTING_TURNS = 1.2;
const BLURRED_SHORT_GAP = 0.6;
const NOT_CLOSING_ROWS = 1.5;

export type Merits = {
  readonly errorOverTravel: number;
  readonly doubtOverTravel: number;
  readonly divisionValue: number;
  /** First digits of the division value in its own unit, from 1 to under 10. */
  readonly leadingDigits: number;
  readonly otherUnit: boolean;
  readonly spacing: number;
  readonly divisions: number;
  readonly rows: number;
  /** Rows that do not close at all: drawn only because the file asks for them. */
  readonly rowsDoNotClose: boolean;
  readonly rowHeight: number;
  /** A true dial that does not close: its turns must be counted. */
  readonly beginsAgain: boolean;
  readonly shortGap?: number;
};

/** Sum of all that speaks against a choice; 0 is a dial with nothing against it. */
export function penalty(merits: Merits): number {
  return (
    errorPenalty(merits) +
    spacingPenalty(merits.spacing) +
    (ROUNDNESS.get(merits.leadingDigits) ?? ODD_VALUE) +
    (merits.otherUnit ? OTHER_UNIT : 0) +
    numberingPenalty(merits) +
    rowsPenalty(merits) +
    (merits.beginsAgain ? COUNTING_TURNS : 0) +
    (merits.shortGap !== undefined && merits.shortGap < LEAST_SHORT_GAP ? BLURRED_SHORT_GAP : 0)
  );
}

function errorPenalty({ errorOverTravel, doubtOverTravel, divisionValue }: Merits): number {
  const tolerable = Math.max(TOLERABLE_ERROR, TOLERABLE_PART_OF_DIVISION * divisionValue);
  const error = Math.abs(errorOverTravel);
  const hidden = Math.min(error, doubtOverTravel);
  return (
    PER_DOUBLING_OF_ERROR * Math.log2(1 + (error - hidden) / tolerable) +
    HIDDEN_ERROR * Math.log2(1 + hidden / tolerable)
  );
}

function spacingPenalty(spacing: number): number {
  if (spacing < COMFORTABLE_FROM) return (CROWDED * (COMFORTABLE_FROM - spacing)) / (COMFORTABLE_FROM - LEAST_SPACING);
  return PER_DOUBLING_OF_SPACING * Math.max(0, Math.log2(spacing / COMFORTABLE_TO));
}

/** Numbers end at a short division or run on through the rows, so the count matters on even dials alone. */
function numberingPenalty({ divisions, beginsAgain, rows }: Merits): number {
  if (beginsAgain || rows > 1 || divisions % 10 === 0) return 0;
  return divisions % 5 === 0 ? NOT_BY_TENS : NOT_BY_FIVES;
}

function rowsPenalty({ rows, rowHeight, rowsDoNotClose }: Merits): number {
  if (rows === 1) return 0;
  return (
    SECOND_ROW +
    EACH_FURTHER_ROW * (rows - 2) +
    (rowHeight < LEAST_ROW_HEIGHT ? CRAMPED_ROWS : 0) +
    (rowsDoNotClose ? NOT_CLOSING_ROWS : 0)
  );
}
