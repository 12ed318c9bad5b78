import { carbonSteel, rows, type Source } from "./source.js";

export const recipes: Source = {
  key: "SCIAM",
  title: "Scientific American recipes (19th century)",
  speeds: rows(
    {
      operation: "turning",
      tool: carbonSteel,
      unit: "ft/min",
      where: "Roughing Out Front Tool For Wrought Iron",
      confidence: "read",
    },
    [["wrought iron", 15, 35, "35 up to 1 in, 15 over 20 in"]],
  ),
};
