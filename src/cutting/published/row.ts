/** One published figure, in the unit its source printed. */
export type PublishedSpeed = {
  readonly material: string;
  readonly tool: string;
  readonly operation: string;
  readonly from: number;
  readonly to: number;
  /** `rpm`: the source gives a spindle speed, whatever the diameter. */
  readonly unit: "m/min" | "ft/min" | "rpm";
  /** Key into `sources.ts`. */
  readonly source: string;
  /** Place in the source. */
  readonly where: string;
  /** `read`: the figure was seen there; `memory`: believed, not seen. Memory counts only where nothing was read. */
  readonly confidence: "read" | "memory";
  readonly note?: string;
  /** For work up to this diameter, mm. */
  readonly upTo?: number;
};

type Common = Omit<PublishedSpeed, "material" | "from" | "to" | "note">;
type Figure = readonly [material: string, from: number, to: number, note?: string];

/** Rows that share all but material and figures. */
export const rows = (common: Common, figures: readonly Figure[]): PublishedSpeed[] =>
  figures.map(([material, from, to, note]) => ({ ...common, material, from, to, ...(note !== undefined && { note }) }));

export const highSpeedSteel = "high-speed steel";
export const carbonSteel = "carbon steel";
export const carbide = "carbide";
export const tools: readonly string[] = [highSpeedSteel, carbonSteel, carbide];
