import { highSpeedSteel, rows, type Source } from "./source.js";

const common = { tool: highSpeedSteel, unit: "m/min", confidence: "read" } as const;

const asMildSteel = { figureFor: "mild steel", note: "none was read for free-cutting steel, which allows more" };
const asPlastics = { figureFor: "plastics in general" };

export const speedSheet: Source = {
  key: "TUT17",
  title: "a teaching workshop's sheet of cutting speeds and feeds",
  speeds: [
    ...rows({ ...common, operation: "turning", where: "table 2, HSS turning" }, [
      ["mild steel", 25, 45],
      ["free-cutting steel", 25, 45, asMildSteel],
      ["grey cast iron", 22, 30],
      ["stainless steel", 9, 18],
      ["brass", 45, 120],
      ["aluminium", 60, 150],
      ["plastics", 9, 120],
      ["acetal", 9, 120, asPlastics],
      ["acrylic", 9, 120, asPlastics],
      ["rigid PVC", 9, 120, asPlastics],
      ["polystyrene", 9, 120, asPlastics],
    ]),
    ...rows({ ...common, operation: "drilling", where: "table 1, HSS drilling" }, [
      ["mild steel", 30, 36],
      ["free-cutting steel", 30, 36, { figureFor: "mild steel" }],
      ["grey cast iron", 25, 35],
      ["stainless steel", 6, 15],
      ["brass", 60, 75],
      ["plastics", 20, 75],
      ["nylon", 20, 75, asPlastics],
      ["acetal", 20, 75, asPlastics],
      ["acrylic", 20, 75, asPlastics],
      ["rigid PVC", 20, 75, asPlastics],
      ["polystyrene", 20, 75, asPlastics],
      ["PTFE", 20, 75, asPlastics],
    ]),
  ],
};
