import { operationWords } from "../../cutting/operations.js";
import type { Drawing } from "../../drawing/drawing.js";
import { block, type Run } from "../shared/block.js";
import { cautionPlaces } from "../shared/cautions.js";
import { NoRoom } from "../shared/noRoom.js";
import { beltCard } from "./beltCard.js";
import { type BeltCards, beltCards } from "./beltCards.js";

/** Where the belt goes: a row for every position, fast at the top, and the diameters that it serves of each material; beside them all
 *  pulleys, and above them the caution. As few cards as will do; materials for which `cards` have no room are left out. */
export const positionTable = block(
  { operation: "turning", materials: 20, cards: 2, caution: "belt" },
  ({ findings, settings, use, width, height }): Run[] => {
    const { drive } = findings.machine;
    if (drive === undefined || findings.drive === undefined) return [];
    const room = { ...settings, use, width, height };
    const ways = [false, true].map(
      (shared) => () => beltCards(beltCard(findings, { ...settings, shared }), findings, room),
    );
    return fewest(ways).map(
      (drawing, index): Run => ({
        drawing,
        ...(index > 0 && { startsPage: "always" }),
      }),
    );
  },
  { operation: operationWords, caution: [...cautionPlaces, "none"] },
);

/** Of several ways to lay cards out the one with the most materials, then the fewest cards; the first of equals.
 *  @throws NoRoom where none has room. */
function fewest(ways: readonly (() => BeltCards)[]): readonly Drawing[] {
  const found: BeltCards[] = [];
  let reason: unknown;
  for (const way of ways)
    try {
      found.push(way());
    } catch (fault) {
      if (!(fault instanceof NoRoom)) throw fault;
      reason ??= fault;
    }
  const [best] = found.sort((a, b) => a.left - b.left || a.drawings.length - b.drawings.length);
  if (best === undefined) throw reason;
  return best.drawings;
}
