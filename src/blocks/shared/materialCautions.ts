import { hazardsOf } from "../../cutting/hazards.js";
import { sourceTitle } from "../../cutting/sources.js";
import type { Run } from "./block.js";
import { cautionRuns } from "./cautions.js";
import { paragraph } from "./paragraph.js";
import { size } from "./style.js";

/** What burns or poisons in the materials that a sheet names, with its sources, for the head of each of its pages. Nothing
 *  where nothing does. `sources`: false in a cover, where the hand has no use for them: the speed diagram has them. */
export function materialCautions(materials: readonly string[], width: number, { sources = true } = {}): Run[] {
  const found = hazardsOf(materials);
  if (found.length === 0) return [];
  const from = found.map(
    ({ material, source, where }) =>
      `${material}: ${sourceTitle(source)}${where === sourceTitle(source) ? "" : `, ${where}`}`,
  );
  return [
    ...cautionRuns(
      found.map(({ caution }) => caution),
      width,
      "bold",
    ),
    ...(sources ? paragraph(`${from.join("; ")}.`, width, { size: size.source, gap: 0.3 }) : []),
  ];
}
