import type { Drawing, Mark, Segment } from "../../drawing/drawing.js";
import { circle, polyline, rectangle, text } from "../../drawing/shapes.js";
import type { DialWish, Units } from "../../machine/machine.js";
import { trimmedSize, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { together } from "../shared/runs.js";
import { objectLine, rowLine, size } from "../shared/style.js";
import { type Blank, blanks } from "./blanks.js";
import { fullHead } from "./heads.js";

type Sense = DialWish["increases"];
type Shape = DialWish["shape"];

/** Keys of the sizes of each shape, in the words of the file. */
const sizes: Readonly<Record<Shape, readonly string[]>> = {
  drum: ["diameter", "width"],
  face: ["outside", "inside"],
  bevel: ["diameter", "smallDiameter", "width"],
};

/** Room for the size of the dial, and two dials of which one is ticked: that on which the numbers grow as on the machine. */
export function dialBlank(dial: DialWish | undefined, units: Units, width: number): Run[] {
  const unit = unitName(units);
  const shape = dial?.shape ?? "drum";
  const room = 12;
  const fields: Readonly<Record<Shape, readonly Blank[]>> = {
    drum: [
      { before: say("measuring form.drum across"), behind: unit, room },
      { before: say("measuring form.width"), behind: unit, room },
    ],
    face: [
      { before: say("measuring form.outside"), behind: unit, room },
      { before: say("measuring form.inside"), behind: unit, room },
    ],
    bevel: [
      { before: say("measuring form.bevel large"), behind: unit, room },
      { before: say("measuring form.bevel small"), behind: unit, room },
      { before: say("measuring form.width"), behind: unit, room },
    ],
  };
  return together([
    ...paragraph(say("measuring form.dial"), width, { size: size.text, weight: "bold" }),
    ...blanks(fields[shape], width, 0),
    ...paragraph(say("measuring form.which dial"), width, { size: size.text, gap: 1.5 }),
    { drawing: twoDials(width, dial?.increases), gap: 1 },
    ...(dial === undefined ? [] : paragraph(held(dial, units), width, { size: size.source, gap: 0.6 })),
  ]);
}

function held(dial: DialWish, units: Units): string {
  const show = (mm: number) => trimmedSize(mm, units, 2);
  const said =
    dial.shape === "face"
      ? [dial.outside, dial.inside]
      : dial.shape === "bevel"
        ? [dial.diameter, dial.smallDiameter, dial.width]
        : ["diameter" in dial ? dial.diameter : dial.wrap, dial.width];
  const given = said.filter((one): one is number => typeof one === "number").map(show);
  return say("measuring form.dial in file", { sizes: given.join(" × ") });
}

/** What goes into the file for it, in the file's own words. */
export const dialEntry = (shape: Shape, figure = "…", sense = "…"): string =>
  `dial: { shape: ${shape}, ${sizes[shape].map((key) => `${key}: ${figure}`).join(", ")}, increases: ${sense} }`;

const HIGH = 25;

function twoDials(width: number, known: Sense | undefined): Drawing {
  const middle = width / 2;
  const away = Math.min(16, width / 4);
  return {
    width,
    height: HIGH,
    marks: [
      ...seenDial(middle - away, "clockwise", known === "clockwise"),
      ...seenDial(middle + away, "anticlockwise", known === "anticlockwise"),
    ],
  };
}

/** Seen from the handle, its index on top. What comes to the index next stands on the side from which the wheel brings it. */
function seenDial(x: number, sense: Sense, inFile: boolean): Mark[] {
  const [y, radius] = [11.5, 7.4];
  const way = sense === "clockwise" ? 1 : -1;
  const up = -Math.PI / 2;
  const [from, to] = [up + way * 0.5, up + way * 1.5];
  const outside = radius + 2;
  const arc: Segment[] = [
    { to: "arc", centre: { x, y }, radius: outside, start: Math.min(from, to), end: Math.max(from, to) },
  ];
  const tip = { x: x + outside * Math.cos(to), y: y + outside * Math.sin(to) };
  const spread = 0.62;
  return [
    circle({ x, y }, radius, { pen: objectLine }),
    circle({ x, y }, 1.4, { pen: rowLine }),
    circle({ x: x + 1.5, y: y + 3.6 }, 1, { pen: rowLine }),
    polyline(
      [
        { x, y: y - radius },
        { x: x - 1, y: y - radius - 2.4 },
        { x: x + 1, y: y - radius - 2.4 },
      ],
      { fill: "black" },
      true,
    ),
    ...[0, 1, 2, 3].flatMap((number): Mark[] => {
      const turn = up - way * number * spread;
      const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
      const at = (r: number) => ({ x: x + r * cos, y: y + r * sin });
      return [
        polyline([at(radius), at(radius - 1.4)], { pen: rowLine }),
        text(
          String(number),
          { x: at(radius - 3).x, y: at(radius - 3).y + size.source * 0.36 },
          {
            size: size.source,
            anchor: "middle",
            weight: "bold",
          },
        ),
      ];
    }),
    { kind: "path", segments: arc, pen: objectLine },
    fullHead(tip, -way * Math.sin(to), way * Math.cos(to), 2.6),
    rectangle({ x: x - 1.8, y: y + radius + 1.8 }, 3.6, 3.6, { pen: rowLine }),
    ...(inFile
      ? [text(say("measuring form.in file"), { x: x + 2.6, y: y + radius + 4.4 }, { size: size.source })]
      : []),
  ];
}
