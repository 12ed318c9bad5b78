import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { group, line, polyline, rectangle } from "../../drawing/shapes.js";
import { isHolding } from "../../job/job.js";
import { between, cylinder, diameterAt, greatest, HAIR, moved, type Outline } from "../../part/outline.js";
import { endsOf, type Workpiece } from "../../part/workpiece.js";
import { isBlock } from "../../plan/block.js";
import type { Stage } from "../../plan/stage.js";
import { arrow, arrowHead, breakLine } from "../shared/sectionMarks.js";
import { axisLine, objectLine, pen, weight } from "../shared/style.js";
import { shownBlock } from "./partFeatures.js";
import { walled } from "./partFrame.js";
import { above, across, below, centreMarks, corners, driverMarks, jawMarks, type View, workView } from "./workView.js";

export type PictureRoom = { readonly width: number; readonly height: number };

const outline = objectLine;
const thin = axisLine;
const axis = pen(weight.axis, "black", [3, 0.6, 0.4, 0.6]);
const feed = objectLine;
const JAW = { reach: 3.6, height: 2.2 } as const;
/** Room beside and under the work for an arrow. */
const BESIDE = 6;
const UNDER = 3.4;
const HEAD = 1.9;

/** The work before one step, what the step takes off it pale, and which way the tool is fed: as seen from above, the tool coming
 *  from below on paper. */
export function stepPicture(stage: Stage, { width, height }: PictureRoom): Drawing {
  const block = isBlock(stage.before);
  const after = block ? shownBlock(stage.shaping.after) : walled(stage.shaping.after);
  const before: Workpiece = block ? { ...stage.before, outside: after.outside } : walled(stage.before);
  const ends = endsOf(before);
  const widest = greatest(before.outside, ends.from, ends.to);
  // A step that reaches into the jaws still leaves something to be seen.
  const jaws =
    block || stage.holding.loose
      ? undefined
      : Math.max(Math.min(stage.holding.jaws, ends.to), Math.min(ends.to, ends.from + 0.2 * widest));
  const stub = jaws === undefined ? 0 : JAW.reach;
  const room = { width: width - BESIDE - stub - 1.6, height: height - 2 * UNDER };
  const { held, gap } = shortened(stage, jaws ?? ends.to, (room.width / room.height) * widest, widest);
  const drawn = held - ends.from;
  if (!(drawn > 0 && widest > 0 && room.width > 0 && room.height > 0)) return { width, height, marks: [] };
  const scale = Math.min(room.width / drawn, room.height / widest);
  const view: View = { x: width - BESIDE - (room.width - drawn * scale) / 2 + ends.from * scale, y: height / 2, scale };
  // How much of the bar is left out.
  const out = (jaws ?? held) - held;
  const to = jaws === undefined ? held : Math.min(ends.to - out, held + stub / scale);
  const nearer = (work: Workpiece) => (gap === undefined ? work : without(work, (gap.from + gap.to) / 2, out));
  const [was, left] = [cutOff(nearer(before), to), cutOff(nearer(after), to)];
  const marks: Mark[] = [
    ...removed(was, left, view).map((points) => polyline(points, { fill: "pale", pen: thin }, true)),
    ...solid(left).flatMap((work) => {
      const broken = to < ends.to - out - HAIR && Math.abs(endsOf(work).to - to) < HAIR;
      return workView(work, view, { outline, thin, gap: 0.9, broken, block });
    }),
    line({ x: across(view, ends.from) + 1, y: view.y }, { x: across(view, to) - 1, y: view.y }, axis),
    ...(gap === undefined ? [] : gapMarks(view, gap, widest)),
    ...(jaws === undefined ? [] : holdingMarks(stage, view, held, was)),
    ...feedMarks(stage, view, was, left),
  ];
  return { width, height, marks: [group({ x: 0, y: 0 }, marks, { name: "step" })] };
}

type Gap = { readonly from: number; readonly to: number };

/** Where a bar stands out far beyond what is cut, it is broken off between there and the jaws. `wanted`: as long as fills the picture. */
function shortened(
  { step, shaping, before }: Stage,
  jaws: number,
  wanted: number,
  widest: number,
): { readonly held: number; readonly gap?: Gap } {
  const { from } = endsOf(before);
  const cutTo = isHolding(step) ? from : shaping.to;
  const short = Math.max(cutTo + widest * 0.6, from + wanted);
  if (jaws - short < 0.15 * (jaws - from)) return { held: jaws };
  return { held: short, gap: { from: short - widest * 0.36, to: short - widest * 0.24 } };
}

