import { advances } from "../drawing/advances.generated.js";
import type { GroupMark, Mark, PathMark, Segment, TextMark } from "../drawing/drawing.js";
import type { Print } from "../drawing/page.js";
import { textWidth } from "../drawing/text.js";
import type { FontBytes } from "./fonts.js";
import { glyphOutline, type Stroke } from "./glyphOutline.js";

/** Hair line of an engraved letter's outline. */
const hair = 0.1;

/** Every text as the outlines of its letters, and every filled shape as its outline: what a laser or engraver follows. `fonts`: TrueType. */
export function outlined(print: Print, fonts: FontBytes): Print {
  const outline = (mark: Mark): Mark => {
    if (mark.kind === "group") return { ...mark, marks: mark.marks.map(outline) };
    if (mark.kind === "text") return letters(mark, fonts);
    if (mark.fill === undefined) return mark;
    const { fill, pen, ...shape } = mark;
    return { ...shape, pen: pen ?? { width: hair, ink: fill } };
  };
  const pages = print.pages.map((page) => ({
    ...page,
    drawing: { ...page.drawing, marks: page.drawing.marks.map(outline) },
  }));
  return { ...print, pages };
}

function letters(mark: TextMark, fonts: FontBytes): GroupMark {
  const width = textWidth(mark.text, mark.size, mark.weight);
  let x = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? -width / 2 : -width;
  const marks: PathMark[] = [];
  for (const letter of mark.text) {
    const segments = letterSegments(glyphOutline(fonts[mark.weight], letter), x, mark.size / advances.unitsPerEm);
    if (segments.length > 0) marks.push({ kind: "path", segments, pen: { width: hair, ink: mark.ink } });
    x += textWidth(letter, mark.size, mark.weight);
  }
  return { kind: "group", at: mark.at, ...(mark.turn !== undefined && { turn: mark.turn }), marks };
}

/** Outline of one letter that begins at `left`. The font's y runs up, ours down; its quadratic curves become cubic ones exactly. */
function letterSegments(outline: readonly Stroke[], left: number, scale: number): Segment[] {
  let here = { x: 0, y: 0 };
  return outline.map((stroke): Segment => {
    if (stroke.to === "close") return { to: "close" };
    const at = (x: number, y: number) => ({ x: left + x * scale, y: 0 - y * scale });
    const end = at(stroke.x, stroke.y);
    const from = here;
    here = end;
    if (stroke.to !== "bend") return { to: stroke.to, ...end };
    const bend = at(stroke.x1, stroke.y1);
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
