import { materialName } from "../../cutting/materials.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { circle, group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { say } from "../../words/say.js";
import { axisLine, leading, objectLine, rowLine, size } from "../shared/style.js";
import { apart } from "./apart.js";
import type { Axis } from "./barAxis.js";
import type { Bar, None, Piece } from "./barPieces.js";

/** Signs for positions whose names some piece has no room for. */
export type Keys = ReadonlyMap<string, string>;

/** White on black. */
export const discRadius = 2.3;
const discStep = 2 * discRadius + 0.5;
const barHeight = 12;
const inset = 1.2;
const tick = 1.5;
const numberRow = size.text * 1.25;
const leader = 2;
/** Between two numbers at cuts. */
const gap = 1.4;

/** How a piece so wide shows its position. */
type Look = "large" | "small" | "two lines" | "key and rpm" | "key" | "key above" | "none";

function lookOf({ position, rpm = "", sign }: Piece, width: number): Look {
  if (position === undefined) return "none";
  const room = width - 2 * inset;
  const speed = speedWidth(rpm, sign);
  if (speed <= room) {
    if (textWidth(position, size.card, "bold") <= room) return "large";
    if (textWidth(position, size.text, "bold") <= room) return "small";
    if (inTwoLines(position, room)) return "two lines";
    if (2 * discRadius <= room) return "key and rpm";
  }
  return 2 * discRadius + 0.8 <= width ? "key" : "key above";
}

const inTwoLines = (position: string, room: number): boolean =>
  wrapText(position, room, size.text, "bold").length <= 2 &&
  position.split(/\s+/).every((word) => textWidth(word, size.text, "bold") <= room);

const speedWidth = (rpm: string, sign: string): number =>
  textWidth(rpm, size.text, "regular") + (sign === "" ? 0 : textWidth(sign, size.text, "bold") + 0.3);

const keyed: readonly Look[] = ["key and rpm", "key", "key above"];

/** Positions of these bars that need a sign, and which: in the order in which they first come. `labels`: of the drive's steps, none of
 *  which a sign may be taken for. */
export function keysOf(bars: readonly Bar[], axis: Axis, labels: readonly string[]): Keys {
  const needing = bars.flatMap(({ pieces }) =>
    pieces.flatMap((piece) => (keyed.includes(lookOf(piece, widthOf(piece, axis))) ? [piece.position ?? ""] : [])),
  );
  const names = [...new Set(needing)];
  const signs = signsBeside(labels, names.length);
  return new Map(names.map((name, index) => [name, signs[index] as string]));
}

/** Numbers; where steps are numbered, letters that no step has, in whichever case, from the middle of the alphabet: far from A, B, C. */
function signsBeside(labels: readonly string[], count: number): string[] {
  if (!labels.some((label) => /\d/.test(label))) return Array.from({ length: count }, (_, index) => String(index + 1));
  const words = new Set(labels.flatMap((label) => label.toLowerCase().split(/[^\p{L}]+/u)));
  const letters = [..."pqrstuvwxyzghkmn"];
  const pairs = letters.flatMap((first) => letters.map((second) => first + second));
  return [...letters, ...pairs].filter((sign) => !words.has(sign)).slice(0, count);
}

const widthOf = ({ from, to }: Piece, { place }: Axis): number => place(to) - place(from);

/** A sign of two letters or digits stands in it smaller: its corners are within. */
export const disc = (sign: string, { x, y }: { x: number; y: number }): Mark[] => {
  const em = sign.length > 1 ? size.source : size.text;
  return [
    circle({ x, y }, discRadius, { fill: "black" }),
    text(sign, { x, y: y + em * 0.34 }, { size: em, weight: "bold", anchor: "middle", ink: "white" }),
  ];
};

/** A material's name with what one should know of it, its bar, and the diameters at the cuts. `about`: beside the name. */
export function barDrawing(bar: Bar, about: string, axis: Axis, keys: Keys): Drawing {
  const { width, place } = axis;
  const head = nameMarks(materialName(bar.material), about, width);
  const short = bar.pieces.filter((piece) => lookOf(piece, widthOf(piece, axis)) === "key above");
  const rows = Math.ceil((short.length * discStep) / width);
  const top = head.height + tick + (rows === 0 ? 0 : rows * discStep + leader);
  const bottom = top + barHeight;
  const places = apart(
    short.map(({ from, to }) => (place(from) + place(to)) / 2),
    discStep / Math.max(1, rows),
    discRadius,
    width - discRadius,
  );
  const above = short.flatMap((piece, index): Mark[] => {
    const x = places[index] as number;
    const y = head.height + 0.6 + discRadius + (index % rows) * discStep;
    const middle = (place(piece.from) + place(piece.to)) / 2;
    const low = head.height + 0.6 + rows * discStep;
    return [
      polyline(
        [
          { x, y: y + discRadius },
          { x, y: low },
          { x: middle, y: top },
        ],
        { pen: axisLine },
      ),
      ...disc(keys.get(piece.position ?? "") ?? "", { x, y }),
    ];
  });
  const under = cutMarks(bar, axis, bottom);
  const marks: Mark[] = [
    ...head.marks,
    ...above,
    group(
      { x: 0, y: top },
      axis.sizes.map(({ diameter }) => line({ x: place(diameter), y: -tick }, { x: place(diameter), y: 0 }, rowLine)),
      { name: "drills" },
    ),
    ...bar.pieces.map((piece) =>
      group(
        { x: place(piece.from), y: top },
        [
          rectangle({ x: 0, y: 0 }, widthOf(piece, axis), barHeight, {
            pen: objectLine,
            ...(piece.none === "too fast" && { fill: "black" }),
          }),
          ...pieceMarks(piece, widthOf(piece, axis), keys),
        ],
        { name: "piece" },
      ),
    ),
    ...under.marks,
  ];
  return { width, height: bottom + under.height + 0.4, marks };
}

