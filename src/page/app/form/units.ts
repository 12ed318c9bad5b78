import { fromMm } from "../../../quantity/length.js";
import type { Way } from "../../file/edit.js";
import { type Schema, scalar } from "../../schema.js";

/** What a bare number in a field is taken for; undefined where it is a plain number or a name. */
export function bareUnit(way: Way, schema: Schema, units: "mm" | "in"): string | undefined {
  // An entry of a list is what its list is.
  const keys = way.filter((step) => typeof step === "string");
  const [within, key = ""] = [keys.at(-2), keys.at(-1)];
  if (way[0] === "work" && key === "speed") return units === "in" ? "ft/min" : "m/min";
  if (["chuck", "spindle", "speed", "speeds"].includes(key)) return "rpm";
  if (["included", "half"].includes(key)) return "°";
  if (key === "temperature") return "°C";
  if (key === "module") return "mm";
  // Where the file is in inches, the size of a bar tells which of the two it was measured in.
  if (way[0] === "printers") return units === "in" ? undefined : "mm";
  if (key === "travel" && within === "readings") return undefined;
  if (key === "measured" || (key === "divisions" && within !== "dial") || !scalar(schema)) return undefined;
  // Lengths are numbers first, and words where a unit or a fraction is written; names are words first.
  return Array.isArray(schema.type) && schema.type[0] === "number" ? units : undefined;
}

/** Sizes as a drawing gives them, and others of the kind for who writes in inches. */
export const drawn: readonly (readonly [mm: string, inches: string])[] = [
  ["12 h7", ".375 h7"],
  ["12 ± 0.02", ".375 ± .002"],
  ["11.98 to 12.00", ".374 to .375"],
  ["8 H7", "5/16 H7"],
];

/** What is taken where a field is left out, and what is written as an example, in the unit in which one would fill it in. */
export function inFileUnits(description: string, units: "mm" | "in"): string {
  const left = description.includes("when left out");
  const both = /(\d+(?:\.\d+)? mm) \((\d+(?:\.\d+)? in)\)/g;
  if (units === "mm") return left ? description.replace(both, "$1") : description;
  const taken = left
    ? description
        .replace(both, "$2")
        .replace(/(\d+(?:\.\d+)?) mm\b/g, (_, mm) => `${Number(fromMm(Number(mm), "in").toFixed(3))} in`)
    : description;
  return drawn.reduce((so, [mm, inches]) => so.replace(mm, inches), taken).replace(/\b12, (?=\.375 h7)/, ".375, ");
}
