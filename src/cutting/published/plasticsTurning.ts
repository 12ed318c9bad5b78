import { carbide, highSpeedSteel, rows, type Source } from "./source.js";

const common = { operation: "turning", unit: "m/min", where: "CNC turning", confidence: "read" } as const;

export const plasticsTurning: Source = {
  key: "PRIOR",
  title: "a plastics supplier's turning notes",
  speeds: [
    ...rows({ ...common, tool: highSpeedSteel }, [["nylon", 40, 50]]),
    ...rows({ ...common, tool: carbide }, [["nylon", 110, 130]]),
  ],
};
