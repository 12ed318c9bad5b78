import { highSpeedSteel, rows, type Source } from "./source.js";

export const tapSpeeds: Source = {
  key: "CLARKSON",
  title: "a tap maker's recommended speeds for taps",
  speeds: rows(
    {
      operation: "tapping",
      tool: highSpeedSteel,
      unit: "ft/min",
      where: "Recommended Cutting Speeds for HSS Taps",
      confidence: "read",
    },
    [
      ["mild steel", 50, 60],
      ["medium-carbon steel", 50, 60, "plain carbon steel under 250 HB"],
      ["high-carbon steel", 32, 50, { figureFor: "alloy steel under 250 HB" }],
      ["alloy steel", 32, 50, "under 250 HB"],
      ["tool steel", 22, 32, { figureFor: "alloy steel of 250 to 350 HB" }],
      ["stainless steel", 16, 22, "austenitic"],
      ["free-cutting stainless steel", 22, 32],
      ["grey cast iron", 50, 80, "under 150 HB"],
      ["grey cast iron", 30, 40, "150 to 300 HB"],
      ["brass", 50, 65],
      ["bronze", 10, 16, "high strength"],
      ["copper", 22, 40],
      ["aluminium", 32, 50, "unalloyed"],
      ["aluminium", 50, 150, "with silicon under 10 %"],
    ],
  ),
};
