import type { Development } from "../../dial/development.js";
import type { DialFinding } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { circle, group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { TURN, toRadians } from "../../quantity/angle.js";
import { say } from "../../words/say.js";
import { objectLine, rowLine, size } from "../shared/style.js";
import { arrow } from "./edgeArrow.js";
import { digitHeight } from "./scaleMarks.js";
import type { IndexPlace } from "./surface.js";

type Placed = {
  readonly dial: Pick<DialFinding, "rows" | "increases" | "second">;
  readonly flat: Development;
  readonly shape: DialFinding["shape"];
  readonly index?: IndexPlace;
  /** Its numbers stand upright at an index at the side, across the ring. */
  readonly sideways?: boolean;
};

/** What makes two dials look alike in their place. */
export const lookOf = ({ dial, shape, index = "top", sideways }: Placed): string =>
  [
    shape === "drum" ? "drum" : `ring ${index} ${sideways}`,
    dial.increases,
    JSON.stringify(nearZero(dial, shape === "drum" || !sideways ? WIDE : NARROW)),
  ].join(" ");

/** A dial in its place on the wheel, with the index, and which way both wheel and numbers go: a drum from above with the operator below,
 *  a face or a cone as the operator sees it. */
export const dialInPlace = (placed: Placed): Drawing =>
  placed.shape === "drum" ? drumInPlace(placed) : ringInPlace(placed);

/** Widest number in these pictures, mm: along the ring, and across it. */
const WIDE = 6;
const NARROW = 3.5;
/** More marks up to the next number than these would run together. */
const MOST_TO_NUMBER = 20;

/** The dial's own marks from zero to the next number that has room in the picture: rank by rank, that number, and whether more rows or a
 *  second scale lie below. */
function nearZero({ rows, second }: Placed["dial"], room: number) {
  const marks = [...(rows[0] ?? [])].sort((a, b) => a.value - b.value);
  const at = marks.findIndex(
    ({ label, value }) => label !== undefined && value > 0 && textWidth(label, size.source, "bold") <= room,
  );
  const known = at > 0 && at <= MOST_TO_NUMBER;
  const ranks = marks.slice(0, known ? at : 5).map(({ rank }) => rank);
  return { ranks, label: known ? (marks[at]?.label ?? "") : "", below: rows.length > 1 || second !== undefined };
}

/** Length of a mark of each rank in these pictures, mm. */
const markLength = { 1: 2.6, 2: 1.9, 3: 1.3 } as const;

const small = (words: string, at: Point, anchor: "start" | "middle" | "end" = "middle", bold = false): Mark =>
  text(words, at, { size: size.source, anchor, weight: bold ? "bold" : "regular" });

/** Degrees from zero to the next number in these pictures, at most and at least, and between two marks about. */
const [FARTHEST, NEAREST] = [44, 36];
const USUAL_STEP = 10;
const stepOf = ({ length }: readonly unknown[]): number =>
  Math.max(Math.min(USUAL_STEP, FARTHEST / length), NEAREST / length);

function drumInPlace({ dial }: Placed): Drawing {
  const width = 46;
  const [middle, radius] = [width / 2, 15];
  const sign = growthOf(dial) === "leftward" ? -1 : 1;
  const [edge, low] = [9, 17.5];
  // On the fixed part where it fits, else beside that.
  const named = textWidth(say("dials.index"), size.source, "regular");
  const index = named <= radius - 2 ? middle + 1.4 : middle + radius + 1.2;
  const marks: Mark[] = [
    // The fixed part with its index line, the drum, the wheel's rim and handle.
    rectangle({ x: middle - radius, y: 0.3 }, 2 * radius, edge - 0.6, { pen: rowLine }),
    line({ x: middle, y: 3.6 }, { x: middle, y: edge - 0.4 }, objectLine),
    small(say("dials.index"), { x: index, y: 4.8 }, "start"),
    rectangle({ x: middle - radius, y: edge }, 2 * radius, low - edge, { pen: objectLine }),
    line({ x: middle - 5, y: low }, { x: middle - 5, y: low + 2.5 }, rowLine),
    line({ x: middle + 5, y: low }, { x: middle + 5, y: low + 2.5 }, rowLine),
    rectangle({ x: 1, y: low + 2.5 }, width - 2, 6, { pen: objectLine }, 2),
    rectangle({ x: width - 8, y: low + 8.5 }, 4.6, 7, { pen: objectLine }, 1.4),
  ];
  const at = (degrees: number) => middle + sign * radius * Math.sin(toRadians(degrees));
  const { ranks, label, below } = nearZero(dial, WIDE);
  const step = stepOf(ranks);
  const most = Math.floor(80 / step);
  for (let mark = -most; mark <= most; mark++)
    marks.push(
      line(
        { x: at(mark * step), y: edge },
        { x: at(mark * step), y: edge + markLength[ranks[Math.abs(mark) % ranks.length] ?? 1] },
        rowLine,
      ),
    );
  const numbers = edge + markLength[1] + 0.5 + size.source * digitHeight;
  marks.push(small("0", { x: middle, y: numbers }, "middle", true));
  marks.push(small(label, { x: at(ranks.length * step), y: numbers }, "middle", true));
  if (below)
    marks.push(line({ x: middle - radius, y: numbers + 0.6 }, { x: middle + radius, y: numbers + 0.6 }, rowLine));
  const rim = low + 5.5;
  // What is on top of a wheel that is turned clockwise goes to the operator's right.
  const on = dial.increases === "clockwise" ? 1 : -1;
  marks.push(...arrow({ x: middle - on * 9, y: rim }, { x: middle + on * 9, y: rim }));
  const words = say("dials.reading grows");
  // Beside the handle where it fits, else below it.
  const told = textWidth(words, size.source, "regular");
  const beside = told <= width - 11;
  marks.push(small(words, { x: 1, y: beside ? low + 12.3 : low + 18.6 }, "start"));
  return { width: Math.max(width, told + 2, index + named), height: low + (beside ? 16 : 19.6), marks };
}

function ringInPlace({ dial, index = "top", sideways = false }: Placed): Drawing {
  const [outer, inner] = [15, 8.6];
  const atSide = index === "left" || index === "right";
  const told = textWidth(say("dials.index"), size.source, "regular");
  const aside = atSide ? told + 1 : 6;
  const centre = { x: outer + Math.max(8, aside), y: outer + 6.2 };
  const sign = growthOf(dial) === "leftward" ? -1 : 1;
  const up = { top: 0, right: 90, bottom: 180, left: -90 }[index];
  const at = (degrees: number, radius: number): Point => ({
    x: centre.x + radius * Math.sin(toRadians(up + sign * degrees)),
    y: centre.y - radius * Math.cos(toRadians(up + sign * degrees)),
  });
  const marks: Mark[] = [
    circle(centre, outer, { pen: objectLine }),
    circle(centre, inner, { pen: rowLine }),
    circle(centre, 1.6, { pen: objectLine }),
    // The handle, away from the arrow.
    circle(at(180, 6), 1.9, { pen: objectLine }),
    line(at(0, outer + 0.6), at(0, outer + 4), objectLine),
  ];
  const { ranks, label } = nearZero(dial, sideways ? NARROW : WIDE);
  const step = stepOf(ranks);
  const half = Math.floor(180 / step);
  for (let mark = -half; mark <= half; mark++) {
    const rank = ranks[Math.abs(mark) % ranks.length] ?? 1;
    marks.push(line(at(mark * step, outer), at(mark * step, outer - markLength[rank] * 0.75), rowLine));
  }
  for (const [degrees, words] of [
    [0, "0"],
    [ranks.length * step, label],
  ] as const) {
    // As on the dial itself: upright at the index, turned away from it.
    const turn = toRadians(sign * degrees + (atSide && !sideways ? up : 0));
    const drop = (size.source * digitHeight) / 2;
    const tall = sideways ? textWidth(words, size.source, "bold") / 2 : drop;
    const { x, y } = at(degrees, outer - 2.4 - tall);
    const foot = { x: x - Math.sin(turn) * drop, y: y + Math.cos(turn) * drop };
    marks.push(text(words, foot, { size: size.source, weight: "bold", anchor: "middle", turn }));
  }
  const [start, end] = [-55, 55].map((degrees) => toRadians(up + degrees - 90)) as [number, number];
  marks.push({ kind: "path", segments: [{ to: "arc", centre, radius: 6, start, end }], pen: rowLine });
  const on = dial.increases === "clockwise" ? 1 : -1;
  const tipAt = on > 0 ? end : start;
  const tip = { x: centre.x + 6 * Math.cos(tipAt), y: centre.y + 6 * Math.sin(tipAt) };
  const along = tipAt + (on * TURN) / 4;
  marks.push(
    ...arrow(
      { x: tip.x - 0.1 * Math.cos(along), y: tip.y - 0.1 * Math.sin(along) },
      {
        x: tip.x + 2 * Math.cos(along),
        y: tip.y + 2 * Math.sin(along),
      },
    ),
  );
  const beside = at(0, outer + 3.2);
  const level = { top: beside.y - 0.4, bottom: beside.y + 1.6, left: beside.y - 1.6, right: beside.y - 1.6 }[index];
  const [from, anchor] =
    index === "left"
      ? ([centre.x - outer - 0.6, "end"] as const)
      : index === "right"
        ? ([centre.x + outer + 0.6, "start"] as const)
        : ([centre.x + 1.2, "start"] as const);
  const grows = say("dials.reading grows");
  const reach = Math.max(
    centre.x,
    textWidth(grows, size.source, "regular") / 2,
    index === "top" || index === "bottom" ? told + 1.2 : 0,
  );
  marks.push(small(say("dials.index"), { x: from, y: level }, anchor));
  marks.push(small(grows, { x: centre.x, y: centre.y + outer + 7.6 }));
  return { width: 2 * reach, height: centre.y + outer + 8.6, marks: [group({ x: reach - centre.x, y: 0 }, marks)] };
}
