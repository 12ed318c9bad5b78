import { carbonSteel, rows, type Source } from "./source.js";

const common = {
  tool: carbonSteel,
  unit: "ft/min",
  where: "p. 439; printed in inches a minute",
  confidence: "read",
} as const;

export const pocketBook: Source = {
  key: "POCKETBK",
  title: "a pocket-book of engineering formulae, p. 439 (19th century)",
  speeds: [
    ...rows({ ...common, operation: "turning" }, [
      ["grey cast iron", 12.5, 15.8],
      ["wrought iron", 21.7, 23.3],
      ["brass", 25, 25],
    ]),
    ...rows({ ...common, operation: "drilling" }, [
      ["grey cast iron", 6.7, 10],
      ["wrought iron", 11.7, 13.3],
    ]),
  ],
};
