import { MM_PER_INCH } from "./length.js";
import { splitUnit } from "./number.js";

/** Teeth to an inch of pitch diameter: `16 DP`, `16 D.P.`, `16 diametral pitch`; undefined for any other text, and for none or fewer. */
export function parseDiametralPitch(text: string): number | undefined {
  const parts = splitUnit(text);
  if (parts === undefined || parts.number <= 0) return undefined;
  return /^(?:dp|d\.p\.|diametral pitch)$/i.test(parts.unit) ? parts.number : undefined;
}

/** Module, mm, of teeth of a diametral pitch (> 0): pitch diameter over teeth. */
export const moduleOfDiametral = (diametralPitch: number): number => MM_PER_INCH / diametralPitch;

/** Module of teeth that stand `circularPitch` apart along the pitch line, both mm. */
export const moduleOfCircular = (circularPitch: number): number => circularPitch / Math.PI;
