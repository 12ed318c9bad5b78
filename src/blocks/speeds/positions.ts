import { BY_USE, operationChoices } from "../../cutting/operations.js";
import type { Drawing } from "../../drawing/drawing.js";
import type { Findings } from "../../findings/findings.js";
import { block, giving, type Run } from "../shared/block.js";
import { cautionPlaces } from "../shared/cautions.js";
import { NoRoom } from "../shared/noRoom.js";
import { withSigns } from "../shared/stepSigns.js";
import { size } from "../shared/style.js";
import { beltCardsOf, hasFigures } from "./beltCard.js";
import { type BeltCards, beltCards } from "./beltCards.js";
import { densities, longNames } from "./beltMeasure.js";

/** Where the belt goes: a row for every position, fast at the top, and the diameters that it serves of each material; beside them all
 *  pulleys, and above them the caution. As few cards as will do; materials for which `cards` have no room are left out. */
export const positionTable = giving(
  block(
    { operation: BY_USE as string, materials: 20, cards: 2, caution: "belt" },
    ({ findings, settings, use, width, height }): Run[] => {
      const { drive } = findings.machine;
      if (drive === undefined || findings.drive === undefined) return [];
      const room = { ...settings, use, width, height };
      const signed = withSigns(findings);
      const own = beltCardsOf(findings, settings);
      // Signs rather than names that nobody reads in the cover.
      const plain = signed && longNames(own[0], width) ? [] : [{ findings, key: "", cards: own }];
      const other = signed ? [{ ...signed, cards: undefined }] : [];
      const waysOf = (fewer: boolean) =>
        [...plain, ...other].flatMap(({ findings: named, key, cards }) => {
          const all = (!fewer && cards) || beltCardsOf(named, { ...settings, fewer });
          // What the signs stand for is looked up from where the card is read, if it costs no row and no material.
          const keys = (key === "" ? [size.text] : [size.card, size.text]).map((own) => ({ words: key, size: own }));
          return densities.flatMap((density) =>
            all.flatMap((card) => keys.map((one) => () => beltCards(card, named, room, { density, key: one }))),
          );
        });
      return fewest([() => waysOf(false), () => waysOf(true)], settings.cards).map(
        (drawing, index): Run => ({
          drawing,
          ...(index > 0 && { startsPage: "always" }),
        }),
      );
    },
    { operation: operationChoices, caution: [...cautionPlaces, "none"] },
  ),
);

/** Materials without figures have no column: one that burns or poisons is not named either, as its caution would take the card. */
export const namedOnCards = (
  findings: Findings,
  { operation, materials }: Readonly<Record<string, unknown>>,
): readonly string[] =>
  findings.machine.work.materials
    .slice(0, materials as number)
    .filter((material) => hasFigures(material, operation as string, findings));

/** Of several ways to lay cards out the one with no more cards than so many, then the most materials, then the fewest cards, then the fewest that are
 *  broken, then the most even; the first of equals. Later `groups` of ways only where those before leave materials out or take more than so many cards.
 *  @throws NoRoom where none has room. */
function fewest(groups: readonly (() => readonly (() => BeltCards)[])[], cards: number): readonly Drawing[] {
  let best: BeltCards | undefined;
  let reason: unknown;
  const over = ({ drawings }: BeltCards) => Math.max(0, drawings.length - cards);
  for (const ways of groups) {
    for (const way of ways()) {
      try {
        const found = way();
        const less =
          best === undefined
            ? -1
            : over(found) - over(best) ||
              found.left - best.left ||
              found.drawings.length - best.drawings.length ||
              found.broken - best.broken ||
              found.uneven - best.uneven;
        if (less < 0) best = found;
      } catch (fault) {
        if (!(fault instanceof NoRoom)) throw fault;
        reason ??= fault;
      }
      if (best?.left === 0 && best.drawings.length === 1) return best.drawings;
    }
    if (best?.left === 0 && best.drawings.length <= cards) return best.drawings;
  }
  if (best === undefined) throw reason;
  return best.drawings;
}
