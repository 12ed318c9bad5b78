import type { BlockName } from "../blocks/registry.js";
import type { Use } from "../findings/uses.js";

/** What stands where on a sheet. Lengths in mm. Users copy one of templates/sheets and change it. */
export type Template = {
  readonly name: string;
  readonly title: string;
  readonly needs: Need;
  /** Only for machines with this use. */
  readonly for?: Use;
  readonly orientation: "portrait" | "landscape";
  readonly margin: number;
  /** A trimmed card instead of the whole page. */
  readonly card?: {
    readonly width: number;
    readonly height: number;
    readonly corner: number;
    /** Screws to cut round, from the card's top left corner; they come from the machine file. */
    readonly holes?: readonly { readonly x: number; readonly y: number; readonly diameter: number }[];
  };
  /** One run of pages for every handwheel that has the data. */
  readonly each?: "handwheel";
  /** True-size pages carry check bars across and down. */
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
  "vernier",
  "scales",
  "angle scales",
  "job",
  "readings",
  "nothing",
] as const;
export type Need = (typeof needs)[number];
export type TemplateBlock = {
  readonly block: BlockName;
  readonly settings: Readonly<Record<string, unknown>>;
  /** Only for machines with this use, and drawn for it. */
  readonly for?: Use;
};