/** With so much left out from a place on, and what follows moved up to it. */
function without({ outside, bore, surfaces }: Workpiece, at: number, length: number): Workpiece {
  const joinedUp = (outline: Outline): Outline => [
    ...between(outline, Number.NEGATIVE_INFINITY, at),
    ...moved(between(outline, at + length, Number.POSITIVE_INFINITY), -length),
  ];
  return { outside: joinedUp(outside), bore: joinedUp(bore), surfaces: surfaces.filter(({ to }) => to <= at) };
}

/** Only what lies nearer to the free end than `to`. */
const cutOff = ({ outside, bore, surfaces }: Workpiece, to: number): Workpiece => ({
  outside: between(outside, Number.NEGATIVE_INFINITY, to),
  bore: between(bore, Number.NEGATIVE_INFINITY, to),
  surfaces: surfaces.flatMap((surface) => (surface.from < to ? [{ ...surface, to: Math.min(surface.to, to) }] : [])),
});

/** Each piece by itself where a blade went through to the axis. */
function solid({ outside, bore, surfaces }: Workpiece): Workpiece[] {
  const pieces: Outline[] = [];
  let piece: Outline = [];
  for (const stretch of [...outside, cylinder(0, 0, 0)]) {
    if (stretch.start > HAIR || stretch.end > HAIR) piece = [...piece, stretch];
    else {
      if (piece.length > 0) pieces.push(piece);
      piece = [];
    }
  }
  return pieces.map((own) => {
    const [from, to] = [own[0]?.from ?? 0, own.at(-1)?.to ?? 0];
    return {
      outside: own,
      bore: between(bore, from, to),
      surfaces: surfaces.filter((surface) => surface.from < to && surface.to > from),
    };
  });
}

/** The metal that a step takes off, in the halves where it is seen. */
function removed(was: Workpiece, left: Workpiece, view: View): Point[][] {
  const { from, to } = endsOf(was);
  const places = [was.outside, left.outside, was.bore, left.bore].flatMap((one) => [
    ...corners(one),
    ...one.flatMap((stretch) => [stretch.from, stretch.to]),
  ]);
  const cuts = [...new Set([from, ...places, to])].filter((z) => z >= from && z <= to).sort((a, b) => a - b);
  const open = left.bore.length > 0;
  return [
    ...runs(cuts, was.outside, left.outside, (diameter) => below(view, diameter), view),
    ...runs(cuts, was.outside, left.outside, (diameter) => above(view, diameter), view),
    ...(open ? runs(cuts, left.bore, was.bore, (diameter) => above(view, diameter), view) : []),
  ];
}

/** Wherever one outline lies over the other, what lies between them. */
function runs(
  cuts: readonly number[],
  outer: Outline,
  inner: Outline,
  y: (diameter: number) => number,
  view: View,
): Point[][] {
  const shapes: Point[][] = [];
  let over: Point[] = [];
  let under: Point[] = [];
  const close = () => {
    if (over.length > 0) shapes.push([...over, ...under.reverse()]);
    [over, under] = [[], []];
  };
  for (const [index, from] of cuts.entries()) {
    const to = cuts[index + 1];
    if (to === undefined || to - from <= HAIR) continue;
    const middle = (from + to) / 2;
    if (diameterAt(outer, middle) <= diameterAt(inner, middle) + 1e-9) {
      close();
      continue;
    }
    const at = (outline: Outline, z: number, side: 1 | -1): Point => ({
      x: across(view, z),
      y: y(diameterAt(outline, z, side)),
    });
    over.push(at(outer, from, 1), at(outer, to, -1));
    under.push(at(inner, from, 1), at(inner, to, -1));
  }
  close();
  return shapes;
}

function gapMarks(view: View, gap: Gap, widest: number): Mark[] {
  const [left, right] = [across(view, gap.to), across(view, gap.from)];
  const [top, bottom] = [above(view, widest), below(view, widest)];
  const edge = (x: number) => breakLine({ x, y: top }, { x, y: bottom }, thin);
  const blank = rectangle({ x: left, y: top - 0.4 }, right - left, bottom - top + 0.8, { fill: "white" });
  return [blank, edge(left), edge(right)];
}

