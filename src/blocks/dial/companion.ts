import type { Development } from "../../dial/development.js";
import { paperPerRadian } from "../../dial/development.js";
import type { DialFinding, Graduation, Vernier } from "../../dial/finding.js";
import { type Growth, growthOf } from "../../dial/growth.js";
import { vernierMarks } from "../../dial/vernier.js";
import type { Drawing } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { TURN } from "../../quantity/angle.js";
import { size } from "../shared/style.js";
import { bleed } from "./cutMarks.js";
import { withCutRoom } from "./cutOuts.js";
import { legendAcross, markLengths, thinned } from "./dialStyle.js";
import { scaleMarks, textAlong, textAt } from "./scaleMarks.js";
import { ringSurface, type Surface, stripSurface } from "./surface.js";

/** Paper for the fixed part beside a dial, bent as the dial is: its reading edge touches the dial's. `from` and `to` are
 *  angles of the wheel from the index line on, growing with the reading. */
function companionSurface(flat: Development, height: number, from: number, to: number, growth: Growth): Surface {
  const part = { from, to, growth };
  if (flat.kind === "strip") return stripSurface(paperPerRadian(flat), height, part, true);
  const ring = { outer: flat.outer + height, inner: flat.outer };
  return ringSurface(ring, flat.sweep / TURN, part, { flip: true });
}

/** The fixed mark: a small label with one line. */
export function indexSticker(flat: Development, height: number): Drawing {
  const half = 4 / paperPerRadian(flat);
  const surface = companionSurface(flat, height, -half, half, "rightward");
  const zero: Graduation = { angle: 0, rank: 1, value: 0 };
  const marks = scaleMarks(surface, [zero], { across: 0, marks: [height - 1, 0, 0], number: 0, bleed });
  return cutOut(surface, [group({ x: 0, y: 0 }, marks, { name: "index" })]);
}

/** Height of a vernier's paper: marks, numbers and a line of words. */
const vernierHeight = 9;

/** The vernier's marks with the index line as their zero, and its least count in words where the paper is long enough for them. */
export function vernierSticker(
  flat: Development,
  vernier: Vernier,
  dial: Pick<DialFinding, "increases" | "pitch">,
  words: string,
): Drawing {
  const marks = vernierMarks(vernier, dial.pitch);
  const perRadian = paperPerRadian(flat);
  const margin = 3 / perRadian;
  const growth = growthOf(dial);
  const span = marks.at(-1)?.angle ?? 0;
  const surface = companionSurface(flat, vernierHeight, -margin, span + margin, growth);
  const style = { across: 0, marks: markLengths(3), number: size.source, bleed };
  const across = legendAcross(vernierHeight, size.source, flat.kind === "ring", false);
  const perLength = surface.length(across) / (span + 2 * margin);
  const legend =
    textWidth(words, size.source, "regular") > surface.length(across) - 1.5
      ? []
      : flat.kind === "strip"
        ? [textAt(surface, span / 2, across, words, size.source)]
        : textAlong(surface, span / 2, across, words, size.source, perLength, growth === "leftward");
  return cutOut(surface, [
    ...scaleMarks(surface, thinned(marks, style, perRadian), style),
    group({ x: 0, y: 0 }, legend, { name: "legend" }),
  ]);
}

function cutOut(surface: Surface, marks: Drawing["marks"]): Drawing {
  const { width, height, cutRoom } = surface;
  return withCutRoom({ width, height, marks: [...surface.cuts(), ...marks] }, cutRoom);
}
