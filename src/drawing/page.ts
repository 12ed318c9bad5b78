import type { Drawing } from "./drawing.js";

/** One printed page: a drawing of the paper's size. */
export type Page = {
  readonly drawing: Drawing;
  /** What the page is called in a contents list or among bookmarks. */
  readonly title: string;
};

/** A document ready to render. */
export type Print = {
  /** Sheet name, as `dial`; becomes part of the file's name. */
  readonly sheet: string;
  readonly title: string;
  readonly pages: readonly Page[];
  /** For a laser or engraver, not for a printer: letters as outlines, no printer's correction. */
  readonly outlines?: boolean;
};