function holdingMarks({ holding }: Stage, view: View, jaws: number, was: Workpiece): Mark[] {
  const diameter = diameterAt(was.outside, jaws, 1) || diameterAt(was.outside, jaws, -1);
  return [
    ...(holding.held === "between centres"
      ? driverMarks(view, jaws, diameter, thin)
      : jawMarks(view, jaws, diameter, JAW.reach, JAW.height, thin)),
    ...(holding.held === "chuck" ? [] : centreMarks(across(view, endsOf(was).from), view.y, 2.6, 1, thin)),
  ];
}

/** Which way the tool goes, or the work where it is held anew. */
function feedMarks({ step, shaping }: Stage, view: View, was: Workpiece, left: Workpiece): Mark[] {
  const end = across(view, endsOf(was).from);
  const along = (from: Point, to: Point) => arrow(from, to, feed, HEAD);
  const inwards = (y: number) => along({ x: end + BESIDE - 0.8, y }, { x: end + 0.7, y });
  const wide = (from: number, to: number) => greatest(was.outside, from, to);
  switch (step.do) {
    case "turn":
    case "shoulder":
    case "knurl": {
      const y = below(view, wide(shaping.from, shaping.to)) + 1.7;
      const [from, to] = [across(view, shaping.from), across(view, Math.min(shaping.to, endsOf(was).to))];
      return along({ x: Math.max(from, to + 3.5), y }, { x: to, y });
    }
    case "taper": {
      const [cut] = between(shaping.outside, Number.NEGATIVE_INFINITY, endsOf(was).to);
      if (cut === undefined) return [];
      // Outside the work a taper cuts nothing.
      const most = wide(cut.from, cut.to);
      const [start, finish] = [Math.min(cut.start, most), Math.min(cut.end, most)];
      const clear = ((most - Math.max(start, finish)) / 2) * view.scale + 1.7;
      return along(
        { x: across(view, cut.from), y: below(view, start) + clear },
        { x: across(view, cut.to), y: below(view, finish) + clear },
      );
    }
    case "groove":
    case "part": {
      // A blade set against the jaws, or beyond them, is still seen.
      const x = Math.max(HEAD, across(view, (shaping.from + shaping.to) / 2));
      const y = below(view, wide(shaping.from, shaping.to));
      return along({ x, y: y + UNDER - 0.3 }, { x, y: y + 0.3 });
    }
    case "face": {
      const x = end + 1.5;
      return along({ x, y: below(view, wide(shaping.from, shaping.to)) + 1.5 }, { x, y: view.y + 0.8 });
    }
    case "chamfer": {
      const [cut] = shaping.outside;
      if (cut === undefined) return inwards(view.y);
      const tip = { x: across(view, (cut.from + cut.to) / 2), y: below(view, (cut.start + cut.end) / 2) };
      const from = cut.start < cut.end ? 1 : -1;
      return along({ x: Math.max(0.3, tip.x + from * 2.8), y: tip.y + 2.8 }, { x: tip.x + from * 0.4, y: tip.y + 0.4 });
    }
    case "bore":
      // Beside the wall that it cuts.
      return inwards(Math.min(view.y, above(view, diameterAt(left.bore, Math.max(step.at, endsOf(left).from), 1)) + 1));
    case "hold":
      return along({ x: end + 0.7, y: view.y }, { x: end + BESIDE - 0.6, y: view.y });
    case "turn round": {
      const [centre, radius, sweep] = [{ x: end + 1.2, y: view.y }, Math.min(3.8, view.y - 0.5), 1.15];
      const tip = { x: centre.x + radius * Math.cos(sweep), y: centre.y + radius * Math.sin(sweep) };
      // Its head is straight: along the chord of its own length.
      const lean = sweep + Math.PI / 2 - HEAD / radius / 2;
      return [
        {
          kind: "path",
          segments: [{ to: "arc", centre, radius, start: -sweep, end: sweep - HEAD / radius / 1.5 }],
          pen: feed,
        },
        arrowHead(tip, Math.cos(lean), Math.sin(lean), HEAD),
      ];
    }
    default:
      return inwards(view.y);
  }
}
