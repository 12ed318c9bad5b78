import type { Ink, Weight } from "../../drawing/drawing.js";

/** One cell of a table. */
export type Cell = {
  readonly text: string;
  readonly weight?: Weight;
  readonly ink?: Ink;
  /** Small words under the text. */
  readonly note?: string;
  /** Drawn instead of text: a box to tick, or a line to write on (which the text then stands before). */
  readonly drawn?: "box" | "line";
  /** Em of its text where it is not the table's: what the hand needs. */
  readonly size?: number;
};

export type Column = {
  /** Lines of the heading, the last may be the unit. */
  readonly heading: readonly string[];
  /** Words (`start`) wrap where the paper is narrow, numbers do not. `decimal` lines numbers up on the point, which even-width figures make exact. */
  readonly align: "start" | "middle" | "end" | "decimal";
  /** Left out, the last of them first, where the paper is too narrow for all columns. */
  readonly optional?: boolean;
  /** More room than is usual beside its cells, mm: for several words that would else run into those of the next column. */
  readonly apart?: number;
  /** Says what its row is about: repeated where a table is split. The first column when none says so. */
  readonly key?: boolean;
};
