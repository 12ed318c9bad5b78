import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import { textWidth, widestWord, wrapText } from "../../drawing/text.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { NoRoom } from "../shared/noRoom.js";
import { heightOf, whole } from "../shared/runs.js";
import { leading, rowLine, size } from "../shared/style.js";
import { type Cell, type Column, table, tableWidth } from "../shared/table.js";

export type Key = { readonly columns: readonly Column[]; readonly rows: readonly (readonly Cell[])[] };
/** A small table under a name, row by row with the key. */
export type Group = Key & { readonly name: string; readonly about: readonly string[] };

const between = 6;
type Room = {
  readonly width: number;
  readonly height: number /** Above the first, mm. */;
  readonly gap: number /** What stands over the first on its page, mm. */;
  readonly before: number;
};

/** Small tables that share their rows, as many side by side as there is room for, the key left of each lot; names wrap as far as that
 *  saves paper. In figures for the card where all rows of a lot stand on one page and no page more is needed, else in those of
 *  text.
 *  @throws NoRoom where the key and one table are wider than the paper. */
export function sideBySide(key: Key, groups: readonly Group[], { width, height, gap, before }: Room): Run[] {
  const shortest = (em: number): Run[][] | undefined =>
    keyWidths(key, width, em)
      .flatMap((keyWide) => {
        const lots = lotsOf(groups, width - keyWide, em);
        // Names in one size: none is more than its neighbour.
        const fit = groups.every((one) => textWidth(one.name, size.card, "bold") <= groupWidth(one, em));
        const name = fit ? size.card : size.text;
        return lots === undefined ? [] : [lots.map((lot) => lotRuns(key, lot, { width, keyWide, em, name }))];
      })
      .sort((a, b) => pages(a) - pages(b) || total(a) - total(b))[0];
  const total = (lots: readonly Run[][]) => lots.reduce((sum, lot) => sum + heightOf(lot) + lotGap, -lotGap);
  const pages = (lots: readonly Run[][]) => pagesFor([before, ...lots.map(heightOf)], height);
  const [large, small] = [shortest(size.card), shortest(size.text)];
  const roomy = large?.every((lot) => heightOf(lot) <= height) && (small === undefined || pages(large) <= pages(small));
  const chosen = roomy ? large : small;
  if (chosen === undefined)
    throw new NoRoom(({ there }) =>
      say("no room.wider", { table: groups[0]?.name ?? say("no room.unnamed"), has: there(width) }),
    );
  return chosen.flatMap((lot, index) =>
    whole(
      lot.map((run, row) => (row === 0 ? { ...run, gap: index === 0 ? gap : lotGap } : run)),
      height,
    ),
  );
}

/** Of so many lots one below the other, none broken that one page holds. */
function pagesFor(lots: readonly number[], height: number): number {
  let pages = 1;
  let used = 0;
  for (const lot of lots) {
    const own = used === 0 ? lot : used + lotGap + lot;
    if (own <= height) used = own;
    else {
      pages += (used === 0 ? 0 : 1) + Math.ceil(lot / height) - 1;
      used = lot - (Math.ceil(lot / height) - 1) * height;
    }
  }
  return pages;
}

const ample = 1000;
const lotGap = 5;

/** As wide as its names, and narrower where they can wrap. */
function keyWidths(key: Key, width: number, em: number): number[] {
  const natural = tableWidth(key.columns, key.rows, { width: ample, size: em });
  const rest = tableWidth(
    key.columns.slice(1),
    key.rows.map((row) => row.slice(1)),
    { width: ample, size: em },
  );
  const widest = Math.max(...key.rows.map(([cell]) => widestWord(cell?.text ?? "", em, "bold")));
  const names = Math.min(26, widest);
  const headed = key.columns[0]?.heading.map((words) => widestWord(words, size.text, "bold")) ?? [];
  const least = Math.min(natural, rest + Math.max(names, ...headed) + 3);
  const shares = [0.5, 0.4, 0.33].map((share) => share * width);
  return [natural, ...shares, least].filter((one) => one <= natural && one >= least);
}

