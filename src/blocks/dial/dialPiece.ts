import { TO_RULE, toEdge } from "../../dial/bandRoom.js";
import { bandOf, type Development, paperPerRadian } from "../../dial/development.js";
import type { DialFinding, Graduation } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import { countedAs, MOST_MARKS_TO_A_NUMBER } from "../../dial/labelling.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { TURN } from "../../quantity/angle.js";
import { largestOf } from "../../quantity/extremes.js";
import { say } from "../../words/say.js";
import { axisLine, cutLine, rowLine } from "../shared/style.js";
import { bleed } from "./cutMarks.js";
import {
  bandsOf,
  bare,
  type DialStyle,
  dialStyle,
  legendAcross,
  tailRoom,
  thinned,
  unitOf,
  wordsAcross,
} from "./dialStyle.js";
import { edgeArrow } from "./edgeArrow.js";
import { type Band, type Inscription, inscribe, roomOf } from "./inscriptions.js";
import {
  digitHeight,
  HUNG_CLEAR,
  hanging,
  hangRoom,
  numbersAcross,
  type ScaleStyle,
  scaleMarks,
  textAlong,
  textAt,
} from "./scaleMarks.js";
import { after, cutNear, gapsOf, seamOf } from "./seam.js";
import { dialSurface, type IndexPlace, type Surface } from "./surface.js";

/** A dial of any shape as a sticker. Lengths in mm. */
export type DialPlan = {
  readonly dial: Pick<DialFinding, "chosen" | "rows" | "increases" | "second" | "labelUnit">;
  readonly flat: Development;
  /** Written small along the inner edge: unit, feed, handwheel, revision, the dearest first. */
  readonly legend: string;
  /** What stands among its numbers instead where there is no room for the legend. */
  readonly essentials: readonly Inscription[];
  /** Tab for glue beyond the joint; 0 or absent: the ends butt. */
  readonly lap?: number;
  readonly index?: IndexPlace;
  /** Cut by a machine that follows its outline, where nothing may run over an edge. */
  readonly metal?: true;
};

export type DialPiece = {
  readonly drawing: Drawing;
  /** What its cut marks take outside it, mm. */
  readonly cutRoom: number;
  /** From joint to joint along the reading edge. */
  readonly length: number;
  /** Where its right end meets the next, radians from zero; that end has the tab, where there is one. */
  readonly joint: number;
  readonly piece: number;
  readonly pieces: number;
  /** Of the essentials, what found no place on it. */
  readonly left: readonly string[];
};

/** The dial at true size, in as few pieces as fit into the room; the cuts fall between marks, clear of numbers, and the
 *  pieces add up to the whole. A face that fits stays whole. Undefined where not even small pieces fit. */
export function piecesOf(plan: DialPlan, room: { width: number; height: number }): DialPiece[] | undefined {
  const style = dialStyle(plan);
  const { flat } = plan;
  if (flat.kind === "ring" && flat.sweep > TURN - 1e-9) {
    if (fits(surfaceOf(plan, 0, TURN, 0), room)) return [{ ...draw(plan, style, 0, TURN, 1, 1), piece: 1, pieces: 1 }];
  }
  const gaps = gapsOf(numberedBands(plan, style), paperPerRadian(flat));
  const tab = plan.lap ?? 0;
  // A cut may have to move by half the distance between numbers, so ask a little more pieces than the bare quotient.
  for (let pieces = 1; pieces < 60; pieces++) {
    const seam = seamOf(gaps, pieces).angle;
    const bounds = Array.from({ length: pieces + 1 }, (_, index) => {
      if (index === 0 || index === pieces) return seam + (index === 0 ? 0 : TURN);
      return seam + after(cutNear(gaps, seam, (index * TURN) / pieces, TURN / pieces / 8), seam);
    });
    const parts = bounds.slice(1).map((to, index) => ({ from: bounds[index] ?? 0, to }));
    if (parts.some(({ from, to }) => !(to > from) || !fits(surfaceOf(plan, from, to, tab), room))) continue;
    return parts.map(({ from, to }, index) => ({
      ...draw(plan, style, from, to, index + 1, pieces),
      piece: index + 1,
      pieces,
    }));
  }
  return undefined;
}

const fits = (surface: Surface, room: { width: number; height: number }) =>
  surface.width <= room.width + 1e-9 && surface.height <= room.height + 1e-9;

function surfaceOf({ flat, dial, index }: DialPlan, from: number, to: number, tab: number, upright = true): Surface {
  return dialSurface(flat, { from, to, tab, growth: growthOf(dial) }, index && upright ? { index } : {});
}

/** Every band with so many numbers as have room, and the em of those: fewer where words must stand between them, since a number that
 *  gives way to a word is missed by who counts. */
