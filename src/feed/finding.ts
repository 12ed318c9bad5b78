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
};

/** Ordinary least squares, travel = intercept + slope · turns. */
export type Fit = {
  readonly readings: number;
  readonly slope: number;
  readonly intercept: number;
  readonly slopeError: number;
  readonly interceptError: number;
  /** Standard deviation of the residuals, mm, readings − 2 degrees of freedom. */
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
  readonly residuals: readonly number[];
};

/** What comes instead of a fit when the readings cannot carry one: fewer than 3, or all at one position. */
export type TooFewReadings = {
  readonly tooFew: true;
  readonly readings: number;
  readonly differentTurns: number;
};

/** Mean of (return − out) at equal handwheel positions, in the sense in which it is positive whichever way the
 *  gauge ran. `travel` mm, `turn` in turns of the handwheel; a negative value contradicts the readings' order. */
export type LostMotion = {
  readonly travel: number;
  readonly turn: number;
  /** Half-width at 95 %, mm of travel; absent with fewer than 2 pairs, or where nothing says how good it is. */
  readonly uncertainty?: number;
  readonly pairs: number;
};
