import { grouped } from "../quantity/grouped.js";
import type { Piece } from "./packing.js";

/** A piece, and the word that it shares with those which should lie on one page with it; where those do not fit on one, `set` parts them, as
 *  the copies of one dial. `explains`: it tells of the others, and would mislead beside those of another word. `or`: a shape that it may
 *  take to lie with them. */
export type Grouped<T> = Piece<T> & {
  readonly besides?: string;
  readonly set?: string;
  readonly explains?: true;
  readonly or?: Piece<T>;
};
/** `words`: not a piece, but what is said of them all. */
export type Put<T> = Grouped<T> & { readonly x: number; readonly y: number; readonly words?: true };
/** How far down a page its pieces reach, mm. */
export type FilledPage<T> = { readonly placed: readonly Put<T>[]; readonly height: number };

export type Room = { readonly width: number; readonly height: number };
export const filledWith = <T>(placed: readonly Put<T>[]): FilledPage<T> => ({
  placed,
  height: Math.max(...placed.map(({ y, height }) => y + height)),
});

/** The which-th of the pieces one is, in whatever shape; what is none of them comes after all. */
export function numbered<T>(pieces: readonly Grouped<T>[]): (piece: Pick<Piece<T>, "item">) => number {
  const numbers = new Map(
    pieces.flatMap(({ item, or }, index) => [item, ...(or ? [or.item] : [])].map((one) => [one, index])),
  );
  return ({ item }) => numbers.get(item) ?? pieces.length;
}

/** Whether something of that size has that place to itself, `gap` mm from all that lies there. */
export const isFree = <T>({ x, y, width, height }: Free, placed: readonly Put<T>[], gap: number): boolean =>
  placed.every(
    (one) =>
      x >= one.x + one.width + gap - 1e-9 ||
      y >= one.y + one.height + gap - 1e-9 ||
      x + width + gap <= one.x + 1e-9 ||
      y + height + gap <= one.y + 1e-9,
  );

type Free = Room & { readonly x: number; readonly y: number };
type OpenPage<T> = { free: Free[]; readonly placed: Put<T>[] };
/** In which order pieces are placed, the largest first; how what is left of a rectangle is divided, under each piece over the whole width
 *  or beside it down to the bottom; and whether they go where they leave the least, or topmost. */
export type Way = {
  readonly first: (piece: Room) => number;
  readonly rest: "under" | "beside";
  readonly tightly?: true;
};

/** Of two dozen ways those without which others of 120 random machines' pieces took more pages. */
export const ways: readonly Way[] = [
  // As they are named, before all others: nothing is better where that takes as few pages.
  { first: () => 0, rest: "under" },
  { first: () => 0, rest: "beside" },
  { first: ({ height }) => height, rest: "under" },
  { first: ({ height }) => height, rest: "under", tightly: true },
  { first: ({ width, height }) => Math.max(width, height), rest: "beside" },
  { first: ({ width, height }) => width * height, rest: "under" },
  { first: ({ width, height }) => width * height, rest: "beside", tightly: true },
];

/** Pieces of one scale that differ in the last bit of a double are alike. */
export const thousandths = (length: number): number => Math.round(1e3 * length);

const sameSize = (one: Room, other: Room): boolean =>
  Math.abs(one.width - other.width) < 1e-6 && Math.abs(one.height - other.height) < 1e-6;

/** `whole`: the groups that go on a page together or not at all, where a page holds them. Undefined where it takes more pages than
 *  `most`. */
export function placedIn<T>(
  pieces: readonly Grouped<T>[],
  way: Way,
  whole: ReadonlySet<string>,
  { width, height }: Room,
  gap: number,
  most = Number.POSITIVE_INFINITY,
): FilledPage<T>[] | undefined {
  const pages: OpenPage<T>[] = [];
  const emptyPage = (): OpenPage<T> => ({
    free: [{ x: 0, y: 0, width: width + gap, height: height + gap }],
    placed: [],
  });
  const placeOne = (piece: Grouped<T>): void => {
    if (pages.some((page) => put(page, piece, way, gap))) return;
    const page = emptyPage();
    // Higher than the paper: alone, and the page tells that it does not fit.
    if (!put(page, piece, way, gap)) Object.assign(page, { free: [], placed: [{ ...piece, x: 0, y: 0 }] });
    pages.push(page);
  };
  const place = (group: readonly Grouped<T>[]): void => {
    const [first, ...others] = group;
    if (first === undefined) return;
    if (others.length === 0) {
      placeOne(first);
      return;
    }
    const empty = emptyPage();
    for (const page of [...pages, empty]) {
      const { free, placed } = page;
      const before = { free: [...free], placed: placed.length };
      if (group.every((piece) => put(page, piece, way, gap))) {
        if (page === empty) pages.push(page);
        return;
      }
      page.free = before.free;
      placed.length = before.placed;
    }
    // No page holds them all: what makes one whole goes first, what goes with it beside the first of them, then pieces alike stay together
    // as long as they can.
    const sets = [...new Set(group.flatMap(({ set }) => set ?? []))];
    if (sets.length > 1) {
      for (const one of sets) place(group.filter(({ set }) => (set ?? sets[0]) === one));
      return;
    }
    const alike = group.filter((piece) => sameSize(piece, first));
    place(alike.length < group.length ? alike : [first]);
    place(alike.length < group.length ? group.filter((piece) => !sameSize(piece, first)) : others);
  };
  const groups = grouped(pieces, (piece) =>
    piece.besides !== undefined && whole.has(piece.besides) ? piece.besides : piece,
  );
  const largest = (group: readonly Grouped<T>[]) => thousandths(Math.max(...group.map(way.first)));
  const ordered = [...groups.values()].map((group) => ({
    group: group.length < 2 ? group : [...group].sort((one, other) => largest([other]) - largest([one])),
    largest: largest(group),
  }));
  for (const { group } of ordered.sort((one, other) => other.largest - one.largest)) {
    place(group);
    if (pages.length > most) return undefined;
  }
  return pages.map(({ placed }) => filledWith(placed));
}

/** Puts the piece in the topmost place that holds it, of those the leftmost, or in the tightest; false where none does. */
function put<T>({ free, placed }: OpenPage<T>, piece: Grouped<T>, { rest, tightly }: Way, gap: number): boolean {
  const [width, height] = [piece.width + gap, piece.height + gap];
  let [at, least] = [-1, Number.POSITIVE_INFINITY];
  for (const [index, one] of free.entries()) {
    if (width > one.width + 1e-9 || height > one.height + 1e-9) continue;
    const leaves = tightly ? Math.min(one.width - width, one.height - height) : one.y * 1e4 + one.x;
    if (leaves < least) [at, least] = [index, leaves];
  }
  const place = free[at];
  if (place === undefined) return false;
  const { x, y } = place;
  const under = rest === "under";
  const beside = { x: x + width, y, width: place.width - width, height: under ? height : place.height };
  const below = { x, y: y + height, width: under ? place.width : width, height: place.height - height };
  free.splice(at, 1, ...[beside, below].filter((one) => one.width > gap && one.height > gap));
  placed.push({ ...piece, x, y });
  return true;
}
