import type { Drawing, Ink, Point } from "../../src/drawing/drawing.js";
import { inkRgb } from "../../src/output/inks.js";
import { apart, type Box, corners, depth, type Extent, extent, inside, Squares, strokeBox } from "./boxes.js";
import { type Cut, type Fill, type Flat, type FlatText, flatten, type Stroke } from "./flatMarks.js";

/** Everything wrong with a page that can be measured. */
export const faultKinds = [
  "text over text",
  "mark through text",
  "ink at a row's line",
  "text over a cut",
  "cut line along marks",
  "text hidden",
  "text outside the card",
  "off the page",
  "outside the frame",
  "too small",
  "too pale",
  "stroke too thin",
  "nonsense",
  "unit twice",
  "page nearly empty",
  "cautions alone",
  "throws",
] as const;
export type FaultKind = (typeof faultKinds)[number];
export type Fault = { readonly kind: FaultKind; readonly what: string; readonly at: Point };

const POINT = 25.4 / 72;
/** Em sizes, mm: the least on a page, and the least on a stuck-on piece that is narrower than `NARROW`. */
const LEAST = 7 * POINT;
const LEAST_ON_PIECE = 5 * POINT;
const NARROW = 8;
const LEAST_PEN = 0.1;
/** What no printer is sure to reach, mm from the edge of the sheet. */
const UNPRINTABLE = 5;
/** Contrast of small text to its ground that is read without effort (WCAG 2.1, 1.4.3). */
const LEAST_CONTRAST = 4.5;
/** Clear between a dial's figures or words and the line between two of its rows, mm: what a row of the least height has; others have twice it. */
const CLEAR_OF_ROW = 0.1;
/** By so much, mm, may ink lie in other ink before the eye sees it. */
const UNSEEN = 0.05;
const ROUNDING = 1e-3;

/** `engraved`: for a machine that follows outlines, where only the machine sets a least size. */
export function measurePage(drawing: Drawing, { engraved = false } = {}): Fault[] {
  return measureFlat(drawing, flatten(drawing), engraved);
}

