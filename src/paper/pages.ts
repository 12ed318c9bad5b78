import type { Piece } from "./packing.js";

/** A piece, and the word that it shares with those which should lie on one page with it. */
export type Grouped<T> = Piece<T> & { readonly besides?: string };
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
  { first: ({ height }) => height, rest: "under" },
  { first: ({ height }) => height, rest: "under", tightly: true },
  { first: ({ width, height }) => Math.max(width, height), rest: "beside" },
  { first: ({ width, height }) => width * height, rest: "under" },
  { first: ({ width, height }) => width * height, rest: "beside", tightly: true },
];

/** Puts pieces on as few pages as are found in a few ways of placing the large ones first, each cut from what is left by straight cuts
 *  from edge to edge, `gap` mm between neighbours; of ways with as few pages the first that scatters the least what belongs together and
 *  leaves room for what follows, `below` mm high, or else the most. The emptiest page is the last. Nothing is turned: how a strip lies to
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
    return [pages.length + more, scattered(pages).length, more * last] as const;
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
      const pages = placedIn(pieces, way, whole, room, gap);
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
    // No page holds them all: pieces alike stay together as long as they can.
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
  return pages
    .map(({ placed }) => ({ placed, height: Math.max(...placed.map((one) => one.y + one.height)) }))
    .sort((one, other) => other.height - one.height);
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
