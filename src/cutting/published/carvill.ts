import { highSpeedSteel, rows, type Source } from "./source.js";

const common = { tool: highSpeedSteel, unit: "m/min", confidence: "read" } as const;

export const carvill: Source = {
  key: "CARVILL",
  title: "J. Carvill, Mechanical Engineer's Data Handbook (1993), 5.7",
  speeds: [
    ...rows(
      { ...common, operation: "turning", where: "5.7.1, p. 192; the scan's heading says m/s, the figures are m/min" },
      [
        ["brass", 75, 100, "roughing and finishing"],
        ["bronze", 18, 36, "phosphor bronze, roughing and finishing"],
      ],
    ),
    ...rows({ ...common, operation: "turning", where: "5.7.5, p. 194; tool not named; printed in m/s" }, [
      ["PTFE", 60, 150],
      ["rigid PVC", 90, 300],
      ["polystyrene", 90, 300],
    ]),
    ...rows({ ...common, operation: "drilling", where: "5.7.1, p. 192" }, [
      ["brass", 60, 60],
      ["bronze", 13, 13, "phosphor bronze"],
    ]),
    ...["reaming", "threading"].flatMap((operation) =>
      rows({ ...common, operation, where: "5.7.1, p. 192" }, [
        ["brass", 18, 18],
        ["bronze", 4.5, 4.5, "phosphor bronze"],
      ]),
    ),
  ],
};
