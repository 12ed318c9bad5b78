import { hazardOf } from "../../cutting/hazards.js";
import { BY_USE, operationChoices } from "../../cutting/operations.js";
import type { Drawing } from "../../drawing/drawing.js";
import type { Findings } from "../../findings/findings.js";
import { say } from "../../words/say.js";
import { block, giving, type Run } from "../shared/block.js";
import { cautionPlaces } from "../shared/cautions.js";
import { NoRoom, unlessNoRoom } from "../shared/noRoom.js";
import { calledBySigns, withSigns } from "../shared/stepSigns.js";
import { size } from "../shared/style.js";
import { beltCardsOf, hasFigures } from "./beltCard.js";
import { type BeltCards, beltCards } from "./beltCards.js";
import { densities, longNames } from "./beltMeasure.js";
import { byWorth } from "./beltPlan.js";

/** Where the belt goes: a row for every position, fast at the top, and the diameters that it serves of each material; beside them all
 *  pulleys, and above them the caution. As few cards as will do; materials for which `cards` have no room are left out. */
export const positionTable = giving(
  block(
    { operation: BY_USE as string, materials: 20, cards: 2, caution: "belt" },
    ({ findings, settings, use, width, height, before = height }): Run[] => {
      const { drive } = findings.machine;
      if (drive === undefined || findings.drive === undefined) return [];
      const room = { ...settings, use, width, height };
      /** On more cards than one, of which others share the last; or on one that they share. */
      const laid = (how: (first: number) => BeltCards): BeltCards => {
        const own = how(before);
        if (own.count > 1 || before === height) return own;
        const shared = unlessNoRoom(() => how(height));
        return shared?.count === 1 ? shared : own;
      };
      const signed = withSigns(findings);
      // Signs rather than names that nobody reads in the cover, and where text calls the belts so; else the names that all sheets have.
      const long = longNames(beltCardsOf(findings, settings)[0], width) || calledBySigns(findings);
      const named = signed && long ? [signed] : [{ findings, key: "" }];
      const waysOf = (noted: boolean) =>
        named.flatMap(({ findings: own, key: words }) => {
          const cards = beltCardsOf(own, { ...settings, noted });
          // What the signs stand for is looked up from where the card is read, if it costs no row and no material.
          const keys = (words === "" ? [size.text] : [size.card, size.text]).map((em) => ({ words, size: em }));
          return densities.flatMap((density) =>
            cards.flatMap((card) =>
              keys.map((key) => () => laid((first) => beltCards(card, own, { ...room, first }, { density, key }))),
            ),
          );
        });
      const groups = [() => waysOf(false), () => waysOf(true)];
      return (
        signed && long ? withoutLongLabels(() => bestOf(groups, settings.cards)) : bestOf(groups, settings.cards)
      ).map(
        (drawing, index): Run => ({
          drawing,
          ...(index > 0 && { startsPage: "always" }),
        }),
      );
    },
    { operation: operationChoices, caution: [...cautionPlaces, "none"] },
  ),
);

/** Materials without figures have no column, and of one that burns or poisons the card names the sheet that has its caution. */
export const namedOnCards = (
  findings: Findings,
  { operation, materials }: Readonly<Record<string, unknown>>,
): readonly string[] =>
  findings.machine.work.materials
    .slice(0, materials as number)
    .filter((material) => hasFigures(material, operation as string, findings));

/** As many of the first materials as leave out the last whose caution takes room from the rows; undefined where none does, or it is the
 *  first. */
export function withoutLastCaution<S extends Readonly<Record<string, unknown>>>(
  findings: Findings,
  settings: S,
): S | undefined {
  const named = namedOnCards(findings, settings).filter((material) => hazardOf(material) !== undefined);
  const last = findings.machine.work.materials.indexOf(named.at(-1) ?? "");
  return last > 0 ? { ...settings, materials: last } : undefined;
}

/** What signs stand for takes room on every card: where that is wanting, shorter labels are the first remedy. */
function withoutLongLabels<T>(make: () => T): T {
  try {
    return make();
  } catch (fault) {
    if (!(fault instanceof NoRoom) || fault.remedy === undefined) throw fault;
    throw new NoRoom(fault.told, say("no room.shorter labels", { else: fault.remedy }));
  }
}

/** Of several ways to lay cards out the best, of equals the first, which is in the largest type. Later `groups` only where
 *  no way of those before has all on one card.
 *  @throws NoRoom where none has room. */
function bestOf(groups: readonly (() => readonly (() => BeltCards)[])[], cards: number): readonly Drawing[] {
  const better = byWorth(cards);
  let best: BeltCards | undefined;
  let reason: unknown;
  const complete = () => best?.left === 0 && best.count === 1 && !best.bare;
  for (const ways of groups) {
    for (const way of ways()) {
      try {
        const found = way();
        if (best === undefined || better(found, best) < 0) best = found;
      } catch (fault) {
        if (!(fault instanceof NoRoom)) throw fault;
        reason ??= fault;
      }
      if (complete()) return best?.drawings ?? [];
    }
  }
  if (best === undefined) throw reason;
  return best.drawings;
}
