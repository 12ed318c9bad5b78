/** Something to be cut out, and the room it needs with its caption. */
export type Piece<T> = { readonly width: number; readonly height: number; readonly item: T };
/** Pieces side by side and under each other. A shelf is never broken over two pages. */
export type Placed<T> = Piece<T> & { readonly x: number; readonly y: number };
export type Shelf<T> = { readonly height: number; readonly placed: readonly Placed<T>[] };

type Column = { readonly x: number; readonly width: number; readonly bottom: number };
type OpenShelf<T> = {
  readonly height: number;
  right: number;
  readonly columns: Column[];
  readonly placed: Placed<T>[];
};

/** Puts pieces on shelves as wide as the paper, `gap` mm between neighbours: the highest first, each on the first shelf
 *  that has room beside or under what stands there (first fit, decreasing height), so that a knife's straight cuts part
 *  the shelves. Nothing is turned: how a strip lies to the grain of the paper matters. The same pieces in the same order
 *  give the same places.
 *  @throws RangeError for a piece wider than the paper. */
export function shelves<T>(pieces: readonly Piece<T>[], width: number, gap: number): Shelf<T>[] {
  const open: OpenShelf<T>[] = [];
  for (const piece of [...pieces].sort((one, other) => other.height - one.height)) {
    if (piece.width > width + 1e-9) throw new RangeError("a piece wider than its paper");
    if (open.some((shelf) => under(piece, shelf, gap) || beside(piece, shelf, width, gap))) continue;
    const shelf = { height: piece.height, right: -gap, columns: [], placed: [] };
    beside(piece, shelf, width, gap);
    open.push(shelf);
  }
  return open.map(({ height, placed }) => ({ height, placed }));
}

function under<T>(piece: Piece<T>, shelf: OpenShelf<T>, gap: number): boolean {
  const at = shelf.columns.findIndex(
    (column) => piece.width <= column.width + 1e-9 && column.bottom + gap + piece.height <= shelf.height + 1e-9,
  );
  const roomy = shelf.columns[at];
  if (roomy === undefined) return false;
  const { x, width, bottom } = roomy;
  shelf.placed.push({ ...piece, x, y: bottom + gap });
  // What is left beside it under the same piece is a column of its own.
  const rest = width - piece.width - gap;
  shelf.columns.splice(
    at,
    1,
    { x, width: piece.width, bottom: bottom + gap + piece.height },
    ...(rest > 0 ? [{ x: x + piece.width + gap, width: rest, bottom }] : []),
  );
  return true;
}

function beside<T>(piece: Piece<T>, shelf: OpenShelf<T>, width: number, gap: number): boolean {
  const x = shelf.right + gap;
  if (x + piece.width > width + 1e-9) return false;
  shelf.placed.push({ ...piece, x, y: 0 });
  shelf.columns.push({ x, width: piece.width, bottom: piece.height });
  shelf.right = x + piece.width;
  return true;
}
