import type { Mark, PathMark, Point } from "../../drawing/drawing.js";
import { group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { wrapText } from "../../drawing/text.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { kept, together } from "../shared/runs.js";
import { arrowHead } from "../shared/sectionMarks.js";
import { axisLine, leading, objectLine, pen, size, weight } from "../shared/style.js";

/** Which way to swing, for which end small, seen from above with the operator at the foot of the drawing (common practice,
 *  and geometry: the tool cuts deeper where its path comes nearer to the axis). */
const swings = [
  { part: "top slide", freeEnd: true, clockwise: false },
  { part: "top slide", freeEnd: false, clockwise: true },
  { part: "headstock", freeEnd: true, clockwise: true },
  { part: "headstock", freeEnd: false, clockwise: false },
] as const;
type Swing = (typeof swings)[number];

/** Drawn larger than any taper, so that it is seen which end is small. */
const ANGLE = (12 / 180) * Math.PI;
/** What the pictures were drawn for, mm; they shrink with the paper, their words do not. */
const drawn = { width: 56, height: 37 } as const;
const gap = 4;

const axis = pen(weight.axis, "black", [3, 0.8, 0.6, 0.8]);

export const taperSwing = block({ height: 40 }, ({ width, settings }): Run[] => {
  // Beside each other as many as need not shrink for it, two at least: headstock below top slide.
  const wanted = (drawn.width * settings.height) / drawn.height;
  const across = swings.length * (wanted + gap) - gap <= width ? swings.length : 2;
  const each = (width - (across - 1) * gap) / across;
  const scale = Math.min(each / drawn.width, settings.height / drawn.height);
  const rows = Array.from({ length: swings.length / across }, (_, row) =>
    swings.slice(row * across, (row + 1) * across).map((swing) => labelled(swing, each, scale)),
  );
  return [
    ...kept(paragraph(say("tapers.seen from above"), width, { gap: 2.5 })),
    // Which one is meant is seen by the others.
    ...together(
      rows.map((row): Run => {
        const height = Math.max(...row.map((one) => one.height));
        const marks = row.map((one, index) => group({ x: index * (each + gap), y: 0 }, one.marks));
        return { drawing: { width, height, marks }, gap: 3 };
      }),
    ),
  ];
});

/** A picture, and below it which end comes out small and which way to swing what. */
function labelled(swing: Swing, width: number, scale: number): { marks: Mark[]; height: number } {
  const high = drawn.height * scale;
  const step = size.text * leading;
  const end = swing.freeEnd ? say("tapers.free end small") : say("tapers.chuck end small");
  const way = swing.clockwise ? say(`tapers.${swing.part} clockwise`) : say(`tapers.${swing.part} anticlockwise`);
  const lines = [
    ...wrapText(end, width, size.text, "bold").map((part) => ({ part, weight: "bold" as const })),
    ...wrapText(way, width, size.text, "regular").map((part) => ({ part, weight: "regular" as const })),
  ];
  const marks = lines.map(({ part, weight }, index) =>
    text(part, { x: width / 2, y: high + step * (index + 1) }, { size: size.text, weight, anchor: "middle" }),
  );
  const left = (width - drawn.width * scale) / 2;
  return {
    marks: [group({ x: left, y: 0 }, picture(swing, scale)), ...marks],
    height: high + step * (lines.length + 0.4),
  };
}

/** About the axis of the work, origin where that meets the middle of the taper. */
const work = { length: 22, large: 7.6, small: 7.6 - 22 * Math.tan(ANGLE) } as const;
const middleOf = { x: 29, y: 12.5 } as const;
/** Where the arc crosses the axis, from the middle of the swing. */
const REACH = 21;

function picture({ part, freeEnd, clockwise }: Swing, scale: number): Mark[] {
  const at = (x: number, y: number): Point => ({ x: x * scale, y: y * scale });
  const half = work.length / 2;
  const [left, right] = freeEnd ? [work.large, work.small] : [work.small, work.large];
  const head = [
    rectangle(at(-half - 14, -7), 8 * scale, 14 * scale, { pen: objectLine, fill: "white" }),
    rectangle(at(-half - 6, -9.5), 6 * scale, 19 * scale, { pen: objectLine, fill: "white" }),
  ];
  const body = polyline(
    [at(-half, -left), at(half, -right), at(half, right), at(-half, left)],
    { pen: objectLine, fill: "white" },
    true,
  );
  const centre = line(at(-half - 16, 0), at(REACH + 2, 0), axis);
  const turn = clockwise ? ANGLE : -ANGLE;
  const origin = at(middleOf.x, middleOf.y);
  if (part === "headstock")
    return [
      // The bed, to which the tool goes parallel, and the swung axis of head and work over it.
      group(origin, [line(at(-half - 16, 0), at(REACH + 2, 0), axisLine), ...arc(REACH, turn, scale)]),
      group(origin, [...head, body, centre], { turn }),
      group(at(middleOf.x, middleOf.y + (left + right) / 2 + 2), path(scale, half)),
    ];
  const away = (left + right) / 2 + 3.2;
  return [
    group(origin, [...head, body, centre]),
    group(at(middleOf.x, middleOf.y + away), [
      line(at(-half, 0), at(REACH + 2, 0), axisLine),
      ...arc(REACH, turn, scale),
    ]),
    group(at(middleOf.x, middleOf.y + away), [line(at(-half, 0), at(REACH + 2, 0), axis), ...path(scale, half)], {
      turn,
    }),
  ];
}

/** The tool, and the line that it runs along, towards the chuck. */
function path(scale: number, half: number): Mark[] {
  const at = (x: number, y: number): Point => ({ x: x * scale, y: y * scale });
  const tool = [at(half - 4, 5), at(half - 4, 1), at(half - 2.5, -1.8), at(half - 1, 1), at(half - 1, 5)];
  // The post stands on a slide that runs the way the tool goes.
  const slide = rectangle(at(half - 16, 5), 24 * scale, 6 * scale, { pen: objectLine, fill: "white" });
  const post = rectangle(at(half - 5.5, 4), 6 * scale, 6 * scale, { pen: objectLine, fill: "white" });
  return [
    line(at(half - 4, 0), at(-half + 2, 0), objectLine),
    arrowHead(at(-half, 0), -1, 0, 2.6 * scale),
    slide,
    polyline(tool, { pen: objectLine, fill: "white" }),
    post,
  ];
}

/** From where the part stood to where it is swung to; the arrow says which way, the letters how far. */
function arc(radius: number, turn: number, scale: number): Mark[] {
  const reach = radius * scale;
  const bend: PathMark = {
    kind: "path",
    segments: [{ to: "arc", centre: { x: 0, y: 0 }, radius: reach, start: Math.min(0, turn), end: Math.max(0, turn) }],
    pen: pen(weight.row),
  };
  const tip = { x: reach * Math.cos(turn), y: reach * Math.sin(turn) };
  const sense = Math.sign(turn);
  // The head is straight: along the chord of its own length.
  const lean = turn - (sense * 2) / reach / 2;
  return [bend, arrowHead(tip, -sense * Math.sin(lean), sense * Math.cos(lean), 2)];
}
