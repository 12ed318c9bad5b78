import { cornerCuts, cornerMarks, type Hole, holeCuts, type Joined, markRoom } from "../blocks/shared/cut.js";
import { nameLines, shortened } from "../blocks/shared/shortened.js";
import { rowLine, size } from "../blocks/shared/style.js";
import type { Mark, Point } from "../drawing/drawing.js";
import { group, line, text } from "../drawing/shapes.js";
import { textWidth } from "../drawing/text.js";
import type { Limits, Machine } from "../machine/machine.js";
import { formatFixed } from "../quantity/format.js";
import { say } from "../words/say.js";
import type { Box } from "./margins.js";
import type { Template } from "./template.js";

type Card = NonNullable<Template["card"]>;

const padding = 4;
/** Of a name that is cut short so much must be left to know it by, mm. */
const leastName = 16;
/** From print to the edge of a screw's hole, mm: a head covers more than its hole, by its radius at most (common practice), and of a
 *  large one by no more than a washer's rim. */
const clear = { least: 0.8, most: 3 };
/** What says whose card it is, inside the cut. */
const footRoom = 10;
/** Between cards on one page: the marks of both. */
const between = 2 * markRoom + 1;

/** Corner marks reach into the margin, and no printer to the edge. */
const markSpare = 0.5;

/** What a page holds with corner marks round it, mm. */
export const largestCard = (body: Box): { width: number; height: number } => ({
  width: body.width - 2 * markSpare,
  height: body.height - 2 * markRoom + 1,
});

/** Where cards are cut out of a page, mm; empty where the page does not hold one. Where it holds more of them so, they lie edge to edge
 *  with one cut for two; not if `apart`. */
export function cardsOn(body: Box, { width, height }: Pick<Card, "width" | "height">, apart: boolean): Box[] {
  const left = body.left + (body.width - width) / 2;
  const top = body.top + markRoom - 1;
  if (left < body.left + markSpare - 1e-9) return [];
  const room = body.top + body.height - markRoom - top;
  const countWith = (gap: number) => Math.max(0, Math.floor((room + gap) / (height + gap) + 1e-9));
  const gap = !apart && countWith(0) > countWith(between) ? 0 : between;
  return Array.from({ length: countWith(gap) }, (_, index) => ({
    left,
    top: top + index * (height + gap),
    width,
    height,
  }));
}

/** How the card at a place is joined to those drawn with it, `count` in all. */
export function joinedAt(cards: readonly Box[], place: number, count: number): Joined {
  const touch = (upper: number) => {
    const [one, next] = [cards[upper], cards[upper + 1]];
    return one !== undefined && next !== undefined && upper + 1 < count && next.top - one.top - one.height < 1e-9;
  };
  return { above: touch(place - 1), below: touch(place) };
}

/** Sizes that a card may have, the one that is wished first: as its cover, or as its template says, higher where it may be, and at
 *  last as large as the page allows. */
export function cardSizes(card: Card, fixed: boolean, body: Box): Card[] {
  const { most = 0, height } = card;
  if (fixed || most <= height) return [card];
  const largest = largestCard(body);
  const page = { width: Math.min(card.width, largest.width), height: Math.min(most, largest.height) };
  const higher = [(height + most) / 2, most].map((own) => ({ ...card, height: own }));
  const sizes = [card, ...higher].filter((one) => one.width <= page.width && one.height <= page.height);
  return sizes.at(-1)?.height === page.height ? sizes : [...sizes, { ...card, ...page }];
}

/** What of a card blocks may fill, and where it says whose it is: clear of its edge, of rounded corners and of screws. Beside screws or
 *  below them, where that differs: a table wants width before height, pulleys may want height. */
export function insidesOf(box: Box, { holes = [], corner }: Card): { inside: Box; foot: Foot }[] {
  // Along the slant of a rounded corner.
  const edge = Math.max(padding, corner * (1 - Math.SQRT1_2) + 1);
  const inner = { left: edge, top: edge, width: box.width - 2 * edge, height: box.height - 2 * edge };
  const foot = { ...inner, top: inner.top + inner.height - footRoom, height: footRoom };
  const at = (part: Box): Box => ({ ...part, left: box.left + part.left, top: box.top + part.top });
  const upper = { ...inner, height: inner.height - footRoom };
  const [wide, tall] = [clearOf(holes, upper, wideFirst), clearOf(holes, upper, tallFirst)];
  const { left, right } = footClearOf(holes, foot);
  const level = left === right ? footIn(at(left)) : { left: at(left), right: at(right) };
  const ways = wide.width === tall.width && wide.height === tall.height ? [wide] : [wide, tall];
  return ways.map((inside) => ({ inside: at(inside), foot: level }));
}

type Worth = (box: Pick<Box, "width" | "height">) => number;
const wideFirst: Worth = ({ width, height }) => Math.max(0, width) ** 2 * Math.max(0, height);
const tallFirst: Worth = ({ width, height }) => Math.max(0, width) * Math.max(0, height) ** 2;

/** What a hole takes with what is to stay clear about it, where that reaches into a box. */
function takenIn({ left, top, width, height }: Box, { x, y, diameter }: Hole) {
  const reach = diameter / 2 + Math.min(clear.most, Math.max(clear.least, diameter / 2));
  const [from, to, above, below] = [x - reach, x + reach, y - reach, y + reach];
  const off = to <= left || from >= left + width || below <= top || above >= top + height;
  return off ? undefined : { from, to, above, below };
}

