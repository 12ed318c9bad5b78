import { operationWords } from "../../cutting/operations.js";
import { block, type Run } from "../shared/block.js";
import { cautionPlaces } from "../shared/cautions.js";
import { beltCard } from "./beltCard.js";
import { beltCards } from "./beltCards.js";

/** Where the belt goes: a row for every position, fast at the top, and the diameters that it serves of each material; beside them all
 *  pulleys, and above them the caution. As few cards as will do; materials for which `cards` have no room are left out. */
export const positionTable = block(
  { operation: "turning", materials: 20, cards: 2, caution: "belt" },
  ({ findings, settings, use, width, height }): Run[] => {
    const { drive } = findings.machine;
    if (drive === undefined || findings.drive === undefined) return [];
    const card = beltCard(findings, settings);
    return beltCards(card, findings, { ...settings, use, width, height }).map(
      (drawing, index): Run => ({
        drawing,
        ...(index > 0 && { startsPage: "always" }),
      }),
    );
  },
  { operation: operationWords, caution: [...cautionPlaces, "none"] },
);
