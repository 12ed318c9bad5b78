import type { Source } from "./source.js";

/** Its speeds are for industry, far above the fire limit of `aircraftMetals.ts`: only its least feed is taken. */
export const magnesiumSheet: Source = {
  key: "MGSHEET",
  title: "a magnesium supplier's data sheet",
  feeds: [
    {
      material: "magnesium",
      operation: "least",
      from: 0.25,
      to: 0.25,
      unit: "mm",
      where: "no. 254, turning and boring: more than 0.25 mm a revolution",
      confidence: "read",
    },
  ],
};
