import { MM_PER_INCH } from "./length.js";

/** A number as someone writes it: 1.27, 1,27, 3/8, 1-1/2, 1 1/2. A comma is a decimal comma; thousands are not grouped. */
const numberPattern = String.raw`([+-]?\d+(?:[.,]\d+)?(?:e[+-]?\d+)?|(?:\d+[ -])?\d+\/\d+)`;
const quantityPattern = new RegExp(String.raw`^\s*${numberPattern}\s*([^\d\s].*?)?\s*$`, "i");

/** Splits "1.27 mm" into number and unit word ("" where there is none); undefined when it is not a number with a word. */
export function splitQuantity(text: string): { value: number; unit: string } | undefined {
  const match = quantityPattern.exec(text);
  if (match === null) return undefined;
  const value = parseNumber(match[1] ?? "");
  return value === undefined ? undefined : { value, unit: (match[2] ?? "").toLowerCase() };
}

export function parseNumber(text: string): number | undefined {
  const fraction = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text.trim());
  if (fraction !== null) {
    const [, whole = "0", above = "0", below = "1"] = fraction;
    return Number(below) === 0 ? undefined : Number(whole) + Number(above) / Number(below);
  }
  const value = Number(text.trim().replace(",", "."));
  return text.trim() === "" || !Number.isFinite(value) ? undefined : value;
}

/** mm in one of each unit word; "" (no unit) is left to the file. */
export const lengthUnits: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  in: MM_PER_INCH,
  inch: MM_PER_INCH,
  '"': MM_PER_INCH,
  thou: MM_PER_INCH / 1000,
  µm: 0.001,
  μm: 0.001,
  um: 0.001,
};

/** Turns per inch, the trade's way to name a screw. */
export const tpiUnits: readonly string[] = ["tpi", "t.p.i."];
export const speedUnits: readonly string[] = ["", "rpm", "r/min", "1/min"];
