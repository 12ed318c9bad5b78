import { highSpeedSteel, rows, type Source } from "./source.js";

export const lightMetals: Source = {
  key: "PROTO",
  title: "a tool supplier's sheet for light metals",
  speeds: rows(
    {
      operation: "drilling",
      tool: highSpeedSteel,
      unit: "ft/min",
      where: "cutting speeds for light metals",
      confidence: "read",
    },
    [["magnesium", 450, 500, "cast and wrought; chips catch fire"]],
  ),
};
