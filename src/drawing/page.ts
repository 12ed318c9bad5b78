import type { Drawing, Mark } from "./drawing.js";

/** One printed page: a drawing of the paper's size. */
export type Page = {
  readonly drawing: Drawing;
  /** What the page is called in a contents list or among bookmarks. */
  readonly title: string;
  /** What the page says, besides, where it is corrected for a printer: which one, and how. */
  readonly correctionNote?: readonly Mark[];
};

/** A document ready to render. */
export type Print = {
  /** Sheet name, as `dial`; becomes part of the file's name. */
  readonly sheet: string;
  /** Which one of several prints of the sheet: the job that a plan is for. */
  readonly of?: string;
  readonly title: string;
  readonly pages: readonly Page[];
  /** Bookmarks of a bound print; all before the first section is front matter. */
  readonly sections?: readonly Section[];
  /** For a laser or engraver, not for a printer: letters as outlines, no printer's correction. */
  readonly outlines?: boolean;
  /** As the printer makes it: the page on which the printer itself is measured. */
  readonly uncorrected?: boolean;
  /** What of the file stands on none of its pages, and what to do about it. */
  readonly leftOut?: readonly string[];
};

/** A part of a bound print: where it begins (page index from 0) and how many pages it has. */
export type Section = { readonly title: string; readonly page: number; readonly pages: number };
