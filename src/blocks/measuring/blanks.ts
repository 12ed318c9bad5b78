import type { Mark } from "../../drawing/drawing.js";
import { line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { kept } from "../shared/runs.js";
import { rowLine, size } from "../shared/style.js";

/** Something to write: what stands before the line and, as a unit, behind it. */
export type Blank = {
  readonly before: string;
  readonly behind?: string;
  /** Least length of the line, mm. */
  readonly room?: number;
};

const ROOM = 22;
const GAP = 5;
/** A line that is shorter is no room to write. */
const SHORT = 10;
/** Room above a line for a hand. */
const HIGH = 7;

/** Words with drawn lines to write on, as many in a row as have room; what is left over lengthens the lines. */
export function blanks(given: readonly Blank[], width: number, gap: number): Run[] {
  // Words that leave no room for a line stand above it.
  const long = given.find(({ before, behind }) => wordWidth(before) + wordWidth(behind) + SHORT > width);
  if (long !== undefined) {
    const at = given.indexOf(long);
    const [first, last] = [given.slice(0, at), given.slice(at + 1)];
    return [
      ...(first.length > 0 ? blanks(first, width, gap) : []),
      ...kept(paragraph(long.before, width, { gap: first.length > 0 ? 1 : gap })),
      ...blanks([{ ...long, before: "" }], width, 0),
      ...(last.length > 0 ? blanks(last, width, 0) : []),
    ];
  }
  const rows: Blank[][] = [];
  let used = 0;
  for (const field of given) {
    const own = least(field);
    const open = rows.at(-1);
    if (open === undefined || used + GAP + own > width) {
      rows.push([field]);
      used = own;
    } else {
      open.push(field);
      used += GAP + own;
    }
  }
  return rows.map((row, index): Run => {
    const spare = width - row.reduce((sum, field) => sum + least(field), 0) - GAP * (row.length - 1);
    let x = 0;
    const y = HIGH - 1.6;
    const marks = row.flatMap((field): Mark[] => {
      const { before, behind, room = ROOM } = field;
      const from = x + wordWidth(before);
      const to = from + Math.max(2, room + spare / row.length);
      x = to + wordWidth(behind) + GAP;
      return [
        ...(before ? [text(before, { x: from - wordWidth(before), y }, { size: size.text })] : []),
        line({ x: from, y: y + 0.6 }, { x: to, y: y + 0.6 }, rowLine),
        ...(behind ? [text(behind, { x: to + 1.2, y }, { size: size.text })] : []),
      ];
    });
    return { drawing: { width, height: HIGH, marks }, gap: index === 0 ? gap : 0 };
  });
}

const wordWidth = (words: string | undefined): number => (words ? textWidth(words, size.text, "regular") + 1.2 : 0);

const least = ({ before, behind, room = ROOM }: Blank): number => wordWidth(before) + room + wordWidth(behind);