const groupWidth = ({ columns, rows, about }: Group, em: number): number =>
  Math.max(
    tableWidth(columns, rows, { width: ample, size: em }),
    ...about.map((words) => Math.min(40, textWidth(words, size.text, "regular"))),
  );

/** As many in each lot, rather than one that is left over. */
function lotsOf(groups: readonly Group[], room: number, em: number): Group[][] | undefined {
  const split = (most: number) => {
    const lots: Group[][] = [];
    let used = 0;
    for (const one of groups) {
      const own = between + groupWidth(one, em);
      if (own > room + 1e-9) return undefined;
      const open = lots.at(-1);
      if (open !== undefined && open.length < most && used + own <= room + 1e-9) {
        open.push(one);
        used += own;
      } else {
        lots.push([one]);
        used = own;
      }
    }
    return lots;
  };
  const greedy = split(groups.length);
  if (greedy === undefined) return undefined;
  const even = split(Math.ceil(groups.length / greedy.length));
  return even?.length === greedy.length ? even : greedy;
}

type Wide = { readonly width: number; readonly keyWide: number; readonly em: number; readonly name: number };

function lotRuns(key: Key, lot: readonly Group[], { width, keyWide, em, name }: Wide): Run[] {
  const parts = [
    { ...key, name: "", about: [], x: 0, width: keyWide },
    ...lot.map((one) => ({ ...one, x: 0, width: groupWidth(one, em) })),
  ];
  let x = 0;
  const placed = parts.map((part, index) => {
    const at = index === 0 ? 0 : x + between;
    x = at + part.width;
    // A row more than there is, so that the heading stands apart from the first row.
    const [first, ...rows] = table(part.columns, [part.rows[0] ?? [], ...part.rows], { width: part.width, size: em });
    const heading = rows[0]?.heading ?? first?.drawing;
    return {
      x: at,
      rows,
      drawings: [...nameLines(part.name, name, part.about, part.width), ...(heading ? [heading] : [])],
    };
  });
  const heads = placed.map(({ x, drawings }) => ({ x, drawing: below(drawings) }));
  const tall = Math.max(...heads.map(({ drawing }) => drawing.height));
  const heading: Drawing = {
    width,
    height: tall,
    marks: heads.map(({ x, drawing }) => group({ x, y: tall - drawing.height }, drawing.marks)),
  };
  const rows = key.rows.map((_, index): Run => {
    const cells = placed.map(({ x, rows }) => ({ x, run: rows[index] as Run }));
    const height = Math.max(...cells.map(({ run }) => run.drawing.height));
    const last = index === key.rows.length - 1;
    const marks: Mark[] = [
      ...cells.map(({ x, run }) =>
        group(
          { x, y: 0 },
          run.drawing.marks.filter(({ kind }) => kind === "text"),
        ),
      ),
      ...placed.flatMap(({ x }, at) =>
        last || (index + 1) % 5 === 0
          ? [line({ x, y: height }, { x: x + (parts[at]?.width ?? 0), y: height }, rowLine)]
          : [],
      ),
    ];
    const gap = index > 0 && index % 5 === 0 && !last ? 1.2 : 0;
    return { drawing: { width, height: height + 0.2, marks }, gap, ...(index > 0 && { heading }) };
  });
  return [{ drawing: heading, keepWithNext: true }, ...rows];
}

/** The name, and what is to be known of it. */
function nameLines(name: string, em: number, about: readonly string[], width: number): Drawing[] {
  if (name === "") return [];
  const set = (words: string, own: number, weight: "bold" | "regular") =>
    wrapText(words, width, own, weight).map(
      (part): Drawing => ({
        width,
        height: own * leading,
        marks: [text(part, { x: 0, y: own * leading * 0.76 }, { size: own, weight })],
      }),
    );
  return [
    ...set(name, em, "bold"),
    ...about.flatMap((words) => set(words, size.text, "regular")),
    { width, height: 1, marks: [] },
  ];
}

function below(drawings: readonly Drawing[]): Drawing {
  let y = 0;
  const marks = drawings.map((drawing) => {
    const mark = group({ x: 0, y }, drawing.marks);
    y += drawing.height;
    return mark;
  });
  return { width: Math.max(0, ...drawings.map(({ width }) => width)), height: y, marks };
}
