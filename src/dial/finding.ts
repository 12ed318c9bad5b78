import type { Closure } from "../machine/machine.js";
import type { Closing } from "./closing.js";
import type { Development } from "./development.js";
import type { Wave } from "./wave.js";

/** One way to divide a turn. Lengths in mm of what the dial reads (twice the travel when it reads diameter). */
export type DialChoice = {
  readonly closure: Closure;
  /** Nominal worth of one division, in what the dial reads. */
  readonly divisionValue: number;
  /** As the maker of a dial would say it: "0.02 mm", "0.001 in". */
  readonly divisionLabel: string;
  /** Unit of the numbers on this dial. */
  readonly unit: "mm" | "in";
  /** Divisions in one turn as they are marked (`even`, `true`: the last one included) or in all rows together (`rows`). */
  readonly divisions: number;
  readonly rows: number;
  /** Divisions once round: a fraction where the rows share them out unevenly. */
  readonly divisionsPerTurn: number;
  /** What is left over in one turn: feed − whole divisions · division value, in what the dial reads. Signed. */
  readonly leftOver: number;
  /** Of true marks that begin again each turn: the last division, in what the dial reads. It is what is left over, or where a mark before that
   *  would print as one with the zero and is left out, that and a whole division. */
  readonly last?: number;
  /** Error of the reading that one turn adds, if the dial is read as printed. Signed, in what the dial reads. */
  readonly errorPerTurn: number;
  /** The same over `overTravel`. */
  readonly errorOverTravel: number;
  /** The doubt of the feed itself over `overTravel`; absent where it is not known. */
  readonly doubtOverTravel?: number;
  /** Way of the slide; what a dial that reads the diameter counts over it is twice that (`overOnDial`). */
  readonly overTravel: number;
  readonly onDiameter?: true;
  /** True where that is only as far as was measured, the working travel being several times longer. */
  readonly measuredOnly?: true;
  /** True where one may turn on and on and trust the dial: nothing left over, or less than the doubt of the feed. */
  readonly closes?: boolean;
  /** True of true marks whose last division is short: the dial begins again at zero each turn, and whole turns are counted. */
  readonly beginsAgain: boolean;
  /** The slide is at its end before the dial has gone once round: no turns are counted, and nothing begins again. */
  readonly onceRound?: true;
  /** Distance between neighbouring marks on the paper, mm (the least one, the short division apart). */
  readonly spacing: number;
  /** Lower is better; `penalty` adds it up. */
  readonly penalty: number;
  /** Why it stands where it stands, in words for `check` and paper. */
  readonly remarks: readonly string[];
};

/** Rank 1 is the longest. Angle in radians from the zero mark, growing with the reading, in [0, 2π). */
export type Graduation = {
  readonly angle: number;
  readonly rank: 1 | 2 | 3;
  readonly label?: string /** Reading at this mark. */;
  readonly value: number;
  /** A part of the longest mark, where a scale has more lengths than ranks: one of halves, quarters and eighths. */
  readonly part?: number;
};

export type DialFinding = {
  readonly shape: "drum" | "face" | "bevel";
  readonly chosen: DialChoice;
  /** True when the file forced this choice. */
  readonly forced: boolean;
  /** Best first; holds `chosen`. */
  readonly choices: readonly DialChoice[];
  /** What one printed division truly moves, in what the dial reads. */
  readonly divisionWorth: number;
  /** Part of a turn between neighbouring marks, radians. */
  readonly pitch: number;
  /** After how few turns the chosen divisions come nearest to closing, each nearer than the last. */
  readonly closings: readonly Closing[];
  /** Where the dial begins again each turn and no rows are among its choices: the best rows that this feed would have, which only its
   *  height forbids. */
  readonly rowsWithoutRoom?: RowsWithoutRoom;
  /** Its surface laid flat; absent for a cone that its sizes do not make. */
  readonly flat?: Development;
  /** One list of marks for each row. */
  readonly rows: readonly (readonly Graduation[])[];
  /** What the numbers on the dial mean, as it is written on it: "mm", or "1 = 0.01 mm" where they count. */
  readonly labelUnit?: string;
  /** What a figure of 1 on it counts, mm of what it reads. */
  readonly labelWorth?: number;
  /** Flat length once round, for a drum. */
  readonly stripLength?: number;
  readonly increases: "clockwise" | "anticlockwise";
  /** The once-per-turn error that is built into the marks, which are then unevenly spaced on purpose. */
  readonly wave?: Wave;
  /** A second scale below the first, in another value or unit, with a closure of its own. */
  readonly second?: Pick<DialFinding, "chosen" | "rows" | "labelUnit" | "labelWorth">;
  /** Beside the index line, where the file asks for one. */
  readonly vernier?: Vernier;
};

/** `width`: from edge to edge, mm, with which their numbers would have room; absent where asking for these rows is enough. */
export type RowsWithoutRoom = { readonly choice: DialChoice; readonly width?: number };

/** Marks that part a division: `parts` of them over parts − 1 divisions of the main scale, or over 2 · parts − 1 where
 *  the main marks stand too close to tell which of them meet (extended). */
export type Vernier = {
  readonly parts: number;
  readonly extended: boolean;
  /** Divisions of the main scale that the whole vernier spans. */
  readonly spans: number;
  /** Main division ÷ parts, in what the main scale reads. */
  readonly leastCount: number;
  /** Step of the vernier's marks, in divisions of the main scale. */
  readonly step: number;
};
