import { grouped } from "../quantity/grouped.js";
import { astray, astrayFromTheirs, gathered, less, scattered } from "./gathered.js";
import type { Piece } from "./packing.js";
import {
  type FilledPage,
  filledWith,
  type Grouped,
  isFree,
  numbered,
  type Put,
  placedIn,
  type Room,
  thousandths,
  ways,
} from "./placing.js";

/** Puts pieces on as few pages as are found in a few ways of placing the large ones first, each cut from what is left by straight cuts
 *  from edge to edge, `gap` mm between neighbours, and the words on them where these leave room; a page more where that brings a piece to
 *  those that it goes with, as an index line to its dial; of ways with as few pages the first that scatters the least what belongs together,
 *  has the words at the end, and goes on from page to page in the order of the pieces. Nothing is turned: how a strip lies to the
 *  grain of the paper matters. The same pieces in the same order give the same places.
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
      // No more pages than are known to do, whatever their order.
      const found = placedIn(pieces, way, whole, room, gap, best?.cost[0]);
      if (found === undefined) continue;
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
  if (best === undefined) return [];
  const bare = best.pages.map(({ placed }) => filledWith(placed.filter(({ words }) => !words)));
  const nearer = gathered(bare, pieces, room, gap);
  if (nearer !== bare) for (const layout of layouts(nearer, task)) if (less(layout.cost, best.cost)) best = layout;
  return [...best.pages];
}

type Task<T> = {
  readonly pieces: readonly Grouped<T>[];
  readonly room: Room;
  readonly gap: number;
  readonly words: readonly (() => Piece<T>)[];
  /** What follows the last page's pieces, mm, its distance from them included. */
  readonly after: number;
};
/** `cost`: pages, the one included that what has no room begins, with as many more as pieces are astray from theirs, or come before others
 *  of one whole that are named first; groups parted, and pictures that mislead; words that do not stand at the end; how far down the last
 *  page reaches where something has no room; pages out of the order of the pieces; which shape the words take. */
type Layout<T> = { readonly pages: readonly FilledPage<T>[]; readonly cost: readonly number[] };

/** Pages in order, with either page last that may well be: the one that leaves room there, and where that would stand behind parts of one
 *  whole that are named after its own, the one named last. */
function layouts<T>(found: readonly FilledPage<T>[], task: Task<T>): Layout<T>[] {
  const { pieces, room, after } = task;
  const firstNamed = firstNamedOf(pieces);
  const named = [...found].sort((one, other) => firstNamed(one) - firstNamed(other)).at(-1);
  const usual = layoutsWith(lastOf(found, pieces, room, after), found, task);
  return usual.some(({ pages }) => outOfTurn(pages, pieces) > 0)
    ? [...usual, ...layoutsWith(named, found, task)]
    : usual;
}

