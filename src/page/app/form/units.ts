import type { Way } from "../../file/edit.js";
import { type Schema, scalar } from "../../schema.js";

/** What a bare number in a field is taken for; undefined where it is a plain number or a name. */
export function bareUnit(way: Way, schema: Schema, units: "mm" | "in"): string | undefined {
  const key = String(way.at(-1));
  const within = String(way.at(-2));
  if (["chuck", "spindle", "speed"].includes(key) || within === "speeds") return way[0] === "work" ? undefined : "rpm";
  if (["included", "half"].includes(key)) return "°";
  if (key === "temperature") return "°C";
  if (key === "module") return "mm";
  if (key === "travel" && within === "readings") return undefined;
  if (key === "measured" || key === "divisions" || !scalar(schema)) return undefined;
  // Lengths are numbers first, and words where a unit or a fraction is written; names are words first.
  return Array.isArray(schema.type) && schema.type[0] === "number" ? units : undefined;
}
