import { type FilledPage, filledWith, type Grouped, numbered, type Put, placedIn, type Room, ways } from "./placing.js";

/** Of costs the first that differs decides. */
export const less = (one: readonly number[], other: readonly number[]): boolean => {
  const at = one.findIndex((value, index) => Math.abs(value - (other[index] ?? 0)) > 1e-9);
  return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0);
};

/** The groups that lie on more than one page, each as often as there are further pages with some of it. */
export const scattered = <T>(pages: readonly FilledPage<T>[]): string[] => onFurther(pages, () => true);

function onFurther<T>(pages: readonly FilledPage<T>[], counts: (piece: Put<T>) => boolean): string[] {
  const seen = pages.flatMap(({ placed }) => [
    ...new Set(placed.flatMap((piece) => (counts(piece) ? (piece.besides ?? []) : []))),
  ]);
  return seen.filter((kind, index) => seen.indexOf(kind) !== index);
}

/** What explains pieces that are elsewhere, and lies beside those of another word. */
const misleads = <T>(piece: Put<T>, { placed }: FilledPage<T>): boolean =>
  piece.explains === true &&
  placed.some(({ explains, besides }) => !explains && besides !== undefined) &&
  isAlone(piece, placed);

const isAlone = <T>(piece: Put<T>, placed: readonly Put<T>[]): boolean =>
  placed.every((one) => one === piece || one.besides !== piece.besides);

/** How far pieces are from where they belong; that copies lie on several pages is as bad as a picture that misleads. */
export const astray = <T>(pages: readonly FilledPage<T>[]): number =>
  scattered(pages).length +
  onFurther(pages, ({ set }) => set !== undefined).length +
  pages.reduce((sum, page) => sum + page.placed.filter((piece) => misleads(piece, page)).length, 0);

/** How many pieces that go with others, as the index line of a dial, lie on the page of none of them. */
export function astrayFromTheirs<T>(pages: readonly FilledPage<T>[]): number {
  const isOf = ({ besides }: Put<T>, { placed }: FilledPage<T>) =>
    placed.some((one) => one.set !== undefined && one.besides === besides);
  return pages.reduce(
    (sum, page) =>
      sum +
      page.placed.filter(
        (piece) =>
          piece.besides !== undefined &&
          piece.set === undefined &&
          !isOf(piece, page) &&
          pages.some((other) => isOf(piece, other)),
      ).length,
    0,
  );
}

/** Pages that are laid out anew to see whether they hold a piece more. A set that wants more has so many wheels that nobody looks for a
 *  picture on the page of its strip. */
const MOST_TRIES = 300;

/** Pages on which single pieces were brought to others of their word, those that explain first, where a page holds them, or holds them
 *  when something else changes places; the same pages where none was. */
export function gathered<T>(
  pages: readonly FilledPage<T>[],
  pieces: readonly Grouped<T>[],
  room: Room,
  gap: number,
): readonly FilledPage<T>[] {
  const numberOf = numbered(pieces);
  const area = ({ width, height }: Room) => (width + gap) * (height + gap);
  let tries = 0;
  /** Undefined where they do not fit on one, or where enough was tried. */
  const onOne = (placed: readonly Grouped<T>[]): FilledPage<T> | undefined => {
    if (tries >= MOST_TRIES) return undefined;
    if (placed.reduce((sum, one) => sum + area(one), 0) > area(room)) return undefined;
    tries++;
    const inOrder = [...placed].sort((one, other) => numberOf(one) - numberOf(other));
    for (const way of ways) {
      const [page] = placedIn(inOrder, way, new Set(), room, gap, 1) ?? [];
      if (page !== undefined && page.height <= room.height + 1e-9) return page;
    }
    return undefined;
  };
  const without = ({ placed }: FilledPage<T>, piece: Put<T>) => placed.filter((one) => one !== piece);
  const nearer = (now: readonly FilledPage<T>[]): readonly FilledPage<T>[] | undefined => {
    const cost = astray(now);
    const single = now
      .flatMap((page) => page.placed.filter((piece) => isAlone(piece, page.placed)).map((piece) => ({ page, piece })))
      .sort((one, other) => Number(other.piece.explains ?? 0) - Number(one.piece.explains ?? 0));
    for (const { page: from, piece } of single)
      for (const to of now) {
        if (to === from || isAlone(piece, to.placed)) continue;
        for (const shape of [piece, ...(piece.or ? [{ ...piece, ...piece.or }] : [])]) {
          const changed = (pairs: readonly (readonly [FilledPage<T>, FilledPage<T> | undefined])[]) =>
            now.flatMap((page) => {
              const pair = pairs.find(([before]) => before === page);
              return (pair ? pair[1] : page) ?? [];
            });
          const whole = onOne([...to.placed, shape]);
          const left = without(from, piece);
          const remaining = left.length > 0 ? filledWith(left) : undefined;
          const moved =
            whole &&
            changed([
              [to, whole],
              [from, remaining],
            ]);
          if (moved && astray(moved) < cost) return moved;
          for (const other of to.placed) {
            if (other.besides === piece.besides) continue;
            const here = onOne([...without(to, other), shape]);
            if (here === undefined) continue;
            for (const page of now) {
              if (page === to) continue;
              const there = onOne([...(page === from ? left : page.placed), other]);
              if (there === undefined) continue;
              const exchanged = changed([
                [to, here],
                [page, there],
                ...(page === from ? [] : [[from, remaining] as const]),
              ]);
              if (astray(exchanged) < cost) return exchanged;
            }
          }
        }
      }
    return undefined;
  };
  let now = pages;
  for (let next = nearer(now); tries < MOST_TRIES && next !== undefined; next = nearer(now)) now = next;
  return now;
}