/** The same of a page that was taken apart before. */
export function measureFlat(drawing: Drawing, flat: Flat, engraved: boolean): Fault[] {
  const page = { left: 0, top: 0, right: drawing.width, bottom: drawing.height };
  const found: Fault[] = [];
  const add = (kind: FaultKind, at: Point, what: string) => found.push({ kind, what, at });
  const strokes = new Squares<Stroke>();
  for (const stroke of flat.strokes) {
    strokes.add(stroke, stroke.extent);
    if (stroke.width < LEAST_PEN - ROUNDING)
      add("stroke too thin", stroke.from, `a stroke of ${stroke.width.toFixed(3)} mm`);
    // Where a line lies: what a printer reaches is not known to half of a line's width.
    edges(extent([stroke.from, stroke.to]), page, (kind) => add(kind, stroke.from, `a line${named(stroke)}`));
  }
  for (const stroke of flat.strokes)
    if (stroke.names.includes("legend") && nearRule(strokes, stroke.extent, [stroke.box]))
      add("ink at a row's line", stroke.from, "a bracket");
  const fills = new Squares<Fill>();
  for (const fill of flat.fills) {
    fills.add(fill, fill.extent);
    if (fill.ink !== "white") edges(fill.extent, page, (kind) => add(kind, middle(fill.extent), `a ${fill.ink} area`));
  }
  const cutEdges = new Squares<Box>();
  for (const [from, to] of flat.cuts.flatMap((cut) => cut.edges))
    cutEdges.add(strokeBox(from, to, 0), extent([from, to]));
  const texts = new Squares<FlatText>();
  for (const text of flat.texts) texts.add(text, text.extent);
  const small = new Map<string, FlatText[]>();
  for (const text of flat.texts) {
    const { mark, extent: own, whole } = text;
    const says = quoted(text);
    edges(own, page, (kind) => add(kind, whole, says));
    if (/undefined|NaN|Infinity|\[object/.test(mark.text)) add("nonsense", whole, says);
    if (/\b(mm|in|Zoll) \1\b/.test(mark.text)) add("unit twice", whole, says);
    const least = engraved || onNarrowPiece(text, flat.cuts) ? LEAST_ON_PIECE : LEAST;
    if (mark.size < least - ROUNDING) {
      const key = `${(mark.size / POINT).toFixed(1)} pt where ${(least / POINT).toFixed(0)} are the least`;
      small.set(key, [...(small.get(key) ?? []), text]);
    }
    const near = [...fills.near(own)].filter((fill) => meets(fill.extent, own));
    for (const fault of onGrounds(text, near)) add(fault.kind, whole, `${says} ${fault.what}`);
    for (const other of texts.near(own))
      if (other.order > text.order && overText(text, other))
        add("text over text", whole, `${says} and ${quoted(other)}`);
    const struck = throughText(text, strokes.near(own), near);
    if (struck !== undefined)
      add("mark through text", whole, `${says}: a ${struck.ink} line of ${struck.width} mm${named(struck)}`);
    if (text.names.some((name) => name === "numbers" || name === "legend") && nearRule(strokes, own, text.letters()))
      add("ink at a row's line", whole, says);
    if (overCut(text, cutEdges.near(own))) add("text over a cut", whole, says);
    if (outsideCard(text, flat.cuts)) add("text outside the card", whole, says);
  }
  for (const [sizes, [first, ...more]] of small)
    if (first) add("too small", first.whole, `${quoted(first)} and ${more.length} more of ${sizes}`);
  // A laser cuts where the line is drawn.
  for (const cut of engraved ? [] : flat.cuts) {
    const carried = marksAlong(cut, strokes);
    if (carried) add("cut line along marks", carried.from, "a cut is drawn along the ends of marks");
  }
  return found;
}

/** Whether ink comes too near to the line between two rows of a dial. */
const nearRule = (strokes: Squares<Stroke>, own: Extent, ink: readonly Box[]): boolean =>
  [...strokes.near(grown(own, CLEAR_OF_ROW))].some(
    ({ names, box }) => names.includes("rules") && ink.some((one) => apart(box, one) < CLEAR_OF_ROW - ROUNDING),
  );
const grown = ({ left, right, top, bottom }: Extent, by: number): Extent => ({
  left: left - by,
  right: right + by,
  top: top - by,
  bottom: bottom + by,
});

/** A graduation that begins or ends on a cut which is drawn as a line. */
const marksAlong = ({ drawn }: Cut, strokes: Squares<Stroke>): Stroke | undefined => {
  for (const [from, to] of drawn) {
    const edge = strokeBox(from, to, 0.1);
    for (const stroke of strokes.near(extent([from, to])))
      if (stroke.names.includes("graduations") && depth(stroke.box, edge) > 0) return stroke;
  }
  return undefined;
};

const named = ({ names }: Stroke) => (names.length === 0 ? "" : ` of ${JSON.stringify(names.at(-1))}`);
const quoted = ({ mark }: FlatText) => JSON.stringify(mark.text.length > 60 ? `${mark.text.slice(0, 57)}…` : mark.text);
const middle = ({ left, right, top, bottom }: Extent): Point => ({ x: (left + right) / 2, y: (top + bottom) / 2 });

const meets = (a: Extent, b: Extent): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

function edges(own: Extent, page: Extent, tell: (kind: FaultKind) => void): void {
  const room = Math.min(own.left - page.left, own.top - page.top, page.right - own.right, page.bottom - own.bottom);
  if (room < -ROUNDING) tell("off the page");
  else if (room < UNPRINTABLE - ROUNDING) tell("outside the frame");
}

/** Letters that touch a neighbour's; two letters of one word set along an arc stand closer than straight ones. */
const overText = (a: FlatText, b: FlatText): boolean => {
  const unseen = a.mark.text.length === 1 && b.mark.text.length === 1 ? 4 * UNSEEN : UNSEEN;
  return (
    depth(a.whole, b.whole) > unseen &&
    a
      .letters()
      .some((letter) => depth(letter, b.whole) > unseen && b.letters().some((other) => depth(letter, other) > unseen))
  );
};

/** The first stroke that runs through a letter and is not hidden from it by an area painted between the two. */
function throughText(text: FlatText, strokes: Iterable<Stroke>, fills: readonly Fill[]): Stroke | undefined {
  for (const stroke of strokes) {
    if (!meets(stroke.extent, text.extent) || depth(stroke.box, text.whole) <= UNSEEN) continue;
    for (const letter of text.letters()) {
      if (depth(stroke.box, letter) <= Math.min(UNSEEN, letter.across, letter.along)) continue;
      const hidden = fills.some(
        (fill) =>
          fill.order > stroke.order &&
          fill.order < text.order &&
          corners(letter).every((at) => inside(fill.outlines, at)),
      );
      if (!hidden) return stroke;
    }
  }
  return undefined;
}

/** What areas do to a text: those painted later hide it, the last one painted before is its ground. */
function onGrounds(text: FlatText, fills: readonly Fill[]): { kind: FaultKind; what: string }[] {
  if (fills.length === 0 && contrastOf(text.mark.ink, "white") >= LEAST_CONTRAST) return [];
  const before = fills.filter(({ order }) => order < text.order).reverse();
  const later = fills.filter(({ order }) => order > text.order);
  let worst: { ink: Ink; contrast: number } | undefined;
  for (const letter of text.letters()) {
    const spots = [{ x: letter.x, y: letter.y }, ...corners(letter)];
    if (later.some((fill) => touches(fill, letter))) return [{ kind: "text hidden", what: "lies under an area" }];
    for (const spot of spots) {
      const ink = before.find((fill) => inside(fill.outlines, spot))?.ink ?? "white";
      const contrast = contrastOf(text.mark.ink, ink);
      if (worst === undefined || contrast < worst.contrast) worst = { ink, contrast };
    }
    // A small area, as an arrow's head, may lie within a letter's box and hold none of its corners.
    const small = before.find(
      (fill) => fill.ink !== "white" && spots.every((at) => !inside(fill.outlines, at)) && touches(fill, letter),
    );
    if (small && contrastOf(text.mark.ink, small.ink) < LEAST_CONTRAST)
      return [{ kind: "mark through text", what: `: a ${small.ink} area` }];
  }
  return worst && worst.contrast < LEAST_CONTRAST
    ? [{ kind: "too pale", what: `is ${text.mark.ink} on ${worst.ink}, contrast ${worst.contrast.toFixed(1)}` }]
    : [];
}

/** Whether an area covers a part of a letter that can be seen. */
function touches({ outlines, extent: own }: Fill, letter: Box): boolean {
  if (!meets(own, extent(corners(letter)))) return false;
  if ([letter, ...corners(letter)].every((at) => inside(outlines, at))) return true;
  return outlines.some((outline) =>
    outline.some((to, index) => {
      const from = outline[index === 0 ? outline.length - 1 : index - 1] as Point;
      return depth(strokeBox(from, to, 0), letter) > UNSEEN;
    }),
  );
}

const luminances = Object.fromEntries((Object.keys(inkRgb) as Ink[]).map((ink) => [ink, luminanceOf(ink)]));

function luminanceOf(ink: Ink): number {
  const [red, green, blue] = inkRgb[ink].map((part) =>
    part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
}

export function contrastOf(a: Ink, b: Ink): number {
  const [light, dark] = [luminances[a] ?? 0, luminances[b] ?? 0];
  return (Math.max(light, dark) + 0.05) / (Math.min(light, dark) + 0.05);
}

const overCut = (text: FlatText, cuts: Iterable<Box>): boolean => {
  for (const edge of cuts)
    if (depth(edge, text.whole) > UNSEEN && text.letters().some((letter) => depth(edge, letter) > UNSEEN)) return true;
  return false;
};

const onNarrowPiece = (text: FlatText, cuts: readonly Cut[]): boolean =>
  cuts.some(({ card, narrow, outlines }) => !card && narrow < NARROW - ROUNDING && inside(outlines, text.whole));

/** Cards and the holes in them, taken together: in a card, and in none of its holes. */
const outsideCard = (text: FlatText, cuts: readonly Cut[]): boolean => {
  const outlines = cuts.flatMap((cut) => (cut.card ? cut.outlines : []));
  return text.body && outlines.length > 0 && !inside(outlines, text.whole);
};

export const bodyExtent = ({ texts, strokes, fills }: Flat): Extent | undefined => {
  const all = [...texts, ...strokes, ...fills.filter(({ ink }) => ink !== "white")].filter(({ body }) => body);
  if (all.length === 0) return undefined;
  return {
    left: Math.min(...all.map(({ extent }) => extent.left)),
    right: Math.max(...all.map(({ extent }) => extent.right)),
    top: Math.min(...all.map(({ extent }) => extent.top)),
    bottom: Math.max(...all.map(({ extent }) => extent.bottom)),
  };
};
