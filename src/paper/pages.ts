import type { Piece } from "./packing.js";

/** A piece, and the word that it shares with those which should lie on one page with it; where those do not fit on one, `set` parts them, as
 *  the copies of one dial. */
export type Grouped<T> = Piece<T> & { readonly besides?: string; readonly set?: string };
/** `words`: not a piece, but what is said of them all. */
type Put<T> = Grouped<T> & { readonly x: number; readonly y: number; readonly words?: true };
/** How far down a page its pieces reach, mm. */
export type FilledPage<T> = { readonly placed: readonly Put<T>[]; readonly height: number };

type Room = { readonly width: number; readonly height: number };
type Free = Room & { readonly x: number; readonly y: number };
type OpenPage<T> = { free: Free[]; readonly placed: Put<T>[] };
/** In which order pieces are placed, the largest first; how what is left of a rectangle is divided, under each piece over the whole width
 *  or beside it down to the bottom; and whether they go where they leave the least, or topmost. */
type Way = {
  readonly first: (piece: Room) => number;
  readonly rest: "under" | "beside";
  readonly tightly?: true;
};

/** Of two dozen ways those without which others of 120 random machines' pieces took more pages. */
const ways: readonly Way[] = [
  // As they are named, before all others: nothing is better where that takes as few pages.
  { first: () => 0, rest: "under" },
  { first: () => 0, rest: "beside" },
  { first: ({ height }) => height, rest: "under" },
  { first: ({ height }) => height, rest: "under", tightly: true },
  { first: ({ width, height }) => Math.max(width, height), rest: "beside" },
  { first: ({ width, height }) => width * height, rest: "under" },
  { first: ({ width, height }) => width * height, rest: "beside", tightly: true },
];

/** Puts pieces on as few pages as are found in a few ways of placing the large ones first, each cut from what is left by straight cuts
 *  from edge to edge, `gap` mm between neighbours, and the words on them where these leave room; of ways with as few pages the first that
 *  scatters the least what belongs together, has the words at the end, and goes on from page to page in the order of the pieces. Nothing
 *  is turned: how a strip lies to the grain of the paper matters. The same pieces in the same order give the same places.
 *  `words`: the shapes that they may take, the most wanted first; where no page has room for any, they are not placed. `below`: how high
 *  what follows on the last page is, mm.
 *  @throws RangeError for a piece wider than the paper. */
export function packedOnPages<T>(
  pieces: readonly Grouped<T>[],
  room: Room,
  gap: number,
  { words = [], below = 0 }: { readonly words?: readonly (() => Piece<T>)[]; readonly below?: number } = {},
): FilledPage<T>[] {
  if (pieces.some(({ width }) => width > room.width + 1e-9)) throw new RangeError("a piece wider than its paper");
  const area = ({ width, height }: Room) => (width + gap) * (height + gap);
  const fewest = Math.ceil(pieces.reduce((sum, piece) => sum + area(piece), 0) / area(room) - 1e-9);
  const task = { pieces, room, gap, words, after: below > 0 ? gap + below : 0 };
  let best: Layout<T> | undefined;
  // Nothing is better than no page more than the pieces' areas fill, and nothing parted.
  const perfect = () => best?.cost.every((value, at) => value === (at === 0 ? fewest : 0));
  const attempt = (whole: ReadonlySet<string>): boolean => {
    const before = best;
    for (const way of ways) {
      if (perfect()) break;
      const found = placedIn(pieces, way, whole, room, gap);
      // More pages than are known to do: whatever their order.
      if (found.length > (best?.pages.length ?? Number.POSITIVE_INFINITY)) continue;
      for (const layout of layouts(found, task)) if (best === undefined || less(layout.cost, best.cost)) best = layout;
    }
    return best !== before;
  };
  const kinds = new Set(pieces.flatMap(({ besides }) => besides ?? []));
  attempt(kinds);
  if (kinds.size > 0) attempt(new Set());
  // What is parted even so is tried one by one.
  let whole: ReadonlySet<string> = new Set();
  for (const kind of new Set(scattered(best?.pages ?? []))) {
    const more = new Set([...whole, kind]);
    if (attempt(more)) whole = more;
  }
  return [...(best?.pages ?? [])];
}

type Task<T> = {
  readonly pieces: readonly Grouped<T>[];
  readonly room: Room;
  readonly gap: number;
  readonly words: readonly (() => Piece<T>)[];
  /** What follows the last page's pieces, mm, its distance from them included. */
  readonly after: number;
};
/** `cost`: pages, the one included that what has no room begins; groups parted; words that do not stand at the end; how far down the last
 *  page reaches where something has no room; pages out of the order of the pieces; which shape the words take. */
