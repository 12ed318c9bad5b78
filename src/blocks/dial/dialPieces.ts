import { bandOf, type Development } from "../../dial/development.js";
import type { DialFinding } from "../../dial/finding.js";
import { growthOf } from "../../dial/growth.js";
import { farthestReading, USUAL_DISTANCE } from "../../dial/legibility.js";
import { group, line } from "../../drawing/shapes.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { travelWords } from "../../findings/travelWords.js";
import type { Machine, Units } from "../../machine/machine.js";
import { type Measure, measuresOf } from "../../paper/measuredPiece.js";
import { TURN } from "../../quantity/angle.js";
import { formatSize } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { block } from "../shared/block.js";
import { together } from "../shared/runs.js";
import { cutLine, fine, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { indexSticker, vernierSticker } from "./companion.js";
import { type CutOut, cutOuts } from "./cutOuts.js";
import { bandsOf, type DialPiece, type DialPlan, dialStyle, LEAST_NUMBERED_BAND, piecesOf } from "./dialPiece.js";
import { dialEssentials, dialLegend, dialWords, leastCount } from "./dialWords.js";
import { digitHeight } from "./scaleMarks.js";
import { dialSurface } from "./surface.js";

/** Every dial of any shape at true size, with spare copies, index line or vernier and a blank, packed together. */
export const dialPieces = block(
  { copies: 2, index: true, blank: false },
  ({ handwheels, findings, settings, width, height }) => {
    const { machine } = findings;
    const room = { width: width - 1, height: height - 8 };
    const dials = handwheels.flatMap((finding) => {
      const plan = dialPlan(finding, machine);
      if (plan === undefined || finding.dial === undefined) return [];
      return [{ finding, dial: finding.dial, plan, pieces: piecesOf(plan, room) }];
    });
    if (dials.length === 0) return [];
    const words = dials.flatMap(({ finding, dial, plan, pieces }) =>
      together([
        ...paragraph(finding.handwheel.name, width, { size: size.heading, weight: "bold", gap: 3 }),
        ...paragraph(dialWords(finding, dial, machine.units), width, { size: size.small, gap: 0.3 }),
        ...travelWords(finding, machine.units).flatMap((line) =>
          paragraph(line, width, { size: size.small, weight: "bold", ink: "accent", gap: 0.3 }),
        ),
        ...paragraph(measureWords(plan, pieces, machine.units), width, { size: size.small }),
      ]),
    );
    const cut = dials.flatMap(({ finding, dial, plan, pieces }) => {
      const { name } = finding.handwheel;
      if (pieces === undefined) return [];
      const copies = Array.from({ length: Math.max(1, settings.copies) }, (_, copy) =>
        pieces.map((piece) => dialCutOut(name, plan.flat, piece, copy + 1, machine.units)),
      ).flat();
      return [
        ...copies,
        ...(settings.index ? [companionCutOut(finding, dial, plan.flat)] : []),
        ...(settings.blank && pieces.length === 1 ? [blankCutOut(name, plan)] : []),
      ];
    });
    const above = [...words, ...paragraph(cuttingWords, width, { size: size.small, gap: 2.5 })];
    return [...above, ...cutOuts(cut, width, { height, above })];
  },
);

const cuttingWords =
  "Cutting: inside circles and hollow edges first, while there is paper to hold, then the long edges, the ends last. " +
  "Grain: paper bends easily about a line along its grain, so let the grain run across a strip; most paper has it along the sheet's longer side.";

export function dialPlan(finding: HandwheelFinding, machine: Machine): (DialPlan & { dial: DialFinding }) | undefined {
  const { handwheel, dial } = finding;
  const wish = handwheel.dial;
  if (dial === undefined || wish === undefined) return undefined;
  const { flat } = dial;
  if (flat === undefined || dial.rows.length === 0) return undefined;
  return {
    dial,
    flat,
    legend: dialLegend(finding, dial, machine),
    essentials: dialEssentials(finding, dial, machine),
    ...(wish.lap !== undefined && { lap: wish.lap }),
    ...(wish.index !== undefined && { index: wish.index }),
  };
}

function dialCutOut(name: string, flat: Development, piece: DialPiece, copy: number, units: Units): CutOut {
  const size = (mm: number) => formatSize(mm, units);
  const part = piece.pieces > 1 ? `, piece ${piece.piece} of ${piece.pieces}` : "";
  const measure =
    flat.kind === "strip"
      ? `${size(piece.length)} between the cut ends`
      : piece.pieces === 1 && flat.sweep > TURN - 1e-9
        ? `${size(2 * flat.outer)} across the outer circle`
        : `outer radius ${size(flat.outer)}, ${size(piece.length)} along its arc`;
  return { drawing: piece.drawing, name: flat.kind, caption: `${name}, copy ${copy}${part}: ${measure}` };
}

function companionCutOut(finding: HandwheelFinding, dial: DialFinding, flat: Development): CutOut {
  const { handwheel } = finding;
  if (dial.vernier === undefined)
    return { drawing: indexSticker(flat, 9), name: "companion", caption: `${handwheel.name}: index line` };
  const count = leastCount(dial);
  return {
    drawing: vernierSticker(flat, dial.vernier, dial, `vernier ${count}`),
    name: "companion",
    caption: `${handwheel.name}: vernier, reads ${count}; its 0 is the index line`,
  };
}

function blankCutOut(name: string, { dial, flat, lap = 0 }: DialPlan): CutOut {
  const surface = dialSurface(flat, { from: 0, to: TURN, tab: lap, growth: growthOf(dial) });
  const { centre } = surface;
  const marks = [
    group({ x: 0, y: 0 }, surface.outline(cutLine, lap), { name: "cut" }),
    ...(centre
      ? [
          line({ x: centre.x - 4, y: centre.y }, { x: centre.x + 4, y: centre.y }, fine),
          line({ x: centre.x, y: centre.y - 4 }, { x: centre.x, y: centre.y + 4 }, fine),
        ]
      : []),
  ];
  return {
    drawing: { width: surface.width, height: surface.height, marks },
    name: "blank",
    caption: `${name}: blank, to try the fit first`,
  };
}

function measureWords(
  plan: DialPlan & { readonly dial: DialFinding },
  pieces: readonly DialPiece[] | undefined,
  units: Units,
): string {
  const { flat, dial, lap } = plan;
  if (pieces === undefined)
    return "This dial is too large for the paper even in pieces: choose larger paper in the file.";
  const bands = bandsOf(dial).length;
  const cramped =
    bandOf(flat) / bands < LEAST_NUMBERED_BAND
      ? ` Its ${bands} rows are only ${formatSize(bandOf(flat) / bands, units, 1)} high each, too low for numbers: a wider ring or strip, fewer rows or one scale has room for them.`
      : "";
  return sizeWords(dial, flat, pieces.length, lap, units) + cramped + figureWords(plan, units) + leftWords(pieces);
}

/** What is on none of the pieces, for a pencil. */
function leftWords(pieces: readonly DialPiece[]): string {
  const [first, ...others] = pieces.map(({ left }) => left);
  const missing = (first ?? []).filter((words) => others.every((left) => left.includes(words)));
  return missing.length === 0
    ? ""
    : ` No room on it for ${missing.map((words) => `“${words}”`).join(", ")}: write it beside the dial.`;
}

/** Figures too low for the distance that one reads from are told of, with that distance. */
function figureWords(plan: DialPlan, units: Units): string {
  const heights = dialStyle(plan).bands.flatMap(({ number }) => (number > 0 ? [number * digitHeight] : []));
  const least = Math.min(USUAL_DISTANCE, ...heights.map(farthestReading));
  if (least >= USUAL_DISTANCE) return "";
  return ` Its figures are read well from up to ${units === "mm" ? formatSize(10 * Math.floor(least / 10), units, 0) : formatSize(inMm(Math.floor(fromMm(least, units)), units), units, -1)}; a wider ring or strip has room for larger ones.`;
}

function sizeWords(
  dial: DialFinding,
  flat: Development,
  pieces: number,
  lap: number | undefined,
  units: Units,
): string {
  const size = (mm: number) => formatSize(mm, units);
  const wrong = "If it does not, print again with the printer's correction.";
  const joint = lap
    ? "Glue the tab under the other end up to the line; the dashes must run on across the joint."
    : "Butt the ends; the dashes must run on across the joint.";
  const parts = pieces > 1 ? ` in ${pieces} numbered pieces, which add up exactly` : "";
  const [first, second] = measuresOf(dial, units);
  const slack = (measure: Measure | undefined) => `give or take ${size(measure?.slack ?? 0)}`;
  if (flat.kind === "strip")
    return `The strip must measure ${size(flat.length)} between its cut ends, ${slack(first)}${parts}. ${wrong} ${joint}`;
  if (flat.sweep > TURN - 1e-9)
    return `The ring must measure ${size(2 * flat.outer)} across and its hole ${size(2 * flat.inner)}, ${slack(first)}${parts}. ${wrong} ${pieces === 1 ? "Centre it by the cross before you cut it out." : joint}`;
  // The chord of the whole is nowhere on a ring in pieces.
  const chord = second && pieces === 1 ? `, or ${size(second.wanted)} (${slack(second)}) on ${second.what}` : "";
  return `The cone's ring must measure ${size(flat.outer * flat.sweep)} along its outer edge, ${slack(first)}${parts}${chord}; radii ${size(flat.outer)} and ${size(flat.inner)}. ${wrong} ${joint}`;
}