export function numberedBands(plan: DialPlan, style: DialStyle) {
  const { dial, flat } = plan;
  return bandsOf(dial).map((marks, index) => {
    const own = style.bands[index] as ScaleStyle;
    const room = paperPerRadian(flat) * acrossPart(flat, numbersAcross(own));
    const words = dearest(plan, style).filter(({ band }) => band === index);
    const scale = index === 0 ? dial : index === dial.rows.length ? dial.second : undefined;
    const unit = style.legend > 0 ? undefined : scale && unitOf(scale);
    const hung = unit ? (style.sideways ? roomOf(unit, style.words) : hangRoom(unit, own.number)) : 0;
    const spread = (list: readonly Inscription[]) =>
      thinned(marks, own, room, TURN, largestOf([hung, ...list.map((one) => roomOf(one.words, style.words))]));
    // What is merely dear is written beside the piece before its numbers become so few that one has to count, and what they count before
    // every second of them goes.
    const all = spread(words);
    const without = sparse(all) ? spread(words.filter(({ dear }) => !dear)) : all;
    const bare = spread(turnNames(dial).filter(({ band }) => band === index));
    const chosen = sparse(without) && 2 * numbered(without) < numbered(bare) ? bare : without;
    return { marks: chosen, number: own.number, along: room };
  });
}

const numbered = (marks: readonly Graduation[]): number => marks.filter(({ label }) => label !== undefined).length;
const sparse = (marks: readonly Graduation[]): boolean => marks.length > MOST_MARKS_TO_A_NUMBER * numbered(marks);

/** What numbers make room for: which turn a row is for, and, where no line of words has that, what numbers count and that they are
 *  diameters. */
function dearest({ dial, essentials }: DialPlan, style: DialStyle): Inscription[] {
  const counted = ([dial, dial.second] as const).flatMap((scale, index): Inscription[] => {
    const words = scale && countedAs(scale);
    if (words === undefined || style.legend > 0) return [];
    return [{ words, band: index === 0 ? dial.rows.length - 1 : bandsOf(dial).length - 1 }];
  });
  const dear = style.legend > 0 ? [] : essentials.filter(({ dear }) => dear);
  return [...turnNames(dial), ...counted, ...dear.map((one) => ({ ...one, band: 0 }))];
}

/** Down to where words among numbers may reach: the next band's line, or the cut. */
const downTo = (next: ScaleStyle | undefined, flat: Development): number =>
  next ? next.across - TO_RULE : bandOf(flat) - (flat.kind === "ring" ? toEdge(true) : 0.32);

/** Paper there, against that at the reading edge: less on the inner circles of a ring. */
const acrossPart = (flat: Development, across: number): number =>
  flat.kind === "strip" ? 1 : (flat.outer - across) / flat.outer;

