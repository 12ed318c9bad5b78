import { angleMarks, smallEnd } from "../../dial/angleScale.js";
import { BELOW, toEdge } from "../../dial/bandRoom.js";
import type { Graduation } from "../../dial/finding.js";
import { wrapLength } from "../../dial/strip.js";
import { vernierMarks, vernierWithin } from "../../dial/vernier.js";
import type { Drawing, Mark } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { powerOff } from "../../findings/powerOff.js";
import type { AngleScale, Machine, Paper, Units } from "../../machine/machine.js";
import { TURN, toRadians } from "../../quantity/angle.js";
import { smallestOf } from "../../quantity/extremes.js";
import { formatSize, trimmed, trimmedSize } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { size } from "../shared/style.js";
import { cellFoot } from "./cell.js";
import { bleed } from "./cutMarks.js";
import { type CutOut, cellHeight, withCutRoom } from "./cutOuts.js";
import type { Note } from "./dialNotes.js";
import { cross } from "./dialPiece.js";
import { bandStyles, legendAcross, legendFits, legendRoom, markLengths, thinned, wordsOn } from "./dialStyle.js";
import { edgeArrow } from "./edgeArrow.js";
import { clearOfEnds, hanging, numbersAcross, type ScaleStyle, scaleMarks, textAlong, textAt } from "./scaleMarks.js";
import { ringSurface, type Surface, stripSurface } from "./surface.js";

/** A scale of degrees with its index line or vernier as pieces to cut, and what must be known of it. */
export function angleSet(
  given: AngleScale,
  machine: Pick<Machine, "paper" | "units" | "drive">,
  copies: number,
  room: { readonly width: number; readonly height: number },
): { readonly cut: readonly CutOut[]; readonly note: Note; readonly missing: boolean } {
  const { paper, units } = machine;
  const scale = onPaper(given, paper);
  const parted = inPieces(scale, units, room);
  const about = { about: scale.name, warnings: [] };
  if (parted === undefined) {
    // A plate goes all the way round.
    const remedy = say(`angle scales.smaller ${scale.part === "spindle" ? "plate" : "scale"}`);
    const words = `${scaleWords(scale, machine)} ${say("angle scales.too large", { remedy })}`;
    return { cut: [], note: { ...about, words, leftOut: { name: scale.name, remedy } }, missing: false };
  }
  const { pieces, missing } = parted;
  const joined = pieces.length > 1 ? [say("scales.in pieces", { n: pieces.length })] : [];
  const note = { ...about, words: [scaleWords(scale, machine), ...joined].join(" ") };
  const all = Array.from({ length: Math.max(1, copies) }, (_, copy) =>
    pieces.map((piece) => (pieces.length > 1 ? { ...piece, set: `copy ${copy + 1}` } : piece)),
  ).flat();
  return { cut: [...all, indexCutOut(scale, room.width)], note, missing };
}

/** In more pieces nobody puts a strip together. Own choice. */
const MOST_PIECES = 6;

/** The scale whole, or round a cylinder in as few pieces as the paper holds; undefined where it holds none. */
function inPieces(
  scale: PaperScale,
  units: Units,
  room: { readonly width: number; readonly height: number },
): { readonly pieces: readonly CutOut[]; readonly missing: boolean } | undefined {
  for (let count = 1; count <= (scale.shape === "drum" ? MOST_PIECES : 1); count++) {
    const cuts = cutsOf(scale, count);
    const drawn = cuts
      .slice(1)
      .map((to, index) =>
        scaleCutOut(scale, { from: cuts[index] ?? 0, to, piece: index + 1, pieces: count }, units, room.width),
      );
    if (drawn.every(({ piece }) => piece.drawing.width <= room.width && cellHeight(piece) <= room.height))
      return {
        pieces: drawn.map(({ piece }) => piece),
        // What stands on one of them is said.
        missing: sidesOf(scale).some((side) => drawn.every(({ said }) => !said.includes(side))),
      };
  }
  return undefined;
}

/** A piece names a side of the scale only where more than this share of it lies there, else the pieces that hold more. Own choice. */
const LEAST_OF_SIDE = 0.2;

/** A piece of a scale, radians to the right of zero. */
type Part = { readonly from: number; readonly to: number; readonly piece: number; readonly pieces: number };

