import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import type { Findings } from "../../findings/findings.js";
import { speedDoubt } from "../../findings/speedDoubt.js";
import type { Use } from "../../findings/uses.js";
import type { Drive } from "../../machine/machine.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { type CautionPlace, cautionWords, strip } from "../shared/cautions.js";
import { drivePicture, pictureParts, pictureRoom } from "../shared/drivePicture.js";
import { NoRoom } from "../shared/noRoom.js";
import { paragraph } from "../shared/paragraph.js";
import { shortened } from "../shared/shortened.js";
import { size } from "../shared/style.js";
import { type BeltCard, beginWith, positionName } from "./beltCard.js";
import { acrossCards, type BeltTable, beltTableOf, headingHeight, heightsOf, waysFit } from "./beltMeasure.js";
import { drawnTable } from "./beltRows.js";

type Room = {
  readonly width: number;
  readonly height: number;
  /** At most so many, for the sake of which materials are left out; more only where the rows alone want them. */
  readonly cards: number;
  readonly caution: string;
  readonly use: Use;
};
/** Where the pulleys stand: beside the first rows, above them, on a card of their own, or nowhere. */
const places = ["left", "top", "apart", "none"] as const;
type Place = (typeof places)[number];

/** Which materials and rows each card shows. */
type Share = { readonly columns: readonly number[]; readonly rows: readonly [number, number] };
type Plan = {
  readonly table: BeltTable;
  readonly place: Place;
  readonly shares: readonly Share[];
  /** Materials left out. */
  readonly left: number;
  readonly count: number;
};

const gap = 2;
const beside = 4;
const widestPicture = 44;
/** More are no card in a cover. */
const MOST = 6;

/** A drawing for each card, and how many materials they leave out for want of room; of cards that are more than were wished, all. */
export type BeltCards = { readonly drawings: readonly Drawing[]; readonly left: number };

/** A position table with its pulleys laid out on as few cards as will do, a drawing each. */
export function beltCards(card: BeltCard, findings: Findings, room: Room): BeltCards {
  const drive = findings.machine.drive as Drive;
  const tables = [false, true].flatMap((small) =>
    [false, true].map((turned) => beltTableOf(card, room.width, { turned, small })),
  );
  const begin = beginWith(findings.drive?.speeds ?? [], findings.machine.limits);
  const drawn =
    begin === undefined
      ? []
      : [
          say("belt card.begin with", {
            position: shortened(positionName(begin, drive.stages), room.width * 0.22, size.text, "regular"),
          }),
        ];
  const head = headOf(findings, room);
  const foot = ({ columns, rows: [from, to] }: Share, first: boolean, left: number): Drawing => {
    const shown = Array.from({ length: to - from }, (_, at) => from + at);
    const words = [
      ...card.notes(shown, columns),
      ...(first ? drawn : []),
      ...(left > 0 ? [say("belt card.further")] : []),
    ];
    return stacked(
      [
        ...paragraph(words.join(" "), room.width, { size: size.text }),
        ...(room.use === "drilling"
          ? paragraph(say("cautions.drill"), room.width, { size: size.text, weight: "bold" })
          : []),
      ].filter(({ drawing }) => drawing.marks.length > 0),
      room.width,
    );
  };
  const all: Share = { columns: [...card.columns.keys()], rows: [0, card.rows.length] };
  const bodyWith = (left: number) => room.height - head.height - foot(all, true, left).height - gap;
  let body = bodyWith(0);
  let plan = planned(tables, drive, { ...room, height: body });
  if (plan.left > 0) {
    body = bodyWith(plan.left);
    plan = planned(tables, drive, { ...room, height: body });
  }
  const { table } = plan;
  const picture = (width: number, height: number, across: boolean) =>
    drivePicture(drive, begin?.position.steps, { width, height }, across);

  const drawings = plan.shares.map((share, index): Drawing => {
    const first = index === 0;
    const parts: Mark[] = [...head.marks];
    let y = head.height;
    let x = 0;
    let width = room.width;
    let height = body;
    let pictured = 0;
    if (first && plan.place === "top") {
      const above = picture(room.width, Math.min(body, topHeight(table, share, drive, room.width, body)), true);
      parts.push(group({ x: (room.width - above.width) / 2, y }, above.marks));
      y += above.height + gap;
      height -= above.height + gap;
    }
    const least = pictureRoom(drive, false);
    if (first && plan.place === "left") width -= least.width + beside;
    const rows = drawnTable(table, share.columns, share.rows, width, height);
    if (first && plan.place === "left") {
      const own = Math.min(widestPicture, room.width - rows.width - beside);
      const left = picture(own, Math.max(least.height, rows.height), false);
      parts.push(group({ x: 0, y: y + Math.max(0, (rows.height - left.height) / 2) }, left.marks));
      x = own + beside;
      pictured = left.height;
    }
    parts.push(group({ x, y }, rows.marks));
    y += Math.max(rows.height, pictured) + gap / 2;
    const notes = foot(share, first && plan.place !== "apart", plan.left);
    parts.push(group({ x: 0, y }, notes.marks));
    return { width: room.width, height: y + notes.height, marks: parts };
  });
  const left = plan.count > room.cards ? card.columns.length : plan.left;
  if (plan.place !== "apart") return { drawings, left };
  const own = room.height - head.height - size.text * 2;
  const across = pictureRoom(drive, false).height > own;
  const apart = picture(room.width, own, across);
  const words = stacked(paragraph(drawn.join(" "), room.width, { size: size.text }), room.width);
  const y = head.height + apart.height + gap;
  const pulleys: Drawing = {
    width: room.width,
    height: y + words.height,
    marks: [
      ...head.marks,
      group({ x: across ? (room.width - apart.width) / 2 : 0, y: head.height }, apart.marks),
      ...(drawn.length > 0 ? [group({ x: 0, y }, words.marks)] : []),
    ],
  };
  return { drawings: [...drawings, pulleys], left };
}