function nameMarks(name: string, about: string, width: number): { marks: Mark[]; height: number } {
  const step = size.text * leading;
  const names = wrapText(name, width, size.text, "bold");
  const end = textWidth(names.at(-1) ?? "", size.text, "bold") + 2.5;
  const beside = about !== "" && textWidth(about, size.text, "regular") <= width - end;
  const below = about === "" || beside ? [] : wrapText(about, width, size.text, "regular");
  const y = (line: number) => step * (line + 0.76);
  return {
    marks: [
      ...names.map((part, index) => text(part, { x: 0, y: y(index) }, { size: size.text, weight: "bold" })),
      ...(beside ? [text(about, { x: end, y: y(names.length - 1) }, { size: size.text })] : []),
      ...below.map((part, index) => text(part, { x: 0, y: y(names.length + index) }, { size: size.text })),
    ],
    height: step * (names.length + below.length) + 0.3,
  };
}

function pieceMarks(piece: Piece, width: number, keys: Keys): Mark[] {
  const middle = width / 2;
  const { position = "" } = piece;
  const bold = (words: string, y: number, em: number) =>
    text(words, { x: middle, y }, { size: em, anchor: "middle", weight: "bold" });
  const key = keys.get(position) ?? "";
  switch (lookOf(piece, width)) {
    case "none":
      return piece.none === undefined ? [] : noneMarks(piece.none, width);
    case "large":
      return [bold(position, 6, size.card), ...speedMarks(piece, middle, 10.2)];
    case "small":
      return [bold(position, 5.4, size.text), ...speedMarks(piece, middle, 9.6)];
    case "two lines":
      return [
        ...wrapText(position, width - 2 * inset, size.text, "bold").map((part, index) =>
          bold(part, 3.4 + index * 3.8, size.text),
        ),
        ...speedMarks(piece, middle, 11),
      ];
    case "key and rpm":
      return [...disc(key, { x: middle, y: 1.2 + discRadius }), ...speedMarks(piece, middle, 10.3)];
    case "key":
      return disc(key, { x: middle, y: barHeight / 2 });
    case "key above":
      return [];
  }
}

/** Its sign raised behind it, which does not pull it aside. */
function speedMarks({ rpm = "", sign }: Piece, middle: number, y: number): Mark[] {
  const all = speedWidth(rpm, sign);
  const own = textWidth(rpm, size.text, "regular");
  const x = middle - Math.max(own / 2, all - own / 2 > all / 2 + 1 ? all / 2 : own / 2);
  return [
    text(rpm, { x, y }, { size: size.text }),
    ...(sign === "" ? [] : [text(sign, { x: x + own + 0.3, y: y - 0.4 }, { size: size.text, weight: "bold" })]),
  ];
}

function noneMarks(none: None, width: number): Mark[] {
  const words = noneWords(none);
  const ink = none === "too fast" ? ("white" as const) : ("black" as const);
  const lines = wrapText(words, Math.max(1, width - 2 * inset), size.text, "bold");
  const fits =
    lines.length <= 2 && lines.every((part) => textWidth(part, size.text, "bold") <= width - 2 * inset + 0.01);
  const first = barHeight / 2 + size.text * 0.36 - ((lines.length - 1) * 3.6) / 2;
  return fits && words.split(/\s+/).every((word) => textWidth(word, size.text, "bold") <= width - 2 * inset)
    ? lines.map((part, index) =>
        text(
          part,
          { x: width / 2, y: first + index * 3.6 },
          { size: size.text, weight: "bold", anchor: "middle", ink },
        ),
      )
    : [];
}

const noneWords = (none: None): string =>
  none === "too fast"
    ? say("drilling card.too fast")
    : none === "no figures"
      ? say("drilling card.no figures here")
      : say("drilling card.tap by hand");

