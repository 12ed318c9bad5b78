import type { Drawing } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { joined } from "../shared/runs.js";
import type { DrawnStage } from "./drawnStages.js";

type Room = { readonly width: number; readonly height: number };

/** A hole with its sizes has no room on less, mm. */
const LEAST_WIDTH = 55;
const MOST_BESIDE = 3;
const BETWEEN = 6;
/** Of its width. */
const TALLEST = 1.25;

/** Holes of one part, each little higher than it is wide and drawn by itself under its name, as many beside each other as have room. */
export function holesBeside(
  holes: readonly (readonly DrawnStage[])[],
  { width, height }: Room,
  draw: (steps: readonly DrawnStage[], room: Room) => Drawing,
): Run[] {
  const most = Math.min(MOST_BESIDE, holes.length, Math.floor((width + BETWEEN) / (LEAST_WIDTH + BETWEEN)));
  const columns = Math.max(1, most);
  const own = (width - (columns - 1) * BETWEEN) / columns;
  const drawn = holes.map((steps) =>
    joined(
      [
        ...paragraph(nameOf(steps), own, { weight: "bold" }),
        { drawing: draw(steps, { width: own, height: Math.min(height, TALLEST * own) }) },
      ],
      own,
    ),
  );
  const rows = Array.from({ length: Math.ceil(drawn.length / columns) }, (_, row) =>
    drawn.slice(row * columns, (row + 1) * columns),
  );
  return rows.map((row) => ({
    drawing: {
      width,
      height: Math.max(...row.map((one) => one.height)),
      marks: row.map(({ marks }, column) => group({ x: column * (own + BETWEEN), y: 0 }, marks)),
    },
    gap: 3,
  }));
}

function nameOf(steps: readonly DrawnStage[]): string {
  const { hole } = steps.at(-1)?.stage ?? {};
  const n = hole?.drilled ?? 1;
  return hole?.name === undefined
    ? say("plan.drawing holes", { n })
    : say("plan.drawing named holes", { n, name: hole.name });
}
