import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { diameterAt } from "../../part/outline.js";
import type { Stage } from "../../plan/stage.js";
import { largestOf } from "../../quantity/extremes.js";
import { unitName } from "../../quantity/format.js";
import type { LengthUnit } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { arrowHead, thinPen } from "../shared/sectionMarks.js";
import { size } from "../shared/style.js";
import { type Laid, layLengths } from "./lengthLines.js";
import {
  arranged,
  calloutMarks,
  FIGURE,
  type ListRow,
  numberMarks,
  ROW,
  ringOf,
  type StepNumbers,
  type Upper,
} from "./partCallouts.js";
import { type Length, type Part, partOf } from "./partFeatures.js";
import { JAW, type Layout, layOut } from "./partLayout.js";
import { heldMarks, partMarks } from "./partMarks.js";
import { across, below, type View } from "./workView.js";

export type PartDrawing = {
  /** The whole job, in the order of work. */
  readonly stages: readonly Stage[];
  readonly numbers: StepNumbers;
  /** mm in words. */
  readonly show: (mm: number, places?: number) => string;
  /** Left out behind figures and said once, when given: "mm". */
  readonly unit?: LengthUnit;
  readonly width: number;
  /** The most it may take; the drawing says what it takes. Where not even its words fit, it grows beyond. */
  readonly height: number;
};

/** ISO 5455, largest first; more than ten times shows nothing that is not seen then. */
const scales = [10, 5, 2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50, 1 / 100, 1 / 200, 1 / 500, 1 / 1000];

/** Under the drawing, for its scale. */
const FOOT = 5;

/** Between parallel dimension lines. */
const LEVEL = 5.4;

/** From the stock to the first dimension line. */
const FIRST_LEVEL = 8.5;

/** How many rows callouts may take, tried in this order where height is scarce. */
const rowLimits = [7, 4, 2];

/** Dimension lines under each other; more are a wall of lines that nobody reads. */
const MOST_LEVELS = 14;

/** What the next smaller scale is worth, in sizes that stand in the list for it. */
const SCALE_COST = 3;

/** What a length costs that stands in the list and not at its place, where it is looked for: more than the next smaller scale. */
const LENGTH_COST = 4;

/** What the whole length costs there: it is the part's first size. */
const WHOLE_COST = 12;

/** A turned part as its drawing: to scale, its free end on the right, the stock around it, every size once, and the number of the step
 *  that makes each surface. What finds no room in it stands in a list below. */
export function partDrawing({ stages, numbers, show, unit, width, height }: PartDrawing): Drawing {
  const words = (mm: number, places?: number) =>
    unit === undefined ? show(mm, places) : show(mm, places).replace(new RegExp(` ${unitName(unit)}$`), "");
  const part = partOf(stages, words);
  let chosen: Sheet | undefined;
  // Of a part with very many sizes the list would leave no room for the part.
  for (const longest of longestLists) {
    const found = largest(part, { stages, numbers, width, height }, longest);
    chosen ??= found.sheet;
    if (found.smaller === undefined || found.smaller > MUCH_SMALLER) continue;
    chosen = found.sheet;
    break;
  }
  return chosen === undefined ? { width, height: 0, marks: [] } : drawn(part, stages, chosen, unit, width);
}

/** By so many scales smaller than the width has room for. */
const MUCH_SMALLER = 4;

/** The sheet that costs least, and by how many scales it is smaller than the width alone would have it; the lowest where none keeps
 *  to its height. */
function largest(
  part: Part,
  { stages, numbers, width, height }: Omit<PartDrawing, "show" | "unit">,
  longest: number,
): { sheet?: Sheet; smaller?: number } {
  let best: { sheet: Sheet; cost: number; smaller: number } | undefined;
  let lowest: Sheet | undefined;
  let widest: number | undefined;
  for (const [smaller, scale] of scales.entries()) {
    if (best !== undefined && SCALE_COST * smaller >= best.cost) break;
    const laid = layOut(scale, part, stages, width);
    if (laid === undefined) continue;
    widest ??= smaller;
    for (const limit of rowLimits) {
      const upper = arranged(part, numbers, laid.view, laid.seen, width, limit);
      for (const levels of levelsToTry(part.lengths.length)) {
        const sheet = sheetOf(part, laid, upper, levels, width, longest);
        if (lowest === undefined || sheet.height < lowest.height - 1e-9) lowest = sheet;
        const cost = sheet.rows.length + costOfListed(part, sheet.lines) + SCALE_COST * smaller;
        if (sheet.height <= height + 1e-9 && (best === undefined || cost < best.cost))
          best = { sheet, cost, smaller: smaller - widest };
        if (sheet.height <= height + 1e-9) break;
      }
    }
  }
  return best ?? (lowest === undefined ? {} : { sheet: lowest });
}

