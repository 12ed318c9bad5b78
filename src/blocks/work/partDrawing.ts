import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { circle, group, line, polyline, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { between, diameterAt, greatest } from "../../part/outline.js";
import { endsOf, type Workpiece } from "../../part/workpiece.js";
import type { Stage } from "../../plan/stage.js";
import { size } from "../shared/style.js";
import { type Label, type Placed, placeLabels } from "./callouts.js";
import { type Laid, layLengths } from "./lengthLines.js";
import { type Feature, type Length, type Part, partOf } from "./partFeatures.js";
import { arrowHead, axisPen, breakLine, outlinePen, stockPen, thinPen } from "./sectionMarks.js";
import { above, across, below, centreMarks, driverMarks, jawMarks, type View, workView } from "./workView.js";

export type PartDrawing = {
  /** The whole job, in the order of work. */
  readonly stages: readonly Stage[];
  /** Of each stage on the plan; undefined where it has none. */
  readonly numbers: readonly (number | undefined)[];
  /** mm in words. */
  readonly show: (mm: number) => string;
  /** Left out behind figures and said once, when given: "mm". */
  readonly unit?: string;
  readonly width: number;
  /** The most it may take; the drawing says what it takes. Where not even its words fit, it grows beyond. */
  readonly height: number;
};

/** ISO 5455, largest first; more than ten times shows nothing that is not seen then. */
const scales = [10, 5, 2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50, 1 / 100, 1 / 200, 1 / 500, 1 / 1000];

const FIGURE = size.body;
const NUMBER = size.small;
/** Between rows of callouts, and between lines of a list. */
const ROW = 5.2;
/** Between parallel dimension lines. */
const LEVEL = 4.8;
/** From the stock to the first dimension line. */
const FIRST_LEVEL = 8.5;
const JAW = { reach: 8, height: 4.5 } as const;
/** Beside the stock's end, for a centre and a leader. */
const BESIDE = 6;

/** How many rows callouts may take, tried in this order where height is scarce. */
const rowLimits = [7, 4, 2];
/** Dimension lines under each other; more are a wall of lines that nobody reads. */
const MOST_LEVELS = 14;
/** What the next smaller scale is worth, in sizes that stand in the list for it. */
const SCALE_COST = 3;

/** A turned part as its drawing: to scale, its free end on the right, the stock around it, every size once, and the number of the step
 *  that makes each surface. What finds no room in it stands in a list below. */
export function partDrawing({ stages, numbers, show, unit, width, height }: PartDrawing): Drawing {
  const words = (mm: number) => (unit === undefined ? show(mm) : show(mm).replace(new RegExp(` ${unit}$`), ""));
  const part = partOf(stages, words);
  let best: { sheet: Sheet; cost: number } | undefined;
  let lowest: Sheet | undefined;
  for (const [smaller, scale] of scales.entries()) {
    if (best !== undefined && SCALE_COST * smaller >= best.cost) break;
    const laid = layOut(scale, part, stages, width);
    if (laid === undefined) continue;
    for (const limit of rowLimits) {
      const upper = arranged(part, numbers, laid.view, laid.seen, width, limit);
      for (const levels of levelsToTry(part.lengths.length)) {
        const sheet = sheetOf(part, laid, upper, levels, width);
        if (lowest === undefined || sheet.height < lowest.height - 1e-9) lowest = sheet;
        const cost = sheet.rows.length + SCALE_COST * smaller;
        if (sheet.height <= height + 1e-9 && (best === undefined || cost < best.cost)) best = { sheet, cost };
        if (sheet.height <= height + 1e-9) break;
      }
    }
  }
  const chosen = best?.sheet ?? lowest;
  return chosen === undefined ? { width, height: 0, marks: [] } : drawn(part, stages, chosen, unit, width);
}

/** All numbers of levels, the most first; where there are many lengths only some of them. */
function levelsToTry(lengths: number): readonly number[] {
  const most = Math.min(lengths, MOST_LEVELS);
  const every = Array.from({ length: most + 1 }, (_, index) => most - index);
  return lengths > MOST_LEVELS ? every.filter((levels) => levels % 4 === most % 4 || levels === 0) : every;
}

/** Everything with its place at one scale. */
type Sheet = {
  readonly laid: Layout;
  readonly upper: Upper;
  readonly lines: readonly (Laid | undefined)[];
  /** The list of what found no room. */
  readonly rows: readonly ListRow[];
  /** Where rows of callouts end and leaders fan out, and from where they go straight down. */
  readonly fan: { readonly from: number; readonly to: number };
  /** Of the axis, and under the last dimension line. */
  readonly axis: number;
  readonly bottom: number;
  readonly height: number;
};

/** One surface with its words, as it is to be drawn. */
type Callout = {
  readonly feature: Feature;
  readonly number?: number;
  /** Stand beside the number on the drawing; else in the list. */
  readonly shown: boolean;
  /** Where its leader ends, on paper, and where that begins to go straight down. */
  readonly x: number;
  readonly y: (x: number) => number;
  /** Between these its surface can be reached. */
  readonly least: number;
  readonly most: number;
  /** Of a leader to a face: where that lies. */
  readonly face?: number;
};

function sheetOf(part: Part, laid: Layout, upper: Upper, levels: number, width: number): Sheet {
  const { view, reach, radius } = laid;
  const { callouts, places, list } = upper;
  const aside = Math.max(0, ...callouts.map(({ x }, index) => Math.abs((places[index]?.x ?? x) - x)));
  const from = Math.max(0, ...places.map(({ row }) => row + 1)) * ROW;
  const to = from + (callouts.length === 0 ? 1 : Math.min(12, Math.max(1.5, 0.4 * aside)));
  const axis = to + radius + (reach === undefined ? 2 : JAW.height + 1);
  const spans = part.lengths.map(({ origin, place, words }) => ({
    from: across(view, origin),
    to: across(view, place),
    width: textWidth(words, FIGURE, "regular"),
  }));
  // So many never find room together; the others are listed.
  const lines = layLengths(spans.slice(0, 2 * MOST_LEVELS), width, levels);
  const used = Math.max(-1, ...lines.map((found) => found?.level ?? -1));
  const bottom = axis + radius + (used < 0 ? JAW.height + 1 : FIRST_LEVEL + used * LEVEL + 1.5);
  const without = part.lengths.filter((_, index) => lines[index] === undefined);
  const rows = shortened([...list, ...without.map((length): ListRow => ({ words: lengthRow(length) }))]);
  const height = bottom + ROW + (rows.length === 0 ? 0 : listMarks(rows, 0, width).height + 1);
  return { laid, upper, lines, rows, fan: { from, to }, axis, bottom, height };
}

/** A list so long that it would push the drawing off its page says how much it leaves out: every size stands at its step. */
const shortened = (rows: readonly ListRow[]): readonly ListRow[] =>
  rows.length <= LONGEST_LIST
    ? rows
    : [...rows.slice(0, LONGEST_LIST - 1), { words: `and ${rows.length - LONGEST_LIST + 1} more: see the steps` }];

const LONGEST_LIST = 60;

function drawn(
  part: Part,
  stages: readonly Stage[],
  { laid, upper, lines, rows, fan, axis, bottom, height }: Sheet,
  unit: string | undefined,
  width: number,
): Drawing {
  const view: View = { ...laid.view, y: axis };
  return {
    width,
    height,
    marks: [
      group({ x: 0, y: 0 }, heldMarks(part, stages, view, laid), { name: "stock" }),
      group({ x: 0, y: 0 }, partMarks(part, view, laid), { name: "part" }),
      group({ x: 0, y: 0 }, lengthMarks(part, lines, view, axis + laid.radius), { name: "lengths" }),
      group({ x: 0, y: 0 }, calloutMarks(upper.callouts, upper.places, view, fan.from, fan.to), { name: "callouts" }),
      text(footNote(view.scale, unit), { x: 0, y: bottom + ROW - 1.2 }, { size: size.small }),
      ...listMarks(rows, bottom + ROW + 1, width).marks,
    ],
  };
}

type Layout = {
  readonly view: View;
  /** Of what is drawn, on paper. */
  readonly radius: number;
  /** Where the work is drawn to, along it. */
  readonly to: number;
  /** So far its surfaces are to be seen. */
  readonly seen: number;
  /** Where jaws begin, as drawn; absent where there are none. */
  readonly reach?: number;
  /** Between these places the bar is left out. */
  readonly gap?: { readonly from: number; readonly to: number };
};

/** Room for the part, its stock and jaws at that scale; undefined where it is too wide. */
function layOut(scale: number, part: Part, stages: readonly Stage[], width: number): Layout | undefined {
  const finished = endsOf(part.finished);
  const stock = endsOf(part.stock);
  const free = Math.min(finished.from, part.block ? finished.from : stock.from);
  const held = part.block ? undefined : stages[0]?.holding.jaws;
  const end = part.bounded || held === undefined ? finished.to : Math.min(finished.to, lastCut(part) ?? finished.to);
  const widest = Math.max(
    greatest(part.finished.outside, finished.from, finished.to),
    part.block ? 0 : greatest(part.stock.outside, stock.from, stock.to),
  );
  const radius = (widest / 2) * scale;
  const place = (left: number): View | undefined => {
    const drawn = (left - free) * scale;
    const spare = width - drawn - 2 * BESIDE;
    return spare < 0 ? undefined : { x: width - BESIDE - spare / 2 + free * scale, y: 0, scale };
  };
  if (held === undefined) {
    const view = place(end);
    return view && { view, radius, to: end, seen: end };
  }
  const stub = JAW.reach / scale;
  const beyond = held - end;
  const near = 14 / scale;
  const full = farEnd(Math.max(held + stub, end + 3 / scale), part.stock, scale, stages[0]?.openEnded ?? true);
  const whole = place(full);
  const seen = (to: number) => (part.bounded ? to : Math.min(to, Math.max(held, end)));
  if (whole !== undefined && beyond * scale < 40)
    return { view: whole, radius, to: full, seen: seen(full), reach: held };
  if (beyond <= near) return whole && { view: whole, radius, to: full, seen: seen(full), reach: held };
  // Nothing happens between here and the jaws: the bar is broken off there and goes on nearer.
  const short = end + near + stub;
  const view = place(short);
  const gap = { from: end + near * 0.5, to: end + near * 0.62 };
  return view && { view, radius, to: short, seen: seen(gap.from), reach: end + near, gap };
}

/** A blank is drawn to its end where that is not much further. */
function farEnd(to: number, stock: Workpiece, scale: number, openEnded: boolean): number {
  const end = endsOf(stock).to;
  return !openEnded && (end - to) * scale < 12 ? end : to;
}

/** Where the last that is said of an unbounded part lies. */
function lastCut({ features, lengths, finished, stock }: Part): number | undefined {
  const bar = greatest(stock.outside, 0, Number.POSITIVE_INFINITY);
  const shaped = [
    ...finished.outside.filter(({ start, end }) => Math.min(start, end) < bar - 1e-9),
    ...finished.bore.filter(({ start }) => start !== stock.bore[0]?.start),
  ];
  const ends = [
    ...shaped.map(({ to }) => to),
    ...lengths.map(({ place }) => place),
    ...features.filter(({ stage }) => stage !== undefined).map(({ to }) => to),
  ];
  return ends.length === 0 ? undefined : Math.max(...ends) + bar / 3;
}

/** Stock, jaws and centres: all thin. */
function heldMarks(part: Part, stages: readonly Stage[], view: View, { to, reach, gap }: Layout): Mark[] {
  const { from } = endsOf(part.stock);
  const marks: Mark[] = [];
  const right = across(view, Math.min(from, endsOf(part.finished).from));
  const left = across(view, to);
  marks.push(line({ x: right + 4, y: view.y }, { x: left - 2.5, y: view.y }, axisPen));
  if (part.block) return marks;
  const stock = part.stock.outside[0]?.start ?? 0;
  const far = Math.min(to, endsOf(part.stock).to);
  const [top, bottom] = [above(view, stock), below(view, stock)];
  const known = endsOf(part.stock).to <= to + 1e-9 && !stages[0]?.openEnded;
  const parts = gap === undefined ? [[from, far] as const] : [[from, gap.from] as const, [gap.to, far] as const];
  for (const [begin, end] of parts)
    for (const y of [top, bottom])
      marks.push(line({ x: across(view, begin), y }, { x: across(view, end), y }, stockPen));
  marks.push(line({ x: across(view, from), y: top }, { x: across(view, from), y: bottom }, stockPen));
  for (const z of gap === undefined ? [] : [gap.from, gap.to])
    marks.push(breakLine({ x: across(view, z), y: top }, { x: across(view, z), y: bottom }));
  const [farTop, farBottom] = [
    { x: across(view, far), y: top },
    { x: across(view, far), y: bottom },
  ];
  // What is finished to there has its own end.
  if (part.bounded) marks.push(known ? line(farTop, farBottom, stockPen) : breakLine(farTop, farBottom));
  const held = stages[0]?.holding.held;
  if (reach !== undefined && held !== "between centres")
    marks.push(...jawMarks(view, reach, stock, JAW.reach, JAW.height));
  if (reach !== undefined && held === "between centres") marks.push(...driverMarks(view, reach, stock));
  if (held !== "chuck" && held !== undefined) marks.push(...centreMarks(across(view, from), view.y, 4, 1));
  return marks;
}

function partMarks(part: Part, view: View, { to, gap }: Layout): Mark[] {
  const { finished, bounded, block } = part;
  const end = gap !== undefined && !bounded ? gap.from : to;
  const shown: Workpiece =
    bounded || block
      ? finished
      : {
          outside: between(finished.outside, Number.NEGATIVE_INFINITY, end),
          bore: between(finished.bore, Number.NEGATIVE_INFINITY, end),
          surfaces: finished.surfaces,
        };
  return workView(shown, view, { outline: outlinePen, thin: thinPen, gap: 1.5, broken: !bounded, block });
}

type ListRow = { readonly number?: number; readonly words: string };

const lengthRow = ({ words, from }: Length): string => `${words} from the ${from === "first" ? "free" : "other"} end`;
const featureRow = ({ words, where }: Feature): string => (where === "" ? words : `${words}, ${where}`);

/** What stands above the part, and what found no room there. */
type Upper = {
  readonly callouts: readonly Callout[];
  readonly places: readonly Placed[];
  readonly list: readonly ListRow[];
};

/** A step makes one feature, and the bar one outside and one inside. */
const nameOf = ({ stage, kind }: Feature): string => `${stage ?? "bar"} ${kind}`;

/** Callouts with their places; what has no room goes into the list, first its words, then its number too. */
function arranged(
  part: Part,
  numbers: PartDrawing["numbers"],
  view: View,
  end: number,
  width: number,
  limit: number,
): Upper {
  let callouts = aimed(part, numbers, view, end);
  const pointed = new Set(callouts.map(({ feature }) => nameOf(feature)));
  const list: ListRow[] = numbered(part, numbers)
    .filter(({ feature }) => !pointed.has(nameOf(feature)) && feature.words !== "")
    .map(({ feature, number }) => ({ ...(number !== undefined && { number }), words: featureRow(feature) }));
  for (;;) {
    const places = placeLabels(callouts.map(labelOf), width, limit);
    if (places !== undefined) return { callouts: straightened(callouts, places), places, list };
    // Of a crowd a share goes at once: one by one would take for ever.
    const share = Math.max(1, Math.ceil((callouts.length - A_CROWD) / 3));
    const longest = [...callouts].sort((a, b) => reachOf(b) - reachOf(a)).slice(0, share);
    if (longest.length === 0) return { callouts: [], places: [], list };
    for (const callout of longest) {
      const { number, feature, shown } = callout;
      if (shown && feature.words !== "")
        list.push({ ...(number !== undefined && { number }), words: featureRow(feature) });
      callouts =
        shown && feature.words !== "" && number !== undefined
          ? callouts.map((one) => (one === callout ? { ...one, shown: false } : one))
          : callouts.filter((one) => one !== callout);
    }
  }
}

/** More labels than these have no room over any drawing. */
const A_CROWD = 24;

function numbered(part: Part, numbers: PartDrawing["numbers"]): { feature: Feature; number?: number }[] {
  return part.features.flatMap((feature) => {
    const number = feature.stage === undefined ? undefined : numbers[feature.stage];
    return number === undefined && feature.words === "" ? [] : [{ feature, ...(number !== undefined && { number }) }];
  });
}

/** Two leaders are drawn no closer than this, and none so close to an edge. */
const APART = 1.4;
const FROM_EDGE = 0.5;

/** Each feature's leader to a place of its own; the narrow surfaces choose first. What lies beyond `end` is not drawn. */
function aimed(part: Part, numbers: PartDrawing["numbers"], view: View, end: number): Callout[] {
  const taken: number[] = [];
  const ends = endsOf(part.finished);
  const candidates = numbered(part, numbers)
    .map(({ feature, ...rest }) => ({
      ...rest,
      feature: { ...feature, to: Math.min(feature.to, Math.max(end, feature.from)) },
    }))
    .sort((a, b) => a.feature.to - a.feature.from - (b.feature.to - b.feature.from));
  const found = candidates.flatMap(({ feature, number }): Callout[] => {
    const common = { feature, ...(number !== undefined && { number }), shown: true };
    const [left, right] = [across(view, feature.to), across(view, feature.from)];
    if (feature.kind === "face") {
      const free = Math.abs(feature.from - ends.from) <= Math.abs(feature.from - ends.to);
      const outwards = free ? 1 : -1;
      const x = nearest(
        left,
        [3, 4.5, 6].map((by) => by * outwards),
        taken,
      );
      if (x === undefined) return [];
      taken.push(x);
      const diameter = diameterAt(part.finished.outside, feature.from, outwards);
      const [near, far] = [left + 2.6 * outwards, left + BESIDE * outwards];
      const y = () => (-diameter * view.scale) / 4;
      return [{ ...common, x, y, least: Math.min(near, far), most: Math.max(near, far), face: left }];
    }
    const half = Math.max(0, (right - left) / 2 - FROM_EDGE);
    const middle = (left + right) / 2;
    const steps = Array.from({ length: 12 }, (_, step) => ((step + 1) / 12) * half);
    const x = nearest(middle, half === 0 ? [0] : [0, ...steps.flatMap((by) => [-by, by])], taken);
    if (x === undefined) return [];
    taken.push(x);
    const outline = feature.kind === "inside" ? part.finished.bore : part.finished.outside;
    const y = (x: number) => (-diameterAt(outline, (view.x - x) / view.scale) * view.scale) / 2;
    return [{ ...common, x, y, least: middle - half, most: middle + half }];
  });
  return found.sort((a, b) => a.x - b.x);
}

/** Leaders go straight down where their surface reaches so far: from their own place to that of their words. */
function straightened(callouts: readonly Callout[], places: readonly Placed[]): Callout[] {
  const result = [...callouts];
  // Those to the right may make room for those before them: once in each direction.
  for (const index of [...callouts.keys(), ...[...callouts.keys()].reverse()]) {
    const callout = result[index];
    const place = places[index];
    if (callout === undefined || place === undefined) continue;
    const least = Math.max(callout.least, (result[index - 1]?.x ?? Number.NEGATIVE_INFINITY) + APART);
    const most = Math.min(callout.most, (result[index + 1]?.x ?? Number.POSITIVE_INFINITY) - APART);
    if (least <= most) result[index] = { ...callout, x: Math.min(Math.max(place.x, least), most) };
  }
  return result;
}

const nearest = (x: number, shifts: readonly number[], taken: readonly number[]): number | undefined =>
  shifts.map((by) => x + by).find((at) => taken.every((other) => Math.abs(other - at) >= APART));

const shownWords = ({ feature, shown }: Callout): string => (shown ? feature.words : "");

const ringOf = (number: number): number =>
  Math.max(2.2, Math.hypot(textWidth(String(number), NUMBER, "bold") / 2, 0.6 * NUMBER) + 0.2);

/** From the leader to where its words begin, and to where they end. */
const beginOf = ({ number }: Callout): number => (number === undefined ? 0.8 : ringOf(number) + 0.8);
function reachOf(callout: Callout): number {
  const words = shownWords(callout);
  if (words === "") return callout.number === undefined ? 0 : ringOf(callout.number);
  return beginOf(callout) + textWidth(words, FIGURE, "regular");
}

const labelOf = (callout: Callout): Label => ({
  x: callout.x,
  left: callout.number === undefined ? 0.3 : ringOf(callout.number),
  right: reachOf(callout),
});

/** Rows of numbers and words end at `rows`; from there leaders fan out, and go straight down from `fan` on. */
function calloutMarks(
  callouts: readonly Callout[],
  places: readonly Placed[],
  view: View,
  rows: number,
  fan: number,
): Mark[] {
  return callouts.flatMap((callout, index): Mark[] => {
    const place = places[index];
    if (place === undefined) return [];
    const { number, x, face } = callout;
    const middle = rows - (place.row + 0.5) * ROW;
    const words = shownWords(callout);
    const begin = place.x + place.side * beginOf(callout);
    const end = view.y + callout.y(x);
    const from = number === undefined ? middle + 0.42 * FIGURE : middle + ringOf(number);
    const path: Point[] = [
      ...(number === undefined ? [{ x: place.x + place.side * reachOf(callout), y: from }] : []),
      { x: place.x, y: from },
      { x: place.x, y: rows },
      { x, y: fan },
    ];
    const tip = { x: face ?? x, y: end };
    const turn = face === undefined ? [] : [{ x, y: end }];
    const last = turn[0] ?? { x, y: fan };
    return [
      polyline([...path, ...turn, backFrom(tip, last)], { pen: thinPen }),
      arrowHead(tip, Math.sign(tip.x - last.x), face === undefined ? 1 : 0),
      ...(number === undefined ? [] : numberMarks(number, { x: place.x, y: middle })),
      ...(words === ""
        ? []
        : [
            text(
              words,
              { x: begin, y: middle + 0.16 * FIGURE },
              { size: FIGURE, anchor: place.side === 1 ? "start" : "end" },
            ),
          ]),
    ];
  });
}

/** A little short of an arrow's tip, where its head is as wide as the line. */
function backFrom(tip: Point, from: Point): Point {
  const length = Math.hypot(tip.x - from.x, tip.y - from.y);
  const share = length === 0 ? 0 : Math.min(1, 1.6 / length);
  return { x: tip.x + (from.x - tip.x) * share, y: tip.y + (from.y - tip.y) * share };
}

/** A step's number in its ring. */
const numberMarks = (number: number, at: Point): Mark[] => [
  circle(at, ringOf(number), { pen: thinPen }),
  text(String(number), { x: at.x, y: at.y + 0.38 * NUMBER }, { size: NUMBER, weight: "bold", anchor: "middle" }),
];

function lengthMarks(
  { lengths, finished }: Part,
  lines: readonly (Laid | undefined)[],
  view: View,
  edge: number,
): Mark[] {
  const marks: Mark[] = [];
  // One extension line serves all lengths that begin or end there.
  const deepest = new Map<string, { x: number; z: number; y: number }>();
  for (const [index, { origin, place, words }] of lengths.entries()) {
    const found = lines[index];
    if (found === undefined) continue;
    const y = edge + FIRST_LEVEL + found.level * LEVEL;
    const [x1, x2] = [across(view, origin), across(view, place)].sort((a, b) => a - b) as [number, number];
    marks.push(line({ x: found.left, y }, { x: found.right, y }, thinPen));
    marks.push(arrowHead({ x: x1, y }, found.outside ? 1 : -1, 0), arrowHead({ x: x2, y }, found.outside ? -1 : 1, 0));
    marks.push(text(words, { x: found.middle, y: y - 1.05 }, { size: FIGURE, anchor: "middle" }));
    for (const z of [origin, place]) {
      const key = z.toFixed(6);
      const before = deepest.get(key);
      deepest.set(key, { x: across(view, z), z, y: Math.max(before?.y ?? 0, y) });
    }
  }
  for (const { x, z, y } of deepest.values()) {
    const diameter = Math.max(diameterAt(finished.outside, z, -1), diameterAt(finished.outside, z, 1));
    marks.push(line({ x, y: below(view, diameter) + 0.7 }, { x, y: y + 1.2 }, thinPen));
  }
  return marks;
}

function footNote(scale: number, unit: string | undefined): string {
  const ratio = scale >= 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`;
  return `scale ${ratio}${unit === undefined ? "" : `, all sizes in ${unit === "in" ? "inches" : unit}`}`;
}

/** Between two sizes of a list that stand in one line. */
const BETWEEN = 5;

/** As many in a line as it holds. */
function listMarks(rows: readonly ListRow[], top: number, width: number): { height: number; marks: Mark[] } {
  const marks: Mark[] = [];
  let [x, y] = [0, top];
  for (const { number, words } of rows) {
    const indent = number === undefined ? 0 : 2 * ringOf(number) + 1;
    const room = indent + textWidth(words, FIGURE, "regular");
    if (x > 0 && x + room > width) [x, y] = [0, y + ROW];
    if (number !== undefined) marks.push(...numberMarks(number, { x: x + ringOf(number) + 0.1, y: y + ROW / 2 }));
    for (const [index, row] of wrapText(words, width - indent, FIGURE, "regular").entries()) {
      if (index > 0) y += ROW;
      marks.push(text(row, { x: x + indent, y: y + ROW / 2 + 0.28 * FIGURE }, { size: FIGURE }));
    }
    x += room + BETWEEN;
  }
  return { height: y + ROW - top, marks };
}
