import { glyphNumber } from "./glyphNumber.js";
import { glyphBytes, readTables, type Tables } from "./trueType.js";

/** A point of a contour, in font units with y up. `on`: the contour goes through it; otherwise it bends towards it. */
type OutlinePoint = { readonly x: number; readonly y: number; readonly on: boolean };

/** A stroke of an outline: to move, a straight line, a quadratic curve with its bend, and back to where the contour began. */
export type Stroke =
  | { readonly to: "move" | "line"; readonly x: number; readonly y: number }
  | { readonly to: "bend"; readonly x1: number; readonly y1: number; readonly x: number; readonly y: number }
  | { readonly to: "close" };

const known = new WeakMap<Uint8Array, { readonly tables: Tables; readonly outlines: Map<string, readonly Stroke[]> }>();

/** The outline of a letter in a TrueType font of ours, the font's empty box where it lacks it; font units, y up. Only for glyphs
 *  none of which is made of others, as a test checks of ours. Source: OpenType specification, "glyf". */
export function glyphOutline(font: Uint8Array, letter: string): readonly Stroke[] {
  const about = known.get(font) ?? { tables: readTables(font), outlines: new Map() };
  known.set(font, about);
  let outline = about.outlines.get(letter);
  if (outline === undefined) {
    outline = contours(glyphBytes(about.tables, glyphNumber(letter))).flatMap(strokes);
    about.outlines.set(letter, outline);
  }
  return outline;
}

// What the bits of a point's flag say.
const ON_CURVE = 1;
const X_SHORT = 2;
const Y_SHORT = 4;
const REPEAT = 8;
const X_SAME_OR_POSITIVE = 16;
const Y_SAME_OR_POSITIVE = 32;

function contours(bytes: Uint8Array): OutlinePoint[][] {
  if (bytes.length === 0) return []; // a space
  const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = data.getInt16(0);
  const ends = Array.from({ length: count }, (_, index) => data.getUint16(10 + 2 * index));
  let at = 10 + 2 * count;
  at += 2 + data.getUint16(at); // instructions for a screen
  const points = (ends.at(-1) ?? -1) + 1;
  const flags: number[] = [];
  while (flags.length < points) {
    const flag = data.getUint8(at++);
    const times = flag & REPEAT ? data.getUint8(at++) + 1 : 1;
    for (let time = 0; time < times; time++) flags.push(flag);
  }
  const along = (short: number, sameOrPositive: number): number[] => {
    let value = 0;
    return flags.map((flag) => {
      if (flag & short) value += (flag & sameOrPositive ? 1 : -1) * data.getUint8(at++);
      else if (!(flag & sameOrPositive)) {
        value += data.getInt16(at);
        at += 2;
      }
      return value;
    });
  };
  const xs = along(X_SHORT, X_SAME_OR_POSITIVE);
  const ys = along(Y_SHORT, Y_SAME_OR_POSITIVE);
  const all = flags.map((flag, index) => ({ x: xs[index] ?? 0, y: ys[index] ?? 0, on: (flag & ON_CURVE) !== 0 }));
  return ends.map((end, index) => all.slice(index === 0 ? 0 : (ends[index - 1] ?? 0) + 1, end + 1));
}

const midway = (a: OutlinePoint, b: OutlinePoint): OutlinePoint => ({
  x: (a.x + b.x) / 2,
  y: (a.y + b.y) / 2,
  on: true,
});

/** Between two bends the contour goes through the point midway, which is not written. */
function strokes(contour: readonly OutlinePoint[]): Stroke[] {
  const [first] = contour;
  const last = contour.at(-1);
  if (first === undefined || last === undefined) return [];
  const start = first.on ? first : last.on ? last : midway(first, last);
  const rest = first.on ? contour.slice(1) : last.on ? contour.slice(0, -1) : contour;
  const made: Stroke[] = [{ to: "move", x: start.x, y: start.y }];
  let bend: OutlinePoint | undefined;
  const through = (point: OutlinePoint): void => {
    made.push(
      bend === undefined
        ? { to: "line", x: point.x, y: point.y }
        : { to: "bend", x1: bend.x, y1: bend.y, x: point.x, y: point.y },
    );
    bend = undefined;
  };
  for (const point of rest) {
    if (point.on) through(point);
    else {
      if (bend !== undefined) through(midway(bend, point));
      bend = point;
    }
  }
  if (bend !== undefined) through(start);
  return [...made, { to: "close" }];
}
