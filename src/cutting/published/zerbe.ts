import { carbonSteel, rows, type Source } from "./source.js";

export const zerbe: Source = {
  key: "ZERBE1914",
  title: "J. S. Zerbe, Practical Mechanics for Boys (1914)",
  speeds: rows(
    { operation: "turning", tool: carbonSteel, unit: "ft/min", where: "Lathe Speed, p. 42", confidence: "read" },
    [
      ["mild steel", 11, 18, "given for steel"],
      ["free-cutting steel", 11, 18, "given for steel"],
      ["brass", 25, 50],
      ["aluminium", 40, 50],
      ["wrought iron", 15, 20],
    ],
  ),
};
