import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { circle, group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { say } from "../../words/say.js";
import { axisLine, objectLine, rowLine, size } from "../shared/style.js";
import { fullHead, pointer, way } from "./heads.js";
import { numberSign } from "./numbered.js";

const HEIGHT = 37.6;
/** Centre line of the screw, top of the ways, and the two ways of the slide. */
const screw = 8;
const ways = 16;
const out = 26;
const back = 34;
/** Radius of the turn at either end. */
const bend = (back - out) / 2;

/** What is measured. */
export type Moved = "slide" | "quill";

/** How a slide or quill is measured, numbers as in the words beside it: from before the first mark out past the last, round, and back over the same
 *  marks, which it reaches later by the lost motion. Not to scale. */
export function approachPicture(moved: Moved, width: number): Drawing {
  const words = Math.max(...[say("measuring form.out"), say("measuring form.return")].map(bold));
  const begin = words + 8;
  const first = begin + 15;
  const last = Math.min(width - 20, first + 120);
  const end = last + 12;
  const marks = stops(first, last);
  const lag = Math.min(4.5, (last - first) / 12);
  return {
    width,
    height: HEIGHT,
    marks: [
      ...(moved === "quill" ? quill : slide)(faceOf(first, last), width),
      group({ x: 0, y: 0 }, path(begin, first, last, end), { name: "way of the slide" }),
      ...marks.flatMap((x, index) => stop(x, lag, index, marks.length)),
      text(say("measuring form.out"), { x: 0, y: out + 1.1 }, { size: size.text, weight: "bold" }),
      text(say("measuring form.return"), { x: 0, y: back + 1.1 }, { size: size.text, weight: "bold" }),
      ...lostMotion(marks.at(-2) ?? last, lag),
      ...[
        { number: 2, x: begin + 5.5, y: out },
        { number: 4, x: ((marks[2] ?? first) + (marks.at(-2) ?? last)) / 2, y: out },
        { number: 5, x: end + bend, y: (out + back) / 2 },
        { number: 6, x: first + (last - first) / 12 + lag, y: back },
        { number: 7, x: begin - bend, y: (out + back) / 2 },
      ].flatMap(({ number, x, y }) => numberSign(number, { x, y })),
      ...numberSign(3, { x: first, y: out - 6.2 }),
      ...numberSign(1, { x: faceOf(first, last) - LONG + 4, y: 6.4 }),
    ],
  };
}

const bold = (words: string): number => textWidth(words, size.text, "bold");

/** Places of the marks that are drawn: the first three and the last two. */
function stops(first: number, last: number): number[] {
  const step = (last - first) / 6;
  return [first, first + step, first + 2 * step, last - step, last];
}

/** Length of the slide, and its right end. */
const LONG = 30;
const faceOf = (first: number, last: number): number => first + (last - first) * 0.42;

/** The slide on its ways, its handwheel on the left, and a gauge that stands still on the right. */
function slide(face: number, width: number): Mark[] {
  const left = face - LONG;
  const gauge = { x: Math.min(width - 8, face + 44), y: screw };
  return [
    line({ x: 9, y: ways }, { x: gauge.x + 8, y: ways }, objectLine),
    ...hatch(9, gauge.x + 8),
    // Handwheel and screw.
    rectangle({ x: 3.5, y: screw - 7 }, 2, 14, { pen: objectLine, fill: "white" }, 0.6),
    rectangle({ x: 0.5, y: screw - 5.6 }, 3, 1.6, { pen: rowLine, fill: "white" }, 0.5),
    rectangle({ x: 5.5, y: screw - 3.2 }, 3, 6.4, { pen: objectLine, fill: "white" }),
    ...[-2, -1, 0, 1, 2].map((step) =>
      line({ x: 7.2, y: screw + step * 1.1 }, { x: 8.5, y: screw + step * 1.1 }, axisLine),
    ),
    rectangle({ x: 9.5, y: screw - 1.6 }, 4, 3.2, { pen: rowLine, fill: "white" }),
    line({ x: 13.5, y: screw - 0.8 }, { x: left, y: screw - 0.8 }, rowLine),
    line({ x: 13.5, y: screw + 0.8 }, { x: left, y: screw + 0.8 }, rowLine),
    rectangle({ x: left, y: 3 }, face - left, ways - 3, { pen: objectLine, fill: "white" }),
    ...way({ x: (left + face) / 2 - 7, y: screw + 4.6 }, { x: (left + face) / 2 + 7, y: screw + 4.6 }, objectLine),
    text(say("measuring form.slide"), { x: (left + face) / 2, y: screw + 1.2 }, { size: size.text, anchor: "middle" }),
    // Plunger along the travel, dial, and a stand on what does not move.
    line({ x: face + 1, y: screw }, { x: gauge.x - 12, y: screw }, objectLine),
    circle({ x: face + 0.9, y: screw }, 0.9, { fill: "black" }),
    rectangle({ x: gauge.x - 13, y: screw - 1.1 }, 8, 2.2, { pen: rowLine, fill: "white" }),
    circle(gauge, 5.6, { pen: objectLine, fill: "white" }),
    circle(gauge, 4.4, { pen: axisLine }),
    line(gauge, { x: gauge.x + 2.2, y: gauge.y - 2.9 }, rowLine),
    line({ x: gauge.x, y: gauge.y + 5.6 }, { x: gauge.x, y: ways - 1.6 }, objectLine),
    rectangle({ x: gauge.x - 4, y: ways - 2 }, 8, 2, { pen: objectLine, fill: "white" }),
    ...between(say("measuring form.gauge stands"), face + 3, gauge.x - 14),
  ];
}

/** A drill's head and quill, which goes down to the right; the gauge stands on the table. */
function quill(face: number, width: number): Mark[] {
  const [left, nose] = [face - LONG, face - 5];
  const gauge = { x: Math.min(width - 13, face + 42), y: screw };
  const wheel = { x: 9, y: screw };
  const top = { x: gauge.x + 9, y: 0.6 };
  return [
    rectangle({ x: left + 4, y: screw - 3.4 }, nose - left - 4, 6.8, { pen: objectLine, fill: "white" }),
    polyline(
      [
        { x: nose, y: screw - 2.6 },
        { x: face, y: screw - 1.2 },
        { x: face, y: screw + 1.2 },
        { x: nose, y: screw + 2.6 },
      ],
      { pen: objectLine, fill: "white" },
      true,
    ),
    rectangle({ x: 1, y: 1.4 }, left + 7, screw + 4.4, { pen: objectLine, fill: "white" }, 0.8),
    ...[0, 1, 2, 3].map((quarter) => {
      const angle = ((quarter + 0.5) * Math.PI) / 2;
      return line(wheel, { x: wheel.x + 5 * Math.cos(angle), y: wheel.y + 5 * Math.sin(angle) }, rowLine);
    }),
    circle(wheel, 5, { pen: objectLine }),
    circle(wheel, 1.4, { pen: objectLine, fill: "white" }),
    text(
      say("measuring form.quill"),
      { x: (left + 8 + nose) / 2, y: screw + 1.2 },
      { size: size.text, anchor: "middle" },
    ),
    ...way({ x: left + 10, y: screw + 6.4 }, { x: face, y: screw + 6.4 }, objectLine),
    text(say("measuring form.quill goes"), { x: face + 2, y: screw + 7.5 }, { size: size.text }),
    // Plunger along the travel, dial, and the table that does not move.
    line({ x: face + 1, y: screw }, { x: gauge.x - 12, y: screw }, objectLine),
    circle({ x: face + 0.9, y: screw }, 0.9, { fill: "black" }),
    rectangle({ x: gauge.x - 13, y: screw - 1.1 }, 8, 2.2, { pen: rowLine, fill: "white" }),
    line({ x: gauge.x + 5.6, y: screw }, { x: top.x, y: screw }, objectLine),
    circle(gauge, 5.6, { pen: objectLine, fill: "white" }),
    circle(gauge, 4.4, { pen: axisLine }),
    line(gauge, { x: gauge.x + 2.2, y: gauge.y - 2.9 }, rowLine),
    rectangle(top, 3, 2 * (screw - top.y), { pen: objectLine, fill: "white" }),
    ...between(say("measuring form.gauge stands"), face + 3, gauge.x - 14),
  ];
}

/** Words of one line above the plunger, where there is room for them. */
const between = (words: string, from: number, to: number): Mark[] =>
  textWidth(words, size.text, "regular") > to - from
    ? []
    : [text(words, { x: (from + to) / 2, y: screw - 2 }, { size: size.text, anchor: "middle" })];

/** What stands still. */
const hatch = (from: number, to: number): Mark[] =>
  Array.from({ length: Math.floor((to - from - 2) / 4) }, (_, index) =>
    line({ x: from + 2 + index * 4, y: ways }, { x: from + 0.6 + index * 4, y: ways + 1.4 }, axisLine),
  );

/** From before the first mark out past the last, round, back past the first, and round again for the second run. */
function path(begin: number, first: number, last: number, end: number): Mark[] {
  const turn = (x: number, start: number): Mark => ({
    kind: "path",
    segments: [{ to: "arc", centre: { x, y: (out + back) / 2 }, radius: bend, start, end: start + Math.PI }],
    pen: start > 0 ? { ...objectLine, dash: [1.2, 1] } : objectLine,
  });
  return [
    line({ x: begin, y: out }, { x: end, y: out }, objectLine),
    line({ x: begin, y: back }, { x: end, y: back }, objectLine),
    turn(end, -Math.PI / 2),
    turn(begin, Math.PI / 2),
    ...[first - 3, first + (last - first) * 0.46, end].map((x) => fullHead({ x, y: out }, 1, 0)),
    ...[first - 6, first + (last - first) * 0.6, end - 4].map((x) => fullHead({ x, y: back }, -1, 0)),
  ];
}

/** A reading on the way out, full, and on the way back, open and later. */
const stop = (x: number, lag: number, index: number, count: number): Mark[] => {
  const name = index < 3 ? String(index) : index === count - 1 ? "…" : "";
  return [
    circle({ x, y: out }, 0.9, { fill: "black" }),
    circle({ x: x + lag, y: back }, 0.9, { fill: "white", pen: rowLine }),
    ...(name === "" || index === 0
      ? []
      : [text(name, { x, y: out - 2 }, { size: size.text, anchor: "middle", weight: "bold" })]),
    ...(index === 0 ? [text("0", { x: x + 3.4, y: out - 2 }, { size: size.text, weight: "bold" })] : []),
  ];
};

/** Between the same mark on the way out and on the way back. */
function lostMotion(x: number, lag: number): Mark[] {
  const y = back + 3.4;
  const at = (x: number, y: number): Point => ({ x, y });
  const words = say("measuring form.lost motion");
  return [
    line(at(x, out + 1.2), at(x, y + 0.8), axisLine),
    line(at(x + lag, back + 1.2), at(x + lag, y + 0.8), axisLine),
    ...pointer(at(x - 5, y), at(x, y), axisLine, 1.8),
    ...pointer(at(x + lag + 5, y), at(x + lag, y), axisLine, 1.8),
    polyline([at(x, y), at(x + lag, y)], { pen: axisLine }),
    text(words, at(x - 6, y + 1.7), { size: size.text, anchor: "end" }),
  ];
}