/** What must be read before a number is believed. */
function headOf(findings: Findings, { width, caution }: Room): Drawing {
  const runs: Run[] = [
    ...(caution === "none" ? [] : [strip(cautionWords(caution as CautionPlace), width)]),
    ...speedDoubt(findings).flatMap((words) =>
      paragraph(words, width, { size: size.text, weight: "bold", ink: "accent", gap: 0.8 }),
    ),
  ];
  const drawing = stacked(runs, width);
  return { ...drawing, height: runs.length === 0 ? 0 : drawing.height + gap };
}

/** The way with the fewest cards that shows all materials, or as many of the first as it can. */
function planned(tables: readonly BeltTable[], drive: Drive, room: Room): Plan {
  let reason: NoRoom | undefined;
  const plans = places.flatMap((place) =>
    tables.flatMap((table): Plan[] => {
      try {
        const plan = planFor(place, table, drive, room);
        return plan === undefined ? [] : [plan];
      } catch (fault) {
        if (!(fault instanceof NoRoom)) throw fault;
        reason ??= fault;
        return [];
      }
    }),
  );
  // Without pulleys only where nothing else will do.
  const pictured = plans.filter(({ place }) => place !== "none");
  const over = ({ count }: Plan) => Math.max(0, count - room.cards);
  const [best] = (pictured.length > 0 ? pictured : plans).sort(
    (a, b) => over(a) - over(b) || a.left - b.left || a.count - b.count,
  );
  if (best !== undefined) return best;
  const rows = tables[0]?.rows.length ?? 0;
  throw new NoRoom(reason?.message ?? say("no room.too many cards", { positions: rows, cards: MOST }), remedy());
}

const remedy = (): string => say("no room.larger cover");

