import { development } from "../../dial/development.js";
import { formatFixed, formatLength } from "../../quantity/format.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/table.js";
import { type CutOut, cutOuts } from "./cutOuts.js";
import { piecesOf } from "./dialPiece.js";
import { dialPlan } from "./dialPieces.js";

/** Every dial for laser or engraver: on the bare metal, so without paper and glue, one of each, and how a rotary axis is
 *  set for a drum. */
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
    const { lap: _, ...metal } = { ...plan, flat };
    const pieces = piecesOf(metal, { width: width - 1, height: height - 8 });
    const { name } = finding.handwheel;
    return Array.from({ length: Math.max(1, settings.copies) }, () =>
      (pieces ?? []).map((piece): CutOut => {
        const part = piece.pieces > 1 ? `, piece ${piece.piece} of ${piece.pieces}` : "";
        const rotary = flat.kind === "strip" ? `; rotary axis: ${length(flat.length)} are 360 degrees` : "";
        return {
          drawing: piece.drawing,
          name: "engraving",
          caption: `${name}${part}: ${length(piece.length)} along the edge${rotary}`,
        };
      }),
    ).flat();
  });
  if (cut.length === 0)
    return paragraph(
      "No dial in the file has a bare diameter: a wrap measured in paper says nothing of the metal.",
      width,
    );
  return cutOuts(cut, width);
});

/** A wrap was measured over paper; metal wants its own diameter. */
function withoutWrap<T extends { readonly wrap?: number }>(drum: T): Omit<T, "wrap"> {
  const { wrap: _, ...rest } = drum;
  return rest;
}
