import { bandOf, type Development } from "../../dial/development.js";
import type { DialFinding, Graduation } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { circle, group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { TURN, toRadians } from "../../quantity/angle.js";
import { largestOf } from "../../quantity/extremes.js";
import { say } from "../../words/say.js";
import { objectLine, rowLine, size } from "../shared/style.js";
import { arrow } from "./edgeArrow.js";
import { aboutZero, clearOfEachOther, evenlyRound, magnified, NEXT_NUMBER, type Seen } from "./nearZero.js";
import { digitHeight } from "./scaleMarks.js";
import type { IndexPlace } from "./surface.js";

export type Placed = {
  readonly dial: Pick<DialFinding, "increases" | "pitch">;
  readonly flat: Development;
  readonly shape: DialFinding["shape"];
  /** Its bands of marks, from the edge that is read inwards, with the numbers that stand on it. */
  readonly bands: readonly (readonly Graduation[])[];
  readonly index?: IndexPlace;
  /** Its numbers stand upright at an index at the side, across the ring. */
  readonly sideways?: boolean;
};

/** A dial in its place on the wheel, with the index, its own marks about zero, and which way both wheel and numbers go: a drum or a cone
 *  from above with the operator below, a face (and a cone whose index is not on top) as the operator sees it. */
export const dialInPlace = (placed: Placed): Drawing =>
  placed.shape === "face" || (placed.shape === "bevel" && (placed.index ?? "top") !== "top")
    ? ringInPlace(placed)
    : drumInPlace(placed);

const small = (words: string, at: Point, anchor: "start" | "middle" | "end" = "middle", bold = false): Mark =>
  text(words, at, { size: size.source, anchor, weight: bold ? "bold" : "regular" });

/** Height of a band in the picture where there are several, and lengths of its marks, mm. */
const ROW = 4.9;
const lengths = { 1: 2.1, 2: 1.6, 3: 1.2 } as const;
/** What lies farther round a drum is not seen, degrees. */
const LIMB = 78;
/** And so far round its numbers do not crowd, degrees. */
const SURE = 45;

function drumInPlace({ dial, flat, shape, bands }: Placed): Drawing {
  const width = 46;
  const [middle, radius] = [width / 2, 15];
  const sign = growthOf(dial) === "leftward" ? -1 : 1;
  const edge = 9;
  const high = Math.max(8.5, bands.length * ROW);
  const low = edge + high;
  // A cone's larger end, at which it is read, is at the fixed part.
  const slim = shape === "bevel" && flat.kind === "ring" ? Math.max(0.6, flat.inner / flat.outer) : 1;
  const half = (y: number) => radius * (1 - ((1 - slim) * (y - edge)) / high);
  // On the fixed part where it fits, else beside that.
  const named = textWidth(say("dials.index"), size.source, "regular");
  const index = named <= radius - 2 ? middle + 1.4 : middle + radius + 1.2;
  const side = (on: 1 | -1) =>
    line({ x: middle + on * radius, y: edge }, { x: middle + on * half(low), y: low }, objectLine);
  const across = (y: number, pen = objectLine) => line({ x: middle - half(y), y }, { x: middle + half(y), y }, pen);
  const marks: Mark[] = [
    // The fixed part with its index line, the dial, the wheel's rim and handle.
    rectangle({ x: middle - radius, y: 0.3 }, 2 * radius, edge - 0.6, { pen: rowLine }),
    line({ x: middle, y: 3.6 }, { x: middle, y: edge - 0.4 }, objectLine),
    small(say("dials.index"), { x: index, y: 4.8 }, "start"),
    across(edge),
    across(low),
    side(-1),
    side(1),
    line({ x: middle - 5, y: low }, { x: middle - 5, y: low + 2.5 }, rowLine),
    line({ x: middle + 5, y: low }, { x: middle + 5, y: low + 2.5 }, rowLine),
    rectangle({ x: 1, y: low + 2.5 }, width - 2, 6, { pen: objectLine }, 2),
    rectangle({ x: width - 8, y: low + 8.5 }, 4.6, 7, { pen: objectLine }, 1.4),
  ];
  const at = (degrees: number, y: number): Point => ({
    x: middle + sign * half(y) * Math.sin(toRadians(degrees)),
    y,
  });
  const step = magnified(bands, dial.pitch);
  for (const [row, band] of bands.entries()) {
    const top = edge + row * (high / bands.length);
    if (row > 0) marks.push(across(top, rowLine));
    const seen = distinct(
      aboutZero(band, dial.pitch, step, LIMB),
      ({ degrees }) => radius * Math.sin(toRadians(degrees)),
    );
    const foot = top + lengths[1] + 0.4 + size.source * digitHeight;
    for (const { degrees, rank } of seen) marks.push(line(at(degrees, top), at(degrees, top + lengths[rank]), rowLine));
    const along = ({ degrees }: Seen) => sign * half(foot) * Math.sin(toRadians(degrees));
    for (const { degrees, label } of clearOfEachOther(seen, along, half(foot) - 0.8, SURE))
      marks.push(small(label, at(degrees, foot), "middle", true));
  }
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

/** Between two marks that can be told apart in a print of black dots, mm. */
const APART = 0.45;

/** Marks towards the limb of a drum crowd, and print as one: past the number beside the zero, from there on, those that do not. */
function distinct(seen: readonly Seen[], along: (one: Seen) => number): Seen[] {
  const kept: Seen[] = [];
  for (const one of [...seen].sort((a, b) => Math.abs(a.degrees) - Math.abs(b.degrees)))
    if (
      Math.abs(one.degrees) <= NEXT_NUMBER + 1e-9 ||
      kept.every((other) => Math.abs(along(one) - along(other)) >= APART)
    )
      kept.push(one);
  return kept;
}

/** Marks of a face that stand no nearer than this are drawn as they are, degrees. */
const AS_IT_IS = 2.4;

function ringInPlace({ dial, flat, bands, index = "top", sideways = false }: Placed): Drawing {
  const inner = 8.6;
  const natural = (dial.pitch * 360) / TURN;
  const whole = natural >= AS_IT_IS && bandOf(flat) > 0;
  const step = whole ? natural : magnified(bands, dial.pitch);
  const seenOf = (band: readonly Graduation[]) => aboutZero(band, dial.pitch, step, whole ? 180 : 130);
  const widest = largestOf([
    0,
    ...bands.flatMap((band) => seenOf(band).map(({ label = "" }) => textWidth(label, size.source, "bold"))),
  ]);
  const drop = (size.source * digitHeight) / 2;
  const tall = sideways ? widest / 2 : drop;
  const long = 0.85 * lengths[1] + 0.5;
  const each = Math.max(6.4 / bands.length, ROW, long + 2 * tall + 0.5);
  const outer = inner + each * bands.length;
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
  for (const [row, band] of bands.entries()) {
    const edge = outer - row * each;
    if (row > 0) marks.push(circle(centre, edge, { pen: rowLine }));
    const seen = seenOf(band);
    for (const { degrees, rank } of seen)
      marks.push(line(at(degrees, edge), at(degrees, edge - 0.85 * lengths[rank]), rowLine));
    const middle = edge - long - tall;
    const along = ({ degrees }: Seen) => toRadians(degrees) * (middle - drop);
    const numbers = whole ? evenlyRound(seen, middle - drop) : clearOfEachOther(seen, along, Math.PI * (middle - drop));
    for (const { degrees, label } of numbers) {
      // As on the dial itself: upright at the index, turned away from it.
      const turn = toRadians(sign * degrees + (atSide && !sideways ? up : 0));
      const { x, y } = at(degrees, middle);
      const foot = { x: x - Math.sin(turn) * drop, y: y + Math.cos(turn) * drop };
      marks.push(text(label, foot, { size: size.source, weight: "bold", anchor: "middle", turn }));
    }
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
  const half = Math.max(
    centre.x,
    textWidth(grows, size.source, "regular") / 2,
    index === "top" || index === "bottom" ? told + 1.2 : 0,
  );
  marks.push(small(say("dials.index"), { x: from, y: level }, anchor));
  marks.push(small(grows, { x: centre.x, y: centre.y + outer + 7.6 }));
  return { width: 2 * half, height: centre.y + outer + 8.6, marks: [group({ x: half - centre.x, y: 0 }, marks)] };
}
