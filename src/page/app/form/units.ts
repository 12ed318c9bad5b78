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

/** What is taken where a field is left out, in the unit in which one would fill it in. */
export const inFileUnits = (description: string, units: "mm" | "in"): string =>
  units === "in" && description.includes("when left out")
    ? description.replace(
        /(\d+(?:\.\d+)?) mm\b(?: \((\d+(?:\.\d+)?) in\))?/g,
        (_, mm, round) => `${round ?? Number(fromMm(Number(mm), "in").toFixed(3))} in`,
      )
    : description;