function planFor(place: Place, table: BeltTable, drive: Drive, { width, height, cards }: Room): Plan | undefined {
  const least = pictureRoom(drive, false);
  const level = pictureRoom(drive, true);
  if (pictureParts(drive).length === 0 && place !== "none") return undefined;
  if (place === "left" && least.height > height) return undefined;
  if (place === "top" && level.width > width) return undefined;
  if (
    place === "apart" &&
    (level.width > width || level.height > height) &&
    (least.width > width || least.height > height)
  )
    return undefined;
  const narrow = place === "left" ? width - least.width - beside : width;
  const extra = place === "apart" ? 1 : 0;
  const first = place === "top" ? level.height + gap : 0;
  const pagesOf = (chunks: readonly (readonly number[])[]) =>
    chunks.map((columns, chunk) =>
      paged(table, columns, narrow, (page) => height - (chunk === 0 && page === 0 ? first : 0)),
    );
  const countOf = (pages: readonly (readonly unknown[])[]) => pages.reduce((sum, { length }) => sum + length, extra);
  let chunks = acrossCards(table, narrow, true);
  let pages = pagesOf(chunks);
  if (countOf(pages) > cards) {
    // Some must go: the first cards then take as many as they hold.
    chunks = acrossCards(table, narrow, false);
    pages = pagesOf(chunks);
    while (pages.length > 1 && countOf(pages) > cards) pages.pop();
  }
  const count = countOf(pages);
  if (count > MOST) return undefined;
  const left = chunks.slice(pages.length).reduce((sum, { length }) => sum + length, 0);
  const shares = pages.flatMap((spans, chunk) =>
    spans.map((rows): Share => ({ columns: chunks[chunk] as readonly number[], rows })),
  );
  if (!shares.every(({ rows }) => waysFit(table, rows))) return undefined;
  return { table, place, shares, left, count };
}

/** Rows on as few cards as hold them, as many on each; where it can be, a card ends with a way of the drive.
 *  @throws NoRoom where a card holds no row. */
function paged(
  table: BeltTable,
  columns: readonly number[],
  width: number,
  heightOf: (page: number) => number,
): (readonly [number, number])[] {
  const head = headingHeight(table, columns, width);
  const heights = heightsOf(table, columns, width);
  const total = heights.length;
  const sum = (from: number, to: number) => heights.slice(from, to).reduce((height, own) => height + own, head);
  const reach = (from: number, page: number) => {
    let to = from;
    while (to < total && sum(from, to + 1) <= heightOf(page) + 1e-9) to++;
    return to;
  };
  const greedy: (readonly [number, number])[] = [];
  for (let from = 0; from < total; ) {
    const to = reach(from, greedy.length);
    // A page of pulleys may be full already.
    if (to === from) throw new NoRoom(say("no room.single row"), remedy());
    greedy.push([from, to]);
    from = to;
  }
  const even: (readonly [number, number])[] = [];
  for (let page = 0, from = 0; page < greedy.length; page++) {
    const left = greedy.length - page;
    const most = reach(from, page);
    const wanted = from + Math.ceil((total - from) / left);
    const ends = [wanted, wanted + 1, wanted - 1, wanted + 2, wanted - 2];
    const way = ends.find(
      (to) => to > from && to <= most && to < total && table.rows[to]?.way !== table.rows[to - 1]?.way,
    );
    const to = left === 1 ? total : Math.min(way ?? wanted, most);
    if (left === 1 && to > most) return greedy;
    even.push([from, to]);
    from = to;
  }
  return even;
}

/** What rows leave, so that pulleys above them are as large as can be. */
function topHeight(
  table: BeltTable,
  { columns, rows: [from, to] }: Share,
  drive: Drive,
  width: number,
  height: number,
): number {
  const rows = heightsOf(table, columns, width)
    .slice(from, to)
    .reduce((sum, own) => sum + own, headingHeight(table, columns, width));
  return Math.max(pictureRoom(drive, true).height, Math.min(0.4 * height, height - rows - gap));
}

function stacked(runs: readonly Run[], width: number): Drawing {
  const marks: Mark[] = [];
  let y = 0;
  for (const { drawing, gap: above = 0 } of runs) {
    y += marks.length === 0 ? 0 : above;
    marks.push(group({ x: 0, y }, drawing.marks));
    y += drawing.height;
  }
  return { width, height: y, marks };
}
