import type { Mark, PathMark, Point } from "../../drawing/drawing.js";
import { circle, line, polyline, rectangle } from "../../drawing/shapes.js";
import { arrow, arrowHead } from "../shared/sectionMarks.js";
import { axisLine, objectLine, pen, weight } from "../shared/style.js";

/** The four steps of setting a stop. */
export const stopSteps = ["touch off", "wind", "lock", "next part"] as const;
export type StopStep = (typeof stopSteps)[number];

/** Of one picture, mm. */
export const stopPicture = { width: 40, height: 34 } as const;

const look = { pen: objectLine, fill: "white" } as const;
const axis = pen(weight.axis, "black", [3, 0.8, 0.6, 0.8]);
const HEAD = 2.2;
/** How far the picture's slide goes to the stop. */
const WAY = 8;

const isThere = (step: StopStep): boolean => step !== "touch off";
/** Clamped it is black: just now, or for good. */
const stopMarks = (step: StopStep, at: Point, width: number, height: number): Mark[] =>
  step === "lock" || step === "next part" ? [rectangle(at, width, height, { pen: objectLine, fill: "black" })] : [];

/** A lathe from the front: the tool comes from the right, off the work's end. */
export function latheStop(step: StopStep): Mark[] {
  const end = 20;
  const tip = isThere(step) ? end - WAY : end;
  const saddle = tip + 3;
  const thin = 2;
  const outline = isThere(step)
    ? [
        { x: 6, y: 6 },
        { x: tip, y: 6 },
        { x: tip, y: 6 + thin },
        { x: end, y: 6 + thin },
        { x: end, y: 14 - thin },
        { x: tip, y: 14 - thin },
        { x: tip, y: 14 },
        { x: 6, y: 14 },
      ]
    : [
        { x: 6, y: 6 },
        { x: end, y: 6 },
        { x: end, y: 14 },
        { x: 6, y: 14 },
      ];
  const tool = [
    { x: saddle + 4, y: 11.4 },
    { x: tip, y: 11.4 },
    { x: tip + 1.8, y: 13.8 },
    { x: saddle + 4, y: 13.8 },
  ];
  return [
    rectangle({ x: 0, y: 23 }, stopPicture.width, 6.5, look),
    rectangle({ x: 0, y: 2 }, 6, 16, look),
    polyline(outline, look, true),
    line({ x: 0, y: 10 }, { x: end + 3, y: 10 }, axis),
    polyline(tool, look, true),
    rectangle({ x: saddle + 3, y: 9.6 }, 6, 7, look),
    rectangle({ x: saddle, y: 16.6 }, 15, 16.4, look),
    ...stopMarks(step, { x: saddle - 5, y: 20.5 }, 5, 11),
    ...dialMarks({ x: saddle + 8, y: 25.6 }, step),
    ...(step === "lock"
      ? clockwise({ x: saddle - 2.5, y: 16.8 }, 1.8)
      : arrow(...(step === "touch off" ? ([at(33, 5), at(26, 5)] as const) : way(step, end)), objectLine, HEAD)),
  ];
}

const at = (x: number, y: number): Point => ({ x, y });
/** Over the work as far as the slide goes; to the stop from a little beyond lost motion. */
const way = (step: StopStep, end: number): readonly [Point, Point] =>
  step === "wind" ? [at(end, 3.6), at(end - WAY, 3.6)] : [at(36, 13), at(26, 13)];

/** A drill from the front, its quill going down; the stop is a nut on the depth rod, which meets the lug of the head. */
export function drillStop(step: StopStep): Mark[] {
  const top = 22;
  const tip = isThere(step) ? top + WAY - 1 : top;
  const quill = tip - 9;
  const [left, right] = [18.3, 20.7];
  const drill = [at(left, quill), at(left, tip - 1.2), at(19.5, tip), at(right, tip - 1.2), at(right, quill)];
  return [
    rectangle({ x: 15.5, y: 6 }, 8, quill - 6, look),
    rectangle({ x: 9, y: 2 }, 18, 7, look),
    rectangle({ x: 27, y: 6.6 }, 6, 2.4, look),
    polyline([at(30, 1), at(30, quill - 1.5), at(23.5, quill - 1.5)], { pen: objectLine }),
    ...stopMarks(step, { x: 28, y: 4 }, 4, 2.6),
    rectangle({ x: 9, y: top }, 21, 9, look),
    line({ x: 2, y: top + 9 }, { x: 37, y: top + 9 }, objectLine),
    polyline(drill, look, true),
    line({ x: 19.5, y: 0 }, { x: 19.5, y: 33 }, axis),
    ...dialMarks({ x: 4.8, y: 9 }, step),
    ...(step === "lock"
      ? clockwise({ x: 35, y: 4.4 }, 1.8)
      : arrow(at(13, step === "touch off" ? 14 : top - 1 - WAY), at(13, top - 1), objectLine, HEAD)),
  ];
}

/** A dial under its index: zero stands there, or the wheel has gone on. */
function dialMarks(centre: Point, step: StopStep): Mark[] {
  const radius = 4.4;
  const zero = isThere(step) ? 2.2 : 0;
  const mark = (angle: number, long: number, look = objectLine) =>
    line(on(centre, angle, radius - long), on(centre, angle, radius), look);
  const ticks = Array.from({ length: 12 }, (_, index) => mark(zero + (index * Math.PI) / 6, 0.9, axisLine));
  return [
    circle(centre, radius, look),
    ...ticks,
    mark(zero, 2.2),
    arrowHead(at(centre.x, centre.y - radius), 0, 1, 1.8),
    ...(step === "wind" ? clockwise(centre, 1.8) : []),
  ];
}

/** Angle from the top, clockwise. */
const on = ({ x, y }: Point, angle: number, radius: number): Point =>
  at(x + radius * Math.sin(angle), y - radius * Math.cos(angle));

/** Most of a turn, with its head. */
function clockwise(centre: Point, radius: number): Mark[] {
  const [start, end, head] = [-0.9 * Math.PI, 0.35 * Math.PI, 0.7];
  const bend: PathMark = { kind: "path", segments: [{ to: "arc", centre, radius, start, end }], pen: pen(weight.row) };
  const lean = end + head / 2;
  const tip = at(centre.x + radius * Math.cos(end + head), centre.y + radius * Math.sin(end + head));
  return [bend, arrowHead(tip, -Math.sin(lean), Math.cos(lean), 1.6)];
}
