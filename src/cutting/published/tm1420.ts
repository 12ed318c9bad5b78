import type { Source } from "./source.js";

export const tm1420: Source = {
  key: "TM1-420",
  title: "US War Department TM 1-420, Lathes (1940)",
  feeds: [{ operation: "parting", from: 0.002, to: 0.002, unit: "in", where: "par. 32d", confidence: "read" }],
};