/** Both ends, and between them the middles of divisions, as far from the numbers as may be; of two as good the one that makes the earlier
 *  piece the longer: it is laid first on the paper. */
function cutsOf(scale: PaperScale, count: number): number[] {
  const [from, to] = endsOf(scale);
  const marks = angleMarks(scale, scale.flat);
  const numbers = marks.filter(({ label }) => label !== undefined).map(({ angle }) => angle);
  const middles = marks.slice(1).map(({ angle }, index) => (angle + (marks[index]?.angle ?? angle)) / 2);
  const clear = (angle: number) => smallestOf(numbers.map((number) => Math.abs(number - angle)));
  return Array.from({ length: count + 1 }, (_, index) => {
    if (index === 0 || index === count) return index === 0 ? from : to;
    const wanted = from + (index * (to - from)) / count;
    const near = middles.filter((angle) => Math.abs(angle - wanted) < (to - from) / count / 6);
    return near.reduce(
      (best, angle) =>
        clear(angle) - clear(best) > 1e-9 ||
        (clear(angle) > clear(best) - 1e-9 && Math.abs(angle - wanted) < Math.abs(best - wanted) + 1e-9)
          ? angle
          : best,
      near[0] ?? wanted,
    );
  });
}

/** Seen from above with the operator at the bottom, the index stands on the operator's side. Swung clockwise, the near
 *  edge goes to the left: a scale that turns past a fixed index then shows what stood to the right of zero; past a
 *  fixed scale the index goes left itself. */
export const clockwiseSide = ({ turns }: Pick<AngleScale, "turns">): "left" | "right" => (turns ? "right" : "left");

/** Paper beyond the last mark at either end, radians: half its number at least. */
function marginOf({ shape, radius, flat, width, from, to }: PaperScale): number {
  const widest = textWidth(trimmed(Math.max(-from, to), 3), size.text, "bold");
  const along = shape === "drum" ? flat : radius - Math.min(width, 8);
  return Math.max(toRadians(4), (widest / 2 + 0.8) / along);
}

/** `flat`: mm of paper for one radian along the reading edge. */
type PaperScale = AngleScale & { readonly flat: number };

/** Round a cylinder the paper lies outside it and bends about its middle; on a flat top it is as large as what it covers. */
const onPaper = (scale: AngleScale, { thickness, adhesive }: Paper): PaperScale => ({
  ...scale,
  flat:
    scale.shape === "drum"
      ? wrapLength({ diameter: 2 * scale.radius, paper: thickness, adhesive }) / TURN
      : scale.radius,
});

/** Where its paper ends, radians to the right of zero. */
const endsOf = (scale: PaperScale): readonly [from: number, to: number] => [
  toRadians(scale.from) - marginOf(scale),
  toRadians(scale.to) + marginOf(scale),
];

/** The sides of zero that it has, to say what swinging there does. */
const sidesOf = (scale: PaperScale): ("left" | "right")[] =>
  scale.part === "spindle"
    ? []
    : (["left", "right"] as const).filter((side) => scale[side === "left" ? "from" : "to"] !== 0);

/** `along` is the angle to the right of zero for the reader, radians. The reading edge is the outer one; a flat scale is
 *  drawn as it lies before the operator, whose side of it is the lower one. */
function angleSurface(scale: PaperScale, { from, to }: Pick<Part, "from" | "to">): Surface {
  const { part: swings, shape, radius, flat, width } = scale;
  const part = { from, to, growth: "rightward" } as const;
  if (shape === "drum") return stripSurface(flat, width, part);
  const ring = { outer: radius, inner: radius - width };
  // Like a face dial that grows with clockwise turning; its index stands on top.
  if (swings === "spindle") return ringSurface(ring, 1, { from: 0, to: TURN, growth: "leftward" });
  const whole = part.to - part.from >= TURN;
  return ringSurface(ring, 1, whole ? { ...part, from: 0, to: TURN } : part, { lowermost: true });
}

const senseOn = (scale: AngleScale, side: "left" | "right") =>
  side === clockwiseSide(scale) ? ("clockwise" as const) : ("anticlockwise" as const);

