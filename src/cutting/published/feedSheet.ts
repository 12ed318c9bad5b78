import type { Source } from "./source.js";

type Pair = readonly [from: number, to: number];
const common = { unit: "in", where: "Recommended Feeds for Lathe Tool", confidence: "read" } as const;
const lathe = (material: string, rough: Pair, finish: Pair) => [
  { ...common, material, operation: "roughing" as const, from: rough[0], to: rough[1] },
  { ...common, material, operation: "finishing" as const, from: finish[0], to: finish[1] },
];

/** For full-size lathes: the finishing feeds suit a light one, the roughing feeds are its most. */
export const feedSheet: Source = {
  key: "LABSHEET",
  title: "a teaching workshop's sheet of feeds",
  feeds: [
    ...lathe("mild steel", [0.01, 0.02], [0.003, 0.01]),
    ...lathe("alloy steel", [0.01, 0.02], [0.003, 0.01]),
    ...lathe("tool steel", [0.01, 0.02], [0.003, 0.01]),
    ...lathe("stainless steel", [0.01, 0.02], [0.003, 0.01]),
    ...lathe("grey cast iron", [0.01, 0.025], [0.003, 0.01]),
    ...lathe("brass", [0.015, 0.025], [0.003, 0.01]),
    ...lathe("bronze", [0.015, 0.025], [0.003, 0.01]),
    ...lathe("copper", [0.01, 0.02], [0.004, 0.008]),
    ...lathe("aluminium", [0.015, 0.025], [0.005, 0.01]),
    ...lathe("magnesium", [0.015, 0.025], [0.005, 0.01]),
  ],
};
