import { bandOf, type Development, paperPerRadian } from "../../dial/development.js";
import type { DialFinding, Graduation } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import { countedAs } from "../../dial/labelling.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group, line } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { TURN } from "../../quantity/angle.js";
import { cutLine, fine, medium, size } from "../shared/style.js";
import { type Band, type Inscription, inscribe } from "./inscriptions.js";
import { digitHeight, numbersAcross, type ScaleStyle, scaleMarks, textAlong, textAt } from "./scaleMarks.js";
import { dialSurface, type IndexPlace, type Surface } from "./surface.js";

/** A dial of any shape as a sticker. Lengths in mm. */
export type DialPlan = {
  readonly dial: Pick<DialFinding, "chosen" | "rows" | "increases" | "second">;
  readonly flat: Development;
  /** Written small along the inner edge: unit, feed, handwheel, revision, the dearest first. */
  readonly legend: string;
  /** What stands among its numbers instead where there is no room for the legend. */
  readonly essentials: readonly Inscription[];
  /** Tab for glue beyond the joint; 0 or absent: the ends butt. */
  readonly lap?: number;
  readonly index?: IndexPlace;
};

export type DialPiece = {
  readonly drawing: Drawing;
  /** From joint to joint along the reading edge. */
  readonly length: number;
  readonly piece: number;
  readonly pieces: number;
  /** Of the essentials, what found no place on it. */
  readonly left: readonly string[];
};

/** Every band of marks on the dial, in the order in which they stand from the reading edge inwards. */
export const bandsOf = ({ rows, second }: DialPlan["dial"]): readonly (readonly Graduation[])[] => [
  ...rows,
  ...(second?.rows ?? []),
];

/** The dial at true size, in as few pieces as fit into the room; the cuts fall between marks, clear of numbers, and the
 *  pieces add up to the whole. A face that fits stays whole. Undefined where not even small pieces fit. */