/** What stands under a cut, where its middle is, and in which row. */
type CutNumber = {
  readonly words: string;
  readonly x: number;
  readonly cut: number;
  readonly row: 0 | 1;
  readonly withSizes: boolean;
};

/** A number stands no farther beside its cut, mm: whoever looks straight down must not meet another's. */
const farthest = 4;

/** Under each cut its diameter, with the last drill before it and the first behind it where there is room for those; where two cuts are too
 *  close for their numbers these stand in two rows, and where even so one would stand far from its cut, cuts have none. */
function cutNumbers({ cuts }: Bar, { place, width, sizes }: Axis): { numbers: CutNumber[]; led: boolean } {
  const most = largestOf(cuts.map(({ words }) => wide(words)));
  const onBar = (x: number, own: number) => Math.min(width - own / 2, Math.max(own / 2, x));
  const places = cuts.map(({ at, words }) => onBar(place(at), wide(words)));
  if (places.some((x, index) => index > 0 && x - (places[index - 1] ?? 0) < most + gap)) {
    let shown = cuts.map(({ at, words }) => ({ words, cut: place(at) }));
    // Each row's own numbers are clear of one another, and of the lines to those below them.
    const below = () =>
      apart(
        shown.map(({ cut }) => cut),
        (most + gap) / 2,
        most / 2,
        width - most / 2,
      );
    for (
      let at = below();
      shown.some(({ cut }, index) => Math.abs((at[index] as number) - cut) > farthest);
      at = below()
    )
      shown = withoutTightest(shown);
    const numbers: CutNumber[] = [];
    for (const [index, x] of below().entries()) {
      const last = numbers.at(-1);
      const row = last?.row === 0 && x - last.x < most + gap ? 1 : 0;
      numbers.push({ ...(shown[index] as (typeof shown)[number]), x, row, withSizes: false });
    }
    return { numbers, led: true };
  }
  let free = 0;
  const numbers = cuts.map(({ at, words }, index): CutNumber => {
    const [left, right] = [
      sizes.findLast(({ diameter }) => diameter <= at + 1e-9),
      sizes.find(({ diameter }) => diameter > at + 1e-9),
    ];
    const next = cuts[index + 1];
    const end = next === undefined ? width : place(next.at) - wide(next.words) / 2 - gap;
    const all = left && right && `${left.name} | ${words} | ${right.name}`;
    const half = wide(all ?? "") / 2;
    const x = onBar(place(at), 2 * half);
    const withSizes = all !== undefined && x - half >= free && x + half <= end;
    const own = withSizes ? { words: all, x } : { words, x: onBar(place(at), wide(words)) };
    free = own.x + wide(own.words) / 2 + gap;
    return { ...own, cut: place(at), row: 0, withSizes };
  });
  return { numbers, led: false };
}

/** Without the cut that has the least room between its neighbours. */
function withoutTightest<T extends { readonly cut: number }>(cuts: readonly T[]): T[] {
  const room = (index: number) =>
    (cuts[index + 1]?.cut ?? Number.POSITIVE_INFINITY) - (cuts[index - 1]?.cut ?? Number.NEGATIVE_INFINITY);
  const rooms = cuts.map((_, index) => room(index));
  const tightest = rooms.indexOf(smallestOf(rooms));
  return cuts.filter((_, index) => index !== tightest);
}

const wide = (words: string): number => textWidth(words, size.text, "regular");

/** Whether the bars have cuts, whether under any the sizes beside it are told, and whether any has no number. */
export function cutsShown(bars: readonly Bar[], axis: Axis): { any: boolean; withSizes: boolean; without: boolean } {
  const numbers = bars.flatMap((bar) => cutNumbers(bar, axis).numbers);
  const cuts = bars.reduce((sum, bar) => sum + bar.cuts.length, 0);
  return {
    any: numbers.length > 0,
    withSizes: numbers.some(({ withSizes }) => withSizes),
    without: numbers.length < cuts,
  };
}

/** Numbers that are close have a line each up to their cut. */
function cutMarks(bar: Bar, axis: Axis, bottom: number): { marks: Mark[]; height: number } {
  const { numbers, led } = cutNumbers(bar, axis);
  if (numbers.length === 0) return { marks: [], height: 0 };
  const below = led ? leader : 0;
  const marks = numbers.flatMap(({ words, x, cut, row }): Mark[] => {
    const top = bottom + below + row * numberRow;
    const down = [{ x: cut, y: bottom }, { x, y: bottom + leader }, ...(row === 0 ? [] : [{ x, y: top + 0.4 }])];
    return [
      ...(led ? [polyline(down, { pen: axisLine })] : []),
      text(words, { x, y: top + size.text * 1.05 }, { size: size.text, anchor: "middle" }),
    ];
  });
  const rows = 1 + largestOf(numbers.map(({ row }) => row));
  return { marks, height: below + rows * numberRow };
}
