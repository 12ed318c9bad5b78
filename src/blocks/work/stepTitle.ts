import type { Drawing, Mark, Weight } from "../../drawing/drawing.js";
import { circle, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { choiceDoubt } from "../../findings/limits.js";
import type { Limits } from "../../machine/machine.js";
import { isTooFast } from "../../plan/plan.js";
import type { PlannedStep } from "../../plan/plannedStep.js";
import { capital, formatFixed } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { leading, objectLine, size } from "../shared/style.js";

/** Left of a step's words: its number, as on the drawing of the part, and under that its box to tick; none where it is refused. */
export const gutter = 10;
/** What number and box take. */
export const leastHeight = 17;
const RING = 3.9;
const BOX = 4.6;

/** A position's name takes at most such a share of the width; a longer one goes over several lines. */
const WIDEST_NAME = 0.36;

/** `left`: from where on words may stand at its left, under the step's own; mm. */
export type StepTitle = Drawing & { readonly left: number };

/** The step, and at the right where the belt goes and how fast the spindle then turns, to be read from where the belt is moved.
 *  `moved`: the belt lies elsewhere in the step before; `refused`: it is not to be done. */
export function stepTitle(
  step: PlannedStep,
  limits: Limits,
  { moved, refused }: { readonly moved: boolean; readonly refused: boolean },
  width: number,
): StepTitle {
  const side = sideLines(step, limits, width * WIDEST_NAME);
  const right = Math.max(0, ...side.map(({ pieces }) => widthOf(pieces)));
  const marks: Mark[] = [
    line({ x: 0, y: 0.2 }, { x: width, y: 0.2 }, objectLine),
    ...numberMarks(step.number, refused),
  ];
  const em = size.card;
  let y = 1.4;
  for (const part of wrapText(capital(step.title), width - gutter - right - (right > 0 ? 5 : 0), em, "bold")) {
    marks.push(text(part, { x: gutter, y: y + 0.8 * em * leading }, { size: em, weight: "bold" }));
    y += em * leading;
  }
  let beside = 1.4;
  for (const { pieces, named } of side) {
    const tallest = Math.max(...pieces.map((piece) => piece.em));
    const baseline = beside + 0.8 * tallest * leading;
    let x = width - widthOf(pieces);
    if (named && moved) {
      const [name] = pieces as [Piece];
      const own = textWidth(name.words.trimEnd(), name.em, name.weight);
      marks.push(
        rectangle({ x: x - 1.3, y: baseline - 1.02 * name.em }, own + 2.6, 1.32 * name.em, { fill: "black" }, 1),
      );
    }
    for (const { words, em, weight } of pieces) {
      const ink = named && moved && words === pieces[0]?.words ? "white" : "black";
      marks.push(text(words.trimEnd(), { x, y: baseline }, { size: em, weight, ink }));
      x += textWidth(words, em, weight);
    }
    beside += tallest * leading;
  }
  return { width, height: Math.max(y, beside) + 0.6, left: y + 0.6, marks };
}

function numberMarks(number: number, refused: boolean): Mark[] {
  const words = String(number);
  const em = words.length > 2 ? size.text : size.card;
  const middle = { x: RING + 0.2, y: RING + 1.8 };
  return [
    circle(middle, RING, { pen: objectLine }),
    text(words, { x: middle.x, y: middle.y + 0.36 * em }, { size: em, weight: "bold", anchor: "middle" }),
    ...(refused ? [] : [rectangle({ x: middle.x - BOX / 2, y: middle.y + RING + 1.6 }, BOX, BOX, { pen: objectLine })]),
  ];
}

type Piece = { readonly words: string; readonly em: number; readonly weight: Weight };
/** One line at the right. `named`: it begins with the position. */
type SideLine = { readonly pieces: readonly Piece[]; readonly named?: boolean };

const widthOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { words, em, weight }) => sum + textWidth(words, em, weight), 0);

function sideLines(step: PlannedStep, limits: Limits, widest: number): SideLine[] {
  if (step.tool === say("plan.no tool")) return [];
  const bold = (words: string): Piece => ({ words, em: size.card, weight: "bold" });
  if (step.byHand) return [{ pieces: [bold(say("plan.by hand"))] }];
  const { speed } = step;
  if (speed?.speed === undefined || speed.rpm === undefined)
    return [{ pieces: [bold(say(isTooFast(speed) ? "plan.do not run" : "plan.no speed known"))] }];
  const { name } = speed.speed.position;
  const fast = [
    bold(formatFixed(speed.rpm, 0)),
    { words: ` ${say("units and numbers.rpm")}`, em: size.text, weight: "regular" } as const,
  ];
  const together = [bold(`${name}   `), ...fast];
  const named: SideLine[] =
    widthOf(together) <= widest
      ? [{ pieces: together, named: true }]
      : [
          ...wrapText(name, widest, size.card, "bold").map((part): SideLine => ({ pieces: [bold(part)], named: true })),
          { pieces: fast },
        ];
  // A speed that may not be what it seems is no small print.
  const doubt = choiceDoubt(speed.speed, limits);
  const [em, weight] = doubt === "" ? ([size.source, "regular"] as const) : ([size.text, "bold"] as const);
  const below = (words: string, em: number, weight: Weight): SideLine[] =>
    words === "" ? [] : wrapText(words, widest, em, weight).map((part) => ({ pieces: [{ words: part, em, weight }] }));
  // Where the motor is variable the position alone does not give the speed.
  const set = speed.speed.slowestRpm < speed.speed.rpm ? say("plan.set the motor") : "";
  return [...named, ...below(set, size.source, "regular"), ...below(doubt || verdict(step), em, weight)];
}

function verdict({ speed, beltOf }: PlannedStep): string {
  if (beltOf !== undefined) return say("plan.belt kept", { step: beltOf });
  if (speed?.heldBy === "hand") return say("plan.as fast as a hand");
  if (speed?.verdict === "slower than the band") return say("plan.slower than it bears");
  return speed?.verdict === "held by a limit" ? say("plan.held by a limit") : "";
}
