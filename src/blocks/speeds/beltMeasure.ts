import { textWidth, wrapText } from "../../drawing/text.js";
import { say } from "../../words/say.js";
import { NoRoom } from "../shared/noRoom.js";
import { size } from "../shared/style.js";
import { type Name, nameHeight, nameOf } from "./beltNames.js";

/** Steps of the belts, and the way of the rest: "A" and "open". */
export type Labels = { readonly belts: readonly string[]; readonly way: string };
/** One belt position as the card shows it. */
export type BeltRow = Labels & {
  /** Positions that give nearly the same speed. */
  readonly also: readonly Labels[];
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
  /** As the file has them. */
  readonly materials: readonly string[];
  /** Small work of it would bear more speed than there is. */
  readonly bearsMore: boolean;
  /** The row of its largest work, where still larger is too fast for every position. */
  readonly endsAt?: number;
  readonly cells: readonly BeltCell[];
};
export type BeltCell = { readonly words: string; readonly set?: string };

/** How large and how close rows stand: the em of positions and speeds, and of what stands over the columns; least and most from one row
 *  to the next; one with two lines in it is higher. mm */
export type Density = { readonly em: number; readonly head: number; readonly least: number; readonly most: number };
/** The largest first. 13 pt is what is still read at 0.7 m. */
export const densities: readonly Density[] = [
  { em: size.hand, head: size.card, least: 7.5, most: 11.5 },
  { em: size.hand, head: size.text, least: 7.5, most: 11.5 },
  { em: size.hand, head: size.text, least: 6.3, most: 11.5 },
  { em: size.card, head: size.card, least: 5.2, most: 7.5 },
  { em: size.card, head: size.text, least: 5.2, most: 7.5 },
  { em: size.card, head: size.text, least: 5, most: 7.5 },
];
const gap = 2;
/** From the sign beside a speed to the first material. */
export const signGap = 1.4;
/** Beside a way of the drive that stands upright. */
const wayGap = 1.8;
/** Names longer than this share of the card wrap. */
const nameShare = 0.34;
/** Within a bar beside its words, and above and below them; from line to line, of its em. */
const barPad = 1;
export const barMargin = 0.6;
/** To the lines above and below. */
export const barClear = 0.2;
export const barStep = 1.15;
/** From line to line over the columns. */
export const headingStep = ({ density }: Pick<BeltTable, "density">): number => density.head * 1.3;
/** Longer names widen their column, up to `widestHeading`. */
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
  /** What each would take for its name to stand in one line. */
  readonly wishes: readonly number[];
  /** The longest words of a bar in one line of 13 pt. */
  readonly bar: number;
  /** Least of each, but for the words of a bar. */
  readonly heights: readonly number[];
  readonly title: string;
  /** Where that has no room. */
  readonly shortTitle: string;
  readonly density: Density;
  /** What ways of the drive take that stand upright beside their rows; 0 where each row names its own. */
  readonly wayWidth: number;
};

/** The table's columns and rows measured, on a card so wide. `title`: over the materials. `turned`: the ways of the drive stand upright
 *  beside the rows of each, which leaves room for a material more, as does what gives nearly the same speed `below` and not beside. */
