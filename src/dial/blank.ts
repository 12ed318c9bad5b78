import type { FeedFinding } from "../feed/finding.js";
import type { Units } from "../machine/machine.js";

export type ChoiceOptions = {
  /** Length of the circle on which the marks are read, mm > 0. */
  readonly stripLength: number;
  readonly units: Units;
  /** Working travel of the slide, mm; the usual one is supposed, and said, where it is not stated. */
  readonly travel?: number;
  /** The least height of a row that can be told from the others, mm. */
  readonly leastRow?: number;
  /** Its foot is the hollow edge of a ring. */
  readonly round?: boolean;
};

/** What every choice for one handwheel shares. */
export type DialBlank = {
  readonly feed: FeedFinding;
  /** What the dial reads in one turn, and the doubt of that. */
  readonly turn: number;
  readonly doubt?: number;
  readonly onDiameter: boolean;
  readonly band: number;
} & ChoiceOptions;
