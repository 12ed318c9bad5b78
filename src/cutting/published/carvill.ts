import { highSpeedSteel, rows, type Source } from "./source.js";

const common = { tool: highSpeedSteel, unit: "m/min", confidence: "read" } as const;
const table = { where: "5.7.1, p. 192; the scan's heading says m/s, the figures are m/min" } as const;

export const carvill: Source = {
  key: "CARVILL",
  title: "J. Carvill, Mechanical Engineer's Data Handbook (1993), 5.7",
  speeds: [
    ...rows({ ...common, ...table, operation: "turning", namesCut: true }, [
      ["brass", 75, 75],
      ["bronze", 18, 18, "phosphor bronze"],
    ]),
    ...rows({ ...common, ...table, operation: "finish turning", namesCut: true }, [
      ["brass", 100, 100],
      ["bronze", 36, 36, "phosphor bronze"],
    ]),
    ...rows({ ...common, operation: "turning", where: "5.7.5, p. 194; printed in m/s", toolUnnamed: true }, [
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
