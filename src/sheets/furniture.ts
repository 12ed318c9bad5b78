import { fewLines, nameLines, shortened } from "../blocks/shared/shortened.js";
import { axisLine, objectLine, pen, size } from "../blocks/shared/style.js";
import type { Mark, Weight } from "../drawing/drawing.js";
import { group, line, text } from "../drawing/shapes.js";
import { textWidth, wrapText } from "../drawing/text.js";
import type { Machine, Units } from "../machine/machine.js";
import { printerCorrection } from "../paper/printerCorrection.js";
import { formatFixed, formatLength } from "../quantity/format.js";
import { inMm } from "../quantity/length.js";
import { say } from "../words/say.js";
import type { Box } from "./margins.js";

/** What the head takes of a page, the room to the body included. */
export const headHeight = 10;
/** What the check bars take from the bottom and from the right of the frame. */
export const barRoom = 8;
/** A round length in the reader's unit: as many of `step` as there is room for, at most `most`. `places`: as told. */
const bars: Readonly<Record<Units, { step: number; most: number; places: number }>> = {
  mm: { step: 10, most: 100, places: 1 },
  in: { step: inMm(0.5, "in"), most: inMm(4, "in"), places: 2 },
};

/** What the page shows. A long title gets smaller, then two lines. */
export function pageHead(title: string, { left, top, width }: Box): Mark[] {
  const bold = { weight: "bold" } as const;
  const em = [size.card, size.text].find((own) => textWidth(title, own, "bold") <= width);
  const small = [size.text, size.source].find((own) => wrapText(title, width, own, "bold").length <= 2) ?? size.source;
  const [lines, own] = em === undefined ? [fewLines(title, 2, width, small, "bold"), small] : [[title], em];
  const first = lines.length === 1 ? 4.4 : 5.5 - small * 1.05;
  return [
    ...lines.map((words, at) => text(words, { x: left, y: top + first + at * small * 1.05 }, { size: own, ...bold })),
    line({ x: left, y: top + 6.6 }, { x: left + width, y: top + 6.6 }, objectLine),
  ];
}

/** Height of the title block alone. */
const blockHeight = 9;

/** Like a drawing's title block: which sheet of which machine, how old. A stale sheet must be noticed. */
export function pageFoot(machine: Machine, sheet: string, page: number, pages: number, box: Box): Mark[] {
  const bottom = box.top + box.height;
  const top = bottom - blockHeight;
  const right = [
    { label: say("page.label revision"), value: given(machine.revision) },
    { label: say("page.label measured"), value: given(machine.measured) },
    { label: say("page.label page"), value: say("page.of", { page, pages }) },
  ].map((cell) => ({ ...cell, width: cellWidth(cell.label, cell.value) }));
  narrowed(right, mostOnRight * box.width);
  const taken = right.reduce((sum, { width }) => sum + width, 0);
  const rest = box.width - taken;
  const label = say("page.label sheet");
  const wanted = Math.max(textWidth(sheet, size.text, "bold"), textWidth(label, size.source, "regular")) + 2 * inset;
  const own = Math.min(wanted, 0.55 * rest);
  const cells = [
    { label, value: sheet, width: own },
    { label: say("page.label machine"), value: machine.name, width: rest - own },
    ...right,
  ];
  let x = box.left;
  const marks: Mark[] = [line({ x, y: top }, { x: x + box.width, y: top }, objectLine)];
  for (const [index, { label, value, width }] of cells.entries()) {
    const weight: Weight = index === 0 ? "bold" : "regular";
    const start = x + (index === 0 ? 0 : inset);
    const room = width - (index === 0 ? inset : 2 * inset) + 0.01;
    if (index > 0) marks.push(line({ x, y: top + 1 }, { x, y: bottom }, axisLine));
    const { lines, em } = nameLines(value, room, [size.text, size.source], weight);
    const step = em * 1.3;
    // A name in two lines needs none to tell what it is.
    const labelled = lines.length > 1 ? [] : [shortened(label, room, size.source, "regular")];
    marks.push(
      ...labelled.map((words) => text(words, { x: start, y: top + 3.4 }, { size: size.source })),
      ...lines.map((words, at) =>
        text(words, { x: start, y: bottom - 1.2 - (lines.length - 1 - at) * step }, { size: em, weight }),
      ),
    );
    x += width;
  }
  return marks;
}

const given = (value: string | number | undefined): string =>
  value === undefined ? say("page.not given") : String(value);

/** Of the block's width, revision, day and page: the names before them are the longer. */
const mostOnRight = 0.55;

/** Where the cells together are wider than there is room, the widest gives way first. */
function narrowed(cells: { width: number }[], room: number): void {
  for (;;) {
    const over = cells.reduce((sum, { width }) => sum + width, 0) - room;
    if (over <= 1e-9) return;
    const [widest, next] = [...cells].sort((a, b) => b.width - a.width);
    if (widest === undefined) return;
    const step = widest.width - (next?.width ?? 0);
    widest.width -= Math.min(over, step > 1e-9 ? step : over / cells.length);
  }
}

