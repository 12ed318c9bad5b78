import { angleMarks, smallEnd } from "../../dial/angleScale.js";
import type { Graduation } from "../../dial/finding.js";
import { wrapLength } from "../../dial/strip.js";
import { vernierMarks, vernierWithin } from "../../dial/vernier.js";
import { group } from "../../drawing/shapes.js";
import type { AngleScale, Paper, Units } from "../../machine/machine.js";
import { TURN, toRadians } from "../../quantity/angle.js";
import { formatSize, trimmed, trimmedSize } from "../../quantity/format.js";
import { block, type Run } from "../shared/block.js";
import { heading, kept } from "../shared/runs.js";
import { cutLine, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { type CutOut, cutOuts } from "./cutOuts.js";
import { cross } from "./dialPiece.js";
import { scaleMarks, textAlong, textAt } from "./scaleMarks.js";
import { ringSurface, type Surface, stripSurface } from "./surface.js";

/** The angle scales of the file at true size, each with an index line or vernier. */
export const angleScales = block({ copies: 1 }, ({ findings, settings, width, height }) =>
  (findings.machine.angleScales ?? []).flatMap((given): Run[] => {
    const scale = onPaper(given, findings.machine.paper);
    const surface = angleSurface(scale);
    const head = [
      ...heading(scale.name, width, 4),
      ...kept(paragraph(scaleWords(scale, findings.machine.units), width, { size: size.small, gap: 0.3 })),
    ];
    const headHeight = head.reduce((sum, run) => sum + run.drawing.height + (run.gap ?? 0), 0);
    if (surface.width > width - 1 || surface.height > height - 8 - headHeight)
      return [...head, ...paragraph("It is larger than the paper: choose a smaller range or larger paper.", width)];
    const pieces = Array.from({ length: Math.max(1, settings.copies) }, () =>
      scaleCutOut(scale, surface, findings.machine.units),
    );
    return [...head, ...cutOuts([...pieces, indexCutOut(scale)], width)];
  }),
);

/** Seen from above with the operator at the bottom, the index stands on the operator's side. Swung clockwise, the near
 *  edge goes to the left: a scale that turns past a fixed index then shows what stood to the right of zero; past a
 *  fixed scale the index goes left itself. */
export const clockwiseSide = ({ turns }: Pick<AngleScale, "turns">): "left" | "right" => (turns ? "right" : "left");

const margin = toRadians(4);

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

/** `along` is the angle to the right of zero for the reader, radians. The reading edge is the outer one; a flat scale is
 *  drawn as it lies before the operator, whose side of it is the lower one. */
function angleSurface({ shape, radius, flat, width, from, to }: PaperScale): Surface {
  const part = { from: toRadians(from) - margin, to: toRadians(to) + margin, growth: "rightward" } as const;
  if (shape === "drum") return stripSurface(flat, width, part);
  // Like a face dial that grows with clockwise turning; its index stands on top.
  if (part.to - part.from >= TURN)
    return ringSurface({ outer: radius, inner: radius - width }, 1, { from: 0, to: TURN, growth: "leftward" });
  return ringSurface({ outer: radius, inner: radius - width }, 1, part, { lowermost: true });
}

const senseOn = (scale: AngleScale, side: "left" | "right") =>
  side === clockwiseSide(scale) ? ("clockwise" as const) : ("anticlockwise" as const);

/** What swinging to that side does to the work. */
export function sideWords(scale: AngleScale, side: "left" | "right"): string {
  const sense = senseOn(scale, side);
  return scale.part === "vice" || scale.part === "spindle" ? sense : `${smallEnd(scale.part, sense)} small`;
}

function scaleWords(scale: PaperScale, units: Units): string {
  if (scale.part === "spindle")
    return `Degree plate for the spindle's nose, ${formatSize(2 * scale.radius, units)} across, a mark every ${trimmed(scale.step, 3)}°. Numbers grow when the spindle is turned clockwise, seen from the tailstock, under an index on top. Spindle stopped, plug pulled; turn it by hand.`;
  const sides = (["left", "right"] as const).map(
    (side) =>
      `${side === "left" ? "Left" : "right"} of 0: ${senseOn(scale, side)} from above${scale.part === "vice" ? "" : `, ${sideWords(scale, side)}`}`,
  );
  const tool = scale.part === "vice" ? "" : " (chuck at the left, tool on the operator's side)";
  const round = scale.shape === "drum" ? "Round a bare cylinder of radius" : "Radius";
  return `${round} ${trimmedSize(scale.radius, units)}, a mark every ${trimmed(scale.step, 3)}°. ${sides.join("; ")}${tool}. The scale ${scale.turns ? "turns with the part past a fixed index" : "is fixed; the index turns with the part"}. A taper's swivel is half its included angle. Prove it on a test piece or with a sine bar before you trust it.`;
}

function scaleCutOut(scale: PaperScale, surface: Surface, units: Units): CutOut {
  const { radius, flat, width } = scale;
  const longest = Math.max(1.2, Math.min(4.5, width - 2.2 - size.tiny * 1.5));
  const style = { across: 0, marks: [longest, longest * 0.75, longest * 0.5] as const, number: 2.3 };
  const plate = scale.part === "spindle";
  const marks = angleMarks(plate ? { ...scale, to: 360 - scale.step / 2 } : scale, flat).map((mark) =>
    mark.value === 0 ? { ...mark, label: "0°" } : mark,
  );
  const across = width - 1.35;
  const at = scale.shape === "drum" ? flat : radius - across;
  const sides = (["left", "right"] as const).flatMap((side) => {
    if (scale.part === "spindle") return [];
    const middle = toRadians(side === "left" ? scale.from : scale.to) / 2;
    if (middle === 0) return [];
    const words = sideWords(scale, side);
    return scale.shape === "drum"
      ? [textAt(surface, middle, across, words, size.tiny)]
      : textAlong(surface, middle, across, words, size.tiny, at, false);
  });
  return {
    name: "angle scale",
    caption:
      scale.shape === "drum"
        ? `${scale.name}: ${formatSize(surface.width, units)} between the cut ends`
        : `${scale.name}: ${formatSize(radius, units)} radius at the edge with the marks`,
    drawing: {
      width: surface.width,
      height: surface.height,
      marks: [
        group({ x: 0, y: 0 }, surface.outline(cutLine), { name: "cut" }),
        ...scaleMarks(surface, marks, style),
        ...(sides.length > 0 ? [group({ x: 0, y: 0 }, sides, { name: "legend" })] : []),
        ...(surface.centre ? [group({ x: 0, y: 0 }, cross(surface.centre, radius - width), { name: "centre" })] : []),
      ],
    },
  };
}

/** The index line, or a vernier on either side of it where the file asks for one. */
function indexCutOut(scale: PaperScale): CutOut {
  const height = 7.5;
  const pitch = toRadians(scale.step);
  // Either half may span a sixth of the circle at most, or 90 mm: the fixed part beside the scale is seldom longer.
  const room = Math.min(90, (Math.PI * scale.flat) / 3);
  const asked = scale.vernier;
  const vernier = asked === undefined ? undefined : vernierWithin(scale.step, pitch * scale.flat, asked, room);
  const one = vernier ? vernierMarks(vernier, pitch) : [];
  const zero: Graduation = { angle: 0, rank: 1, value: 0, ...(vernier && { label: "0" }) };
  // A plate is numbered one way alone; past its index the numbers come from the left.
  const left = one.slice(1).map((mark) => ({ ...mark, angle: -mark.angle }));
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
  const longest = vernier ? 2.9 : height - 0.5;
  const minutes = vernier && `${trimmed(vernier.leastCount * 60, 2)} minutes`;
  return {
    name: "companion",
    caption: vernier
      ? `vernier, reads ${minutes}${scale.part === "spindle" ? "" : "; read the half on the side of the reading"}`
      : asked === undefined
        ? "index line"
        : `index line; a vernier of ${asked} is too long for this radius and step`,
    drawing: {
      width: surface.width,
      height: surface.height,
      marks: [
        group({ x: 0, y: 0 }, surface.outline(cutLine), { name: "cut" }),
        ...scaleMarks(surface, marks, { across: 0, marks: [longest, 2.3, 1.7], number: 2 }),
      ],
    },
  };
}