/** As often as there are pages that may hold the words, or once without. */
function layoutsWith<T>(
  atLast: FilledPage<T> | undefined,
  found: readonly FilledPage<T>[],
  task: Task<T>,
): Layout<T>[] {
  const { pieces, room, gap, words, after } = task;
  const layout = (pages: readonly FilledPage<T>[], misplaced: number, shape: number, unsaid: boolean): Layout<T> => {
    const reaches = unsaid ? (pages.at(-1)?.height ?? 0) : 0;
    const length = pages.length + (unsaid ? 1 : 0);
    return {
      pages,
      cost: [
        length + astrayFromTheirs(pages) + outOfTurn(pages, pieces),
        astray(pages),
        misplaced,
        reaches,
        disorder(pages, pieces),
        shape,
      ],
    };
  };
  const aboveWhatFollows = { ...room, height: room.height - after };
  const ends = ({ height }: FilledPage<T>) => height <= aboveWhatFollows.height + 1e-9;
  const pages = inOrder(found, pieces, atLast, room, gap);
  const last = pages.at(-1);
  const hasEnd = last !== undefined && ends(last);
  if (words.length === 0) return [layout(pages, 0, 0, !hasEnd)];
  const said = pages.flatMap((page) => {
    const atEnd = ends(page) ? withWords(page, words, aboveWhatFollows, gap) : undefined;
    if (atEnd !== undefined) {
      const others = pages.filter((one) => one !== page);
      return [layout(inOrder([...others, atEnd.page], pieces, atEnd.page, room, gap), 0, atEnd.shape, false)];
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
  for (const [shape, take] of words.entries()) {
    const piece = take();
    const { width, height } = piece;
    for (const y of ys)
      for (const x of xs)
        if (
          x + width <= room.width + 1e-9 &&
          y + height <= room.height + 1e-9 &&
          isFree({ x, y, width, height }, placed, gap)
        ) {
          const page = {
            height: Math.max(reaches, y + height),
            placed: [...placed, { ...piece, x, y, words: true as const }],
          };
          return { shape, page };
        }
  }
  return undefined;
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
  const numberOf = numbered(pieces);
  return ({ placed }) => Math.min(...placed.map(numberOf));
}

/** Pages one after the other as their first pieces are named, save the last; of pieces alike the first named goes on the first page. */
function inOrder<T>(
  found: readonly FilledPage<T>[],
  pieces: readonly Grouped<T>[],
  last: FilledPage<T> | undefined,
  room: Room,
  gap: number,
): FilledPage<T>[] {
  if (last === undefined) return [];
  const firstNamed = firstNamedOf(pieces);
  const before = found.filter((page) => page !== last).sort((one, other) => firstNamed(one) - firstNamed(other));
  return inTurn(namedInOrder([...before, last], pieces), pieces, room, gap);
}

/** Pieces that are alike change places, so that the first named lies first. */
function namedInOrder<T>(pages: readonly FilledPage<T>[], pieces: readonly Grouped<T>[]): FilledPage<T>[] {
  const numberOf = numbered(pieces);
  const downwards = pages.flatMap(({ placed }) =>
    [...placed].sort((one, other) => thousandths(one.y - other.y) || one.x - other.x),
  );
  const alike = grouped(
    downwards,
    ({ besides, width, height }) => `${thousandths(width)} ${thousandths(height)} ${besides}`,
  );
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

/** Whether two come one after the other: parts of one whole, and the same part of its copies. */
function rowsOf<T>(pieces: readonly Grouped<T>[]): (one: Grouped<T>, other: Grouped<T>) => boolean {
  const numberOf = numbered(pieces);
  const wholes = grouped(pieces, ({ besides, set }) => `${besides} ${set}`);
  const partOf = (piece: Grouped<T>) =>
    numberOf(piece) - Math.min(...(wholes.get(`${piece.besides} ${piece.set}`) ?? []).map(numberOf));
  return (one, other) => one.besides === other.besides && (one.set === other.set || partOf(one) === partOf(other));
}

/** Of what makes one whole, and of copies, a part named before another goes where that lies, where that comes first and neither is in the way of others. */
function inTurn<T>(
  pages: readonly FilledPage<T>[],
  pieces: readonly Grouped<T>[],
  room: Room,
  gap: number,
): FilledPage<T>[] {
  const numberOf = numbered(pieces);
  const inOneRow = rowsOf(pieces);
  const now = pages.map(({ placed }) => [...placed]);
  const parts = now
    .flatMap((placed, page) => placed.map((piece) => ({ page, piece })))
    .filter(({ piece }) => piece.set !== undefined);
  const comesFirst = (one: (typeof parts)[number], other: (typeof parts)[number]) =>
    one.page - other.page || thousandths(one.piece.y - other.piece.y) || one.piece.x - other.piece.x;
  const fits = ({ page, piece }: (typeof parts)[number], placed: readonly Put<T>[]) =>
    piece.x + piece.width <= room.width + 1e-9 &&
    piece.y + piece.height <= (pages[page]?.height ?? 0) + 1e-9 &&
    isFree(
      piece,
      placed.filter((one) => one !== piece),
      gap,
    );
  for (const [at, one] of parts.entries())
    for (const other of parts.slice(at + 1)) {
      if (!inOneRow(one.piece, other.piece)) continue;
      if (numberOf(one.piece) < numberOf(other.piece) === comesFirst(one, other) < 0) continue;
      const [mine, its] = [one.piece, other.piece];
      const swapped = [
        { page: one.page, piece: { ...its, x: mine.x, y: mine.y } },
        { page: other.page, piece: { ...mine, x: its.x, y: its.y } },
      ] as const;
      const after = (page: number) => [
        ...(now[page] ?? []).filter((piece) => piece !== mine && piece !== its),
        ...swapped.flatMap((put) => (put.page === page ? [put.piece] : [])),
      ];
      if (!swapped.every((put) => fits(put, after(put.page)))) continue;
      const [first, second] = [after(one.page), after(other.page)];
      now[one.page] = first;
      now[other.page] = second;
      one.piece = swapped[0].piece;
      other.piece = swapped[1].piece;
    }
  return now.map(filledWith);
}

/** Pairs of parts of one whole, and of copies, that lie on pages in the other order than they are named. */
function outOfTurn<T>(pages: readonly FilledPage<T>[], pieces: readonly Grouped<T>[]): number {
  const numberOf = numbered(pieces);
  const inOneRow = rowsOf(pieces);
  const parts = pages.flatMap(({ placed }, page) =>
    placed.flatMap((piece) => (piece.set === undefined ? [] : [{ page, piece, number: numberOf(piece) }])),
  );
  return parts.reduce(
    (sum, one) =>
      sum +
      parts.filter((other) => other.page > one.page && other.number < one.number && inOneRow(one.piece, other.piece))
        .length,
    0,
  );
}

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
