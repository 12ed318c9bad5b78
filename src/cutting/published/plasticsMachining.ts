import type { Source } from "./source.js";

const common = { material: "plastics", unit: "in", where: "text", confidence: "read" } as const;

export const plasticsMachining: Source = {
  key: "CURBELL",
  title: "a plastics supplier's machining guide",
  feeds: [
    { ...common, operation: "roughing", from: 0.015, to: 0.015 },
    { ...common, operation: "finishing", from: 0.005, to: 0.005 },
  ],
};