type Layout<T> = { readonly pages: readonly FilledPage<T>[]; readonly cost: readonly number[] };

/** Pages in order: as often as there are pages that may hold the words, or once without. */
function layouts<T>(found: readonly FilledPage<T>[], task: Task<T>): Layout<T>[] {
  const { pieces, room, gap, words, after } = task;
  const layout = (pages: readonly FilledPage<T>[], misplaced: number, shape: number, unsaid: boolean): Layout<T> => {
    const reaches = unsaid ? (pages.at(-1)?.height ?? 0) : 0;
    const length = pages.length + (unsaid ? 1 : 0);
    return { pages, cost: [length, scattered(pages).length, misplaced, reaches, disorder(pages, pieces), shape] };
  };
  const aboveWhatFollows = { ...room, height: room.height - after };
  const ends = ({ height }: FilledPage<T>) => height <= aboveWhatFollows.height + 1e-9;
  const pages = inOrder(found, pieces, lastOf(found, pieces, room, after));
  const last = pages.at(-1);
  const hasEnd = last !== undefined && ends(last);
  if (words.length === 0) return [layout(pages, 0, 0, !hasEnd)];
  const said = pages.flatMap((page) => {
    const atEnd = ends(page) ? withWords(page, words, aboveWhatFollows, gap) : undefined;
    if (atEnd !== undefined) {
      const others = pages.filter((one) => one !== page);
      return [layout(inOrder([...others, atEnd.page], pieces, atEnd.page), 0, atEnd.shape, false)];
    }
    const before = page !== last && hasEnd ? withWords(page, words, room, gap) : undefined;
    if (before === undefined) return [];
    return [
      layout(
        pages.map((one) => (one === page ? before.page : one)),
        1,
        before.shape,
        false,
      ),
    ];
  });
  return said.length > 0 ? said : [layout(pages, 0, 0, true)];
}

/** The page with the words in the topmost place, of those the leftmost, for the first shape that has one. */
function withWords<T>(
  { placed, height: reaches }: FilledPage<T>,
  words: readonly (() => Piece<T>)[],
  room: Room,
  gap: number,
): { readonly shape: number; readonly page: FilledPage<T> } | undefined {
  const xs = [0, ...placed.map(({ x, width }) => x + width + gap)].sort((one, other) => one - other);
  const ys = [0, ...placed.map(({ y, height }) => y + height + gap)].sort((one, other) => one - other);
  const isFree = (at: Free): boolean =>
    placed.every(
      ({ x, y, width, height }) =>
        at.x >= x + width + gap - 1e-9 ||
        at.y >= y + height + gap - 1e-9 ||
        at.x + at.width + gap <= x + 1e-9 ||
        at.y + at.height + gap <= y + 1e-9,
    );
  for (const [shape, take] of words.entries()) {
    const piece = take();
    const { width, height } = piece;
    for (const y of ys)
      for (const x of xs)
        if (x + width <= room.width + 1e-9 && y + height <= room.height + 1e-9 && isFree({ x, y, width, height })) {
          const page = {
            height: Math.max(reaches, y + height),
            placed: [...placed, { ...piece, x, y, words: true as const }],
          };
          return { shape, page };
        }
  }
  return undefined;
}

/** Of costs the first that differs decides. */
export const less = (one: readonly number[], other: readonly number[]): boolean => {
  const at = one.findIndex((value, index) => Math.abs(value - (other[index] ?? 0)) > 1e-9);
  return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0);
};

/** The groups that lie on more than one page, each as often as there are further pages with some of it. */
function scattered<T>(pages: readonly FilledPage<T>[]): string[] {
  const seen = pages.flatMap(({ placed }) => [...new Set(placed.flatMap(({ besides }) => besides ?? []))]);
  return seen.filter((kind, index) => seen.indexOf(kind) !== index);
}

/** Of a page, that it may stand before others. */
const FULL = 0.38;

/** The page that best stands at the end: a nearly empty one, or else of those on which what follows has room the one named last. */
function lastOf<T>(
  found: readonly FilledPage<T>[],
  pieces: readonly Grouped<T>[],
  room: Room,
  after: number,
): FilledPage<T> | undefined {
  const [first, ...others] = found;
  if (first === undefined) return undefined;
  const emptiest = others.reduce((least, page) => (page.height < least.height ? page : least), first);
  if (emptiest.height < FULL * room.height) return emptiest;
  const firstNamed = firstNamedOf(pieces);
  const roomy = found.filter(({ height }) => height + after <= room.height + 1e-9);
  return roomy.sort((one, other) => firstNamed(one) - firstNamed(other)).at(-1) ?? emptiest;
}

