import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Stage, Step } from "../../machine/machine.js";
import { translated } from "../../words/say.js";
import { shortened } from "./shortened.js";
import type { Room } from "./stepPulleys.js";
import { axisLine, objectLine, rowLine, size } from "./style.js";

type GearStep = Extract<Step, { kind: "gears" }>;

/** Width of one wheel and the space to the next pair, mm. */
const thick = 4;
const apart = 3;
const shaftEnd = 2;
/** Between the wheels of a pair that do not mesh, mm. */
const clear = 1.5;
/** More pairs than these are no picture on a card. */
const MOST_PAIRS = 6;
const nameHeight = size.text * 1.25;

const gearSteps = (stage: Stage): GearStep[] => stage.steps.filter((step): step is GearStep => step.kind === "gears");

const pairsOf = (steps: readonly GearStep[]) => steps.flatMap(({ pairs }) => pairs);

/** What its picture wants at least; undefined where it has no gears, or more than a picture shows. */
export function gearRoom(stage: Stage): Room | undefined {
  const steps = gearSteps(stage);
  const count = pairsOf(steps).length;
  if (count === 0 || count > MOST_PAIRS) return undefined;
  return { width: count * (thick + apart) + 2 * shaftEnd, height: 2 * nameHeight + 11 };
}

/** Gears seen from the side, wheel over wheel: the power goes up one pair and down the next, as through a back gear. The wheels of a
 *  pair are in proportion to their teeth, and stand clear of each other where another step is `chosen`. Above stands what they are,
 *  below which way each is, or the way past them that is chosen. */
export function gearPairs(stage: Stage, chosen: Step | undefined, room: Room): Drawing | undefined {
  const steps = gearSteps(stage);
  const least = gearRoom(stage);
  if (least === undefined) return undefined;
  const down = room.height - 2 * nameHeight;
  const count = pairsOf(steps).length;
  const total = count * thick + (count - 1) * apart;
  const left = (room.width - total) / 2;
  // Shafts lie so that the largest wheel of each reaches the edge of the room.
  const shares = steps.flatMap(({ pairs }) =>
    pairs.map(({ driver, driven }, index) => (index % 2 === 0 ? driver : driven) / (driver + driven)),
  );
  const [most, fewest] = [Math.max(...shares), Math.min(...shares)];
  const distance = Math.min(down / (1 + most + (1 - fewest)), 12);
  const spare = (down - distance * (1 + most + (1 - fewest))) / 2;
  const upper = nameHeight + spare + distance * (1 - fewest);
  const lower = upper + distance;

  const marks: Mark[] = [];
  let column = 0;
  for (const step of steps) {
    const from = left + column * (thick + apart);
    const meshed = chosen === undefined || chosen === step;
    const reach = meshed ? distance : distance - clear;
    for (const [index, { driver, driven }] of step.pairs.entries()) {
      const x = left + column * (thick + apart);
      const below = (reach * (index % 2 === 0 ? driver : driven)) / (driver + driven);
      marks.push(...wheel(x, lower, below), ...wheel(x, upper, reach - below));
      column++;
    }
    const to = left + (column - 1) * (thick + apart) + thick;
    for (const y of [upper, lower]) {
      marks.push(line({ x: from - shaftEnd, y }, { x: from, y }, axisLine));
      marks.push(line({ x: to, y }, { x: to + shaftEnd, y }, axisLine));
      for (let gap = from + thick; gap < to - 0.1; gap += thick + apart)
        marks.push(line({ x: gap, y }, { x: gap + apart, y }, rowLine));
    }
    const own = steps.length === 1 ? room.width : to - from + apart;
    const { label } = steps.length === 1 && chosen ? chosen : step;
    marks.push(words(label, { x: (from + to) / 2, y: nameHeight + down + size.text }, own));
  }
  marks.push(words(translated(stage.name), { x: room.width / 2, y: size.text * 0.85 }, room.width));
  return { ...room, marks: [group({ x: 0, y: 0 }, marks, { name: "gears" })] };
}

/** From the side, its teeth as lines. */
function wheel(x: number, middle: number, radius: number): Mark[] {
  const teeth = Array.from({ length: Math.floor((2 * radius) / 0.9) }, (_, at) => middle - radius + 0.9 * (at + 0.5));
  return [
    rectangle({ x, y: middle - radius }, thick, 2 * radius, { pen: objectLine, fill: "white" }),
    ...teeth
      .filter((y) => y < middle + radius - 0.3)
      .map((y) => line({ x: x + 0.5, y }, { x: x + thick - 0.5, y }, axisLine)),
  ];
}

/** Small rather than cut short. */
const words = (name: string, at: { x: number; y: number }, room: number): Mark => {
  const em = textWidth(name, size.text, "regular") <= room ? size.text : size.source;
  return text(shortened(name, room, em, "regular"), at, { size: em, anchor: "middle" });
};
