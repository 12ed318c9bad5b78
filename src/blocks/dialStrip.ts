import type { DialFinding, Graduation } from "../dial/finding.js";
import type { Drawing, Mark } from "../drawing/drawing.js";
import { group, line, rectangle, text } from "../drawing/shapes.js";
import { textWidth } from "../drawing/text.js";
import { cutLine, fine, medium, pen, size } from "./style.js";

const turn = 2 * Math.PI;

/** A drum dial's strip, or a part of one that is too long for the paper. Lengths in mm. */
export type StripPiece = {
  readonly drawing: Drawing;
  readonly length: number;
  readonly piece: number;
  readonly pieces: number;
};

export type StripPlan = {
  readonly dial: DialFinding;
  /** Flat length once round. */
  readonly length: number;
  readonly width: number;
  /** Written small along the strip: handwheel, unit, feed, revision. */
  readonly legend: string;
};

/** The strip at true size, in as few pieces as fit in `room`; the cuts fall between marks, clear of numbers, and the
 *  pieces' lengths add up to the whole. */
export function stripPieces(plan: StripPlan, room: number): StripPiece[] {
  const style = stripStyle(plan);
  const cuts = gaps(plan, style);
  const joint = best(cuts, (cut) => -cut.clearance);
  // A cut may have to move by half the distance between numbers, so ask a little more pieces than the bare quotient.
  for (let pieces = Math.ceil(plan.length / room); pieces < 1000; pieces++) {
    const bounds = Array.from({ length: pieces + 1 }, (_, index) => {
      if (index === 0 || index === pieces) return joint.angle + (index === 0 ? 0 : turn);
      const wanted = joint.angle + (index * turn) / pieces;
      // A cut through a number costs as much as one a tenth of the way to the next piece away from where it is wanted.
      const apart = (cut: Cut) => Math.abs(along(cut.angle, joint.angle) - (wanted - joint.angle));
      const near = best(cuts, (cut) => apart(cut) + (cut.clearance > 0 ? 0 : turn / pieces / 10));
      return joint.angle + along(near.angle, joint.angle);
    });
    const lengths = bounds.slice(1).map((end, index) => ((end - (bounds[index] ?? 0)) / turn) * plan.length);
    if (lengths.some((length) => length > room)) continue;
    return lengths.map((length, index) => ({
      length,
      piece: index + 1,
      pieces,
      drawing: drawPiece(plan, style, bounds[index] ?? 0, length),
    }));
  }
  throw new RangeError("a strip wider than its paper");
}

/** Angle from `origin` on, in [0, 2π). */
const along = (angle: number, origin: number): number => (((angle - origin) % turn) + turn) % turn;

const best = <T>(items: readonly T[], cost: (item: T) => number): T =>
  items.reduce((least, item) => (cost(item) < cost(least) ? item : least));

type Cut = {
  readonly angle: number /** mm between the cut and the edge of the nearest number. */;
  readonly clearance: number;
};

/** The middles of all gaps between marks of any row. */
function gaps({ dial, length }: StripPlan, style: StripStyle): Cut[] {
  const marks = dial.rows.flat();
  const angles = [...new Set(marks.map(({ angle }) => angle))].sort((a, b) => a - b);
  const labels = marks.flatMap(({ angle, label }) =>
    label === undefined ? [] : [{ angle, half: textWidth(label, style.number, "bold") / 2 }],
  );
  return angles.map((angle, index) => {
    const next = angles[index + 1] ?? (angles[0] ?? 0) + turn;
    const middle = (angle + next) / 2;
    const clearance = Math.min(
      length,
      ...labels.map((label) => {
        const apart = along(label.angle, middle);
        return (Math.min(apart, turn - apart) / turn) * length - label.half;
      }),
    );
    return { angle: middle, clearance };
  });
}

type StripStyle = {
  readonly row: number;
  readonly legend: number;
  readonly number: number;
  readonly marks: readonly [number, number, number];
};

/** Marks hang from the edge that faces the index; numbers stand under them; the legend runs along the other edge. */
function stripStyle({ dial, width }: StripPlan): StripStyle {
  const rows = Math.max(1, dial.rows.length);
  const legend = width >= 6 * rows ? size.tiny * 1.15 : 0;
  const row = (width - legend) / rows;
  const number = Math.max(size.tiny, Math.min(2.6, row * 0.36));
  const longest = Math.max(1, row - number - 0.5);
  return { row, legend, number, marks: [longest, longest * 0.78, longest * 0.56] };
}

function drawPiece(plan: StripPlan, style: StripStyle, from: number, length: number): Drawing {
  const { dial, width } = plan;
  const end = from + (length / plan.length) * turn;
  // Seen by the operator, a wheel turned clockwise brings marks to the index from the left: there numbers grow leftward.
  const leftward = dial.increases === "clockwise";
  const x = (angle: number): number => {
    const distance = (along(angle, from) / turn) * plan.length;
    return leftward ? length - distance : distance;
  };
  const inside = ({ angle }: Graduation): boolean => along(angle, from) < end - from;
  const rows = dial.rows.map((row, index) => {
    const top = index * style.row;
    const here = row.filter(inside);
    const ticks = here.map((mark) =>
      line(
        { x: x(mark.angle), y: top },
        { x: x(mark.angle), y: top + (style.marks[mark.rank - 1] ?? 1) },
        pen(mark.rank === 1 ? 0.22 : 0.15),
      ),
    );
    const baseline = top + style.marks[0] + style.number * 0.8;
    const numbers = here.flatMap((mark) =>
      mark.label === undefined
        ? []
        : [
            text(
              mark.label,
              { x: x(mark.angle), y: baseline },
              { size: style.number, weight: "bold", anchor: "middle" },
            ),
          ],
    );
    return [
      group({ x: 0, y: 0 }, ticks, { name: "graduations" }),
      group({ x: 0, y: 0 }, numbers, { name: "numbers" }),
      ...(index > 0 ? [line({ x: 0, y: top }, { x: length, y: top }, fine)] : []),
    ];
  });
  const legend = fitted(plan.legend, length - 8);
  const marks: Mark[] = [
    group({ x: 0, y: 0 }, [rectangle({ x: 0, y: 0 }, length, width, { pen: cutLine })], { name: "cut" }),
    ...rows.flat(),
    group({ x: 0, y: 0 }, joints(length, width), { name: "joint" }),
    ...(style.legend > 0
      ? [text(legend, { x: length / 2, y: width - 0.45 }, { size: size.tiny, anchor: "middle" })]
      : []),
  ];
  return { width: length, height: width, marks };
}

/** Two dashes at each end that run on across the joint when the ends truly meet. */
function joints(length: number, width: number): Mark[] {
  const dash = 1.6;
  return [0.72, 0.94].flatMap((share) => {
    const y = width * share;
    return [line({ x: 0, y }, { x: dash, y }, medium), line({ x: length - dash, y }, { x: length, y }, medium)];
  });
}

/** As many of the legend's parts as fit, the first two (name and unit) last to go. */
function fitted(legend: string, room: number): string {
  const parts = legend.split(" · ");
  while (parts.length > 1 && textWidth(parts.join(" · "), size.tiny, "regular") > room) parts.pop();
  const kept = parts.join(" · ");
  return textWidth(kept, size.tiny, "regular") > room ? "" : kept;
}
