/** Where dimension lines for lengths lie under a part: parallel, the shorter nearer to it, so that extension lines cross as few of them as can
 *  be and never a figure. */

/** Between two places on paper; `width`: of its figure. */
export type Span = { readonly from: number; readonly to: number; readonly width: number };

export type Laid = {
  /** From 0, next to the part. */
  readonly level: number;
  /** Middle of its figure. */
  readonly middle: number;
  /** The figure stands beside the line, which goes on under it. */
  readonly beside: boolean;
  /** What its line takes up, heads from outside and figure included. */
  readonly left: number;
  readonly right: number;
  /** Heads point at each other from outside. */
  readonly outside: boolean;
};

const CLEAR = 0.8;
const HEAD = 2.2;
/** How far a line goes on behind heads that come from outside. */
const TAIL = 4.4;

/** What a figure costs where the line of a length that is still to come goes through. */
const IN_THE_WAY = 30;

/** In the order given, each placed or undefined where it has no room. */
export function layLengths(spans: readonly Span[], width: number, levels: number): (Laid | undefined)[] {
  const order = spans.map((_, index) => index).sort((a, b) => lengthOf(spans[a]) - lengthOf(spans[b]));
  const laid: (Laid | undefined)[] = spans.map(() => undefined);
  for (const index of order) {
    const span = spans[index];
    if (span === undefined) continue;
    let best: { place: Laid; cost: number } | undefined;
    for (let level = 0; level < levels; level++)
      for (const place of places(span, level, width)) {
        const cost = costOf(place, span, spans, laid);
        if (cost !== undefined && (best === undefined || cost < best.cost)) best = { place, cost };
      }
    laid[index] = best?.place;
  }
  return laid;
}

const lengthOf = (span: Span | undefined): number => (span === undefined ? 0 : Math.abs(span.to - span.from));

/** Where a line of that level may hold its figure. */
function places(span: Span, level: number, width: number): Laid[] {
  const [left, right] = [Math.min(span.from, span.to), Math.max(span.from, span.to)];
  const room = right - left;
  const half = span.width / 2;
  const outside = room < 2 * HEAD + 1;
  const [lineLeft, lineRight] = outside ? [left - TAIL, right + TAIL] : [left, right];
  const found: Laid[] = [];
  if (room >= span.width + 2 * CLEAR)
    for (const share of [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0.05, 0.95]) {
      const middle = left + half + CLEAR + share * (room - span.width - 2 * CLEAR);
      found.push({ level, middle, beside: false, left: lineLeft, right: lineRight, outside });
    }
  const beyond = (outside ? TAIL : CLEAR) + half + (outside ? -HEAD + CLEAR : 0);
  found.push({
    level,
    middle: right + beyond,
    beside: true,
    left: lineLeft,
    right: Math.max(lineRight, right + beyond + half),
    outside,
  });
  found.push({
    level,
    middle: left - beyond,
    beside: true,
    left: Math.min(lineLeft, left - beyond - half),
    right: lineRight,
    outside,
  });
  return found.filter(
    (place) => place.left >= 0 && place.right <= width && place.middle + half <= width && place.middle - half >= 0,
  );
}

/** Undefined where something would lie on something else. */
function costOf(
  place: Laid,
  span: Span,
  spans: readonly Span[],
  laid: readonly (Laid | undefined)[],
): number | undefined {
  const half = span.width / 2;
  let cost = place.level * 4 + (place.beside ? 6 : 0) + Math.abs(place.middle - (span.from + span.to) / 2) * 0.05;
  for (const [index, other] of laid.entries()) {
    const theirs = spans[index];
    if (theirs === undefined || theirs === span) continue;
    if (other === undefined) {
      // A longer one's extension line comes down here, and would find the figure in its way.
      for (const x of [theirs.from, theirs.to])
        if (x > place.middle - half - CLEAR && x < place.middle + half + CLEAR) cost += IN_THE_WAY;
      continue;
    }
    const figure = [other.middle - theirs.width / 2 - CLEAR, other.middle + theirs.width / 2 + CLEAR] as const;
    if (other.level === place.level && place.left < other.right + 1 && place.right > other.left - 1) return undefined;
    // Our extension lines beside their figure, and theirs beside ours.
    if (place.level >= other.level)
      for (const x of [span.from, span.to]) {
        if (x > figure[0] && x < figure[1]) return undefined;
        if (place.level > other.level && x > other.left + 0.1 && x < other.right - 0.1) cost += 2;
      }
    if (other.level >= place.level)
      for (const x of [theirs.from, theirs.to]) {
        if (x > place.middle - half - CLEAR && x < place.middle + half + CLEAR) return undefined;
        if (other.level > place.level && x > place.left + 0.1 && x < place.right - 0.1) cost += 2;
      }
  }
  return cost;
}
