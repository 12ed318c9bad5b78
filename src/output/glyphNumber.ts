import { glyphOrder } from "./glyphOrder.generated.js";

const numbers = new Map([...glyphOrder].map((letter, number) => [letter, number]));

/** Number of the glyph that draws a letter, the same in both weights; 0, an empty box, where the font lacks it. */
export const glyphNumber = (letter: string): number => (letter === "\0" ? 0 : (numbers.get(letter) ?? 0));