export function beltTableOf(
  { rows, columns, title, shortTitle }: Pick<BeltTable, "rows" | "columns" | "title" | "shortTitle">,
  card: number,
  { turned, below, density }: { readonly turned: boolean; readonly below: boolean; readonly density: Density },
): BeltTable {
  const apart = turned && rows.every(({ belts, way }) => belts.length > 0 && way !== "");
  const wayWidth = apart ? size.card * 1.1 + wayGap : 0;
  // What stands upright beside a row holds for it and for what it names of the same way.
  const named = (row: BeltRow) => {
    const own = ({ belts, way }: Labels) => ({ belts, way: way === row.way ? "" : way });
    return apart ? { ...own(row), also: row.also.map(own) } : row;
  };
  const names = rows.map((row) => nameOf(named(row), nameShare * card, density.em, below));
  const known = rows.map(({ rpm }) => (rpm === undefined ? 4 : textWidth(rpm, density.em, "bold")));
  const columnWidths = columns.map((column) => leastColumn(column, density.head));
  const ways = waysOf({ rows }, [0, rows.length]);
  // The rows of a way are together as high as its name is long, where all of them stand on one card.
  const upright = (index: number) => {
    const own = ways.find(({ from, to }) => from <= index && index < to);
    if (!apart || own === undefined) return 0;
    return (textWidth(own.way, size.card, "regular") + 1.01) / (own.to - own.from);
  };
  const signs = rows.map(({ sign }) => (sign === "" ? 0 : textWidth(sign, signEm(sign, density), "bold") + 0.5));
  return {
    ...{ rows, columns, names, title, shortTitle, density },
    wayWidth,
    nameWidth: Math.max(
      textWidth(say("belt card.belt"), density.head, "bold") - wayWidth,
      ...names.map(({ width }) => width),
    ),
    rpmWidth: Math.max(textWidth(say("belt card.rpm"), density.head, "bold"), ...known),
    signWidth: Math.max(0, ...signs),
    columnWidths,
    wishes: columns.map(({ name }, index) =>
      Math.max(columnWidths[index] ?? 0, Math.min(widestHeading, textWidth(name, density.head, "bold"))),
    ),
    bar: Math.max(0, ...rows.map(({ forbidden = "" }) => textWidth(forbidden, size.card, "bold"))),
    heights: rows.map((_, index) => {
      const inName = names[index] as Name;
      const set = columns.some(({ cells }) => cells[index]?.set !== undefined);
      return Math.max(density.least, upright(index), nameHeight(inName), set ? size.card + size.text + 1.6 : 0);
    }),
  };
}

/** True where a position's name is smaller than what can be read in the cover. */
export const longNames = ({ rows }: Pick<BeltTable, "rows">, card: number): boolean =>
  rows.some((row) => nameOf(row, nameShare * card, size.hand).em < size.card);

/** What the key takes: position and speed. */
export const keyWidth = ({ wayWidth, nameWidth, rpmWidth, signWidth }: BeltTable): number =>
  wayWidth + nameWidth + gap + rpmWidth + signWidth;

/** True where every way that stands upright has the height for it. */
export const waysFit = (table: BeltTable, span: readonly [number, number]): boolean =>
  table.wayWidth === 0 ||
  waysOf(table, span).every(({ way, from, to }) => {
    const height = table.heights.slice(from, to).reduce((sum, own) => sum + own, 0);
    return textWidth(way, size.card, "regular") <= height - 1;
  });

type BarWords = { readonly lines: readonly string[]; readonly em: number; readonly height: number };

/** The words of a bar over the place of the diameters: in 13 pt where they fit in one line, or in the height of several rows; in 9 pt in as many lines
 *  as it takes: none is ever cut. */
export function barOf(words: string, room: number, height = 0): BarWords {
  const set = (em: number): BarWords => {
    const lines = wrapText(words, room - 2 * barPad, em, "bold");
    return { lines, em, height: lines.length * em * barStep + 2 * barMargin };
  };
  const large = set(size.card);
  if (height > 0 ? large.height <= height : large.lines.length === 1) return large;
  return set(size.text);
}

/** No word of a bar is broken. */
const leastBar = ({ rows }: BeltTable): number =>
  Math.max(
    ...rows.flatMap(({ forbidden }) => forbidden?.split(" ") ?? []).map((word) => textWidth(word, size.text, "bold")),
    -2 * barPad,
  ) +
  2 * barPad;

/** Where the table ends at the right: with its last material, or farther for the words of a bar. */
export function rightOf(table: BeltTable, shown: readonly number[], width: number): number {
  const left = keyWidth(table) + signGap;
  const last = placed(table, shown, width).at(-1)?.right ?? left;
  const bar = table.bar === 0 ? 0 : left + table.bar + 2 * barPad + 0.01;
  return Math.max(last, Math.min(width, bar));
}

