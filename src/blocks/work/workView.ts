import type { Mark, Pen, Point } from "../../drawing/drawing.js";
import { line, polyline } from "../../drawing/shapes.js";
import { between, diameterAt, greatest, HAIR, type Outline } from "../../part/outline.js";
import { endsOf, type Surface, type Workpiece } from "../../part/workpiece.js";
import { depthOnDiameter, threadNamed } from "../../thread/thread.js";
import { breakLine, crossed, hatching, thinPen } from "../shared/sectionMarks.js";

/** Where the work lies on paper: its free end on the right, as one stands before the lathe. */
export type View = {
  /** Of the place 0 along the work. */
  readonly x: number;
  /** Of the axis. */
  readonly y: number;
  /** mm on paper for one of the work. */
  readonly scale: number;
};

export const across = ({ x, scale }: View, z: number): number => x - z * scale;
export const above = ({ y, scale }: View, diameter: number): number => y - (diameter / 2) * scale;
export const below = ({ y, scale }: View, diameter: number): number => y + (diameter / 2) * scale;

type Looks = {
  readonly outline: Pen;
  readonly thin: Pen;
  /** Between the lines of hatching, on paper. */
  readonly gap: number;
  /** The far end is broken off. */
  readonly broken: boolean;
  /** Nothing is known of the outside: it is broken off as well. */
  readonly block?: boolean;
};

/** The work from the side; where it has a bore, the upper half is cut open. */
export function workView(work: Workpiece, view: View, looks: Looks): Mark[] {
  const { outline, thin, gap, broken, block } = looks;
  if (work.outside.length === 0) return [];
  const { from, to } = endsOf(work);
  const open = between(work.bore, from, to).length > 0;
  const upper = edge(work.outside, (diameter) => above(view, diameter), view);
  const lower = edge(work.outside, (diameter) => below(view, diameter), view).reverse();
  const marks: Mark[] = [];
  if (open) marks.push(...hatching(cutMetal(work, view), gap, -1, thin));
  for (const surface of work.surfaces) marks.push(...surfaceMarks(surface, work, view, open, looks));
  for (const z of corners(work.outside)) {
    const most = Math.max(diameterAt(work.outside, z, -1), diameterAt(work.outside, z, 1));
    marks.push(
      line(
        { x: across(view, z), y: open ? view.y : above(view, most) },
        { x: across(view, z), y: below(view, most) },
        outline,
      ),
    );
  }
  if (open) marks.push(...boreMarks(work, view, outline));
  const ends = (z: number, side: 1 | -1): [Point, Point] => {
    const [x, diameter] = [across(view, z), diameterAt(work.outside, z, side)];
    return [
      { x, y: above(view, diameter) },
      { x, y: below(view, diameter) },
    ];
  };
  if (block) {
    const [top, bottom] = ends(from, 1);
    const [farTop, farBottom] = ends(to, -1);
    marks.push(line(top, bottom, outline));
    marks.push(breakLine(top, farTop, thin), breakLine(farTop, farBottom, thin), breakLine(farBottom, bottom, thin));
  } else if (broken) {
    marks.push(polyline([...upper].reverse().concat([...lower].reverse()), { pen: outline }));
    marks.push(breakLine(...ends(to, -1), thin));
  } else marks.push(polyline([...upper, ...lower], { pen: outline }, true));
  return marks;
}

/** Along one side of an outline, from the free end. */
const edge = (outline: Outline, y: (diameter: number) => number, view: View): Point[] =>
  outline.flatMap(({ from, to, start, end }, index) => {
    const last = outline[index - 1];
    const first = { x: across(view, from), y: y(start) };
    const goesOn = last !== undefined && Math.abs(last.to - from) <= HAIR && Math.abs(last.end - start) <= 1e-9;
    return [...(goesOn ? [] : [first]), { x: across(view, to), y: y(end) }];
  });

/** Places between the ends at which the outline bends. */
export function corners(outline: Outline): number[] {
  const places = outline.flatMap(({ from, to }) => [from, to]).sort((a, b) => a - b);
  const [first = 0, last = 0] = [places[0], places.at(-1)];
  return places.filter(
    (z, index) => z > first + HAIR && z < last - HAIR && (index === 0 || z - (places[index - 1] ?? 0) > HAIR),
  );
}

/** The upper half's metal: over the outside towards the chuck, back along the bore. */
function cutMetal({ outside, bore }: Workpiece, view: View): Point[] {
  const inner = solidAndBore(bore, outside[0]?.from ?? 0, outside.at(-1)?.to ?? 0);
  return [
    ...edge(outside, (diameter) => above(view, diameter), view),
    ...edge(inner, (diameter) => above(view, diameter), view).reverse(),
  ];
}

/** The bore with a stretch of no diameter wherever there is none. */
function solidAndBore(bore: Outline, from: number, to: number): Outline {
  const result: { from: number; to: number; start: number; end: number }[] = [];
  let at = from;
  for (const stretch of between(bore, from, to)) {
    if (stretch.from > at + HAIR) result.push({ from: at, to: stretch.from, start: 0, end: 0 });
    result.push(stretch);
    at = stretch.to;
  }
  if (to > at + HAIR) result.push({ from: at, to, start: 0, end: 0 });
  return result;
}

