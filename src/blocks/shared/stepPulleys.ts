import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Stage, Step } from "../../machine/machine.js";
import { fine, medium, size } from "./style.js";

type BeltStep = Extract<Step, { kind: "belt" }>;

/** The pulley pair of one belt stage seen from the side, to relative scale: the driving cone below, the driven above,
 *  one groove a column, and the belt as a black band over the chosen step. Undefined where a stage has no belt. */
export function stepPulleys(stage: Stage, chosen: Step, room: { width: number; height: number }): Drawing | undefined {
  const steps = stage.steps.filter((step): step is BeltStep => step.kind === "belt");
  if (steps.length === 0) return undefined;
  const label = size.tiny * 1.3;
  const largest = Math.max(...steps.flatMap(({ driver, driven }) => [driver, driven]));
  const down = room.height - label;
  // The two cones together fill the height, with a gap of a fifth of the largest pulley for the belt to be seen.
  const tallest = Math.max(...steps.map(({ driver }) => driver)) + Math.max(...steps.map(({ driven }) => driven));
  const scale = down / (tallest + 0.2 * largest);
  const column = Math.min(room.width / steps.length, 0.55 * largest * scale);
  const left = (room.width - column * steps.length) / 2;
  const upper = (Math.max(...steps.map(({ driven }) => driven)) / 2) * scale;
  const lower = down - (Math.max(...steps.map(({ driver }) => driver)) / 2) * scale;

  const marks: Mark[] = [];
  const axis = (y: number) => line({ x: left - 2, y }, { x: left + column * steps.length + 2, y }, fine);
  for (const [index, step] of steps.entries()) {
    const x = left + index * column;
    const block = (middle: number, diameter: number) =>
      rectangle({ x, y: middle - (diameter * scale) / 2 }, column, diameter * scale, { pen: medium, fill: "white" });
    marks.push(block(upper, step.driven), block(lower, step.driver));
  }
  marks.push(axis(upper), axis(lower));
  // Labels that do not fit side by side: only the chosen one's, which then may take the whole room.
  const widths = steps.map((step) => textWidth(step.label, size.tiny, "bold"));
  const all = widths.every((width) => width <= column - 0.4);
  for (const [index, step] of steps.entries()) {
    const x = left + index * column;
    const middle = x + column / 2;
    const labelled = all || (step === chosen && (widths[index] ?? 0) <= room.width);
    const half = (widths[index] ?? 0) / 2;
    if (step.label !== "" && labelled)
      marks.push(
        text(
          step.label,
          { x: all ? middle : Math.min(Math.max(middle, half), room.width - half), y: room.height - 0.3 },
          { size: size.tiny, anchor: "middle", weight: step === chosen ? "bold" : "regular" },
        ),
      );
    if (step !== chosen) continue;
    const band = column * 0.44;
    const top = upper - (step.driven * scale) / 2 - 0.5;
    const bottom = lower + (step.driver * scale) / 2 + 0.5;
    marks.push(rectangle({ x: middle - band / 2, y: top }, band, bottom - top, { fill: "black" }, band / 4));
  }
  return { width: room.width, height: room.height, marks: [group({ x: 0, y: 0 }, marks, { name: "pulleys" })] };
}