export function piecesOf(plan: DialPlan, room: { width: number; height: number }): DialPiece[] | undefined {
  const style = dialStyle(plan);
  const { flat } = plan;
  if (flat.kind === "ring" && flat.sweep > TURN - 1e-9) {
    const surface = surfaceOf(plan, 0, TURN, 0);
    if (surface.width <= room.width && surface.height <= room.height)
      return [{ ...draw(plan, style, 0, TURN, 1, 1), piece: 1, pieces: 1 }];
  }
  const cuts = gaps(plan, style);
  const joint = best(cuts, (cut) => -cut.clearance);
  const tab = plan.lap ?? 0;
  // A cut may have to move by half the distance between numbers, so ask a little more pieces than the bare quotient.
  for (let pieces = 1; pieces < 60; pieces++) {
    const bounds = Array.from({ length: pieces + 1 }, (_, index) => {
      if (index === 0 || index === pieces) return joint.angle + (index === 0 ? 0 : TURN);
      const wanted = (index * TURN) / pieces;
      const near = best(
        cuts,
        // Clear of numbers where that moves the cut by no more than a quarter piece.
        (cut) => Math.abs(after(cut.angle, joint.angle) - wanted) - (cut.clearance > 0 ? TURN / pieces / 4 : 0),
      );
      return joint.angle + after(near.angle, joint.angle);
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

/** Angle from `origin` on, in [0, 2π). */
const after = (angle: number, origin: number): number => (((angle - origin) % TURN) + TURN) % TURN;

const best = <T>(items: readonly T[], cost: (item: T) => number): T =>
  items.reduce((least, item) => (cost(item) < cost(least) ? item : least));

function surfaceOf({ flat, dial, index }: DialPlan, from: number, to: number, tab: number): Surface {
  return dialSurface(flat, { from, to, tab, growth: growthOf(dial) }, index ? { index } : {});
}

type Cut = {
  readonly angle: number /** mm between the cut and the edge of the nearest number. */;
  readonly clearance: number;
};

/** Room between two marks that a cut needs, mm. */
const LEAST_GAP = 0.02;

/** The middles of all gaps between marks of any band. */
function gaps({ dial, flat }: DialPlan, style: DialStyle): Cut[] {
  const perRadian = paperPerRadian(flat);
  const marks = numberedBands(dial, style).flatMap((band, index) =>
    band.map((mark) => ({ ...mark, size: style.bands[index]?.number ?? 0 })),
  );
  const angles = [...new Set(marks.map(({ angle }) => angle))].sort((a, b) => a - b);
  const labels = marks.flatMap(({ angle, label, size }) =>
    label === undefined ? [] : [{ angle, half: textWidth(label, size, "bold") / 2 }],
  );
  const cuts = angles.flatMap((angle, index): Cut[] => {
    const next = angles[index + 1] ?? (angles[0] ?? 0) + TURN;
    // Marks of two bands may all but coincide; no knife cuts between them.
    if ((next - angle) * perRadian < LEAST_GAP) return [];
    const middle = (angle + next) / 2;
    const clearance = Math.min(
      TURN * perRadian,
      ...labels.map((label) => {
        const apart = after(label.angle, middle);
        return Math.min(apart, TURN - apart) * perRadian - label.half;
      }),
    );
    return [{ angle: middle, clearance }];
  });
  return cuts.length > 0 ? cuts : [{ angle: 0, clearance: 0 }];
}

/** Height of a band with marks and figures of the least size, mm. */
export const LEAST_NUMBERED_BAND = 0.7 + 0.85 + size.tiny * digitHeight;

type DialStyle = { readonly bands: readonly ScaleStyle[]; readonly legend: number };

/** Marks hang from the edge that faces the index; numbers stand under them; the legend runs along the other edge. */
export function dialStyle({ dial, flat }: DialPlan): DialStyle {
  const count = Math.max(1, bandsOf(dial).length);
  const band = bandOf(flat);
  const legend = band >= 3.2 * count + size.tiny * 1.2 ? size.tiny * 1.35 : 0;
  const each = (band - legend) / count;
  // Better a band without numbers, and words that say so, than numbers over the edge.
  const number = each < LEAST_NUMBERED_BAND ? 0 : Math.max(size.tiny, Math.min(2.7, each * 0.34));
  const longest = Math.min(4.5, number === 0 ? each * 0.9 : each - number * digitHeight - (legend > 0 ? 0.85 : 0.6));
  return {
    legend,
    bands: Array.from({ length: count }, (_, index) => ({
      across: index * each,
      marks: [longest, longest * 0.75, longest * 0.52],
      number,
      spacing: (index < dial.rows.length ? dial : (dial.second ?? dial)).chosen.spacing,
    })),
  };
}

function draw(
  plan: DialPlan,
  style: DialStyle,
  from: number,
  to: number,
  piece: number,
  pieces: number,
): Pick<DialPiece, "drawing" | "length" | "left"> {
  const { dial, flat, lap = 0 } = plan;
  const surface = surfaceOf(plan, from, to, lap);
  const perRadian = paperPerRadian(flat);
  const whole = surface.centre !== undefined;
  const here = (band: readonly Graduation[], size: number): Graduation[] =>
    band.flatMap(({ label, ...mark }) => {
      const angle = from + after(mark.angle, from);
      if (angle >= to) return [];
      // Where numbers stand so densely that none of the cuts is clear of them, the cut one is left out.
      const half = textWidth(label ?? "", size, "bold") / 2 / perRadian;
      const clear = whole || (angle - from > half && to - angle > half);
      return [{ ...mark, angle, ...(label !== undefined && clear && { label }) }];
    });
  const bands = numberedBands(dial, style).map((marked, index): Band => {
    const scale = index < dial.rows.length ? 0 : 1;
    const number = style.bands[index]?.number ?? 0;
    const along = surface.length(numbersAt(style.bands[index])) / (to - from);
    const marks = here(marked, number).sort((a, b) => a.angle - b.angle);
    return { scale, marks, number, perRadian: along };
  });
  const { words: legend, left: unfitted } = legendMarks(
    plan,
    style,
    from,
    to,
    pieces > 1 ? `${piece}/${pieces} · ` : "",
  );
  const inscribed = inscribe(bands, style.legend > 0 ? [] : plan.essentials, { from, to, whole });
  const scales = inscribed.bands.flatMap((band, index) => {
    const scale = style.bands[index];
    if (scale === undefined) return [];
    return [
      ...scaleMarks(surface, band, scale),
      ...(index > 0 ? [group({ x: 0, y: 0 }, [surface.rule(scale.across, fine)], { name: "rules" })] : []),
    ];
  });
  const among = inscribed.placed.flatMap(({ band, angle, words }) =>
    wordsAlong(plan, from, to, angle, numbersAt(style.bands[band]) - descent, words),
  );
  const marks: Mark[] = [
    group({ x: 0, y: 0 }, surface.outline(cutLine, lap), { name: "cut" }),
    ...scales,
    ...(surface.centre
      ? [group({ x: 0, y: 0 }, cross(surface.centre, flat.kind === "ring" ? flat.inner : 4), { name: "centre" })]
      : [group({ x: 0, y: 0 }, joints(surface, from, to, style, lap), { name: "joint" })]),
    ...(legend.length + among.length > 0 ? [group({ x: 0, y: 0 }, [...legend, ...among], { name: "legend" })] : []),
  ];
  return {
    drawing: { width: surface.width, height: surface.height, marks },
    length: (to - from) * paperPerRadian(flat),
    left: [...unfitted, ...inscribed.left],
  };
}

/** Words among numbers stand so much higher, mm, that a g clears the line below. */
const descent = 0.2;

/** Middle of a band's numbers, mm from the reading edge. */
const numbersAt = (style: ScaleStyle | undefined): number => (style === undefined ? 0 : numbersAcross(style));

/** Every band as its numbers are drawn. */
const numberedBands = (dial: DialPlan["dial"], { legend }: DialStyle): readonly (readonly Graduation[])[] =>
  legend > 0
    ? bandsOf(dial)
    : [
        ...dial.rows.map((row) => withUnit(row, dial)),
        ...(dial.second?.rows ?? []).map((row) => withUnit(row, dial.second ?? dial)),
      ];

/** Where there is no room for a legend the zero bears the unit: no dial goes without. Numbers that count parts of the unit
 *  say so elsewhere. */
function withUnit(band: readonly Graduation[], scale: Pick<DialFinding, "chosen" | "labelUnit">): Graduation[] {
  if (countedAs(scale) !== undefined) return [...band];
  return band.map((mark) =>
    mark.value === 0 && mark.label !== undefined ? { ...mark, label: `0 ${scale.chosen.unit}` } : mark,
  );
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
  const across = bandOf(plan.flat) - style.legend / 2 - 0.16;
  const words = fitted(first + plan.legend, surfaceOf(plan, from, to, 0).length(across) - 8);
  const left = plan.essentials.map((essential) => essential.words).filter((essential) => !words.includes(essential));
  return { words: words === "" ? [] : wordsAlong(plan, from, to, (from + to) / 2, across, words), left };
}

/** Small words with their middle at an angle, letters along the edge. */
function wordsAlong(plan: DialPlan, from: number, to: number, angle: number, across: number, words: string): Mark[] {
  const upright = surfaceOf({ ...plan, index: "top" }, from, to, plan.lap ?? 0);
  if (plan.flat.kind === "strip") return [textAt(upright, angle, across, words, size.tiny)];
  const perRadian = upright.length(across) / (to - from);
  return textAlong(upright, angle, across, words, size.tiny, perRadian, growthOf(plan.dial) === "leftward");
}

/** Two dashes at each end that run on across the joint when the ends truly meet; a tab says that it is for glue. */
function joints(surface: Surface, from: number, to: number, { bands }: DialStyle, lap: number): Mark[] {
  const perLength = (to - from) / surface.length(0);
  const first = bands[0];
  const inMarks = first ? first.marks[0] + 0.5 : surface.band * 0.6;
  const dashes = [inMarks, surface.band - 0.5].flatMap((across) =>
    [
      [from, from + 1.6 * perLength],
      [to - 1.6 * perLength, to],
    ].map(([a = 0, b = 0]) => line(surface.at(a, across), surface.at(b, across), medium)),
  );
  if (lap === 0) return dashes;
  // The tab stands at the right-hand end, which is where the numbers begin or end by their growth.
  const right = surface.at(from, 0).x > surface.at(to, 0).x ? from : to;
  return [...dashes, line(surface.at(right, 0), surface.at(right, surface.band), fine)];
}

/** Where a ring's middle lies. */
export function cross({ x, y }: { x: number; y: number }, room: number): Mark[] {
  const arm = Math.min(5, room * 0.6);
  return [line({ x: x - arm, y }, { x: x + arm, y }, fine), line({ x, y: y - arm }, { x, y: y + arm }, fine)];
}

/** As many of the legend's parts as fit, the first two (unit, and what the numbers count) last to go. */
export function fitted(legend: string, room: number): string {
  const parts = legend.split(" · ");
  while (parts.length > 1 && textWidth(parts.join(" · "), size.tiny, "regular") > room) parts.pop();
  const kept = parts.join(" · ");
  return textWidth(kept, size.tiny, "regular") > room ? "" : kept;
}
