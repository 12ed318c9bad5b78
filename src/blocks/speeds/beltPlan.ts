import type { Drive } from "../../machine/machine.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { say } from "../../words/say.js";
import { pictureParts, pictureRoom } from "../shared/drivePicture.js";
import { NoRoom } from "../shared/noRoom.js";
import type { Room } from "../shared/stepPulleys.js";
import { acrossCards, type BeltTable, headingHeight, heightsOf, waysFit } from "./beltMeasure.js";

/** What there is for a table and its pulleys on each card. */
export type TableRoom = {
  readonly width: number;
  /** For the table on the first card, whose notes are longer, there beside pulleys that have the card's whole height, and on the
   *  others; for pulleys on a card of their own, and beside table and notes. */
  readonly height: Record<"first" | "narrow" | "other" | "pulleys" | "whole", number>;
  /** At most so many, for the sake of which materials are left out; more only where the rows alone want them. */
  readonly cards: number;
};
/** Where the pulleys stand: beside the first rows, beside rows and notes, above the rows, on a card of their own, or nowhere. */
const places = ["left", "side", "top", "apart", "none"] as const;
type Place = (typeof places)[number];

/** Which materials and rows each card shows. */
export type Share = { readonly columns: readonly number[]; readonly rows: readonly [number, number] };
export type Plan = {
  readonly table: BeltTable;
  readonly place: Place;
  readonly shares: readonly Share[];
  /** Materials left out. */
  readonly left: number;
  readonly count: number;
  /** Without the pulleys that there are. */
  readonly bare: boolean;
  /** Cards that begin amid the rows of one way of the drive, have half the rows of another or less, or pulleys alone. */
  readonly broken: number;
  /** Rows that the fullest card has more than the emptiest with the same materials. */
  readonly uneven: number;
};

/** Below pulleys that stand above rows, and beside those that stand left of them. */
export const below = 2;
export const beside = 3;
/** More are no card in a cover. */
const MOST = 6;

/** The way with the fewest cards that shows all materials, or as many of the first as it can; of equals one that breaks no way of the drive, and then the first table.
 *  @throws NoRoom where there is none. */
export function planned(tables: readonly BeltTable[], drive: Drive, room: TableRoom): Plan {
  let reason: NoRoom | undefined;
  // The same for every table and place.
  const picture = {
    there: pictureParts(drive).length > 0,
    least: pictureRoom(drive, false),
    level: pictureRoom(drive, true),
  };
  const plans = tables.flatMap((table) =>
    places.flatMap((place): Plan[] => {
      try {
        const plan = planFor(place, table, picture, room);
        return plan === undefined ? [] : [plan];
      } catch (fault) {
        if (!(fault instanceof NoRoom)) throw fault;
        reason ??= fault;
        return [];
      }
    }),
  );
  const [best] = plans.sort(byWorth(room.cards));
  if (best !== undefined) return best;
  const rows = tables[0]?.rows.length ?? 0;
  throw new NoRoom(reason?.told ?? say("no room.too many cards", { positions: rows, cards: MOST }), remedy());
}

export type Worth = Pick<Plan, "bare" | "left" | "count" | "broken" | "uneven"> & {
  /** Leaves materials out without their names. */
  readonly unnamed?: boolean;
};

/** The better first: with no more cards than so many, then with pulleys, then with the most materials, the fewest cards, what is left out
 *  named, the fewest that are broken, the most even. */
export const byWorth =
  (cards: number) =>
  (one: Worth, other: Worth): number =>
    Math.max(0, one.count - cards) - Math.max(0, other.count - cards) ||
    Number(one.bare) - Number(other.bare) ||
    one.left - other.left ||
    one.count - other.count ||
    Number(one.unnamed ?? false) - Number(other.unnamed ?? false) ||
    one.broken - other.broken ||
    one.uneven - other.uneven;

/** Whether there are pulleys to show, and what they take below one another and side by side. */
type Picture = { readonly there: boolean; readonly least: Room; readonly level: Room };

const remedy = (): string => say("no room.larger cover");

function planFor(
  place: Place,
  table: BeltTable,
  { there, least, level }: Picture,
  { width, height: heights, cards }: TableRoom,
): Plan | undefined {
  const height = place === "apart" ? heights.other : place === "side" ? heights.narrow : heights.first;
  if (!there && place !== "none") return undefined;
  if (place === "left" && least.height > height) return undefined;
  if (place === "side" && least.height > heights.whole) return undefined;
  if (place === "top" && level.width > width) return undefined;
  if (
    place === "apart" &&
    (level.width > width || level.height > heights.pulleys) &&
    (least.width > width || least.height > heights.pulleys)
  )
    return undefined;
  const narrow = place === "left" || place === "side" ? width - least.width - beside : width;
  const extra = place === "apart" ? 1 : 0;
  const first = place === "top" ? level.height + below : 0;
  const pagesOf = (chunks: readonly (readonly number[])[]) =>
    chunks.map((columns, chunk) =>
      paged(table, columns, narrow, (page) => (chunk === 0 && page === 0 ? height - first : heights.other)),
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
  const amid = ({ rows: [from] }: Share) => from > 0 && table.rows[from]?.way === table.rows[from - 1]?.way;
  // A way too long for any card is broken everywhere.
  const torn = table.rows.some(({ way }) => way !== table.rows[0]?.way) ? shares.filter(amid).length : 0;
  const counts = pages.map((spans) => spans.map(([from, to]) => to - from));
  const scanty = counts.flatMap((own) => own.filter((rows) => rows <= largestOf(own) / 2)).length;
  const uneven = largestOf(counts.map((own) => largestOf(own) - smallestOf(own)));
  const bare = there && place === "none";
  return { table, place, shares, left, count, bare, broken: extra + torn + scanty, uneven };
}

/** Rows on as few cards as hold them, as many on each; where one row more or less does it, a card ends with a way of the drive.
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
    const ends = [wanted, wanted + 1, wanted - 1];
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
