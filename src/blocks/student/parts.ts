import type { DialFinding } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import { countedAs } from "../../dial/labelling.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { circle, group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { together } from "../shared/runs.js";
import { leading, objectLine, rowLine, size } from "../shared/style.js";

/** Em size of what a student reads, mm. */
export const readSize = size.text;

/** Plain lines, one idea each, wrapped where they must. `sign`: a cross before what one never does, a number before a step, of
 *  which `from` is the first. */
export function ideas(
  list: readonly string[],
  width: number,
  sign: "none" | "number" | "cross" = "none",
  from = 1,
): Drawing {
  const indent = sign === "none" ? 0 : 5;
  const step = readSize * leading;
  let y = 0;
  const marks: Mark[] = [];
  for (const [index, idea] of list.entries()) {
    const parts = wrapText(idea, width - indent, readSize, "regular");
    if (sign === "number")
      marks.push(text(String(index + from), { x: 0.4, y: y + step * 0.76 }, { size: readSize, weight: "bold" }));
    if (sign === "cross") {
      const [left, top] = [0.4, y + step * 0.2];
      marks.push(
        line({ x: left, y: top }, { x: left + 2.4, y: top + 2.4 }, { ...objectLine, ink: "accent" }),
        line({ x: left + 2.4, y: top }, { x: left, y: top + 2.4 }, { ...objectLine, ink: "accent" }),
      );
    }
    for (const part of parts) {
      marks.push(text(part, { x: indent, y: y + step * 0.76 }, { size: readSize }));
      y += step;
    }
    y += 0.6;
  }
  return { width, height: y, marks };
}

/** A numbered heading over its contents, which stay together where a page has the room for them. */
export function panel(title: string, contents: readonly Drawing[], width: number): Run[] {
  const lines = wrapText(title, width, size.card, "bold");
  const step = size.card * 1.2;
  const below = 4.2 + step * (lines.length - 1) + 1.6;
  const head: Drawing = {
    width,
    height: below,
    marks: [
      ...lines.map((part, row) => text(part, { x: 0, y: 4.2 + row * step }, { size: size.card, weight: "bold" })),
      line({ x: 0, y: below }, { x: width, y: below }, objectLine),
    ],
  };
  return together([{ drawing: head }, ...contents.map((drawing, at) => ({ drawing, gap: at === 0 ? 1.8 : 1.4 }))]);
}

export function stack(drawings: readonly Drawing[], width: number, gap: number): Drawing {
  let y = 0;
  const marks = drawings.map((drawing, index) => {
    if (index > 0) y += gap;
    const placed = group({ x: 0, y }, drawing.marks);
    y += drawing.height;
    return placed;
  });
  return { width, height: y, marks };
}

/** A stretch of this dial under its index line, with its own marks and numbers, growing the way they grow on it: `lines` past
 *  0 on the first row. `grown`: how much higher than at its least. */
export function dialWindow(
  width: number,
  lines: number,
  dial: DialFinding,
  { grown, value }: { readonly grown: number; readonly value?: string },
): Drawing {
  const shown = 24;
  const first = Math.max(-4, lines - 16);
  const pitch = (width - 8) / shown;
  const at = (count: number) => {
    const along = 4 + (count - first) * pitch;
    return growthOf(dial) === "leftward" ? width - along : along;
  };
  const row = dial.rows[0] ?? [];
  const high = { 1: 6.5 * grown, 2: 4.6 * grown, 3: 3 * grown } as const;
  const numerals = grown > 1.2 ? size.card : readSize;
  const foot = 7.6 + high[1] + numerals * 0.75;
  const marks: Mark[] = [];
  // Of numbers that would touch the one before is left out.
  let taken = Number.NEGATIVE_INFINITY;
  for (let count = Math.max(0, first); count <= first + shown; count++) {
    const mark = row[count];
    if (mark === undefined) continue;
    const x = at(count);
    const half = textWidth(mark.label ?? "", numerals, "bold") / 2;
    const numbered = mark.label !== undefined && Math.abs(x - taken) >= half + 0.8;
    marks.push(line({ x, y: 7 }, { x, y: 7 + high[mark.rank] }, mark.rank === 1 ? objectLine : rowLine));
    if (!numbered) continue;
    const middle = clear(x, half + 0.8, width);
    marks.push(text(mark.label ?? "", { x: middle, y: foot }, { size: numerals, anchor: "middle", weight: "bold" }));
    taken = middle + (growthOf(dial) === "leftward" ? -half : half);
  }
  const x = at(lines);
  const told = value === undefined ? "" : say("student.lines are", { n: lines, value });
  const hint = say("student.count lines", { counted: counted(dial) });
  const hints = wrapText(hint, width - 4, size.source, "regular");
  const tall = foot - 2 + (hints.length - 1) * size.source * 1.2;
  marks.push(rectangle({ x: 0, y: 7 }, width, tall, { pen: objectLine }));
  marks.push(
    polyline(
      [
        { x: x - 1.6, y: 3.6 },
        { x: x + 1.6, y: 3.6 },
        { x, y: 6.7 },
      ],
      { fill: "black" },
      true,
    ),
    ...(value === undefined
      ? []
      : [
          text(
            told,
            { x: clear(x, textWidth(told, readSize, "bold") / 2, width), y: 2.6 },
            { size: readSize, anchor: "middle", weight: "bold" },
          ),
        ]),
    ...hints.map((part, row) => text(part, { x: 2, y: foot + 3.8 + row * size.source * 1.2 }, { size: size.source })),
  );
  return { width, height: 7.4 + tall, marks };
}