/** The bore's edges, and those one sees behind the cut. */
function boreMarks({ outside, bore }: Workpiece, view: View, outline: Pen): Mark[] {
  const [from, to] = [outside[0]?.from ?? 0, outside.at(-1)?.to ?? 0];
  const shown = between(bore, from, to);
  const edges = shown.map(({ from, to, start, end }) =>
    line({ x: across(view, from), y: above(view, start) }, { x: across(view, to), y: above(view, end) }, outline),
  );
  const places = [...new Set(shown.flatMap(({ from, to }) => [from, to]))].filter(
    (z) => z > from + HAIR && z < to - HAIR,
  );
  const behind = places.flatMap((z) => {
    const most = Math.max(diameterAt(shown, z, -1), diameterAt(shown, z, 1));
    return most * view.scale < 0.02
      ? []
      : [line({ x: across(view, z), y: view.y }, { x: across(view, z), y: above(view, most) }, outline)];
  });
  return [...edges, ...behind];
}

/** Threads after ISO 6410: crests thick, roots thin, and a thick line where the thread ends. */
function surfaceMarks(
  { kind, side, from, to, name }: Surface,
  work: Workpiece,
  view: View,
  open: boolean,
  { outline, thin, gap }: Looks,
): Mark[] {
  const inside = side === "inside";
  const stretches = between(inside ? work.bore : work.outside, from, to);
  if (kind === "knurl")
    return stretches.flatMap(({ from, to, start, end }) => {
      const [right, left] = [across(view, from), across(view, to)];
      return crossed(
        [
          { x: right, y: open ? view.y : above(view, start) },
          { x: right, y: below(view, start) },
          { x: left, y: below(view, end) },
          { x: left, y: open ? view.y : above(view, end) },
        ],
        gap,
        thin,
      );
    });
  if (inside && !open) return [];
  const thread = threadNamed(name);
  const depth = thread === undefined ? 0 : depthOnDiameter[thread.system] * thread.pitch;
  // Nearer than that the two lines run into each other on paper.
  const apart = Math.max(depth, 1.4 / view.scale);
  // A thread that the wall is too thin for is drawn as far as there is metal.
  const metal = greatest(work.outside, from, to);
  const root = (diameter: number) =>
    inside
      ? Math.max(diameter, Math.min(metal, Math.max(thread?.major ?? 0, diameter + 1.4 / view.scale)))
      : Math.max(diameter * 0.6, diameter - apart);
  const roots = stretches.flatMap(({ from, to, start, end }) =>
    (inside ? [above] : [above, below]).map((side) =>
      line(
        { x: across(view, from), y: side(view, root(start)) },
        { x: across(view, to), y: side(view, root(end)) },
        thin,
      ),
    ),
  );
  const last = stretches.at(-1);
  const { from: free, to: far } = endsOf(work);
  // Turned round, a thread runs out at its other end.
  const runsOut = Math.abs(from - free) > HAIR && Math.abs(to - far) <= HAIR ? from : to;
  const at = runsOut === from ? stretches[0]?.start : last?.end;
  if (at === undefined || runsOut >= far - HAIR || runsOut <= free + HAIR) return roots;
  const x = across(view, runsOut);
  if (inside) return [...roots, line({ x, y: above(view, at) }, { x, y: above(view, root(at)) }, outline)];
  return [
    ...roots,
    ...(open ? [line({ x, y: above(view, root(at)) }, { x, y: above(view, at) }, outline)] : []),
    line({ x, y: open ? view.y : above(view, at) }, { x, y: below(view, at) }, outline),
  ];
}

/** Jaws above and below, where they begin. `reach` and `height` on paper. */
export function jawMarks(
  view: View,
  z: number,
  diameter: number,
  reach: number,
  height: number,
  look: Pen = thinPen,
): Mark[] {
  const x = across(view, z);
  return [-1, 1].map((side) => {
    const y = view.y + (side * diameter * view.scale) / 2;
    return polyline(
      [
        { x: x - reach, y },
        { x, y },
        { x, y: y + side * height * 0.6 },
        { x: x - reach * 0.4, y: y + side * height * 0.6 },
        { x: x - reach * 0.4, y: y + side * height },
        { x: x - reach, y: y + side * height },
      ],
      { pen: look },
    );
  });
}

/** A carrier on the work, where it is driven between centres. */
export function driverMarks(view: View, z: number, diameter: number, look: Pen = thinPen): Mark[] {
  const x = across(view, z);
  return [-1, 1].map((side) => {
    const y = view.y + (side * diameter * view.scale) / 2;
    return polyline(
      [
        { x, y },
        { x, y: y + side * 2 },
        { x: x - 3, y: y + side * 2 },
        { x: x - 3, y },
      ],
      { pen: look },
    );
  });
}

/** A centre of 60° with its tip at a place on the axis. */
export function centreMarks(x: number, y: number, size: number, facing: 1 | -1, look: Pen = thinPen): Mark[] {
  const half = size * Math.tan(Math.PI / 6);
  const [base, end] = [x + facing * size, x + facing * size * 1.5];
  return [
    polyline(
      [
        { x: end, y: y - half },
        { x: base, y: y - half },
        { x, y },
        { x: base, y: y + half },
        { x: end, y: y + half },
      ],
      { pen: look },
    ),
    line({ x: base, y: y - half }, { x: base, y: y + half }, look),
  ];
}
