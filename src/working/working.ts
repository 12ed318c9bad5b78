import type { Path } from "../machine/problem.js";

/** Where a number came from. A path points into the machine file; whoever shows it turns it into a line. */
export type Source =
  /** `file`: the CSV that holds it, where the path only names that. */
  | { readonly from: "measured"; readonly path: Path; readonly file?: string }
  /** What the file says; where the path is not in it, what the program takes when it is left out. */
  | { readonly from: "stated"; readonly path: Path }
  | { readonly from: "looked up"; readonly source: string }
  | { readonly from: "assumed"; readonly why: string }
  | { readonly from: "computed"; readonly how: string };

/** A number, a list of them, or words, in `unit`. Lengths are in "mm" and "mm/turn" here; showing them in inches is
 *  the writer's business. */
export type Amount = {
  readonly name: string;
  readonly value: number | readonly number[] | string;
  readonly unit: string;
};

export type Input = Amount & { readonly source: Source };

/** How one number came about: what a sceptic would ask, in the order of asking. */
export type Working = {
  readonly title: string;
  /** In words and signs of the trade; the names of the inputs stand in it. */
  readonly formula: string;
  readonly inputs: readonly Input[];
  readonly result: Amount;
  /** Half-width at 95 %, in the unit of the result; absent where nothing says how good it is. */
  readonly uncertainty?: number;
  /** What else must be known to judge the result, each a sentence without its full stop. */
  readonly notes?: readonly string[];
};

/** One thing that a quantity can be asked of: a handwheel, a belt position, a material at a diameter. */
export type Subject = {
  /** Words by which it is picked on the command line, as "Cross slide" or "mild steel, 16 mm, turning". */
  readonly name: string;
  /** The working, or in words what the file lacks for it. */
  explain(): Working | { readonly missing: string };
};
