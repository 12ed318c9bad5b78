import type { Mark, Point } from "../../drawing/drawing.js";
import { circle, polyline, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { diameterAt } from "../../part/outline.js";
import { endsOf } from "../../part/workpiece.js";
import { arrowHead, thinPen } from "../shared/sectionMarks.js";
import { size } from "../shared/style.js";
import { type Label, type Placed, placeLabels } from "./callouts.js";
import type { Feature, Part } from "./partFeatures.js";
import { BESIDE } from "./partLayout.js";
import { across, type View } from "./workView.js";

/** Of each stage its number on the plan; undefined where it has none. */
export type StepNumbers = readonly (number | undefined)[];

export const FIGURE = size.text;

const NUMBER = size.text;

/** Between rows of callouts, and between lines of a list. */
export const ROW = 6.2;

/** One surface with its words, as it is to be drawn. */
export type Callout = {
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

/** What stands above the part, and what found no room there. */
export type Upper = {
  readonly callouts: readonly Callout[];
  readonly places: readonly Placed[];
  readonly list: readonly ListRow[];
};

export type ListRow = { readonly number?: number; readonly words: string };

const featureRow = ({ words, where }: Feature): string => (where === "" ? words : `${words}, ${where}`);

/** A step makes one feature, and the bar one outside and one inside. */
const nameOf = ({ stage, kind }: Feature): string => `${stage ?? "bar"} ${kind}`;

/** Callouts with their places; what has no room goes into the list, first its words, then its number too. */
export function arranged(
  part: Part,
  numbers: StepNumbers,
  view: View,
  end: number,
  width: number,
  limit: number,
): Upper {
  let callouts = aimed(part, numbers, view, end);
  const pointed = new Set(callouts.map(({ feature }) => nameOf(feature)));
  const list: ListRow[] = [
    ...numbered(part, numbers)
      .filter(({ feature }) => !pointed.has(nameOf(feature)) && feature.words !== "")
      .map(({ feature, number }) => ({ ...(number !== undefined && { number }), words: featureRow(feature) })),
    ...part.gone.flatMap(({ stage, words }) => {
      const number = numbers[stage];
      return number === undefined ? [] : [{ number, words }];
    }),
  ];
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

function numbered(part: Part, numbers: StepNumbers): { feature: Feature; number?: number }[] {
  return part.features.flatMap((feature) => {
    const number = feature.stage === undefined ? undefined : numbers[feature.stage];
    return number === undefined && feature.words === "" ? [] : [{ feature, ...(number !== undefined && { number }) }];
  });
}

/** Two leaders are drawn no closer than this, and none so close to an edge. */
const APART = 1.4;

const FROM_EDGE = 0.5;

/** Each feature's leader to a place of its own; the narrow surfaces choose first. What lies beyond `end` is not drawn. */
function aimed(part: Part, numbers: StepNumbers, view: View, end: number): Callout[] {
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

export const ringOf = (number: number): number =>
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
export function calloutMarks(
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
export const numberMarks = (number: number, at: Point): Mark[] => [
  circle(at, ringOf(number), { pen: thinPen }),
  text(String(number), { x: at.x, y: at.y + 0.38 * NUMBER }, { size: NUMBER, weight: "bold", anchor: "middle" }),
];