const unlaid = ({ lengths }: Part, lines: Sheet["lines"]): Length[] =>
  lengths.filter((_, index) => lines[index] === undefined);

/** Of lengths, beyond their rows in the list. */
const costOfListed = (part: Part, lines: Sheet["lines"]): number =>
  unlaid(part, lines).reduce((sum, { from }) => sum + (from === "end to end" ? WHOLE_COST : LENGTH_COST) - 1, 0);

/** All numbers of levels, the most first; where there are many lengths only some of them. */
function levelsToTry(lengths: number): readonly number[] {
  const most = Math.min(lengths, MOST_LEVELS);
  const every = Array.from({ length: most + 1 }, (_, index) => most - index);
  return lengths > MOST_LEVELS ? every.filter((levels) => levels % 4 === most % 4 || levels === 0) : every;
}

/** Everything with its place at one scale. */
type Sheet = {
  readonly laid: Layout;
  readonly upper: Upper;
  readonly lines: readonly (Laid | undefined)[];
  /** The list of what found no room. */
  readonly rows: readonly ListRow[];
  /** Where rows of callouts end and leaders fan out, and from where they go straight down. */
  readonly fan: { readonly from: number; readonly to: number };
  /** Of the axis, and under the last dimension line. */
  readonly axis: number;
  readonly bottom: number;
  readonly height: number;
};

function sheetOf(part: Part, laid: Layout, upper: Upper, levels: number, width: number, longest: number): Sheet {
  const { view, reach, radius } = laid;
  const { callouts, places, list } = upper;
  const aside = Math.max(0, largestOf(callouts.map(({ x }, index) => Math.abs((places[index]?.x ?? x) - x))));
  const from = Math.max(0, largestOf(places.map(({ row }) => row + 1))) * ROW;
  const to = from + (callouts.length === 0 ? 1 : Math.min(12, Math.max(1.5, 0.4 * aside)));
  const axis = to + radius + (reach === undefined ? 2 : JAW.height + 1);
  const spans = part.lengths.map(({ origin, place, words }) => ({
    from: across(view, origin),
    to: across(view, place),
    width: textWidth(words, FIGURE, "regular"),
  }));
  // So many never find room together; the others are listed.
  const lines = layLengths(spans.slice(0, 2 * MOST_LEVELS), width, levels);
  const used = Math.max(-1, largestOf(lines.map((found) => found?.level ?? -1)));
  const bottom = axis + radius + (used < 0 ? JAW.height + 1 : FIRST_LEVEL + used * LEVEL + 1.5);
  const steps = [...list].sort((a, b) => (a.number ?? NO_STEP) - (b.number ?? NO_STEP));
  const rows = shortened(
    [...steps, ...unlaid(part, lines).map((length): ListRow => ({ words: lengthRow(length) }))],
    longest,
  );
  const height = bottom + FOOT + (rows.length === 0 ? 0 : listMarks(rows, 0, width).height + 1);
  return { laid, upper, lines, rows, fan: { from, to }, axis, bottom, height };
}

/** Behind all steps. */
const NO_STEP = Number.MAX_SAFE_INTEGER;

/** A list so long that it would push the drawing off its page says how much it leaves out: every size stands at its step. */
const shortened = (rows: readonly ListRow[], longest: number): readonly ListRow[] =>
  rows.length <= longest
    ? rows
    : [...rows.slice(0, longest - 1), { words: say("plan.drawing more", { count: rows.length - longest + 1 }) }];

/** How long the list may be, tried in this order. */
const longestLists = [60, 24];