/** What swinging to that side does to the work. */
export function sideWords(scale: AngleScale, side: "left" | "right"): string {
  const sense = senseOn(scale, side);
  if (scale.part === "vice" || scale.part === "spindle") return say(`angle scales.way ${sense}`);
  return say(`angle scales.small at ${smallEnd(scale.part, sense)}`);
}

function scaleWords(scale: PaperScale, machine: Pick<Machine, "units" | "drive">): string {
  const { units } = machine;
  if (scale.part === "spindle") return say("angle scales.plate", { off: powerOff(machine) });
  const sides = (["left", "right"] as const).map((side) => {
    const sense = say(`angle scales.way ${senseOn(scale, side)}`);
    const gaps = { sense, small: sideWords(scale, side) };
    return scale.part === "vice"
      ? say(`angle scales.from 0 ${side}`, { sense })
      : say(`angle scales.from 0 ${side}, tapers`, gaps);
  });
  return [
    `${sides.join("; ")}${scale.part === "vice" ? "" : ` ${say("angle scales.seen")}`}.`,
    scale.turns ? say("angle scales.turns") : say("angle scales.fixed"),
    scale.shape === "drum" ? say("angle scales.bare", { radius: trimmedSize(scale.radius, units) }) : "",
  ]
    .filter(Boolean)
    .join(" ");
}

function scaleCutOut(scale: PaperScale, part: Part, units: Units, most: number) {
  const { radius, flat, width } = scale;
  const surface = angleSurface(scale, part);
  const parts = part.pieces > 1 ? say("dials.piece of", part) : "";
  const strip = scale.shape === "drum";
  const plate = scale.part === "spindle";
  const em = wordsOn(width, strip);
  const legend = !plate && legendFits(width, 1, em, { round: !strip });
  const spacing = toRadians(scale.step) * flat;
  const [band] = bandStyles(
    { height: width - (legend ? legendRoom(em, !strip) : strip ? 0.3 : toEdge(true) - BELOW), count: 1, least: em },
    [spacing],
  );
  const style = band as ScaleStyle;
  const all = angleMarks(plate ? { ...scale, to: 360 - scale.step / 2 } : scale, flat);
  // All the way round both ends are one mark.
  const marks = surface.centre ? all.filter(({ angle }) => angle > -Math.PI + 1e-9) : all;
  const room = strip ? flat : radius - numbersAcross(style);
  // A degree sign to the right of the zero: of a plate that is back along its numbers.
  const degree = { words: "°", along: ((plate ? -1 : 1) * hanging("0", "°", style.number).middle) / room };
  const thin = thinned(marks, style, room, surface.centre ? TURN : undefined);
  const shown = parts
    ? thin
        .filter(({ angle }) => angle >= part.from && angle < part.to)
        .map((mark) => clearOfEnds(mark, part, style, flat))
    : thin;
  // On a flat scale, whose lower side is read, letters have their heads towards the hollow edge.
  const across = legendAcross(width, em, !strip, strip);
  const at = strip ? flat : radius - across;
  const sides = sidesOf(scale).flatMap((side) => {
    // What of the side lies on this piece.
    const [first, last] = side === "left" ? [toRadians(scale.from), 0] : [0, toRadians(scale.to)];
    const [one, other] = parts ? [Math.max(first, part.from), Math.min(last, part.to)] : [first, last];
    if (!(other - one > LEAST_OF_SIDE * (last - first))) return [];
    const middle = (one + other) / 2;
    const words = sideWords(scale, side);
    const fits = legend && textWidth(words, em, "regular") <= (other - one) * at - 2;
    return [{ side, middle, words, fits }];
  });
  // One side told and the other not would read as if that were the only one with a meaning: both, or neither.
  const told = sides.every(({ fits }) => fits);
  const placed = sides.map(({ side, middle, words }) => {
    const marks: Mark[] = !told
      ? []
      : strip
        ? [textAt(surface, middle, across, words, em)]
        : textAlong(surface, middle, across, words, em, at, false);
    return { side, marks, missing: told ? [] : [`${say(`angle scales.side ${side}`)}: ${words}`] };
  });
  const missing = placed.flatMap((one) => one.missing);
  const said = placed.flatMap((one) => one.marks);
  const [begin, end] = surface.centre ? [0, TURN] : [part.from, part.to];
  const ofZero = begin <= 0 && end > 0;
  const sized = { width: surface.width, height: surface.height };
  const drawing = withCutRoom(
    {
      ...sized,
      marks: [
        ...surface.cuts(),
        ...scaleMarks(surface, shown, { ...style, ...(ofZero && { unit: degree }) }),
        ...(said.length > 0 ? [group({ x: 0, y: 0 }, said, { name: "legend" })] : []),
        ...(surface.centre ? [group({ x: 0, y: 0 }, cross(surface.centre, radius - width), { name: "centre" })] : []),
        group({ x: 0, y: 0 }, edgeArrow(surface, begin, end), { name: "arrow" }),
      ],
    },
    surface.cutRoom,
  );
  const foot = {
    title: [scale.name, parts].filter(Boolean).join(", "),
    numbers: [
      { value: `${trimmed(scale.step, 3)}°`, label: say("dials.one division") },
      strip
        ? { value: formatSize(surface.width, units), label: say("dials.between cuts") }
        : plate
          ? { value: formatSize(2 * radius, units), label: say("dials.across") }
          : { value: formatSize(radius, units), label: say("angle scales.radius") },
      plate
        ? { value: formatSize(2 * (radius - width), units), label: say("dials.hole") }
        : { value: `${trimmed(-scale.from, 3)}° + ${trimmed(scale.to, 3)}°`, label: say("angle scales.range") },
    ],
    ...(missing.length > 0 && { lines: [say("dials.not on it", { words: missing.join(" · ") })] }),
  };
  const piece: CutOut = { name: "angle scale", drawing, caption: cellFoot(foot, drawing.width, most) };
  return { piece, said: placed.flatMap(({ side, marks }) => (marks.length > 0 ? [side] : [])) };
}

