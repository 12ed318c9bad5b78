import { bandOf, paperPerRadian } from "../../dial/development.js";
import { growthOf } from "../../dial/growth.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { TURN } from "../../quantity/angle.js";
import { say } from "../../words/say.js";
import { axisLine, rowLine, size } from "../shared/style.js";
import type { DialPlan } from "./dialPiece.js";
import { bandsOf, bare, dialStyle } from "./dialStyle.js";
import { type ScaleStyle, scaleMarks } from "./scaleMarks.js";
import { stripSurface } from "./surface.js";

/** So much of the dial on either side of its seam, mm of paper. */
const SHOWN = 8;
const ABOVE = 1.2;

/** A seam, so many radians from zero, as it looks when it is right: the dial's own marks about it at true size, a tab for glue under it. */
export function seamView(plan: DialPlan, seam: number): Drawing {
  const { dial, flat, lap = 0 } = plan;
  const scale = paperPerRadian(flat);
  const band = bandOf(flat);
  const reach = Math.min(SHOWN / scale, 0.45 * TURN);
  const surface = stripSurface(scale, band, { from: seam - reach, to: seam + reach, growth: growthOf(dial) });
  const style = dialStyle(plan);
  const marks = bandsOf(dial).flatMap((row, index) => {
    const own = style.bands[index] as ScaleStyle;
    const here = row.flatMap((mark) =>
      [-TURN, 0, TURN, 2 * TURN]
        .map((turn) => ({ ...bare(mark), angle: mark.angle + turn }))
        .filter(({ angle }) => Math.abs(angle - seam) < reach),
    );
    return [
      ...scaleMarks(surface, here, { ...own, bleed: 0, number: 0 }),
      ...(index > 0 ? [surface.rule(own.across, rowLine)] : []),
    ];
  });
  const { width: length } = surface;
  const dashed = { ...axisLine, dash: [0.8, 0.6] };
  const words = lap > 0 ? say("dials.seam tab") : say("dials.seam butt");
  const width = Math.max(length, textWidth(words, size.source, "regular"));
  const tab = Math.min(lap, length / 2 - 0.5);
  return {
    width,
    height: band + 2 * ABOVE + size.source * 1.25,
    marks: [
      group(
        { x: 0, y: 0 },
        [
          group({ x: (width - length) / 2, y: ABOVE }, [
            line({ x: 0, y: 0 }, { x: length, y: 0 }, axisLine),
            line({ x: 0, y: band }, { x: length, y: band }, axisLine),
            line({ x: length / 2, y: -ABOVE }, { x: length / 2, y: band + ABOVE }, axisLine),
            // The tab belongs to the right end, which lies on the left here, and goes under the other.
            ...(lap > 0 ? [rectangle({ x: length / 2, y: 0.15 * band }, tab, 0.7 * band, { pen: dashed })] : []),
            ...marks.map(unnamed),
          ]),
          text(words, { x: width / 2, y: band + 2 * ABOVE + size.source }, { size: size.source, anchor: "middle" }),
        ],
        { name: "seam" },
      ),
    ],
  };
}

/** The picture's marks are none of the dial's: a machine that cuts by layers must not find them among those. */
function unnamed(mark: Mark): Mark {
  if (mark.kind !== "group") return mark;
  const { name: _, ...plain } = mark;
  return { ...plain, marks: mark.marks.map(unnamed) };
}