function drawn(
  part: Part,
  stages: readonly Stage[],
  { laid, upper, lines, rows, fan, axis, bottom, height }: Sheet,
  unit: LengthUnit | undefined,
  width: number,
): Drawing {
  const view: View = { ...laid.view, y: axis };
  return {
    width,
    height,
    marks: [
      group({ x: 0, y: 0 }, heldMarks(part, stages, view, laid), { name: "stock" }),
      group({ x: 0, y: 0 }, partMarks(part, view, laid), { name: "part" }),
      group({ x: 0, y: 0 }, lengthMarks(part, lines, view, axis + laid.radius), { name: "lengths" }),
      group({ x: 0, y: 0 }, calloutMarks(upper.callouts, upper.places, view, fan.from, fan.to), { name: "callouts" }),
      text(footNote(view.scale, unit), { x: 0, y: bottom + FOOT - 1.2 }, { size: size.text }),
      ...listMarks(rows, bottom + FOOT + 1, width).marks,
    ],
  };
}

const lengthRow = ({ words, from }: Length): string => say(`plan.drawing from ${from}`, { length: words });

function lengthMarks(
  { lengths, finished }: Part,
  lines: readonly (Laid | undefined)[],
  view: View,
  edge: number,
): Mark[] {
  const marks: Mark[] = [];
  // One extension line serves all lengths that begin or end there.
  const deepest = new Map<string, { x: number; z: number; y: number }>();
  for (const [index, { origin, place, words }] of lengths.entries()) {
    const found = lines[index];
    if (found === undefined) continue;
    const y = edge + FIRST_LEVEL + found.level * LEVEL;
    const [x1, x2] = [across(view, origin), across(view, place)].sort((a, b) => a - b) as [number, number];
    marks.push(line({ x: found.left, y }, { x: found.right, y }, thinPen));
    marks.push(arrowHead({ x: x1, y }, found.outside ? 1 : -1, 0), arrowHead({ x: x2, y }, found.outside ? -1 : 1, 0));
    marks.push(text(words, { x: found.middle, y: y - 1.2 }, { size: FIGURE, anchor: "middle" }));
    for (const z of [origin, place]) {
      const key = z.toFixed(6);
      const before = deepest.get(key);
      deepest.set(key, { x: across(view, z), z, y: Math.max(before?.y ?? 0, y) });
    }
  }
  for (const { x, z, y } of deepest.values()) {
    const diameter = Math.max(diameterAt(finished.outside, z, -1), diameterAt(finished.outside, z, 1));
    marks.push(line({ x, y: below(view, diameter) + 0.7 }, { x, y: y + 1.2 }, thinPen));
  }
  return marks;
}

function footNote(scale: number, unit: LengthUnit | undefined): string {
  const ratio = scale >= 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`;
  return unit === undefined ? say("plan.drawing scale", { ratio }) : say(`plan.drawing scale ${unit}`, { ratio });
}

/** Between two sizes of a list that stand in one line. */
const BETWEEN = 5;

/** As many in a line as it holds; what has no step of its own begins another, or it would read as words of the step before it. */
function listMarks(rows: readonly ListRow[], top: number, width: number): { height: number; marks: Mark[] } {
  const marks: Mark[] = [];
  let [x, y] = [0, top];
  for (const [index, { number, words }] of rows.entries()) {
    const indent = number === undefined ? 0 : 2 * ringOf(number) + 1;
    const room = indent + textWidth(words, FIGURE, "regular");
    const another = number === undefined && rows[index - 1]?.number !== undefined;
    if (x > 0 && (another || x + room > width)) [x, y] = [0, y + ROW];
    if (number !== undefined) marks.push(...numberMarks(number, { x: x + ringOf(number) + 0.1, y: y + ROW / 2 }));
    for (const [index, row] of wrapText(words, width - indent, FIGURE, "regular").entries()) {
      if (index > 0) y += ROW;
      marks.push(text(row, { x: x + indent, y: y + ROW / 2 + 0.28 * FIGURE }, { size: FIGURE }));
    }
    x += room + BETWEEN;
  }
  return { height: y + ROW - top, marks };
}
