import { LONGEST, splitUnit } from "./number.js";

/** Turns per minute of `2000 rpm`, `2000 r/min`, `2000 rev/min`, `2000 1/min` or a bare `2000`. */
export function parseSpeed(text: string): number | undefined {
  if (text.length > LONGEST) return undefined;
  const overMinute = /^(.*\S)\s+1\/min$/i.exec(text.trim());
  const parts = splitUnit(overMinute?.[1] ?? text);
  if (parts === undefined) return undefined;
  return /^(?:rpm|r\.p\.m\.|r\/min|rev\/min|min-1|)$/i.test(parts.unit) ? parts.number : undefined;
}
