/** Something to be cut out, and the room it needs with its caption. */
export type Piece<T> = { readonly width: number; readonly height: number; readonly item: T };
export type Placed<T> = Piece<T> & { readonly x: number; readonly y: number };
/** Pieces of one area, and how far down they reach. */
export type Packed<T> = { readonly placed: readonly Placed<T>[]; readonly height: number };

type Shelf<T> = { readonly top: number; readonly height: number; right: number; readonly placed: Placed<T>[] };

/** Puts pieces on few areas, the first `firstHeight` high, the others `height`, `gap` mm between any two: on shelves, the
 *  highest pieces first, each on the first shelf that has room (first fit, decreasing height), so that straight cuts with
 *  a knife part the shelves. Nothing is turned: how a strip lies to the grain of the paper matters.
 *  The same pieces in the same order give the same places.
 *  @throws RangeError for a piece larger than an empty area. */
export function pack<T>(
  pieces: readonly Piece<T>[],
  area: { readonly width: number; readonly firstHeight: number; readonly height: number },
  gap: number,
): Packed<T>[] {
  const areas: Shelf<T>[][] = [[]];
  const ordered = [...pieces].sort((one, other) => other.height - one.height);
  for (const piece of ordered) {
    if (piece.width > area.width + 1e-9 || piece.height > area.height + 1e-9)
      throw new RangeError("a piece larger than its paper");
    let at = 0;
    while (!place(piece, areas[at] ?? [], area.width, at === 0 ? area.firstHeight : area.height, gap)) {
      at += 1;
      if (areas.length <= at) areas.push([]);
    }
  }
  return areas
    .map((shelves) => shelves.flatMap(({ placed }) => placed))
    .map((placed) => ({ placed, height: Math.max(0, ...placed.map((piece) => piece.y + piece.height)) }));
}

function place<T>(piece: Piece<T>, shelves: Shelf<T>[], width: number, height: number, gap: number): boolean {
  const roomy = shelves.find(
    (shelf) => shelf.right + gap + piece.width <= width + 1e-9 && piece.height <= shelf.height,
  );
  if (roomy) {
    roomy.placed.push({ ...piece, x: roomy.right + gap, y: roomy.top });
    roomy.right += gap + piece.width;
    return true;
  }
  const last = shelves.at(-1);
  const top = last ? last.top + last.height + gap : 0;
  if (top + piece.height > height + 1e-9) return false;
  shelves.push({ top, height: piece.height, right: piece.width, placed: [{ ...piece, x: 0, y: top }] });
  return true;
}
