import { highSpeedSteel, rows, type Source } from "./source.js";

const inch = 25.4;
const drill = { operation: "drilling", unit: "in", where: "drill section", confidence: "read" } as const;

export const navy: Source = {
  key: "NAVY14345",
  title: "US Navy training course 14345, drilling",
  speeds: rows(
    {
      operation: "drilling",
      tool: highSpeedSteel,
      unit: "ft/min",
      where: "drill section, Holding the Work",
      confidence: "read",
    },
    [
      ["mild steel", 80, 110, "low-carbon steel"],
      ["free-cutting steel", 80, 110, { figureFor: "low-carbon steel" }],
      ["medium-carbon steel", 70, 80],
      ["alloy steel", 50, 70],
      ["high-carbon steel", 50, 70, { figureFor: "alloy steel", note: "none was read for high-carbon steel" }],
      ["stainless steel", 30, 40],
      ["free-cutting stainless steel", 30, 40, { figureFor: "stainless steel" }],
      ["brass", 200, 300],
      ["aluminium", 200, 300],
      ["grey cast iron", 70, 150],
    ],
  ),
  feeds: [
    { ...drill, from: 0.001, to: 0.002, over: 0, upTo: inch / 8 },
    { ...drill, from: 0.002, to: 0.004, over: inch / 8, upTo: inch / 4 },
    { ...drill, from: 0.004, to: 0.007, over: inch / 4, upTo: inch / 2 },
    { ...drill, from: 0.007, to: 0.015, over: inch / 2, upTo: inch },
    { ...drill, from: 0.015, to: 0.025, over: inch },
  ],
};