function draw(
  plan: DialPlan,
  style: DialStyle,
  from: number,
  to: number,
  piece: number,
  pieces: number,
): Pick<DialPiece, "drawing" | "length" | "joint" | "left" | "cutRoom"> {
  const { dial, flat, lap = 0, metal = false } = plan;
  // Numbers that do not stand across the band stand along it, wherever the index is.
  const upright = style.sideways || plan.index === "bottom";
  const surface = surfaceOf(plan, from, to, lap, upright);
  const whole = surface.centre !== undefined;
  const bands = numberedBands(plan, style).map(({ marks }, index): Band & { readonly unit?: ScaleStyle["unit"] } => {
    const scale = index < dial.rows.length ? 0 : 1;
    const own = styleOf(style, index);
    const along = surface.length(numbersAcross(own)) / (to - from);
    const here = marksOn({ marks, from, to, whole }, own, along);
    const first = index === 0 || index === dial.rows.length;
    const hung =
      style.legend > 0 || style.sideways || !first ? undefined : hungUnit(plan, here, own, scale, along, [from, to]);
    return {
      scale,
      marks: here,
      number: own.number,
      perRadian: along,
      tails: tailRoom(own, style.words, downTo(style.bands[index + 1], flat)),
      ...(own.tall !== undefined && { tall: own.tall }),
      ...(hung && { fixed: [hung], unit: { words: hung.words, along: hung.angle } }),
    };
  });
  const told = legendMarks(plan, style, from, to, pieces > 1 ? `${say("dials.piece of", { piece, pieces })} · ` : "");
  // Without a line of words, and where it cannot hang beside the zero, the unit is the first that looks for a place.
  const units = ([dial, dial.second] as const).flatMap((scale, index): Inscription[] => {
    const band = bands.findIndex((one) => one.scale === index);
    const words = scale && unitOf(scale);
    if (words === undefined || style.legend > 0 || bands[band]?.fixed) return [];
    return [{ words, scale: index === 0 ? 0 : 1 }];
  });
  const inscribed = inscribe(
    bands,
    [...units, ...dearest(plan, style), ...(style.legend > 0 ? [] : plan.essentials.filter(({ dear }) => !dear))],
    { from, to, whole },
    style.words,
  );
  const scales = bands.flatMap(({ marks, unit }, index) => {
    const own = styleOf(style, index);
    return [
      ...scaleMarks(surface, marks, {
        ...own,
        ...(metal && { bleed: 0 }),
        ...(unit && { unit }),
      }),
      ...(index > 0
        ? [group({ x: 0, y: 0 }, [surface.rule(own.across, rowLine, metal || lap > 0 ? 0 : bleed)], { name: "rules" })]
        : []),
    ];
  });
  const among = inscribed.placed.flatMap(({ band, angle, words }) => {
    const across = wordsAcross(styleOf(style, band));
    return [
      ...wordsAlong(plan, style, from, to, angle, across, words),
      ...(units.some((unit) => unit.words === words) ? [] : brackets(surface, style, [from, to], angle, across, words)),
    ];
  });
  const legend = [...told.words, ...among];
  const marks: Mark[] = [
    ...(metal ? [group({ x: 0, y: 0 }, surface.outline(cutLine), { name: "cut" })] : surface.cuts()),
    ...scales,
    ...(surface.centre
      ? [group({ x: 0, y: 0 }, cross(surface.centre, flat.kind === "ring" ? flat.inner : 4), { name: "centre" })]
      : []),
    ...(lap > 0 ? [group({ x: 0, y: 0 }, tabMarks(surface, from, to, lap), { name: "joint" })] : []),
    ...(metal ? [] : [group({ x: 0, y: 0 }, edgeArrow(surface, from, to), { name: "arrow" })]),
    ...(legend.length > 0 ? [group({ x: 0, y: 0 }, legend, { name: "legend" })] : []),
  ];
  return {
    drawing: { width: surface.width, height: surface.height, marks },
    cutRoom: metal ? 0 : surface.cutRoom,
    length: (to - from) * paperPerRadian(flat),
    joint: rightEnd(surface, from, to),
    left: [...told.left, ...inscribed.left],
  };
}

const styleOf = (style: DialStyle, band: number): ScaleStyle => style.bands[band] as ScaleStyle;

/** From words to the bracket beside them, and how far its ends are bent towards them, mm. */
const BRACKET = 0.8;
const FOOT = 0.4;

/** Between a number and a cut, mm. */
const TO_CUT = 0.3;

/** The marks of one piece, its angles counted from its beginning on. Where numbers stand so densely that none of the cuts is clear of
 *  them, the cut one is left out. */
function marksOn(
  part: { readonly marks: readonly Graduation[]; readonly from: number; readonly to: number; readonly whole: boolean },
  { number, tall }: ScaleStyle,
  perRadian: number,
): Graduation[] {
  const { marks, from, to, whole } = part;
  return marks
    .flatMap((mark) => {
      const angle = from + after(mark.angle, from);
      if (angle >= to) return [];
      const half =
        ((tall === undefined ? textWidth(mark.label ?? "", number, "bold") : number) / 2 + TO_CUT) / perRadian;
      const clear = whole || (angle - from > half && to - angle > half);
      return [{ ...(clear ? mark : bare(mark)), angle }];
    })
    .sort((a, b) => a.angle - b.angle);
}

/** The number beside which the unit hangs, clear of the next one and of the cut: the zero, else the next that has room. */
function hungUnit(
  { dial, index }: DialPlan,
  marks: readonly Graduation[],
  { number }: ScaleStyle,
  scale: 0 | 1,
  perRadian: number,
  [from, to]: readonly [number, number],
): { words: string; angle: number; half: number } | undefined {
  const unit = unitOf(scale === 1 ? (dial.second ?? dial) : dial);
  const numbered = marks.flatMap(({ angle, label, value }) => (label === undefined ? [] : [{ angle, label, value }]));
  if (unit === undefined || number === 0) return undefined;
  const ends = [from, to].map((end) => ({ angle: end, half: 0 }));
  const whole = to - from > TURN - 1e-9 && from === 0;
  // To the right of who reads it, which is back along numbers that grow leftward; at the bottom of a ring they grow the other way.
  const back = (growthOf(dial) === "leftward") !== (index === "bottom");
  for (const own of [...numbered].sort((a, b) => a.value - b.value)) {
    const { middle, half } = hanging(own.label, unit, number);
    const angle = own.angle + ((back ? -1 : 1) * middle) / perRadian;
    const others = numbered.flatMap((other) =>
      other === own
        ? []
        : [-TURN, 0, TURN].map((turn) => ({
            angle: other.angle + turn,
            half: textWidth(other.label, number, "bold") / 2,
          })),
    );
    const near = whole ? others : [...ends, ...others];
    if (near.every((one) => Math.abs(one.angle - angle) * perRadian > one.half + half + HUNG_CLEAR))
      return { words: unit, angle, half };
  }
  return undefined;
}