/** The index line, or a vernier on either side of it where the file asks for one, the fixed part has room for it (a sixth of the circle on
 *  either side at most, or 90 mm: it is seldom longer) and the paper too. */
function indexCutOut(scale: PaperScale, most: number, room = Math.min(90, (Math.PI * scale.flat) / 3)): CutOut {
  const height = 7.5;
  const pitch = toRadians(scale.step);
  const asked = scale.vernier;
  const vernier = asked === undefined ? undefined : vernierWithin(scale.step, pitch * scale.flat, asked, room);
  const one = vernier ? vernierMarks(vernier, pitch) : [];
  const zero: Graduation = { angle: 0, rank: 1, value: 0, ...(vernier && { label: "0" }) };
  // A plate is numbered one way alone; past its index the numbers come from the left.
  const left = one.slice(1).map((mark) => ({ ...mark, angle: -mark.angle, value: -mark.value }));
  const marks = [...left, zero, ...(scale.part === "spindle" ? [] : one.slice(1))];
  const reach = (one.at(-1)?.angle ?? 0) + 4 / scale.flat;
  const part = { from: -reach, to: reach, growth: "rightward" } as const;
  const surface =
    scale.shape === "drum"
      ? stripSurface(scale.flat, height, part, true)
      : ringSurface({ outer: scale.radius + height, inner: scale.radius }, 1, part, {
          flip: true,
          lowermost: scale.part !== "spindle",
        });
  const style: ScaleStyle = {
    across: 0,
    marks: markLengths(vernier ? 3 : height - 1),
    number: vernier ? size.source : 0,
    bleed,
  };
  const minutes = vernier && trimmed(vernier.leastCount * 60, 2);
  const { name } = scale;
  const { width, cutRoom } = surface;
  const drawing: Drawing = withCutRoom(
    {
      width,
      height: surface.height,
      marks: [...surface.cuts(), ...scaleMarks(surface, thinned(marks, style, scale.flat), style)],
    },
    cutRoom,
  );
  if (vernier && drawing.width > most) return indexCutOut(scale, most, 0);
  const lines = !vernier
    ? asked === undefined
      ? []
      : [say("angle scales.vernier too long", { parts: asked })]
    : scale.part === "spindle"
      ? []
      : [say("angle scales.read the half")];
  const title = minutes ? say("angle scales.vernier of", { name, minutes }) : say("dials.index of", { name });
  return { name: "companion", drawing, caption: cellFoot({ title, numbers: [], lines }, drawing.width, most) };
}
