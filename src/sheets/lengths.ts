import { parseLength } from "../quantity/length.js";

/** Larger than any size, count or per cent that a sheet is set to; of a length in mm. */
export const most = 1000;

/** Of each piece to cut: a class of pupils with some to spare. A thousand take three seconds to lay out. */
export const mostCopies = 100;

/** mm of a length as a template writes it: a bare number is mm whatever the machine's unit, since a template serves many. */
export function readLength(found: unknown): number | undefined {
  const mm = typeof found === "number" ? found : typeof found === "string" ? parseLength(found, "mm") : undefined;
  return mm !== undefined && Number.isFinite(mm) ? mm : undefined;
}

/** What a length should be instead; undefined where it may stand. `zero`: none at all may stand too. */
export function lengthFault(found: unknown, zero: boolean): string | undefined {
  const mm = readLength(found);
  if (mm !== undefined && mm <= most && (zero ? mm >= 0 : mm > 0)) return undefined;
  return `it is a length ${zero ? "from 0" : "above 0,"} up to ${most} mm, as 12, 12 mm or 0.5 in (a bare number is mm)`;
}

/** What stands in the template, as its writer knows it, and short. */
export function asGiven(found: unknown): string {
  if (typeof found === "number" && !Number.isFinite(found))
    return Number.isNaN(found) ? ".nan" : found < 0 ? "-.inf" : ".inf";
  const text = Array.isArray(found) ? `[${found.map(asGiven).join(", ")}]` : (JSON.stringify(found) ?? "nothing");
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}
