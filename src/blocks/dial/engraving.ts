import { development } from "../../dial/development.js";
import { formatFixed, formatLength } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { type CutOut, cutOuts, withCutRoom } from "./cutOuts.js";
import { dialPlan } from "./dialCutOuts.js";
import { type DialPlan, piecesOf } from "./dialPiece.js";

/** So that the outline keeps its whole width, mm. */
const edge = 0.5;

/** Every dial for laser or engraver: on the bare metal, so without paper and glue, one of each, and how a rotary axis is
 *  set for a drum. No mark runs over an edge: metal is not trimmed to them, and a laser would cut what holds the ring. */
export const engraving = block({ copies: 1 }, ({ handwheels, findings, settings, width, height }): readonly Run[] => {
  const { units } = findings.machine;
  // Lasers and engravers are set up in millimetres as often as not, as a DXF is.
  const length = (mm: number) =>
    `${formatLength(mm, units, units === "mm" ? 4 : 5)}${units === "mm" ? "" : ` (${formatFixed(mm, 4)} mm)`}`;
  const bare = { paper: 0, adhesive: 0 };
  const cut = handwheels.flatMap((finding): CutOut[] => {
    const plan = dialPlan(finding, findings.machine);
    const wish = finding.handwheel.dial;
    const flat = wish && development(wish.shape === "drum" ? withoutWrap(wish) : wish, bare);
    if (plan === undefined || flat === undefined) return [];
    const { lap: _, ...rest } = plan;
    const metal: DialPlan = { ...rest, flat, metal: true };
    const pieces = piecesOf(metal, { width: width - 1, height: height - 8 });
    const { name } = finding.handwheel;
    return Array.from({ length: Math.max(1, settings.copies) }, () =>
      (pieces ?? []).map((piece): CutOut => {
        const title =
          piece.pieces > 1 ? `${name}, ${say("dials.piece of", { piece: piece.piece, pieces: piece.pieces })}` : name;
        const along = say("engraving.along", { title, length: length(piece.length) });
        const rotary = flat.kind === "strip" ? `; ${say("engraving.rotary", { length: length(flat.length) })}` : "";
        return { drawing: withCutRoom(piece.drawing, edge), name: "engraving", caption: `${along}${rotary}` };
      }),
    ).flat();
  });
  if (cut.length === 0) return paragraph(say("engraving.no diameter"), width);
  return cutOuts(cut, width);
});

/** A wrap was measured over paper; metal wants its own diameter. */
function withoutWrap<T extends { readonly wrap?: number }>(drum: T): Omit<T, "wrap"> {
  const { wrap: _, ...rest } = drum;
  return rest;
}
