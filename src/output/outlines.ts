import * as fontkit from "@pdf-lib/fontkit";
import type { GroupMark, Mark, PathMark, Segment, TextMark, Weight } from "../drawing/drawing.js";
import type { Print } from "../drawing/page.js";
import { textWidth } from "../drawing/text.js";
import type { FontBytes } from "./fonts.js";

type Command = { readonly command: string; readonly args: readonly number[] };
type Glyph = { readonly path: { readonly commands: readonly Command[] }; readonly advanceWidth: number };
type Font = { readonly unitsPerEm: number; glyphForCodePoint(code: number): Glyph };

/** Hair line of an engraved letter's outline. */
const hair = 0.1;

/** Every text as the outlines of its letters, and every filled shape as its outline: what a laser or engraver follows. */
export function outlined(print: Print, fonts: FontBytes): Print {
  const create = (fontkit as unknown as { default?: typeof fontkit }).default ?? fontkit;
  const open = (bytes: Uint8Array) => (create as unknown as { create(bytes: Uint8Array): Font }).create(bytes);
  const opened: Record<Weight, Font> = { regular: open(fonts.regular), bold: open(fonts.bold) };
  const pages = print.pages.map((page) => ({
    ...page,
    drawing: { ...page.drawing, marks: page.drawing.marks.map((mark) => outline(mark, opened)) },
  }));
  return { ...print, pages };
}

function outline(mark: Mark, fonts: Record<Weight, Font>): Mark {
  if (mark.kind === "group") return { ...mark, marks: mark.marks.map((inner) => outline(inner, fonts)) };
  if (mark.kind === "text") return letters(mark, fonts[mark.weight]);
  if (mark.fill === undefined) return mark;
  const { fill, pen, ...shape } = mark;
  return { ...shape, pen: pen ?? { width: hair, ink: fill } };
}

function letters(mark: TextMark, font: Font): GroupMark {
  const width = textWidth(mark.text, mark.size, mark.weight);
  let x = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? -width / 2 : -width;
  const marks: PathMark[] = [];
  for (const letter of mark.text) {
    const glyph = font.glyphForCodePoint(letter.codePointAt(0) ?? 32);
    const scale = mark.size / font.unitsPerEm;
    const segments = glyphSegments(glyph.path.commands, x, scale);
    if (segments.length > 0) marks.push({ kind: "path", segments, pen: { width: hair, ink: mark.ink } });
    x += textWidth(letter, mark.size, mark.weight);
  }
  return { kind: "group", at: mark.at, ...(mark.turn !== undefined && { turn: mark.turn }), marks };
}

/** The font's y runs up, ours down; quadratic curves become cubic ones exactly. */
function glyphSegments(commands: readonly Command[], left: number, scale: number): Segment[] {
  const at = (args: readonly number[], index: number) => ({
    x: left + (args[index] ?? 0) * scale,
    y: 0 - (args[index + 1] ?? 0) * scale,
  });
  let here = { x: 0, y: 0 };
  return commands.map(({ command, args }): Segment => {
    if (command === "closePath") return { to: "close" };
    const end = at(args, args.length - 2);
    const from = here;
    here = end;
    if (command === "moveTo") return { to: "move", ...end };
    if (command === "lineTo") return { to: "line", ...end };
    if (command === "quadraticCurveTo") {
      const bend = at(args, 0);
      const part = (a: number, b: number) => a + ((b - a) * 2) / 3;
      return {
        to: "curve",
        x1: part(from.x, bend.x),
        y1: part(from.y, bend.y),
        x2: part(end.x, bend.x),
        y2: part(end.y, bend.y),
        ...end,
      };
    }
    const [one, two] = [at(args, 0), at(args, 2)];
    return { to: "curve", x1: one.x, y1: one.y, x2: two.x, y2: two.y, ...end };
  });
}