/** "1st turn" in each row of a dial that has several, one for each turn. */
function turnNames({ rows }: DialPlan["dial"]): Inscription[] {
  if (rows.length < 2) return [];
  return rows.map((_, band) => ({
    words: band < 3 ? say(`dials.turn ${(band + 1) as 1 | 2 | 3}`) : say("dials.turn any", { turn: band + 1 }),
    band,
  }));
}

/** The legend in the middle of the piece, letters along the edge, and what of the essentials it had to leave out. */
function legendMarks(
  plan: DialPlan,
  style: DialStyle,
  from: number,
  to: number,
  first: string,
): { words: Mark[]; left: string[] } {
  if (style.legend === 0) return { words: [], left: [] };
  const across = legendAcross(bandOf(plan.flat), style.words, plan.flat.kind === "ring");
  const words = fitted(first + plan.legend, surfaceOf(plan, from, to, 0).length(across) - 4, style.words);
  const left = plan.essentials.map((essential) => essential.words).filter((essential) => !words.includes(essential));
  return { words: words === "" ? [] : wordsAlong(plan, style, from, to, (from + to) / 2, across, words), left };
}

/** Small words with their middle at an angle, letters along the edge. */
function wordsAlong(
  plan: DialPlan,
  { words: em }: DialStyle,
  from: number,
  to: number,
  angle: number,
  across: number,
  words: string,
): Mark[] {
  const upright = surfaceOf(plan, from, to, plan.lap ?? 0, false);
  if (plan.flat.kind === "strip") return [textAt(upright, angle, across, words, em)];
  const perRadian = upright.length(across) / (to - from);
  return textAlong(upright, angle, across, words, em, perRadian, growthOf(plan.dial) === "leftward");
}

/** Either side of words that stand between numbers: without them "rev 4" reads on into the number beside it. */
function brackets(
  surface: Surface,
  { words: em }: DialStyle,
  [from, to]: readonly [number, number],
  angle: number,
  across: number,
  words: string,
): Mark[] {
  const perLength = (to - from) / surface.length(across);
  const half = textWidth(words, em, "regular") / 2 + BRACKET;
  const high = (em * digitHeight - rowLine.width) / 2;
  return [-1, 1].map((side) => {
    const at = (along: number, up: number) => surface.at(angle + side * along * perLength, across + up);
    return {
      kind: "path",
      pen: rowLine,
      segments: [
        { to: "move", ...at(half - FOOT, -high) },
        { to: "line", ...at(half, -high) },
        { to: "line", ...at(half, high) },
        { to: "line", ...at(half - FOOT, high) },
      ],
    };
  });
}

const rightEnd = (surface: Surface, from: number, to: number): number =>
  surface.at(from, 0).x > surface.at(to, 0).x ? from : to;

/** A tab for glue: a line where the other end comes to lie, and hatching that this end will hide. */
function tabMarks(surface: Surface, from: number, to: number, lap: number): Mark[] {
  // The tab stands at the right-hand end, which is where the numbers begin or end by their growth.
  const right = rightEnd(surface, from, to);
  const on = right === from ? -1 : 1;
  const perLength = (to - from) / surface.length(0);
  const { band } = surface;
  const place = (along: number, across: number) => surface.at(right + on * along * perLength, across);
  const hatching: Mark[] = [];
  for (let at = 1.2; at < lap + band - 1.2; at += 1.6) {
    const [low, high] = [Math.max(0.8, at - band + 0.8), Math.min(lap - 0.8, at - 0.8)];
    if (high - low > 0.3) hatching.push(line(place(low, at - low), place(high, at - high), axisLine));
  }
  return [line(place(0, 0), place(0, band), rowLine), ...hatching];
}

/** Where a ring's middle lies. */
export function cross({ x, y }: { x: number; y: number }, room: number): Mark[] {
  const arm = Math.min(5, room * 0.6);
  return [line({ x: x - arm, y }, { x: x + arm, y }, axisLine), line({ x, y: y - arm }, { x, y: y + arm }, axisLine)];
}

/** As many of the legend's parts as fit, the first two (unit, and what the numbers count) last to go. */
export function fitted(legend: string, room: number, em: number): string {
  const parts = legend.split(" · ");
  while (parts.length > 1 && textWidth(parts.join(" · "), em, "regular") > room) parts.pop();
  const kept = parts.join(" · ");
  return textWidth(kept, em, "regular") > room ? "" : kept;
}
