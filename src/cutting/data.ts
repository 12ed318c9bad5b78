/** One published figure, in the unit its source printed. */
export type PublishedSpeed = {
  readonly material: string;
  readonly tool: string;
  readonly operation: string;
  readonly from: number;
  readonly to: number;
  readonly unit: "m/min" | "ft/min";
  /** Key into `sources.ts`. */
  readonly source: string;
  /** Place in the source. */
  readonly where: string;
  /** `read`: the figure was seen there; `memory`: believed, not seen. */
  readonly confidence: "read" | "memory";
  readonly note?: string;
};

const hss = "high-speed steel";
const averages = "ch. II, Average Cutting Speeds for Turning";
const tut17 = { source: "TUT17", where: "table 2, HSS turning", confidence: "read", unit: "m/min", tool: hss, operation: "turning" } as const;
const jones = { source: "JONES1914", where: averages, confidence: "read", unit: "ft/min", tool: hss, operation: "turning", note: "printed without naming the tool steel" } as const;
const navy = { source: "NAVY14345", where: "drill section", confidence: "read", unit: "ft/min", tool: hss, operation: "drilling" } as const;
const asMildSteel = { note: "the figure for mild steel: none was read for free-cutting steel, which allows more" } as const;

/** Figures for high-speed steel on a small manual lathe. Left out on purpose: heavy-lathe tests, carbide and coolant
 *  figures, which a light bench lathe does not reach. */
export const cuttingSpeeds: readonly PublishedSpeed[] = [
  { material: "mild steel", from: 45, to: 65, ...jones },
  { material: "mild steel", from: 25, to: 45, ...tut17 },
  { material: "mild steel", from: 80, to: 110, ...navy },
  { material: "free-cutting steel", from: 45, to: 65, ...jones, ...asMildSteel },
  { material: "free-cutting steel", from: 25, to: 45, ...tut17, ...asMildSteel },
  { material: "free-cutting steel", from: 80, to: 110, ...navy, ...asMildSteel },
  { material: "brass", from: 150, to: 200, ...jones },
  { material: "brass", from: 45, to: 120, ...tut17 },
  { material: "brass", from: 200, to: 300, ...navy },
  { material: "aluminium", from: 60, to: 150, ...tut17 },
  { material: "aluminium", from: 200, to: 300, ...navy },
  { material: "grey cast iron", from: 40, to: 50, ...jones },
  { material: "grey cast iron", from: 22, to: 30, ...tut17 },
  { material: "grey cast iron", from: 70, to: 150, ...navy },
  { material: "stainless steel", from: 9, to: 18, ...tut17 },
  { material: "stainless steel", from: 30, to: 40, ...navy },
  { material: "bronze", from: 35, to: 80, ...jones },
  { material: "bronze", from: 13, to: 13, source: "CARVILL", where: "5.7.1, phosphor bronze", confidence: "read", unit: "m/min", tool: hss, operation: "drilling" },
  { material: "tool steel", from: 25, to: 35, ...jones, note: "annealed" },
  { material: "tool steel", from: 15, to: 18, source: "ELHOFY", where: "table 5.4, 196 to 241 HB", confidence: "read", unit: "m/min", tool: hss, operation: "drilling" },
];
