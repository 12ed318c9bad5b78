import { highSpeedSteel, rows, type Source } from "./source.js";

export const jones: Source = {
  key: "JONES1914",
  title: "F. D. Jones, Turning and Boring (1914)",
  speeds: rows(
    {
      operation: "turning",
      tool: highSpeedSteel,
      unit: "ft/min",
      where: "ch. II, Average Cutting Speeds for Turning",
      toolUnnamed: true,
      confidence: "read",
    },
    [
      ["mild steel", 45, 65],
      [
        "free-cutting steel",
        45,
        65,
        { figureFor: "mild steel", note: "none was read for free-cutting steel, which allows more" },
      ],
      ["grey cast iron", 40, 50],
      ["tool steel", 25, 35, "annealed"],
      ["brass", 150, 200, "soft yellow brass"],
      ["bronze", 35, 80, "hard, phosphor and other tough bronzes"],
    ],
  ),
};
