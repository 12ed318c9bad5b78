import type { Shape } from "./alongTravel.js";

/** What is known of a handwheel's feed, and how well. All mm per turn unless said otherwise. */
export type FeedFinding = {
  readonly perTurn: number;
  /** Half-width at 95 %; absent where nothing says how good the value is. */
  readonly uncertainty?: number;
  readonly from: "stated" | "screw" | "rack" | "readings";
  /** What the maker meant, where the file says so. */
  readonly nominal?: number;
  readonly fit?: Fit;
  readonly lostMotion?: LostMotion;
  /** Where and how it was measured; present with `fit`. */
  readonly measured?: Measured;
};

/** How far the readings reach, and what they show beside the line. */
export type Measured = {
  /** First and last place, in turns of the handwheel as the readings count them. */
  readonly from: number;
  readonly to: number;
  /** Half-width at 95 % of one position of the slide, mm: what each end of a movement adds. */
  readonly position: number;
  /** False where all readings stand at the same place of the turn: what happens within it was not measured. */
  readonly withinTurn: boolean;
  readonly shape: Shape;
  /** A worn stretch or a once-per-turn error that is more than chance. */
  readonly uneven?: Uneven;
};

/** The travel as it was measured, where it is not even: how far the slide stands ahead of turns × feed. mm. */
export type Uneven = {
  /** At equal steps from `from` to `to`; absent where no stretch is worn. */
  readonly ahead?: readonly number[];
  /** What is in doubt of that from one place to another, half-width at 95 %; with `ahead`. */
  readonly aheadDoubt?: number;
  /** The most by which a movement over 0, 1, 2 … of those steps can differ from turns × feed, wherever it begins. */
  readonly most?: readonly number[];
  /** Half the sway of the once-per-turn error with its doubt, at its crest; only the doubt where the dial has it built in. */
  readonly sway?: number;
  /** There is such a wave, and the dial has it not built in. */
  readonly wave?: true;
};

/** Least squares, travel = intercept + slope · turns. */
export type Fit = {
  readonly readings: number;
  /** How often the places were gone through, each run with its own zero of the gauge. */
  readonly runs: number;
  readonly places: number;
  readonly slope: number;
  readonly intercept: number;
  readonly slopeError: number;
  readonly interceptError: number;
  /** Standard deviation, mm, of one reading of one run about the line; `degreesOfFreedom`: places − 2, and 0 where they
   *  leave nothing over to tell it. */
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
  readonly residuals: readonly number[];
  /** Standard error of the slope for each mm by which a reading strays. */
  readonly leverage: number;
  /** True where a once-per-turn wave was fitted together with the line. */
  readonly withWave: boolean;
  /** How a place comes again, mm; absent where none was come to twice. */
  readonly repeat?: { readonly deviation: number; readonly degreesOfFreedom: number };
};

/** What comes instead of a fit when the readings cannot carry one: fewer than 3, or all at one position. */
export type TooFewReadings = {
  readonly tooFew: true;
  readonly readings: number;
  readonly differentTurns: number;
};

/** Mean of (return − out) at equal handwheel positions, over the stretch where it is largest if it is not the same all along, in the
 *  sense in which it is positive whichever way the gauge ran. `travel` mm, `turn` in turns of the handwheel; a negative value contradicts the readings' order. */
export type LostMotion = {
  readonly travel: number;
  readonly turn: number;
  /** Half-width at 95 %, mm of travel; absent with fewer than 2 pairs, or where nothing says how good it is. */
  readonly uncertainty?: number;
  readonly pairs: number;
  /** Where along the travel that is, turns; `least`: what it comes down to elsewhere, mm. Absent where it is the same all along. */
  readonly worst?: { readonly least: number; readonly fromTurn: number; readonly toTurn: number };
};
