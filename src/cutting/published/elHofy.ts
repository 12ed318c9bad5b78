import { highSpeedSteel, rows, type Source } from "./source.js";

const common = { tool: highSpeedSteel, unit: "m/min", where: "table 5.4, p. 143", confidence: "read" } as const;

export const elHofy: Source = {
  key: "ELHOFY",
  title: "Fundamentals of Machining Processes, table 5.4",
  speeds: [
    ...rows({ ...common, operation: "turning" }, [
      ["zinc alloy", 76, 76, { figureFor: "drilling", note: "none was found for turning" }],
    ]),
    ...rows({ ...common, operation: "drilling" }, [
      ["tool steel", 15, 18, "196 to 241 HB"],
      ["zinc alloy", 76, 76],
    ]),
  ],
};