/** The largest part of a box with no hole in it: of each hole one side is kept. */
function clearOf(holes: readonly Hole[], whole: Box, worth: Worth): Box {
  let kept = whole;
  for (const hole of holes) {
    const taken = takenIn(kept, hole);
    if (taken === undefined) continue;
    const { left, top, width, height } = kept;
    const sides: Box[] = [
      { left: taken.to, top, width: left + width - taken.to, height },
      { left, top, width: taken.from - left, height },
      { left, top: taken.below, width, height: top + height - taken.below },
      { left, top, width, height: taken.above - top },
    ];
    kept = sides.reduce((best, side) => (worth(side) > worth(best) ? side : best));
  }
  return kept;
}

/** Where a card says whose it is and how old, and where its limits: one and the same, or, where a hole parts it in about halves, one
 *  each. */
export type Foot = { readonly left: Box; readonly right: Box };
export const footIn = (box: Box): Foot => ({ left: box, right: box });

/** Of two parts the narrower is used with the other where it is at least so much of it. */
const HALF = 0.6;

/** What holes leave of the foot, which gives way left and right alone. */
function footClearOf(holes: readonly Hole[], whole: Box): Foot {
  const taken = holes.flatMap((hole) => takenIn(whole, hole) ?? []).sort((one, other) => one.from - other.from);
  const end = { from: whole.left + whole.width, to: 0 };
  let left = whole.left;
  const parts = [...taken, end].flatMap(({ from, to }): Box[] => {
    const part = { ...whole, left, width: from - left };
    left = Math.max(left, to);
    return part.width > 0 ? [part] : [];
  });
  const [first = whole, second] = [...parts].sort((one, other) => other.width - one.width);
  if (second === undefined || second.width < HALF * first.width) return footIn(first);
  return first.left < second.left ? { left: first, right: second } : { left: second, right: first };
}

/** Where it is cut, and what it says of itself when the rest of the page is gone: whose it is, the limits, how old. `which`: of
 *  several, "" where there is but one. */
export function cardMarks(
  machine: Machine,
  box: Box,
  { left: foot, right: end }: Foot,
  { holes = [], corner }: Pick<Card, "holes" | "corner">,
  which: string,
  joined: Joined,
): Mark[] {
  const parted = foot !== end;
  const right = end.left + end.width;
  const limit = limitWords(machine.limits);
  const name = Math.min(textWidth(machine.name, size.text, "bold"), foot.width * 0.4);
  const em = textWidth(limit, size.card, "bold") <= end.width - (parted ? 0 : name + 4) ? size.card : size.text;
  const limitWidth = Math.min(end.width, textWidth(limit, em, "bold"));
  const room = parted ? foot.width : foot.width - limitWidth - 4;
  // The limit takes what it needs; the name then goes before what follows below.
  const beside = room >= Math.min(leastName, textWidth(machine.name, size.text, "bold"));
  const age = [
    ...(beside ? [] : [machine.name]),
    machine.revision === undefined ? say("page.no revision") : say("page.revision", { revision: machine.revision }),
    ...(machine.measured === undefined ? [] : [say("page.measured", { day: machine.measured })]),
  ].join(" · ");
  const base = foot.top + foot.height;
  const row = (words: string, y: number, width: number, weight: "bold" | "regular") =>
    text(shortened(words, width, size.text, weight), { x: foot.left, y }, { size: size.text, weight });
  const cards =
    which === "" ? [] : [text(which, { x: right, y: base - 0.7 }, { size: size.text, anchor: "end", weight: "bold" })];
  const whichWidth = which === "" || parted ? 0 : textWidth(which, size.text, "bold") + 4;
  return [
    cornerMarks({ x: box.left, y: box.top }, box.width, box.height, joined),
    ...cornerCuts({ x: box.left, y: box.top }, box.width, box.height, corner),
    // Within the card, whose own cut is the outer one.
    group({ x: 0, y: 0 }, holeCuts({ x: box.left, y: box.top }, holes), { name: "screws" }),
    ...(parted ? [foot, end] : [foot]).map(({ left, top, width }) =>
      line({ x: left, y: top + 0.25 }, { x: left + width, y: top + 0.25 }, rowLine),
    ),
    ...(beside ? nameMarks(machine.name, { x: foot.left, y: base - 5.2 }, room) : []),
    text(
      shortened(limit, end.width, em, "bold"),
      { x: right, y: base - 5.2 + (em === size.card ? 0.4 : 0) },
      { size: em, weight: "bold", anchor: "end" },
    ),
    row(age, base - 0.7, foot.width - whichWidth, "regular"),
    ...cards,
  ];
}

/** Whose card it is, in the line at `at`, or in two about it. */
function nameMarks(name: string, at: Point, room: number): Mark[] {
  const { lines, em } = nameLines(name, room, [size.text, size.source], "bold");
  // Between a rule above and a row below: what rises or hangs touches neither.
  const step = em * 1.2;
  const first = at.y - (lines.length > 1 ? 2.07 : 0);
  return lines.map((words, index) => text(words, { x: at.x, y: first + index * step }, { size: em, weight: "bold" }));
}

/** The chuck's always, for whoever looks for it; the spindle's where the file gives one. */
function limitWords({ chuckRpm, spindleRpm }: Limits): string {
  const rpm = (limit: number) => formatFixed(limit, 0);
  if (chuckRpm === undefined)
    return spindleRpm === undefined
      ? say("page.chuck unknown")
      : say("page.spindle limit, chuck unknown", { spindle: rpm(spindleRpm) });
  return spindleRpm === undefined
    ? say("page.chuck limit", { rpm: rpm(chuckRpm) })
    : say("page.both limits", { chuck: rpm(chuckRpm), spindle: rpm(spindleRpm) });
}
