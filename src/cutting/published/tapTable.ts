import { plastics } from "./materials.js";
import { highSpeedSteel, rows, type Source } from "./source.js";

/** Machine tapping under power; a tap in the hand or a spindle turned by hand needs none of it. It differs up to twofold from
 *  the other tap maker's figures (`tapSpeeds.ts`) in the same material. */
export const tapTable: Source = {
  key: "LAVALLEE",
  title: "a tap maker's table of tapping speeds",
  speeds: rows(
    {
      operation: "tapping",
      tool: highSpeedSteel,
      unit: "ft/min",
      where: "table of tapping speeds",
      confidence: "read",
    },
    [
      ["free-cutting steel", 40, 80],
      ["stainless steel", 5, 35],
      ["grey cast iron", 50, 100],
      ["brass", 50, 200],
      ["bronze", 50, 100],
      ["bronze", 20, 80, "aluminium bronze"],
      ["copper", 30, 60],
      ["aluminium", 50, 150],
      ["magnesium", 75, 200],
      ["titanium", 10, 40, "alloys"],
      ["zinc alloy", 60, 150, "die castings"],
      ...plastics.map((material) => [material, 50, 100, "thermoplastic"] as const),
    ],
  ),
};