/** Which of the pieces is named before all others of a page. */
function firstNamedOf<T>(pieces: readonly Grouped<T>[]): (page: FilledPage<T>) => number {
  const named = new Map(pieces.map(({ item }, index) => [item, index]));
  return ({ placed }) => Math.min(...placed.map(({ item }) => named.get(item) ?? pieces.length));
}

/** Pages one after the other as their first pieces are named, save the last; of pieces alike the first named goes on the first page. */
function inOrder<T>(
  found: readonly FilledPage<T>[],
  pieces: readonly Grouped<T>[],
  last: FilledPage<T> | undefined,
): FilledPage<T>[] {
  if (last === undefined) return [];
  const firstNamed = firstNamedOf(pieces);
  const before = found.filter((page) => page !== last).sort((one, other) => firstNamed(one) - firstNamed(other));
  return namedInOrder([...before, last], pieces);
}

/** Pieces that are alike change places, so that the first named lies first. */
function namedInOrder<T>(pages: readonly FilledPage<T>[], pieces: readonly Grouped<T>[]): FilledPage<T>[] {
  const named = new Map(pieces.map(({ item }, index) => [item, index]));
  const numberOf = ({ item }: Put<T>): number => named.get(item) ?? pieces.length;
  const alike = new Map<string, Put<T>[]>();
  const keyOf = ({ besides, width, height }: Put<T>) => `${thousandths(width)} ${thousandths(height)} ${besides}`;
  for (const { placed } of pages)
    for (const place of [...placed].sort((one, other) => thousandths(one.y - other.y) || one.x - other.x)) {
      const own = alike.get(keyOf(place));
      if (own) own.push(place);
      else alike.set(keyOf(place), [place]);
    }
  const takes = new Map<Put<T>, Put<T>>();
  for (const places of alike.values()) {
    const byName = [...places].sort((one, other) => numberOf(one) - numberOf(other));
    for (const [index, place] of places.entries()) takes.set(place, byName[index] as Put<T>);
  }
  return pages.map(({ placed, height }) => ({
    height,
    placed: placed.map((place) => ({ ...(takes.get(place) as Put<T>), x: place.x, y: place.y })),
  }));
}

/** Pieces of one scale that differ in the last bit of a double are alike. */
const thousandths = (length: number): number => Math.round(1e3 * length);

/** Pairs of pages of which the later has pieces of something named before what is on the earlier. */
function disorder<T>(pages: readonly FilledPage<T>[], pieces: readonly Grouped<T>[]): number {
  const kinds = [...new Set(pieces.map(({ besides }) => besides))];
  const spans = pages.map(({ placed }) => {
    const own = placed.flatMap(({ besides, words }) => (words ? [] : [kinds.indexOf(besides)]));
    return { first: Math.min(...own), last: Math.max(...own) };
  });
  return spans.reduce(
    (sum, { last }, index) => sum + spans.slice(index + 1).filter(({ first }) => first < last).length,
    0,
  );
}

const sameSize = (one: Room, other: Room): boolean =>
  Math.abs(one.width - other.width) < 1e-6 && Math.abs(one.height - other.height) < 1e-6;

/** `whole`: the groups that go on a page together or not at all, where a page holds them. */
function placedIn<T>(
  pieces: readonly Grouped<T>[],
  way: Way,
  whole: ReadonlySet<string>,
  { width, height }: Room,
  gap: number,
): FilledPage<T>[] {
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
    // No page holds them all: what makes one whole goes first, then pieces alike stay together as long as they can.
    const sets = [...new Set(group.map(({ set }) => set))];
    if (sets.length > 1) {
      for (const set of sets) place(group.filter((piece) => piece.set === set));
      return;
    }
    const alike = group.filter((piece) => sameSize(piece, first));
    place(alike.length < group.length ? alike : [first]);
    place(alike.length < group.length ? group.filter((piece) => !sameSize(piece, first)) : others);
  };
  const groups = new Map<string | number, Grouped<T>[]>();
  for (const [index, piece] of pieces.entries()) {
    const key = piece.besides !== undefined && whole.has(piece.besides) ? piece.besides : index;
    const group = groups.get(key);
    if (group) group.push(piece);
    else groups.set(key, [piece]);
  }
  const largest = (group: readonly Grouped<T>[]) => thousandths(Math.max(...group.map(way.first)));
  const ordered = [...groups.values()].map((group) => ({
    group: group.length < 2 ? group : [...group].sort((one, other) => largest([other]) - largest([one])),
    largest: largest(group),
  }));
  for (const { group } of ordered.sort((one, other) => other.largest - one.largest)) place(group);
  return pages.map(({ placed }) => ({ placed, height: Math.max(...placed.map((one) => one.y + one.height)) }));
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
