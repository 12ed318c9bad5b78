import { MM_PER_INCH } from "./length.js";
import { splitUnit } from "./number.js";

/** Threads per inch of `12 tpi`, `4-1/2 tpi`, `16 threads per inch`; undefined for any other text, and for none or
 *  fewer threads. */
export function parseThreadsPerInch(text: string): number | undefined {
  const parts = splitUnit(text);
  if (parts === undefined || parts.number <= 0) return undefined;
  return /^(?:tpi|t\.p\.i\.|threads? per inch)$/i.test(parts.unit) ? parts.number : undefined;
}

/** Pitch, mm, of a screw of so many threads per inch (> 0). */
export function pitchOf(threadsPerInch: number): number {
  return MM_PER_INCH / threadsPerInch;
}
