import type { Mark } from "../../drawing/drawing.js";
import { group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { powerOffFirst } from "../../findings/powerOff.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { heading, together } from "../shared/runs.js";
import { arrow, hatching } from "../shared/sectionMarks.js";
import { leading, objectLine, pen, size, weight } from "../shared/style.js";

const picture = { width: 55, height: 30 } as const;
const look = { pen: objectLine, fill: "white" } as const;
const axis = pen(weight.axis, "black", [3, 0.8, 0.6, 0.8]);

/** Bar through the spindle against a stop inside it: the order of work that makes parts alike. */
export const spindleStop = block({}, ({ findings, width }): Run[] => {
  const steps = [
    say("stops.spindle 1", { off: powerOffFirst(findings.machine) }),
    say("stops.spindle 2"),
    say("stops.spindle 3"),
    say("stops.spindle 4"),
    say("stops.spindle 5"),
  ];
  const beside = width >= picture.width + 80;
  const left = beside ? picture.width + 6 : 0;
  const step = size.text * leading;
  const indent = textWidth("0", size.text, "bold") + 1.8;
  const lines = steps.flatMap((words, index) =>
    wrapText(words, width - left - indent, size.text, "regular").map((part, row) => ({
      part,
      ...(row === 0 && { number: String(index + 1) }),
    })),
  );
  const top = beside ? 0 : picture.height + 2;
  const marks = lines.flatMap(({ part, number }, index): Mark[] => {
    const y = top + step * (index + 0.76);
    return [
      ...(number === undefined ? [] : [text(number, { x: left, y }, { size: size.text, weight: "bold" })]),
      text(part, { x: left + indent, y }, { size: size.text }),
    ];
  });
  const height = Math.max(picture.height, top + step * lines.length);
  return together([
    ...heading(say("stops.spindle"), width, 6),
    { drawing: { width, height, marks: [group({ x: 0, y: 1 }, section()), ...marks] }, gap: 1 },
  ]);
});

/** The spindle cut open: stop, blank, jaws, and the face from which all lengths count. The numbers are those of the steps. */
function section(): Mark[] {
  const wall = (y: number): Mark[] => {
    const corners = [
      { x: 0, y },
      { x: 30, y },
      { x: 30, y: y + 4 },
      { x: 0, y: y + 4 },
    ];
    return [polyline(corners, look, true), ...hatching(corners, 1.8, 1, pen(weight.axis))];
  };
  const jaw = (y: number) => rectangle({ x: 32, y }, 7, 5.5, look);
  const number = (words: string, x: number, y: number) =>
    text(words, { x, y }, { size: size.card, weight: "bold", anchor: "middle" });
  return [
    ...wall(5),
    ...wall(18.5),
    rectangle({ x: 30, y: 2 }, 2, 24, look),
    // The bar comes up against the plug, and ends inside.
    rectangle({ x: 14, y: 11 }, 37, 5.5, look),
    rectangle({ x: 8, y: 9 }, 6, 9.5, { pen: objectLine, fill: "black" }),
    jaw(5.5),
    jaw(16.5),
    line({ x: 0, y: 13.75 }, { x: 54, y: 13.75 }, axis),
    ...arrow({ x: 49, y: 9 }, { x: 42, y: 9 }, objectLine, 2.2),
    line({ x: 51, y: 17.5 }, { x: 51, y: 24 }, pen(weight.axis)),
    number("1", 11, 28),
    number("2", 45.5, 7),
    number("3", 51, 28.5),
  ];
}
