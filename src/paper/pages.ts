import type { Piece } from "./packing.js";

/** A piece, and the word that it shares with those which should lie on one page with it; where those do not fit on one, `set` parts them, as
 *  the copies of one dial. `last`: words, which go on the last page. */
export type Grouped<T> = Piece<T> & { readonly besides?: string; readonly set?: string; readonly last?: true };
type Put<T> = Grouped<T> & { readonly x: number; readonly y: number };
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
 *  from edge to edge, `gap` mm between neighbours; of ways with as few pages the first that scatters the least what belongs together,
 *  leaves room for what follows, `below` mm high, or else the most, and goes on from page to page in the order of the pieces. Nothing is turned: how a strip lies to
 *  the grain of the paper matters. The same pieces in the same order give the same places. `most`: where more pages are of no use, no
 *  pains are taken over them.
 *  @throws RangeError for a piece wider than the paper. */
export function packedOnPages<T>(
  pieces: readonly Grouped<T>[],
  room: Room,
  gap: number,
  below = 0,
  most = Number.POSITIVE_INFINITY,
): FilledPage<T>[] {
  if (pieces.some(({ width }) => width > room.width + 1e-9)) throw new RangeError("a piece wider than its paper");
  const cost = (pages: readonly FilledPage<T>[]) => {
    const last = pages.at(-1)?.height ?? 0;
    const more = below > 0 && last + gap + below > room.height ? 1 : 0;
    return [pages.length + more, scattered(pages).length, more * last, disorder(pages, pieces)] as const;
  };
  const area = ({ width, height }: Room) => (width + gap) * (height + gap);
  const fewest = Math.ceil(pieces.reduce((sum, piece) => sum + area(piece), 0) / area(room) - 1e-9);
  let best: FilledPage<T>[] | undefined;
  let least: readonly number[] = [];
  // Nothing is better than no page more than the pieces' areas fill, and nothing parted.
  const perfect = () => least[0] === fewest && least[1] === 0 && least[2] === 0;
  const attempt = (whole: ReadonlySet<string>): boolean => {
    const before = best;
    for (const way of ways) {
      if (perfect()) break;
      const found = placedIn(pieces, way, whole, room, gap);
      // More pages than are known to do: whatever their order.
      if (found.length > (least[0] ?? Number.POSITIVE_INFINITY)) continue;
      const pages = inOrder(found, pieces, room, gap + below);
      const own = cost(pages);
      if (best === undefined || less(own, least)) [best, least] = [pages, own];
    }
    return best !== before;
  };
  const kinds = new Set(pieces.flatMap(({ besides }) => besides ?? []));
  attempt(kinds);
  if (kinds.size > 0) attempt(new Set());
  if (best === undefined || best.length > most) return best ?? [];
  // What is parted even so is tried one by one.
  let whole: ReadonlySet<string> = new Set();
  for (const kind of new Set(scattered(best))) {
    const more = new Set([...whole, kind]);
    if (attempt(more)) whole = more;
  }
  return best;
}

const less = (one: readonly number[], other: readonly number[]): boolean => {
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

/** Pages one after the other as their first pieces are named, the one with the words, or a nearly empty one, or else the last on which
 *  what follows has room, at the end; of pieces alike the first named goes on the first page. */
function inOrder<T>(
  found: readonly FilledPage<T>[],
  pieces: readonly Grouped<T>[],
  room: Room,
  below: number,
): FilledPage<T>[] {
  const named = new Map(pieces.map(({ item }, index) => [item, index]));
  const numberOf = ({ item }: Grouped<T>): number => named.get(item) ?? 0;
  const firstOf = ({ placed }: FilledPage<T>): number => Math.min(...placed.map(numberOf));
  if (found.length === 0) return [];
  const pages = [...found].sort((one, other) => firstOf(one) - firstOf(other));
  const emptiest = pages.reduce(
    (least, page) => (page.height < least.height ? page : least),
    pages[0] as FilledPage<T>,
  );
  const roomy = pages.filter(({ height }) => height + below <= room.height);
  const words = pages.find(({ placed }) => placed.some(({ last }) => last));
  const atEnd = words ?? (emptiest.height < FULL * room.height ? emptiest : (roomy.at(-1) ?? emptiest));
  const ordered = [...pages.filter((page) => page !== atEnd), atEnd];
  const places = ordered.flatMap(({ placed }) =>
    [...placed].sort((one, other) => Math.round(1e3 * (one.y - other.y)) || one.x - other.x),
  );
  const takes = new Map<Put<T>, Put<T>>();
  for (const place of places) {
    if (takes.has(place)) continue;
    const alike = places.filter((one) => one.besides === place.besides && sameSize(one, place));
    const byName = [...alike].sort((one, other) => numberOf(one) - numberOf(other));
    for (const [index, one] of alike.entries()) takes.set(one, byName[index] as Put<T>);
  }
  return ordered.map(({ placed, height }) => ({
    height,
    placed: placed.map((place) => ({ ...(takes.get(place) ?? place), x: place.x, y: place.y })),
  }));
}

/** Pairs of pages of which the later has pieces of something named before what is on the earlier. */
function disorder<T>(pages: readonly FilledPage<T>[], pieces: readonly Grouped<T>[]): number {
  const kinds = [...new Set(pieces.map(({ besides }) => besides))];
  const spans = pages.map(({ placed }) => {
    const own = placed.flatMap(({ besides, last }) => (last ? [] : [kinds.indexOf(besides)]));
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
  // Pieces of one scale that differ in the last bit of a double stay in their order.
  const largest = (group: readonly Grouped<T>[]) => Math.round(1e3 * Math.max(...group.map(way.first)));
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
