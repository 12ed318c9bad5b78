import type { DialFinding } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import { countedAs } from "../../dial/labelling.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { circle, group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { wrapText } from "../../drawing/text.js";
import { fine, heavy, leading, medium } from "../shared/style.js";

/** Em size of what a student reads, mm: large, since it hangs at the machine. */
export const readSize = 3.4;

/** Plain lines, one idea each, wrapped where they must. `sign`: a cross before what one never does, a number before a step. */
export function ideas(list: readonly string[], width: number, sign: "none" | "number" | "cross" = "none"): Drawing {
  const indent = sign === "none" ? 0 : 5;
  const step = readSize * leading;
  let y = 0;
  const marks: Mark[] = [];
  for (const [index, idea] of list.entries()) {
    const parts = wrapText(idea, width - indent, readSize, "regular");
    if (sign === "number")
      marks.push(text(String(index + 1), { x: 0.4, y: y + step * 0.76 }, { size: readSize, weight: "bold" }));
    if (sign === "cross") {
      const [left, top] = [0.4, y + step * 0.2];
      marks.push(
        line({ x: left, y: top }, { x: left + 2.4, y: top + 2.4 }, { ...heavy, ink: "accent" }),
        line({ x: left + 2.4, y: top }, { x: left, y: top + 2.4 }, { ...heavy, ink: "accent" }),
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

/** A numbered heading over its contents. */
export function panel(title: string, contents: readonly Drawing[], width: number): Drawing {
  const stacked = stack(contents, width, 1.4);
  return {
    width,
    height: 7.6 + stacked.height,
    marks: [
      text(title, { x: 0, y: 4 }, { size: 4.2, weight: "bold" }),
      line({ x: 0, y: 5.6 }, { x: width, y: 5.6 }, medium),
      group({ x: 0, y: 7.4 }, stacked.marks),
    ],
  };
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
 *  0 on the first row. */
export function dialWindow(width: number, lines: number, dial: DialFinding, value?: string): Drawing {
  const shown = 24;
  const first = Math.max(-4, lines - 16);
  const pitch = (width - 8) / shown;
  const at = (count: number) => {
    const along = 4 + (count - first) * pitch;
    return growthOf(dial) === "leftward" ? width - along : along;
  };
  const row = dial.rows[0] ?? [];
  const high = { 1: 6.5, 2: 4.6, 3: 3 } as const;
  const marks: Mark[] = [rectangle({ x: 0, y: 7 }, width, 15, { pen: medium })];
  for (let count = Math.max(0, first); count <= first + shown; count++) {
    const mark = row[count];
    if (mark === undefined) continue;
    const x = at(count);
    marks.push(line({ x, y: 7 }, { x, y: 7 + high[mark.rank] }, mark.rank === 1 ? medium : fine));
    if (mark.label !== undefined)
      marks.push(text(mark.label, { x, y: 17.5 }, { size: readSize, anchor: "middle", weight: "bold" }));
  }
  const x = at(lines);
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
            `${lines} lines = ${value}`,
            { x: Math.max(22, Math.min(x, width - 22)), y: 2.8 },
            { size: readSize, anchor: "middle", weight: "bold" },
          ),
        ]),
    text(`count the lines from 0${counted(dial)}`, { x: 2, y: 21 }, { size: 2.25 }),
  );
  return { width, height: 22.4, marks };
}

/** What the numbers mean where they count something else than whole units. */
const counted = (dial: DialFinding): string => `; ${countedAs(dial) ?? `numbers in ${dial.chosen.unit}`}`;

/** Three handwheels: on to the line, past it, and back well before it to come on again. */
export function comingOn(width: number): Drawing {
  const each = width / 3;
  const radius = 7;
  const wheel = (index: number, words: string, from: number, to: number, good: boolean): Mark[] => {
    const centre = { x: each * (index + 0.5), y: radius + 3 };
    const angle = (turn: number) => -Math.PI / 2 + turn;
    const tip = { x: centre.x + 5 * Math.cos(angle(to)), y: centre.y + 5 * Math.sin(angle(to)) };
    const sense = to > from ? 1 : -1;
    const along = angle(to) + (sense * Math.PI) / 2;
    const barb = (spread: number) => ({
      x: tip.x - 2.2 * Math.cos(along + spread),
      y: tip.y - 2.2 * Math.sin(along + spread),
    });
    return [
      circle(centre, radius, { pen: medium }),
      circle(centre, 1.2, { fill: "black" }),
      line({ x: centre.x, y: centre.y - radius - 2.4 }, { x: centre.x, y: centre.y - radius + 1.4 }, heavy),
      {
        kind: "path",
        segments: [
          {
            to: "arc",
            centre,
            radius: 5,
            start: Math.min(angle(from), angle(to)),
            end: Math.max(angle(from), angle(to)),
          },
        ],
        pen: heavy,
      },
      polyline([barb(0.5), tip, barb(-0.5)], { pen: heavy }),
      text(
        words,
        { x: centre.x, y: 2 * radius + 7.4 },
        { size: 2.7, anchor: "middle", weight: good ? "bold" : "regular" },
      ),
    ];
  };
  return {
    width,
    height: 2 * radius + 8.6,
    marks: [
      ...wheel(0, "too far", -2.2, 0.7, false),
      ...wheel(1, "back half a turn", 0.7, -2.6, false),
      ...wheel(2, "on again: right", -2.6, 0, true),
    ],
  };
}

/** A plug pulled from its socket. */
export function plugOut(height: number): Drawing {
  const y = height / 2;
  return {
    width: 34,
    height,
    marks: [
      rectangle({ x: 0.5, y: y - 5 }, 7, 10, { pen: medium }, 1),
      line({ x: 3, y: y - 2 }, { x: 7.4, y: y - 2 }, fine),
      line({ x: 3, y: y + 2 }, { x: 7.4, y: y + 2 }, fine),
      line({ x: 15, y: y - 2 }, { x: 20, y: y - 2 }, heavy),
      line({ x: 15, y: y + 2 }, { x: 20, y: y + 2 }, heavy),
      rectangle({ x: 20, y: y - 4 }, 7, 8, { pen: medium, fill: "white" }, 1.5),
      line({ x: 27, y }, { x: 33.5, y }, heavy),
      polyline(
        [
          { x: 10, y: y - 1.4 },
          { x: 8.6, y },
          { x: 10, y: y + 1.4 },
        ],
        { pen: fine },
      ),
      polyline(
        [
          { x: 12.4, y: y - 1.4 },
          { x: 13.8, y },
          { x: 12.4, y: y + 1.4 },
        ],
        { pen: fine },
      ),
      line({ x: 8.6, y }, { x: 13.8, y }, fine),
    ],
  };
}
