import type { Mark } from "../../drawing/drawing.js";
import { text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { fewLines, onlyCapitals, shortened } from "../shared/shortened.js";
import { size } from "../shared/style.js";

/** A position's name as it is set: lines of pieces that may differ in size. */
export type Name = { readonly lines: readonly (readonly Piece[])[]; readonly width: number; readonly em: number };
type Piece = { readonly words: string; readonly em: number; readonly bold: boolean };

/** Between the belts' steps and the way of the drive. */
const gap = 1.6;
const step = 1.3;

const piece = (words: string, em: number, bold: boolean): Piece => ({ words, em, bold });
const widthOf = (pieces: readonly Piece[]) =>
  pieces.reduce((sum, { words, em, bold }) => sum + textWidth(words, em, bold ? "bold" : "regular") + gap, -gap);

/** As large as the room allows: 20 pt with the way in 13; all of it in 13, on one line or two; in two lines of 9, cut short at last.
 *  `small`: in one line of 9 at last, each of its labels cut short. */
export function nameOf(
  { belts, way }: { readonly belts: readonly string[]; readonly way: string },
  room: number,
  small: boolean,
): Name {
  const belt = belts.join(" ");
  const both = (em: number) => [
    ...(belt === "" ? [] : [piece(belt, em, true)]),
    ...(way === "" ? [] : [piece(way, belt === "" ? em : size.card, belt === "")]),
  ];
  for (const em of [size.hand, size.card])
    if (widthOf(both(em)) <= room) return { lines: [both(em)], width: widthOf(both(em)), em };
  const labels = [...belts, way].filter((words) => words !== "");
  if (small) return oneLine(labels, room);
  const plain = (lines: readonly string[], em: number): Name => {
    const pieces = lines.map((words) => [piece(words, em, true)]);
    return { lines: pieces, width: Math.max(...pieces.map(widthOf)), em };
  };
  const whole = labels.join(" ");
  const large = wrapText(whole, room, size.card, "bold");
  return large.length <= 2 ? plain(large, size.card) : plain(fewLines(whole, 2, room, size.text, "bold"), size.text);
}

/** What short labels leave of their share goes to the long ones. */
function oneLine(labels: readonly string[], room: number): Name {
  const em = size.text;
  const wish = labels.map((label) => textWidth(label, em, "bold"));
  let left = room - gap * (labels.length - 1);
  let open = labels.length;
  const shares: number[] = [];
  for (const index of [...labels.keys()].sort((a, b) => (wish[a] ?? 0) - (wish[b] ?? 0))) {
    const own = Math.min(wish[index] ?? 0, left / open);
    shares[index] = own;
    left -= own;
    open--;
  }
  const pieces = labels.map((label, index) =>
    piece(shortened(label, (shares[index] ?? 0) + 0.01, em, "bold"), em, true),
  );
  return { lines: [pieces], width: widthOf(pieces), em };
}

/** A single line is no higher than any row, where its large letters have nothing above or below. */
export function nameHeight({ lines, em }: Name): number {
  if (lines.length > 1) return lines.length * em * step + 0.8;
  const large = lines.flat().some((one) => one.em === size.hand && !onlyCapitals(one.words));
  return large ? em * 1.4 : 0;
}

/** In the middle of a row so high; `bold` where the hand may choose it. */
export function nameMarks({ lines, em }: Name, height: number, bold: boolean): Mark[] {
  const first = height / 2 + em * 0.34 - ((lines.length - 1) * em * step) / 2;
  return lines.flatMap((pieces, at) => {
    let x = 0;
    return pieces.map((one) => {
      const weight = one.bold && bold ? "bold" : "regular";
      const mark = text(one.words, { x, y: first + at * em * step }, { size: one.em, weight });
      x += textWidth(one.words, one.em, one.bold ? "bold" : "regular") + gap;
      return mark;
    });
  });
}
