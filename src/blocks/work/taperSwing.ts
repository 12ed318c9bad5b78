import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, polyline, rectangle, text } from "../../drawing/shapes.js";
import { block } from "../shared/block.js";
import { heavy, medium, pen, size } from "../shared/style.js";

/** Which way to swing, for which end small, seen from above with the operator at the foot of the drawing (common practice,
 *  and geometry: the tool cuts deeper where its path comes nearer to the axis). */
const swings = [
  { what: "top slide", small: "free end small", sense: "swing anticlockwise", slide: true, right: true },
  { what: "top slide", small: "chuck end small", sense: "swing clockwise", slide: true, right: false },
  { what: "headstock", small: "free end small", sense: "swing clockwise", slide: false, right: true },
  { what: "headstock", small: "chuck end small", sense: "swing anticlockwise", slide: false, right: false },
] as const;

export const taperSwing = block({ height: 30 }, ({ width, settings }) => {
  // On narrow paper two beside each other, so that their words keep apart.
  const across = width < 150 ? 2 : swings.length;
  const each = width / across;
  const high = settings.height + 9;
  const marks = swings.map((swing, index) =>
    group({ x: (index % across) * each, y: Math.floor(index / across) * high }, plan(swing, each - 3, settings.height)),
  );
  const height = (swings.length / across) * high;
  return [{ drawing: { width, height, marks } satisfies Drawing, gap: 3 }];
});

function plan(swing: (typeof swings)[number], width: number, height: number): Mark[] {
  const axis = height * 0.38;
  const chuck = width * 0.24;
  const length = width * 0.5;
  const [left, right] = swing.right ? [6.4, 3.2] : [3.2, 6.4];
  const work = polyline(
    [
      { x: chuck, y: -left },
      { x: chuck + length, y: -right },
      { x: chuck + length, y: right },
      { x: chuck, y: left },
    ],
    { pen: medium },
    true,
  );
  const head = [
    rectangle({ x: 1, y: -8 }, chuck * 0.55, 16, { pen: medium }),
    rectangle({ x: 1 + chuck * 0.55, y: -8.5 }, chuck * 0.45 - 1, 17, { pen: heavy }),
  ];
  const centre = line({ x: 0, y: 0 }, { x: chuck + length + 5, y: 0 }, pen(0.13, "black", [3, 0.8, 0.6, 0.8]));
  // The side of the work nearest the operator is the path of the tool.
  const slope = Math.atan2(right - left, length);
  const turned = swing.slide ? 0 : -slope;
  const middle = { x: chuck + length / 2, y: axis };
  const body = group({ x: middle.x, y: middle.y }, [group({ x: -middle.x, y: 0 }, [...head, work, centre])], {
    turn: turned,
  });
  const direction = swing.slide ? slope : 0;
  const away = (left + right) / 2 + 4;
  const [cos, sin] = [Math.cos(direction), Math.sin(direction)];
  const at = (along: number, off: number) => ({
    x: middle.x + along * cos - off * sin,
    y: axis + away + along * sin + off * cos,
  });
  const half = length / 2;
  const path = [
    line(at(-half, 0), at(half, 0), heavy),
    polyline([at(-half + 2.2, -1), at(-half, 0), at(-half + 2.2, 1)], { pen: heavy }),
    polyline(
      [at(half - 4, 1), at(half - 2.5, -2.2), at(half - 1, 1), at(half - 1, 5), at(half - 4, 5)],
      { pen: medium },
      true,
    ),
  ];
  const middleX = width / 2;
  return [
    body,
    ...path,
    text(swing.small, { x: middleX, y: height + 2 }, { size: size.small, weight: "bold", anchor: "middle" }),
    text(`${swing.what}: ${swing.sense}`, { x: middleX, y: height + 5.4 }, { size: size.small, anchor: "middle" }),
    text("seen from above, operator below", { x: middleX, y: height + 8.2 }, { size: size.tiny, anchor: "middle" }),
  ];
}
