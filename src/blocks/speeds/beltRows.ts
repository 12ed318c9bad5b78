import type { Drawing, Mark } from "../../drawing/drawing.js";
import { circle, group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { say } from "../../words/say.js";
import { NoRoom } from "../shared/noRoom.js";
import { fewLines } from "../shared/shortened.js";
import { objectLine, rowLine, size } from "../shared/style.js";
import { type Name, nameHeight, nameMarks, nameOf } from "./beltNames.js";

/** One belt position as the card shows it. */
export type BeltRow = {
  /** Steps of the belts, and the way of the rest: "A" and "open". */
  readonly belts: readonly string[];
  readonly way: string;
  /** Without where nobody knows it. */
  readonly rpm?: string;
  /** Raised beside the speed, explained at the foot. */
  readonly sign: string;
  /** Why the hand must leave it alone. */
  readonly forbidden?: string;
};
/** A material with what each row serves of it, row by row. */
export type BeltColumn = {
  /** What it is called on paper; of several that are alike all names. */
  readonly name: string;
  /** Small work of it would bear more speed than there is. */
  readonly bearsMore: boolean;
  readonly cells: readonly BeltCell[];
};
export type BeltCell = { readonly words: string; readonly set?: string };

/** Least and most from one row to the next; one with two lines in it is higher. mm */
const LEAST = 7.5;
const MOST = 11.5;
const gap = 2.2;
/** From the sign beside a speed to the first material. */
const signGap = 1.4;
/** Beside a way of the drive that stands upright. */
const wayGap = 1;
/** Names longer than this share of the card wrap. */
const nameShare = 0.34;
const leastForbidden = 21;
const headingStep = size.text * 1.3;
const mostHeadingLines = 3;
const widestHeading = 30;

export type BeltTable = {
  readonly rows: readonly BeltRow[];
  readonly columns: readonly BeltColumn[];
  readonly names: readonly Name[];
  readonly nameWidth: number;
  readonly rpmWidth: number;
  readonly signWidth: number;
  /** Least of each, mm. */
  readonly columnWidths: readonly number[];
  readonly heights: readonly number[];
  readonly title: string;
  /** What ways of the drive take that stand upright beside their rows; 0 where each row names its own. */
  readonly wayWidth: number;
};

/** The table's columns and rows measured, on a card so wide. `title`: over the materials. `turned`: the ways of the drive stand upright
 *  beside the rows of each, which leaves room for a material more; `small`: names stand in one line, cut
 *  short where they must be, which leaves room for more rows. */
export function beltTableOf(
  { rows, columns, title }: Pick<BeltTable, "rows" | "columns" | "title">,
  card: number,
  { turned, small }: { readonly turned: boolean; readonly small: boolean },
): BeltTable {
  const apart = turned && rows.every(({ belts, way }) => belts.length > 0 && way !== "");
  const wayWidth = apart ? size.card * 1.1 + wayGap : 0;
  const names = rows.map((row) => nameOf(apart ? { ...row, way: "" } : row, nameShare * card, small));
  const known = rows.map(({ rpm }) => (rpm === undefined ? 4 : textWidth(rpm, size.hand, "bold")));
  const signs = rows.map(({ sign }) => (sign === "" ? 0 : textWidth(sign, signEm(sign), "bold") + 0.5));
  return {
    ...{ rows, columns, names, title },
    wayWidth,
    nameWidth: Math.max(
      textWidth(say("belt card.belt"), size.text, "bold") - wayWidth,
      ...names.map(({ width }) => width),
    ),
    rpmWidth: Math.max(textWidth(say("belt card.rpm"), size.text, "bold"), ...known),
    signWidth: Math.max(0, ...signs),
    columnWidths: columns.map(leastColumn),
    heights: rows.map((_, index) => {
      const inName = names[index] as Name;
      const set = columns.some(({ cells }) => cells[index]?.set !== undefined);
      return Math.max(LEAST, nameHeight(inName), set ? size.card + size.text + 1.6 : 0);
    }),
  };
}

/** What the key takes: position and speed. */
const keyWidth = ({ wayWidth, nameWidth, rpmWidth, signWidth }: BeltTable): number =>
  wayWidth + nameWidth + gap + rpmWidth + signWidth;

/** True where every way that stands upright has the height for it. */
export const waysFit = (table: BeltTable, span: readonly [number, number]): boolean =>
  table.wayWidth === 0 ||
  waysOf(table, span).every(({ way, from, to }) => {
    const height = table.heights.slice(from, to).reduce((sum, own) => sum + own, 0);
    return textWidth(way, size.card, "regular") <= height - 1;
  });

/** Rows of one way after the other. */
function waysOf(
  { rows }: BeltTable,
  [from, to]: readonly [number, number],
): { way: string; from: number; to: number }[] {
  const found: { way: string; from: number; to: number }[] = [];
  for (let index = from; index < to; index++) {
    const way = rows[index]?.way ?? "";
    const open = found.at(-1);
    if (open?.way === way) open.to = index + 1;
    else found.push({ way, from: index, to: index + 1 });
  }
  return found;
}

/** Materials side by side in so much width, in their order: which on each card; `alike`: as many on each.
 *  @throws NoRoom where not even one fits beside the key. */
export function acrossCards(table: BeltTable, width: number, alike: boolean): number[][] {
  const room = width - keyWidth(table) - signGap;
  const forbidden = table.rows.some((row) => row.forbidden !== undefined);
  if (table.columns.length === 0) {
    if (room < (forbidden ? leastForbidden : 0) - gap)
      throw new NoRoom(say("no room.card key", { wants: Math.ceil(keyWidth(table)), has: Math.floor(width) }));
    return [[]];
  }
  const widthOf = (indexes: readonly number[]) =>
    indexes.reduce((sum, index) => sum + (table.columnWidths[index] ?? 0) + gap, -gap);
  const fits = (indexes: readonly number[]) => widthOf(indexes) <= room + 1e-9;
  const split = (most: number) => {
    const cards: number[][] = [];
    for (const index of table.columns.keys()) {
      const open = cards.at(-1);
      if (open !== undefined && open.length < most && fits([...open, index])) open.push(index);
      else if (fits([index])) cards.push([index]);
      else
        throw new NoRoom(
          say("no room.card row", {
            wants: Math.ceil(keyWidth(table) + signGap + widthOf([index])),
            has: Math.floor(width),
          }),
        );
    }
    return cards;
  };
  if (forbidden && room < leastForbidden)
    throw new NoRoom(
      say("no room.card row", { wants: Math.ceil(keyWidth(table) + signGap + leastForbidden), has: Math.floor(width) }),
    );
  const greedy = split(Number.POSITIVE_INFINITY);
  // As many on each, rather than one that is nearly empty.
  const even = split(Math.ceil(table.columns.length / greedy.length));
  return alike && even.length === greedy.length ? even : greedy;
}

export const headingHeight = (table: BeltTable, shown: readonly number[], width: number): number =>
  (headingLines(table, shown, placed(table, shown, width)) + (shown.length > 0 ? 1 : 0)) * headingStep + 1.2;

/** Rows of `from` up to `to` with their heading. `height`: room for it; rows are set apart as it allows. */
export function drawnTable(
  table: BeltTable,
  shown: readonly number[],
  [from, to]: readonly [number, number],
  width: number,
  height: number,
): Drawing {
  const places = placed(table, shown, width);
  const right =
    places.at(-1)?.right ??
    Math.min(width, keyWidth(table) + signGap + (table.rows.some((row) => row.forbidden) ? 60 : 0));
  const head = headingHeight(table, shown, width);
  const heights = table.heights.slice(from, to);
  const least = heights.reduce((sum, own) => sum + own, 0);
  const more = Math.max(0, (height - head - least) / heights.length);
  const marks: Mark[] = [
    ...headingMarks(table, shown, places, head),
    line({ x: 0, y: head - 0.4 }, { x: right, y: head - 0.4 }, objectLine),
  ];
  let y = head;
  const tops: number[] = [];
  for (let index = from; index < to; index++) {
    const own = table.heights[index] ?? LEAST;
    const tall = Math.max(own, Math.min(MOST, own + more));
    const next = table.rows[index + 1];
    tops.push(y);
    marks.push(group({ x: 0, y }, rowMarks(table, index, shown, places, tall, right)));
    y += tall;
    const ends = index + 1 < to && next !== undefined && next.way !== table.rows[index]?.way;
    // Through no word that stands upright.
    const start = ends || index + 1 === to ? 0 : table.wayWidth;
    marks.push(line({ x: start, y }, { x: right, y }, ends ? objectLine : rowLine));
  }
  if (table.wayWidth > 0)
    for (const { way, from: first, to: last } of waysOf(table, [from, to])) {
      const middle = ((tops[first - from] ?? head) + (tops[last - from] ?? y)) / 2;
      marks.push(
        text(way, { x: size.card * 0.85, y: middle }, { size: size.card, anchor: "middle", turn: -Math.PI / 2 }),
      );
    }
  return { width: right, height: y + 0.2, marks };
}

type Span = { readonly left: number; readonly right: number };

/** Columns with what room is over shared among them, as far as their headings gain by it. */
function placed(table: BeltTable, shown: readonly number[], width: number): Span[] {
  const key = keyWidth(table) + signGap;
  const wish = (index: number) =>
    Math.max(
      table.columnWidths[index] ?? 0,
      Math.min(widestHeading, textWidth(table.columns[index]?.name ?? "", size.text, "bold")),
    );
  const least = shown.reduce((sum, index) => sum + (table.columnWidths[index] ?? 0) + gap, key - gap);
  const wished = shown.reduce((sum, index) => sum + wish(index) + gap, key - gap);
  const share = wished <= least ? 0 : Math.max(0, Math.min(1, (width - least) / (wished - least)));
  let left = key;
  return shown.map((index) => {
    const own = table.columnWidths[index] ?? 0;
    const span = { left, right: left + own + share * (wish(index) - own) };
    left = span.right + gap;
    return span;
  });
}

/** A sign is larger than a word. */
const signEm = (sign: string): number => (sign.length > 1 ? size.text : size.card);

const middleOf = ({ left, right }: Span): number => (left + right) / 2;

const headed = (table: BeltTable, index: number, span: Span): string[] =>
  fewLines(table.columns[index]?.name ?? "", mostHeadingLines, span.right - span.left, size.text, "bold");

const headingLines = (table: BeltTable, shown: readonly number[], places: readonly Span[]): number =>
  Math.max(1, ...shown.map((index, at) => headed(table, index, places[at] as Span).length));

function headingMarks(table: BeltTable, shown: readonly number[], places: readonly Span[], head: number): Mark[] {
  const bold = { size: size.text, weight: "bold" } as const;
  const last = head - 1.2 - 0.25 * size.text;
  const [first, end] = [places[0], places.at(-1)];
  const lines = headingLines(table, shown, places);
  return [
    text(say("belt card.belt"), { x: 0, y: last }, bold),
    text(say("belt card.rpm"), { x: rpmEndOf(table), y: last }, { ...bold, anchor: "end" }),
    ...(first && end
      ? [
          text(
            fitting(table.title, end.right),
            { x: titleEnd(table.title, first.left, end.right), y: last - lines * headingStep },
            { size: size.text, anchor: "end" },
          ),
        ]
      : []),
    ...shown.flatMap((index, at) => {
      const span = places[at] as Span;
      const words = headed(table, index, span);
      return words.map((one, line) =>
        text(
          one,
          { x: middleOf(span), y: last - (words.length - 1 - line) * headingStep },
          { ...bold, anchor: "middle" },
        ),
      );
    }),
  ];
}

const rpmEndOf = ({ wayWidth, nameWidth, rpmWidth }: BeltTable): number => wayWidth + nameWidth + gap + rpmWidth;

const fitting = (words: string, room: number): string => fewLines(words, 1, room, size.text, "regular")[0] ?? "";

/** Begins over the first material, or ends over the last where it is longer than they are wide. */
const titleEnd = (title: string, left: number, right: number): number =>
  Math.min(right, left + textWidth(title, size.text, "regular"));

function rowMarks(
  table: BeltTable,
  index: number,
  shown: readonly number[],
  places: readonly Span[],
  height: number,
  right: number,
): Mark[] {
  const row = table.rows[index] as BeltRow;
  const base = height / 2 + size.hand * 0.34;
  const rpmEnd = rpmEndOf(table);
  const marks: Mark[] = [
    group({ x: table.wayWidth, y: 0 }, nameMarks(table.names[index] as Name, height, row.forbidden === undefined)),
  ];
  if (row.rpm === undefined) marks.push(circle({ x: rpmEnd - 2, y: height / 2 }, 1.7, { pen: objectLine }));
  else
    marks.push(
      text(
        row.rpm,
        { x: rpmEnd, y: base },
        { size: size.hand, weight: row.forbidden ? "regular" : "bold", anchor: "end" },
      ),
    );
  if (row.sign !== "")
    marks.push(
      text(row.sign, { x: rpmEnd + 0.5, y: base - size.hand * 0.32 }, { size: signEm(row.sign), weight: "bold" }),
    );
  if (row.forbidden !== undefined)
    return [...marks, ...forbiddenMarks(row.forbidden, keyWidth(table) + signGap, right, height)];
  for (const [at, column] of shown.entries()) {
    const cell = table.columns[column]?.cells[index];
    if (cell === undefined || cell.words === "") continue;
    const x = middleOf(places[at] as Span);
    const y = height / 2 + size.card * 0.36 - (cell.set === undefined ? 0 : size.text * 0.55);
    marks.push(text(cell.words, { x, y }, { size: size.card, anchor: "middle" }));
    if (cell.set !== undefined)
      marks.push(text(cell.set, { x, y: y + size.text * 1.15 }, { size: size.text, anchor: "middle" }));
  }
  return marks;
}

/** A bar where the diameters would stand: the hand finds nothing to choose. */
function forbiddenMarks(words: string, left: number, right: number, height: number): Mark[] {
  const room = right - left - 2;
  const em = textWidth(words, size.card, "bold") <= room ? size.card : size.text;
  const most = Math.floor((height - 1.4) / (em * 1.15));
  const lines = fewLines(words, Math.max(1, most), room, em, "bold");
  const tall = lines.length * em * 1.15 + 1.2;
  const top = (height - tall) / 2;
  return [
    rectangle({ x: left, y: top }, right - left, tall, { fill: "black" }),
    ...lines.map((one, at) =>
      text(
        one,
        { x: (left + right) / 2, y: top + 0.6 + em * (1.15 * at + 0.9) },
        { size: em, weight: "bold", anchor: "middle", ink: "white" },
      ),
    ),
  ];
}

function leastColumn({ name, cells }: BeltColumn): number {
  const own = Math.max(
    0,
    ...cells.map(({ words, set }) =>
      Math.max(textWidth(words, size.card, "regular"), textWidth(set ?? "", size.text, "regular")),
    ),
  );
  const parts = name.split(/\s+|(?<=-)/).map((part) => textWidth(part, size.text, "bold"));
  let width = Math.min(widestHeading, Math.max(own, 8, ...parts));
  while (width < widestHeading && wrapText(name, width, size.text, "bold").length > mostHeadingLines) width += 0.5;
  return Math.max(own, width);
}
