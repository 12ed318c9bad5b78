import type { BlockName } from "../blocks/registry.js";
import type { Use } from "../findings/uses.js";
import type { Margin } from "./margins.js";

export const orientations = ["portrait", "landscape", "either"] as const;

/** What stands where on a sheet. Lengths in mm. Users copy one of templates/sheets and change it. */
export type Template = {
  readonly name: string;
  readonly title: string;
  readonly needs: Need;
  /** Only for machines with this use. */
  readonly for?: Use;
  /** Either: across, unless upright more pieces to cut stay whole, or they take fewer pages. */
  readonly orientation: (typeof orientations)[number];
  /** The usual one when left out. */
  readonly margin?: Margin;
  /** A trimmed card instead of the whole page. */
  readonly card?: {
    readonly width: number;
    readonly height: number;
    /** Up to which it may be higher where that saves a second card, and lower where the paper is small; 0: as it is. */
    readonly most?: number;
    readonly corner: number;
    /** Screws to cut round, from the card's top left corner; they come from the machine file. */
    readonly holes?: readonly { readonly x: number; readonly y: number; readonly diameter: number }[];
  };
  /** One run of pages for every handwheel that has the data. */
  readonly each?: "handwheel";
  /** True-size pages carry check bars across and down; as a block with pieces to cut wants it where the template does not say. */
  readonly checkBars: boolean;
  /** No heading, foot or bars: for a machine that follows every line. Its letters are outlines, its size is not corrected. */
  readonly bare: boolean;
  /** Rendered without the printer's correction: what is measured on it is the correction. */
  readonly uncorrected: boolean;
  /** Made only when asked for by name, not with the whole pack. */
  readonly onRequest: boolean;
  readonly blocks: readonly TemplateBlock[];
};

/** What a machine file must hold before the sheet means anything. */
export const needs = [
  "drive",
  "feed",
  "drive or feed",
  "dial",
  "pieces",
  "vernier",
  "scales",
  "angle scales",
  "job",
  "readings",
  "nothing",
] as const;
export type Need = (typeof needs)[number];

/** The same in words. */
export const needWords: Readonly<Record<Need, string>> = {
  drive: "drive:",
  feed: "a handwheel with feed:",
  "drive or feed": "drive:, or a handwheel with feed:",
  dial: "a handwheel with feed: and dial:",
  pieces: "a handwheel with feed: and dial:, or scales:, or angleScales:",
  vernier: "a dial with vernier:",
  scales: "scales:",
  "angle scales": "angleScales:",
  job: "a job file",
  readings: "a handwheel whose feed: has readings:",
  nothing: "nothing",
};

export type TemplateBlock = {
  readonly block: BlockName;
  readonly settings: Readonly<Record<string, unknown>>;
  /** Only for machines with this use, and drawn for it. */
  readonly for?: Use;
  /** About this one alone. `at`: where the template says so, line:column. */
  readonly handwheel?: { readonly name: string; readonly at: string };
};