/** Least of each row where these materials are shown in so much width. */
export function heightsOf(table: BeltTable, shown: readonly number[], width: number): number[] {
  const room = rightOf(table, shown, width) - keyWidth(table) - signGap;
  return table.rows.map(({ forbidden }, index) => {
    const own = table.heights[index] ?? table.density.least;
    if (forbidden === undefined) return own;
    // Of several under one bar each holds its words at a pinch: a card may end after any.
    const several = sameBar(table, index - 1) || sameBar(table, index);
    const one = textWidth(forbidden, size.text, "bold") <= room - 2 * barPad;
    const tall = several && one ? size.text * barStep + 2 * barMargin : barOf(forbidden, room).height;
    return Math.max(own, tall + 2 * barClear);
  });
}

/** True where a row and the one below it are forbidden in the same words, so that one bar lies over both. */
export function sameBar({ rows }: BeltTable, index: number): boolean {
  const [row, next] = [rows[index], rows[index + 1]];
  return row?.forbidden !== undefined && row.forbidden === next?.forbidden && row.way === next.way;
}

/** Rows of one way after the other. */
export function waysOf(
  { rows }: Pick<BeltTable, "rows">,
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
  const barred = leastBar(table);
  if (table.columns.length === 0) {
    if (room < Math.max(barred, -gap))
      throw new NoRoom(({ wanted, there }) =>
        say("no room.card key", { wants: wanted(keyWidth(table)), has: there(width) }),
      );
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
        throw new NoRoom(({ wanted, there }) =>
          say("no room.card row", {
            wants: wanted(keyWidth(table) + signGap + widthOf([index])),
            has: there(width),
          }),
        );
    }
    return cards;
  };
  if (room < barred)
    throw new NoRoom(({ wanted, there }) =>
      say("no room.card row", { wants: wanted(keyWidth(table) + signGap + barred), has: there(width) }),
    );
  const greedy = split(Number.POSITIVE_INFINITY);
  // As many on each, rather than one that is nearly empty.
  const even = split(Math.ceil(table.columns.length / greedy.length));
  return alike && even.length === greedy.length ? even : greedy;
}

/** Of the title over the names of the materials. */
export const titleStep = size.text * 1.3;

/** The title in the corner over position and speed, in lines, where it has room there beside the names of the materials. */
export function cornerTitle(table: BeltTable, lines: number): string[] | undefined {
  const own = wrapText(table.title, keyWidth(table), size.text, "regular");
  return own.length * titleStep <= (lines - 1) * headingStep(table) + 1e-9 ? own : undefined;
}

export function headingHeight(table: BeltTable, shown: readonly number[], width: number): number {
  const lines = headingLines(table, shown, placed(table, shown, width));
  const over = shown.length > 0 && cornerTitle(table, lines) === undefined ? 1 : 0;
  return lines * headingStep(table) + over * titleStep + 1.2;
}

export type Span = { readonly left: number; readonly right: number };

/** Columns with what room is over shared among them, as far as their headings gain by it. */
export function placed(table: BeltTable, shown: readonly number[], width: number): Span[] {
  const key = keyWidth(table) + signGap;
  const wish = (index: number) => table.wishes[index] ?? 0;
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
export const signEm = (sign: string, { em }: Density): number =>
  sign.length > 1 || em < size.hand ? size.text : size.card;

export const middleOf = ({ left, right }: Span): number => (left + right) / 2;

export const headed = (table: BeltTable, index: number, span: Span): string[] =>
  wrapText(table.columns[index]?.name ?? "", span.right - span.left, table.density.head, "bold");

export const headingLines = (table: BeltTable, shown: readonly number[], places: readonly Span[]): number =>
  Math.max(1, ...shown.map((index, at) => headed(table, index, places[at] as Span).length));

export const rpmEndOf = ({ wayWidth, nameWidth, rpmWidth }: BeltTable): number => wayWidth + nameWidth + gap + rpmWidth;

function leastColumn({ name, cells }: BeltColumn, head: number): number {
  const own = Math.max(
    0,
    ...cells.map(({ words, set }) =>
      Math.max(textWidth(words, size.card, "regular"), textWidth(set ?? "", size.text, "regular")),
    ),
  );
  const parts = name.split(/\s+|(?<=-)/).map((part) => textWidth(part, head, "bold"));
  let width = Math.min(widestHeading, Math.max(own, 8, ...parts));
  while (width < widestHeading && wrapText(name, width, head, "bold").length > mostHeadingLines) width += 0.5;
  return Math.max(own, width);
}
