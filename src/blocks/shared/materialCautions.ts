import { hazardsOf } from "../../cutting/hazards.js";
import { sourceTitle } from "../../cutting/sources.js";
import type { Units } from "../../machine/machine.js";
import type { Run } from "./block.js";
import { cautionRuns } from "./cautions.js";
import { paragraph } from "./paragraph.js";
import { size } from "./style.js";

/** What burns or poisons in the materials that a sheet names, with its sources, for the head of each of its pages. Nothing
 *  where nothing does. `sources`: false in a cover, where the hand has no use for them: the speed diagram has them. `units`: the machine's. */
export function materialCautions(
  materials: readonly string[],
  width: number,
  { sources = true, units }: { readonly sources?: boolean; readonly units: Units },
): Run[] {
  const found = hazardsOf(materials);
  if (found.length === 0) return [];
  const from = found.map(
    ({ material, source, where }) =>
      `${material}: ${sourceTitle(source)}${where === sourceTitle(source) ? "" : `, ${where}`}`,
  );
  return [
    ...cautionRuns(
      found.map(({ caution }) => ownFirst(caution, units)),
      width,
      "bold",
    ),
    ...(sources ? paragraph(`${from.join("; ")}.`, width, { size: size.source, gap: 0.3 }) : []),
  ];
}

/** A cutting speed is told in both units: the machine's own comes first, the other in brackets. */
const ownFirst = (words: string, units: Units): string =>
  units === "mm" ? words : words.replace(/([\d.,]+ m\/min) \(([\d.,]+ ft\/min)\)/g, "$2 ($1)");