/** The middle of words so wide, within the width. */
const clear = (x: number, half: number, width: number): number => Math.max(half, Math.min(x, width - half));

/** What the numbers mean where they count something else than whole units. */
const counted = (dial: DialFinding): string => countedAs(dial) ?? say(`student.numbers in ${dial.chosen.unit}`);

/** Three handwheels: on to the line, past it, and back well before it to come on again. `grown`: how much larger than at their
 *  least. */
export function comingOn(back: "half" | "little", width: number, grown: number): Drawing {
  const each = width / 3;
  const radius = Math.min(7 * grown, each / 2 - 2);
  const arrow = radius * 0.71;
  const caption = size.text;
  const step = caption * leading;
  const captions = (words: string, good: boolean) => wrapText(words, each - 1.5, caption, good ? "bold" : "regular");
  const wheel = (index: number, words: string, from: number, to: number, good: boolean): Mark[] => {
    const centre = { x: each * (index + 0.5), y: radius + 3 };
    const angle = (turn: number) => -Math.PI / 2 + turn;
    const tip = { x: centre.x + arrow * Math.cos(angle(to)), y: centre.y + arrow * Math.sin(angle(to)) };
    const sense = to > from ? 1 : -1;
    const along = angle(to) + (sense * Math.PI) / 2;
    const barb = (spread: number) => ({
      x: tip.x - 2.2 * Math.cos(along + spread),
      y: tip.y - 2.2 * Math.sin(along + spread),
    });
    return [
      circle(centre, radius, { pen: objectLine }),
      circle(centre, 1.2, { fill: "black" }),
      line({ x: centre.x, y: centre.y - radius - 2.4 }, { x: centre.x, y: centre.y - radius + 1.4 }, objectLine),
      {
        kind: "path",
        segments: [
          {
            to: "arc",
            centre,
            radius: arrow,
            start: Math.min(angle(from), angle(to)),
            end: Math.max(angle(from), angle(to)),
          },
        ],
        pen: objectLine,
      },
      polyline([barb(0.5), tip, barb(-0.5)], { pen: objectLine }),
      ...captions(words, good).map((part, row) =>
        text(
          part,
          { x: centre.x, y: 2 * radius + 7.4 + row * step },
          { size: caption, anchor: "middle", weight: good ? "bold" : "regular" },
        ),
      ),
    ];
  };
  const told = [
    say("student.wheel too far"),
    say(`student.wheel back ${back}`),
    say("student.wheel on again"),
  ] as const;
  const rows = Math.max(...told.map((words, index) => captions(words, index === 2).length));
  return {
    width,
    height: 2 * radius + 8.6 + (rows - 1) * step,
    marks: [
      ...wheel(0, told[0], -2.2, 0.7, false),
      ...wheel(1, told[1], 0.7, -2.6, false),
      ...wheel(2, told[2], -2.6, 0, true),
    ],
  };
}

/** A plug pulled from its socket. */
export function plugOut(height: number): Drawing {
  const y = height / 2;
  return {
    width: 30,
    height,
    marks: [
      rectangle({ x: 0.5, y: y - 5 }, 7, 10, { pen: objectLine }, 1),
      line({ x: 3, y: y - 2 }, { x: 7.4, y: y - 2 }, rowLine),
      line({ x: 3, y: y + 2 }, { x: 7.4, y: y + 2 }, rowLine),
      line({ x: 15, y: y - 2 }, { x: 20, y: y - 2 }, objectLine),
      line({ x: 15, y: y + 2 }, { x: 20, y: y + 2 }, objectLine),
      rectangle({ x: 20, y: y - 4 }, 7, 8, { pen: objectLine, fill: "white" }, 1.5),
      line({ x: 27, y }, { x: 29.5, y }, objectLine),
      polyline(
        [
          { x: 10, y: y - 1.4 },
          { x: 8.6, y },
          { x: 10, y: y + 1.4 },
        ],
        { pen: rowLine },
      ),
      polyline(
        [
          { x: 12.4, y: y - 1.4 },
          { x: 13.8, y },
          { x: 12.4, y: y + 1.4 },
        ],
        { pen: rowLine },
      ),
      line({ x: 8.6, y }, { x: 13.8, y }, rowLine),
    ],
  };
}
