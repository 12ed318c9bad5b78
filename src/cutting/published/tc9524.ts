import { highSpeedSteel, rows, type Source } from "./source.js";

const common = { tool: highSpeedSteel, unit: "ft/min", confidence: "memory" } as const;

export const tc9524: Source = {
  key: "TC9-524",
  title: "US Army TC 9-524, Fundamentals of Machine Tools (from memory)",
  speeds: [
    ...rows({ ...common, operation: "turning", where: "ch. 7, cutting speeds for straight turning" }, [
      ["medium-carbon steel", 60, 80],
      ["high-carbon steel", 35, 40],
      ["alloy steel", 35, 40, { figureFor: "high-carbon steel", note: "none was found for alloy steel" }],
      ["copper", 60, 80, "a text of 1914 turns it nearly as fast as brass"],
    ]),
    ...rows({ ...common, operation: "drilling", where: "ch. 7, straight turning" }, [
      ["copper", 60, 80, { figureFor: "turning", note: "none was found for drilling" }],
    ]),
    ...rows({ ...common, operation: "threading", where: "ch. 7, cutting speeds for threading" }, [
      ["mild steel", 35, 40],
      ["free-cutting steel", 35, 40, { figureFor: "low-carbon steel" }],
      ["medium-carbon steel", 25, 30],
      ["high-carbon steel", 15, 20],
      ["alloy steel", 15, 20, { figureFor: "high-carbon steel" }],
      ["tool steel", 15, 20, { figureFor: "high-carbon steel" }],
      ["stainless steel", 15, 20],
      ["aluminium", 50, 60],
      ["grey cast iron", 20, 25],
      ["copper", 20, 25],
    ]),
  ],
  feeds: [{ operation: "knurling", from: 0.015, to: 0.03, unit: "in", where: "ch. 7, knurling", confidence: "memory" }],
};
