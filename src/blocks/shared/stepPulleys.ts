import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Stage, Step } from "../../machine/machine.js";
import { onlyCapitals, shortened } from "./shortened.js";
import { axisLine, objectLine, size } from "./style.js";

export type BeltStep = Extract<Step, { kind: "belt" }>;
export type Room = { readonly width: number; readonly height: number };

/** Names of the two shafts of a stage. */
export type Shafts = { readonly driver: string; readonly driven: string };

/** What a pair's marks are called: by it a card with pulleys is known. */
export const PULLEYS = "pulleys";

/** Beyond the steps the shaft is seen, mm at each end. */
const shaftEnd = 2;
/** What a step is wide at most, mm: wider ones look like drums. */
const widest = 10;
/** What must be seen of the belts between the two cones, mm. */
const leastGap = 4;
/** Of a step beside its belt, mm. */
const edgeSeen = 0.7;
/** A letter needs so much beside it. */
const beside = 1;
/** Line of a shaft's name. */
const nameHeight = size.text * 1.25;
/** The least pulley that a letter is written on, of its em; one with something above or below; one that stands upright. */
const capital = 0.95;
const anyLetter = 1.5;
const upright = 1.3;
const accented = 1.75;

/** The least width that shows every step's letter as large as on a card; beyond a few narrow steps, as small as text. */
export function leastWidth(stage: Stage): number {
  const steps = beltSteps(stage);
  const [em, least, most] =
    steps.length > 12 ? [size.source, 3, 3] : steps.length > 6 ? [size.text, 4, 5] : [size.card, 5.2, 7];
  const words = steps.map(({ label }) => textWidth(label, em, "bold") + beside);
  return Math.min(most, Math.max(least, ...words)) * steps.length + 2 * shaftEnd;
}

export const beltSteps = (stage: Stage): BeltStep[] =>
  stage.steps.filter((step): step is BeltStep => step.kind === "belt");

/** The pulley pair of one belt stage seen from the side, to relative scale: the driving cone below, the driven above, a letter on
 *  each step, and the belt as a black band over the chosen one. `shafts`: their names, below and above. Undefined where a
 *  stage has no belt. */
export function stepPulleys(stage: Stage, chosen: Step | undefined, room: Room, shafts?: Shafts): Drawing | undefined {
  const steps = beltSteps(stage);
  if (steps.length === 0) return undefined;
  const named = shafts === undefined ? 0 : nameHeight;
  const down = room.height - 2 * named;
  const tallest = (of: (step: BeltStep) => number) => Math.max(...steps.map(of));
  const [drivers, driven] = [tallest((step) => step.driver), tallest((step) => step.driven)];
  const column = Math.min(widest, (room.width - 2 * shaftEnd) / steps.length);
  // The two cones fill the height, and the belt is seen between them.
  const gap = Math.max(leastGap, down * 0.1);
  // A cone that is higher than long looks like a disc.
  const scale = Math.min((down - gap) / (drivers + driven), (column * steps.length * 1.6) / Math.max(drivers, driven));
  const left = (room.width - column * steps.length) / 2;
  const right = left + column * steps.length;
  const spare = (down - gap - (drivers + driven) * scale) / 2;
  const upper = named + spare + (driven / 2) * scale;
  const lower = named + down - spare - (drivers / 2) * scale;
  const em = emFor(steps, column, scale);

  const marks: Mark[] = [];
  for (const y of [upper, lower]) {
    marks.push(line({ x: left - shaftEnd, y }, { x: left, y }, axisLine));
    marks.push(line({ x: right, y }, { x: right + shaftEnd, y }, axisLine));
  }
  for (const [index, step] of steps.entries()) {
    const x = left + index * column;
    const pulley = (middle: number, diameter: number) =>
      rectangle({ x, y: middle - (diameter * scale) / 2 }, column, diameter * scale, {
        pen: objectLine,
        fill: "white",
      });
    marks.push(pulley(upper, step.driven), pulley(lower, step.driver));
  }
  for (const [index, step] of steps.entries()) {
    const middle = left + (index + 0.5) * column;
    const taken = step === chosen;
    const top = upper - (step.driven * scale) / 2;
    const bottom = lower + (step.driver * scale) / 2;
    // The step's edges must be seen on both sides of its belt, but all of its letter lies on the black.
    const wide = column - 2 * edgeSeen;
    const needed = em === undefined ? Math.min(column, size.text * accented) : textWidth(step.label, em, "bold") + 0.8;
    const band = Math.min(column, Math.max(needed, em === undefined ? wide : Math.min(wide, column * 0.6)));
    if (taken) marks.push(rectangle({ x: middle - band / 2, y: top }, band, bottom - top, { fill: "black" }));
    for (const [y, diameter] of [
      [upper, step.driven],
      [lower, step.driver],
    ] as const)
      marks.push(...letter(step.label, { x: middle, y }, em, { column, across: diameter * scale, taken }));
  }
  if (shafts !== undefined) {
    const name = (words: string, y: number) =>
      text(
        shortened(words, room.width, size.text, "regular"),
        { x: room.width / 2, y },
        { size: size.text, anchor: "middle" },
      );
    const top = upper - (driven / 2) * scale;
    const bottom = lower + (drivers / 2) * scale;
    marks.push(name(shafts.driven, top - 1.3), name(shafts.driver, bottom + size.text));
  }
  return { ...room, marks: [group({ x: 0, y: 0 }, marks, { name: PULLEYS })] };
}

/** The largest em at which every letter fits across its step and on the smallest pulley; undefined where none does. */
function emFor(steps: readonly BeltStep[], column: number, scale: number): number | undefined {
  const smallest = Math.min(...steps.flatMap(({ driver, driven }) => [driver, driven])) * scale;
  return [size.card, size.text, size.source].find(
    (em) =>
      smallest >= em * (steps.every(({ label }) => onlyCapitals(label)) ? capital : anyLetter) &&
      steps.every(({ label }) => textWidth(label, em, "bold") <= column - beside + 0.01),
  );
}

/** A label that has no room across stands upright on its step, cut short where it must be. */
function letter(
  label: string,
  { x, y }: { x: number; y: number },
  em: number | undefined,
  { column, across, taken }: { column: number; across: number; taken: boolean },
): Mark[] {
  const ink = taken ? "white" : "black";
  if (label === "") return [];
  if (em !== undefined)
    return [text(label, { x, y: y + em * 0.36 }, { size: em, anchor: "middle", weight: "bold", ink })];
  // A capital with something above it is the highest letter there is.
  const high = /[\u00c0-\u00de\u0160\u017d\u0178]/.test(label) ? accented : upright;
  const small = column >= size.text * high ? size.text : size.source;
  if (column < small * high || across < 2 * small) return [];
  const words = shortened(label, across - 0.8, small, "bold");
  return [
    text(words, { x: x + small * 0.28, y }, { size: small, anchor: "middle", weight: "bold", ink, turn: -Math.PI / 2 }),
  ];
}
