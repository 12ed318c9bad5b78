import type { Mark } from "../../drawing/drawing.js";
import { text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { onlyCapitals } from "../shared/shortened.js";
import { size } from "../shared/style.js";

/** A position's name as it is set: lines of pieces that may differ in size. `em`: of the position's own. */
export type Name = { readonly lines: readonly (readonly Piece[])[]; readonly width: number; readonly em: number };
type Labels = { readonly belts: readonly string[]; readonly way: string };
type Piece = { readonly words: string; readonly em: number; readonly bold: boolean };

/** Between the belts' steps and the way of the drive. */
const gap = 1.6;
const step = 1.3;

const piece = (words: string, em: number, bold: boolean): Piece => ({ words, em, bold });
const widthOf = (pieces: readonly Piece[]) =>
  pieces.reduce((sum, { words, em, bold }) => sum + textWidth(words, em, bold ? "bold" : "regular") + gap, -gap);

/** As large as the room and `largest` allow, with what else gives nearly the same speed smaller behind it, or below where that is
 *  asked for or there is no room. */
export function nameOf(
  row: Labels & { readonly also: readonly Labels[] },
  room: number,
  largest: number,
  below = false,
): Name {
  const own = ownName(row, room, largest);
  if (row.also.length === 0) return own;
  const words = row.also.map(({ belts, way }) => `/ ${[...belts, way].filter((one) => one !== "").join(" ")}`);
  const [only = [], ...more] = own.lines;
  const beside = [...only, piece(words.join(" "), size.text, true)];
  if (!below && more.length === 0 && widthOf(beside) <= room)
    return { ...own, lines: [beside], width: widthOf(beside) };
  const lines = wrapped(words, room).map((line) => [piece(line, size.text, true)]);
  return { ...own, lines: [...own.lines, ...lines], width: Math.max(own.width, ...lines.map(widthOf)) };
}

/** Each whole in its line, as long as one has room for it. */
function wrapped(words: readonly string[], room: number): string[] {
  const lines: string[] = [];
  for (const one of words) {
    const both = `${lines.at(-1)} ${one}`;
    if (lines.length > 0 && textWidth(both, size.text, "bold") <= room) lines[lines.length - 1] = both;
    else lines.push(...wrapText(one, room, size.text, "bold"));
  }
  return lines;
}

/** 20 pt with the way in 13; all of it in 13, on one line or two; in 9 on as many as it takes. Never cut: two positions would read
 *  the same. */
function ownName({ belts, way }: Labels, room: number, largest: number): Name {
  const belt = belts.join(" ");
  const both = (em: number) => [
    ...(belt === "" ? [] : [piece(belt, em, true)]),
    ...(way === "" ? [] : [piece(way, belt === "" ? em : size.card, belt === "")]),
  ];
  for (const em of [size.hand, size.card])
    if (em <= largest && widthOf(both(em)) <= room) return { lines: [both(em)], width: widthOf(both(em)), em };
  const whole = [...belts, way].filter((words) => words !== "").join(" ");
  const large = wrapText(whole, room, size.card, "bold");
  const [lines, em] = large.length <= 2 ? [large, size.card] : [wrapText(whole, room, size.text, "bold"), size.text];
  const pieces = lines.map((words) => [piece(words, em, true)]);
  return { lines: pieces, width: Math.max(...pieces.map(widthOf)), em };
}

/** Parts of an em: a letter's foot, a capital, the highest small letter, a capital with something above it. */
const foot = 0.24;
const capital = 0.74;
const tallest = 0.78;
const accented = 0.95;
/** From letters to the lines above and below their row. */
const clear = 0.4;

/** From the line above to the one below. */
const stepOf = (line: readonly Piece[]): number => step * Math.max(0, ...line.map(({ em }) => em));

/** The height of row that it wants. */
export function nameHeight({ lines, em }: Name): number {
  if (lines.length > 1) return lines.reduce((sum, line) => sum + stepOf(line), 0.8);
  const base = em * 0.34;
  const reach = lines.flat().map((one) => {
    const plain = onlyCapitals(one.words);
    const up = plain ? capital : /[\u00c0-\u00de\u0100-\u017f]/.test(one.words) ? accented : tallest;
    return Math.max(base + (plain ? 0 : foot) * one.em, up * one.em - base);
  });
  return 2 * (Math.max(0, ...reach) + clear);
}

/** In the middle of a row so high; `bold` where the hand may choose it. */
export function nameMarks({ lines, em }: Name, height: number, bold: boolean): Mark[] {
  const all = lines.reduce((sum, line) => sum + stepOf(line), 0);
  let y = height / 2 + em * 0.34 - (all - em * step) / 2;
  return lines.flatMap((pieces, at) => {
    let x = 0;
    if (at > 0) y += stepOf(pieces);
    return pieces.map((one) => {
      const weight = one.bold && bold ? "bold" : "regular";
      const mark = text(one.words, { x, y }, { size: one.em, weight });
      x += textWidth(one.words, one.em, one.bold ? "bold" : "regular") + gap;
      return mark;
    });
  });
}
