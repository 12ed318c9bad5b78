import type { Drawing, Mark, Point, Segment } from "../../drawing/drawing.js";
import { circle, group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { powerOffFirst } from "../../findings/powerOff.js";
import type { Machine } from "../../machine/machine.js";
import { say } from "../../words/say.js";
import { axisLine, objectLine, pen, rowLine, size } from "../shared/style.js";
import { dimensionHead, way } from "./heads.js";

/** Each with its name in the file, where it has one. */
type Picture = { readonly name: string; readonly marks: readonly Mark[] };

const CELL = 27;
/** Middle of what is drawn, and where its name stands. */
const middle = 13.5;
const nameAt = 27.6;
const HIGH = 30;
const rim = 7;
const belt = 1.4;
const at = (x: number, y: number): Point => ({ x, y });

/** How a pulley, the centres and a speed are measured: what the file calls it under each. In rows where the paper is narrow. */
export function drivePictures(width: number): Drawing {
  const pictures: Picture[] = [
    { name: "outside:", marks: [pulley(), ...across(rim)] },
    { name: "overBelt:", marks: [pulley(), round(), ...across(rim + belt)] },
    { name: "string:", marks: [pulley(), ...thread(rim + 0.5)] },
    { name: "stringOver:", marks: [pulley(), round(), ...thread(rim + belt + 0.5)] },
    { name: "centres:", marks: centres() },
    { name: "speed:", marks: tachometer() },
  ];
  const cell = Math.max(CELL, ...pictures.map(({ name }) => textWidth(name, size.text, "bold") + 3));
  const columns = Math.max(1, Math.min(pictures.length, Math.floor(width / cell)));
  // As even as they come: six in a row, or three and three.
  const each = Math.ceil(pictures.length / Math.ceil(pictures.length / columns));
  const own = width / each;
  return {
    width,
    height: HIGH * Math.ceil(pictures.length / each),
    marks: pictures.map(({ name, marks }, index) =>
      group(at((index % each) * own + own / 2, Math.floor(index / each) * HIGH), [
        ...marks,
        text(name, at(0, nameAt), { size: size.text, weight: "bold", anchor: "middle" }),
      ]),
    ),
  };
}

const pulley = (): Mark =>
  group(at(0, middle), [circle(at(0, 0), rim, { pen: objectLine }), circle(at(0, 0), 1.3, { pen: rowLine })]);

/** A belt round it, as thick as it lies. */
const round = (): Mark =>
  group(at(0, middle), [
    circle(at(0, 0), rim + belt / 2, { pen: pen(belt, "pale") }),
    circle(at(0, 0), rim, { pen: objectLine }),
    circle(at(0, 0), rim + belt, { pen: rowLine }),
  ]);

/** Its dimension, above. */
function across(radius: number): Mark[] {
  const y = middle - rim - 4;
  return [
    ...[-radius, radius].map((x) => line(at(x, y - 1), at(x, middle), axisLine)),
    line(at(-radius, y), at(radius, y), axisLine),
    dimensionHead(at(-radius, y), -1, 0, 2),
    dimensionHead(at(radius, y), 1, 0, 2),
  ];
}

/** A string once round, its ends drawn out where they meet. */
function thread(radius: number): Mark[] {
  const [from, to] = [-Math.PI / 2 + 0.05, 1.5 * Math.PI - 0.05];
  const ring: Segment[] = [{ to: "arc", centre: at(0, middle), radius, start: from, end: to }];
  const end = (turn: number, away: number) => {
    const x = radius * Math.cos(turn);
    const y = middle + radius * Math.sin(turn);
    return polyline([at(x, y), at(x + away, y - 4)], { pen: objectLine });
  };
  return [{ kind: "path", segments: ring, pen: objectLine }, end(from, 2.6), end(to, -2.6)];
}

/** From shaft to shaft. */
function centres(): Mark[] {
  const [left, right, small, large] = [-6, 7, 3, 4.6];
  const y = middle;
  const top = y - large - 5;
  // Where an outer tangent touches.
  const lean = Math.asin((large - small) / (right - left));
  const touch = (x: number, radius: number, side: 1 | -1) =>
    at(x - radius * Math.sin(lean), y + side * radius * Math.cos(lean));
  return [
    ...([1, -1] as const).map((side) =>
      polyline([touch(left, small, side), touch(right, large, side)], { pen: rowLine }),
    ),
    circle(at(left, y), small, { pen: objectLine }),
    circle(at(right, y), large, { pen: objectLine }),
    ...[left, right].map((x) => line(at(x, top - 1), at(x, y + 1), axisLine)),
    line(at(left, top), at(right, top), axisLine),
    dimensionHead(at(left, top), -1, 0, 2),
    dimensionHead(at(right, top), 1, 0, 2),
  ];
}

/** A mark on what turns, and the instrument held away from it. */
function tachometer(): Mark[] {
  const y = middle;
  return [
    rectangle(at(-11, y - 7), 3, 14, { pen: objectLine }),
    rectangle(at(-8, y - 4.5), 4, 9, { pen: objectLine }),
    rectangle(at(-4.4, y - 4.2), 0.9, 2.6, { fill: "black" }),
    line(at(-10.5, y), at(-2, y), { ...axisLine, dash: [3, 0.8, 0.6, 0.8] }),
    line(at(-3.2, y - 3), at(5, y - 1), { ...rowLine, dash: [0.9, 0.9] }),
    rectangle(at(5, y - 3), 8, 5, { pen: objectLine }, 0.8),
    rectangle(at(6.6, y + 2), 3.2, 6, { pen: objectLine }, 0.8),
    ...turning(),
  ];
}

/** It turns: seen from the side its front goes up or down, which is all one. */
const turning = (): Mark[] => way(at(-12.5, middle + 5), at(-12.5, middle - 5), objectLine);

/** What the words beside the pictures call for, in the order of the pictures. */
export const driveSteps = (machine: Pick<Machine, "drive">): string[] => [
  say("measuring form.drive plug", { off: powerOffFirst(machine) }),
  say("measuring form.drive pulleys"),
  say("measuring form.drive centres"),
  say("measuring form.drive speeds"),
];
