import { trimmedSize, unitName } from "../quantity/format.js";
import type { LengthUnit } from "../quantity/length.js";
import { decimalMark } from "../words/say.js";

/** Lengths, mm, that a file writes as a fraction or in another unit than its own, and how: 3.175 as "1/8 in". A size is shown as
 *  it was given, since that is what is stamped on the drill. */
export type Written = ReadonlyMap<number, string>;

type Sizes = { readonly units: LengthUnit; readonly written?: Written };

/** A size in words: "1/8 in", "5 mm", or in the reader's unit to `mmPlaces`, one more in inches. */
export const asGiven = (mm: number, { units, written }: Sizes, mmPlaces = 3): string =>
  asOnPaper(written?.get(mm)) ?? trimmedSize(mm, units, mmPlaces);

/** As the file writes it, but for the decimal mark and the inch, which are those of the paper's language, and for 1-1/2, which is 1 1/2 as
 *  the paper writes such a number itself. */
export const asOnPaper = <T extends string | undefined>(words: T): T =>
  words
    ?.replace(/(\d)[.,](?=\d)/g, `$1${decimalMark()}`)
    .replace(/(\d)-(?=\d+\/\d)/, "$1 ")
    .replace(/ in$/, ` ${unitName("in")}`) as T;

/** The same where a heading holds the unit: "1/8", but "5 mm" under inches. */
export const figureAsGiven = (mm: number, sizes: Sizes, mmPlaces = 3): string =>
  asGiven(mm, sizes, mmPlaces).replace(new RegExp(` ${unitName(sizes.units)}$`), "");

/** The unit in which a length is told: its own, or the file's. */
export function unitWritten(given: { readonly unit: string; readonly text?: string }, units: LengthUnit): LengthUnit {
  if (given.unit === "tpi") return "in";
  const words = given.text === undefined ? undefined : writtenAs(given.text, units);
  if (words === undefined) return units;
  return /(?:in|thou\w*|ft|foot|feet)$/i.test(words) ? "in" : "mm";
}

/** How a length's own text is shown: with its unit, the inch always as "in". Undefined where it is a plain number. */
export function writtenAs(text: string, units: LengthUnit): string | undefined {
  const [, number = "", unit = ""] = /^([-+−\d.,/\s]*\d\.?)\s*(\D.*)?$/.exec(text.trim()) ?? [];
  if (unit === "" && !number.includes("/")) return undefined;
  return `${number.trim()} ${/^(?:["″]|in\.|inch|inches|)$/i.test(unit) ? (unit === "" ? units : "in") : unit}`;
}