const inset = 2;
const cellWidth = (label: string, value: string): number =>
  Math.max(textWidth(label, size.source, "regular"), textWidth(value, size.text, "regular")) + 2 * inset;

const noteStep = 3;
/** Of the lowest of three lines, which is the printer's correction. */
const noteBaseline = (box: Box): number => box.top + box.height - blockHeight - 1.8;

/** Between the corners of the printer check, whose figures on small paper come so far in from the block's right side; mm. */
const widestNote = 120;
const cornerInset = 8;

/** Who comes first, and how a page is printed whose lengths count; as many lines as they take. */
function noteLines(machine: Machine, trueSize: boolean, width: number): string[] {
  const uncorrected = machine.paper.printer === undefined ? ` ${say("page.not corrected")}` : "";
  return [...(trueSize ? [`${say("page.true size")}${uncorrected}`] : []), say("page.who comes first")].flatMap(
    (words) => wrapText(words, Math.min(width - cornerInset, widestNote), size.source, "regular"),
  );
}

/** What the foot takes of a page, mm: the title block, these lines, those of the printer's correction, and the room to the body. */
export const footHeight = (machine: Machine, trueSize: boolean, width: number): number =>
  blockHeight + 1 + noteStep * Math.max(3, lineCount(machine, trueSize, width));

/** Where no printer is named, a third line takes the place of its correction: longer words of another language cost a page nothing. */
function lineCount(machine: Machine, trueSize: boolean, width: number): number {
  const own = noteLines(machine, trueSize, width).length;
  return own + Math.max(own > 2 ? 0 : 1, correctionLines(machine, width).length);
}

export function pageNotes(machine: Machine, trueSize: boolean, box: Box): Mark[] {
  const count = lineCount(machine, trueSize, box.width);
  return noteMarks(noteLines(machine, trueSize, box.width), count, box);
}

/** The first of so many lines down to the lowest. */
const noteMarks = (lines: readonly string[], count: number, box: Box): Mark[] =>
  lines.map((one, index) =>
    text(one, { x: box.left, y: noteBaseline(box) - noteStep * (count - 1 - index) }, { size: size.source }),
  );

/** For which printer a page is corrected, and by what: for whoever holds the paper of another printer. */
export function correctionNote(machine: Machine, box: Box): Mark[] {
  const lines = correctionLines(machine, box.width);
  return noteMarks(lines, lines.length, box);
}

function correctionLines({ paper, printers }: Machine, width: number): string[] {
  const name = paper.printer;
  const printer = name === undefined ? undefined : printers[name];
  if (name === undefined || printer === undefined) return [];
  const [across, , skew, down] = printerCorrection(printer);
  const factors = [
    say("page.across factor", { factor: formatFixed(across, 4) }),
    say("page.down factor", { factor: formatFixed(down, 4) }),
    ...(printer.diagonals ? [say("page.skew", { skew: formatFixed(skew, 4) })] : []),
  ].join(", ");
  const linesOf = (by: string) =>
    wrapText(say("page.corrected", { printer: name }) + by, width, size.source, "regular");
  const full = linesOf(say("page.corrected by", { factors }));
  const bare = linesOf(say("page.corrected by alone", { factors }));
  // A line more may leave a card no room: which side is the long one goes before that.
  return bare.length < full.length ? bare : full;
}

/** One bar across and one down; a steel rule laid on them tells whether the page is true. Each says along which side of the
 *  sheet it lies: `foot`: what the foot below takes; `across` where the page lies across its sheet, and what seems across runs down. */
export function checkBars(box: Box, foot: number, across: boolean, units: Units): Mark[] {
  const { step, most, places } = bars[units];
  const length = Math.min(most, step * Math.floor((Math.min(box.width, box.height) - 10) / step));
  const y = box.top + box.height - foot - 1.6;
  const x = box.left + box.width - 1.5;
  const words = (side: string) =>
    shortened(
      say("page.check bar", { length: formatLength(length, units, places), side }),
      length - 5,
      size.source,
      "regular",
    );
  const [level, upright] = across
    ? [say("page.along down"), say("page.along across")]
    : [say("page.along across"), say("page.along down")];
  const levelBar = line({ x: box.left, y }, { x: box.left + length, y }, bar);
  const uprightBar = line({ x, y: box.top }, { x, y: box.top + length }, bar);
  return [
    group({ x: 0, y: 0 }, [levelBar], { name: "check-bar-level" }),
    group({ x: 0, y: 0 }, [uprightBar], { name: "check-bar-upright" }),
    text(words(level), { x: box.left + 2, y: y - 1.3 }, { size: size.source }),
    text(words(upright), { x: x - besideBar, y: box.top + 3 }, { size: size.source, turn: Math.PI / 2 }),
  ];
}

/** So thick that it has but two edges to measure between: its ends. A tick at either end would have two of its own. */
const bar = pen(1.2);
/** Of words that run down, whose letters' tops are towards the bar, mm. */
const besideBar = 3.3;
