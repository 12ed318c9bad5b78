/** Published feed per revolution. */
export type PublishedFeed = {
  /** Absent: any material. */
  readonly material?: string;
  readonly operation: "roughing" | "finishing" | "drilling" | "parting" | "knurling";
  readonly from: number;
  readonly to: number;
  readonly unit: "mm" | "in";
  /** Drill diameters the row is for, mm: above `over`, up to and with `upTo`. */
  readonly over?: number;
  readonly upTo?: number;
  readonly source: string;
  readonly where: string;
  readonly confidence: "read" | "memory";
};

const inch = 25.4;
const lab = { unit: "in", source: "LABSHEET", where: "Recommended Feeds for Lathe Tool", confidence: "read" } as const;
const navy = {
  operation: "drilling",
  unit: "in",
  source: "NAVY14345",
  where: "drill section",
  confidence: "read",
} as const;

type Pair = readonly [number, number];
const lathe = (material: string, rough: Pair, finish: Pair): PublishedFeed[] => [
  { ...lab, material, operation: "roughing", from: rough[0], to: rough[1] },
  { ...lab, material, operation: "finishing", from: finish[0], to: finish[1] },
];

/** Those of lathe work are for full-size lathes: the finishing feeds suit a light one, the roughing feeds are its most. */
export const publishedFeeds: readonly PublishedFeed[] = [
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
  {
    material: "plastics",
    operation: "roughing",
    from: 0.015,
    to: 0.015,
    unit: "in",
    source: "CURBELL",
    where: "text",
    confidence: "read",
  },
  {
    material: "plastics",
    operation: "finishing",
    from: 0.005,
    to: 0.005,
    unit: "in",
    source: "CURBELL",
    where: "text",
    confidence: "read",
  },
  { ...navy, from: 0.001, to: 0.002, over: 0, upTo: inch / 8 },
  { ...navy, from: 0.002, to: 0.004, over: inch / 8, upTo: inch / 4 },
  { ...navy, from: 0.004, to: 0.007, over: inch / 4, upTo: inch / 2 },
  { ...navy, from: 0.007, to: 0.015, over: inch / 2, upTo: inch },
  { ...navy, from: 0.015, to: 0.025, over: inch },
  {
    operation: "parting",
    from: 0.002,
    to: 0.002,
    unit: "in",
    source: "TM1-420",
    where: "par. 32d",
    confidence: "read",
  },
  {
    operation: "knurling",
    from: 0.015,
    to: 0.03,
    unit: "in",
    source: "TC9-524",
    where: "ch. 7, knurling",
    confidence: "memory",
  },
];
