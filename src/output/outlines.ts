import { advances } from "../drawing/advances.generated.js";
import type { GroupMark, Mark, PathMark, Segment, TextMark, Weight } from "../drawing/drawing.js";
import type { Print } from "../drawing/page.js";
import { textWidth } from "../drawing/text.js";
import { glyphPaths } from "./glyphPaths.generated.js";

/** Hair line of an engraved letter's outline. */
const hair = 0.1;

/** Every text as the outlines of its letters, and every filled shape as its outline: what a laser or engraver follows. */
export function outlined(print: Print): Print {
  const pages = print.pages.map((page) => ({
    ...page,
    drawing: { ...page.drawing, marks: page.drawing.marks.map(outline) },
  }));
  return { ...print, pages };
}

function outline(mark: Mark): Mark {
  if (mark.kind === "group") return { ...mark, marks: mark.marks.map(outline) };
  if (mark.kind === "text") return letters(mark);
  if (mark.fill === undefined) return mark;
  const { fill, pen, ...shape } = mark;
  return { ...shape, pen: pen ?? { width: hair, ink: fill } };
}

function letters(mark: TextMark): GroupMark {
  const width = textWidth(mark.text, mark.size, mark.weight);
  let x = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? -width / 2 : -width;
  const marks: PathMark[] = [];
  for (const letter of mark.text) {
    const segments = letterSegments(letter, mark.weight, x, mark.size / advances.unitsPerEm);
    if (segments.length > 0) marks.push({ kind: "path", segments, pen: { width: hair, ink: mark.ink } });
    x += textWidth(letter, mark.size, mark.weight);
  }
  return { kind: "group", at: mark.at, ...(mark.turn !== undefined && { turn: mark.turn }), marks };
}

/** Outline of one letter that begins at `left`; the font's empty box where it lacks the letter. The font's y runs up, ours down; its quadratic curves become cubic ones exactly. */
function letterSegments(letter: string, weight: Weight, left: number, scale: number): Segment[] {
  const paths: Readonly<Record<string, string>> = glyphPaths[weight];
  const path = (Object.hasOwn(paths, letter) ? paths[letter] : paths["\0"]) as string;
  let here = { x: 0, y: 0 };
  return [...path.matchAll(/([MLQZ])([^MLQZ]*)/g)].map(([, command, numbers = ""]): Segment => {
    if (command === "Z") return { to: "close" };
    const units = numbers.trim().split(" ").map(Number);
    const at = (index: number) => ({ x: left + (units[index] ?? 0) * scale, y: 0 - (units[index + 1] ?? 0) * scale });
    const end = at(units.length - 2);
    const from = here;
    here = end;
    if (command === "M") return { to: "move", ...end };
    if (command === "L") return { to: "line", ...end };
    const bend = at(0);
    const part = (a: number, b: number) => a + ((b - a) * 2) / 3;
    return {
      to: "curve",
      x1: part(from.x, bend.x),
      y1: part(from.y, bend.y),
      x2: part(end.x, bend.x),
      y2: part(end.y, bend.y),
      ...end,
    };
  });
}
