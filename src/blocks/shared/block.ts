import type { Drawing } from "../../drawing/drawing.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import type { Use } from "../../findings/uses.js";

/** A part of a sheet that is never broken over two pages. */
export type Run = {
  readonly drawing: Drawing;
  /** Space above, mm; none at the top of a page. */
  readonly gap?: number;
  /** Stays on the page of the run that follows. */
  readonly keepWithNext?: boolean;
  /** Stays on the page of the run before it. */
  readonly keepWithPrevious?: boolean;
  /** Says something of what stands before it, and with its like alone would leave a page without that. */
  readonly accompanies?: true;
  /** Begins a page, unless what follows, up to the next that does, fits on the one before; always, whatever fits. */
  readonly startsPage?: "unless it fits" | "always";
  /** Runs with the same list stand in so many columns, `step` from one left edge to the next, mm: down a column, then on to the next. */
  readonly list?: { readonly columns: number; readonly step: number };
  /** The same in parts, of which the first ones stand on a page that would else stay too empty; the others go on overleaf. */
  readonly parts?: readonly Run[];
  /** Drawn again above this run when it comes first on a page (the heading of a broken table). */
  readonly heading?: Drawing;
  /** Drawn above that heading, or the run itself, when it comes first on a page: whose table or form goes on here. */
  readonly goesOn?: Drawing;
  /** What its signs mean: each once, at the foot of every page with some run that has it. */
  readonly keys?: readonly Drawing[];
  /** What is larger than this page and so stands on none. */
  readonly leftOut?: readonly LeftOut[];
};

/** A piece that the paper has no room for, and what to do about it; the usual: larger paper. */
export type LeftOut = { readonly name: string; readonly remedy?: string };

export type BlockContext<S> = {
  readonly findings: Findings;
  /** Those that the block is about: all of the file, or one where the sheet has a page for each. */
  readonly handwheels: readonly HandwheelFinding[];
  readonly settings: S;
  /** What the machine is used for here: as the template says, or what it is above all. */
  readonly use: Use;
  /** Room across, and down on an empty page, mm. */
  readonly width: number;
  readonly height: number;
  /** Down on pages before its last, where others stand below it on that. */
  readonly before?: number;
  /** Where that room lies on the paper, for a block whose marks reach beyond it. */
  readonly paper?: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
};

/** A pure function from findings and a width to drawings of known size. */
export type Block<S extends Readonly<Record<string, unknown>> = Readonly<Record<string, unknown>>> = {
  /** Every setting a template may give, with the value it has when the template says nothing. */
  readonly defaults: S;
  /** Of settings that are one of certain words, or a list of such: which. Names of the machine file are not judged here. */
  readonly allowed: { readonly [K in keyof S]?: readonly string[] };
  draw(context: BlockContext<S>): readonly Run[];
  /** The materials that it names: what burns or poisons in them stands at the head of its sheet, whatever template it is in. */
  materials?(findings: Findings, settings: S): readonly string[];
  /** Settings with which it names one material less that has a caution: for a card that cautions leave no room on. */
  fewer?(findings: Findings, settings: S): S | undefined;
  /** Its rows stand as far apart as its height allows: where others stand on the same page or card, it does with less. */
  readonly gives?: true;
  /** Draws pieces whose lengths count on paper: its sheet carries check bars. */
  readonly trueSize?: true;
  /** What must stand at the head of every page of its sheet. */
  warnings?(findings: Findings): readonly string[];
};

export const block = <S extends Readonly<Record<string, unknown>>>(
  defaults: S,
  draw: Block<S>["draw"],
  allowed: Block<S>["allowed"] = {},
): Block<S> => ({ defaults, allowed, draw });

/** A block that can name fewer materials, where cautions take its card. */
export const yielding = <B extends Block>(block: B, fewer: NonNullable<Block["fewer"]>): B => ({ ...block, fewer });

/** A block that does with less height where others share its page. */
export const giving = <B extends Block>(block: B): B => ({ ...block, gives: true });

/** A block of pieces whose lengths count. */
export const trueSized = <B extends Block>(block: B): B => ({ ...block, trueSize: true });

/** A block with words that stand at the head of every page of its sheet, where there are any. */
export const warning = <B extends Block>(block: B, warnings: NonNullable<Block["warnings"]>): B => ({
  ...block,
  warnings,
});

/** A block that names the materials of the machine file, or those that are given. */
export const naming = <B extends Block>(
  block: B,
  materials: NonNullable<Block["materials"]> = ({ machine }) => machine.work.materials,
): B => ({ ...block, materials });
