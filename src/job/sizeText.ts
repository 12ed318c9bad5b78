import * as z from "zod/mini";
import {
  inEither,
  type LengthText,
  numberOrText,
  parseFileLength,
  quoted,
  readAs,
  tooLong,
} from "../machine/fields.js";
import { drillNamed } from "../quantity/drill.js";
import { withoutDiameterSign } from "../quantity/length.js";
import { fractionsInFigures, splitUnit } from "../quantity/number.js";
import { rangeIn } from "../quantity/range.js";

/** A diameter as a drawing gives it: nominal, and how far it may differ. `text`: as it was written, where that is more than a number. */
export type SizeText = {
  readonly nominal: LengthText;
  /** Both counted from the nominal size, upper ≥ lower. */
  readonly deviations?: { readonly upper: LengthText; readonly lower: LengthText };
  /** Given by its two limits alone. */
  readonly limits?: true;
  /** Letter and grade after ISO 286, not yet looked up: "h7". */
  readonly fit?: string;
  readonly text?: string;
};

const EXAMPLES = inEither(
  "12, 12 h7, 12 ± 0.02, 12 +0.01 -0.02 or 11.98 to 12.00",
  ".375, .375 ± .002, .375 +.000 -.001 or .374 to .375",
);

/** Longer than any size that is written on a drawing. */
const LONGEST = 60;

const UNIT = String.raw`(?:[a-zµμ]+\.?|["″])`;
const FIT = /^([\d.,/\s-]*\d\.?(?:\s*(?:mm|in|["″])|\s*[a-z.]+(?=\s))?)\s*([a-z]{1,2}\d{1,2})$/i;
const DEVIATION = String.raw`[+-]\s*(?:\d+/\d+|[\d.,]+)\s*${UNIT}?|0`;
const BASE = String.raw`\.?\d[\d.,/]*(?:[-\s]\d+/\d+)?\s*${UNIT}?`;
const DEVIATIONS = new RegExp(String.raw`^(${BASE})\s+(${DEVIATION})(?:\s*/?\s*(${DEVIATION}))?$`, "i");

/** Undefined where it is no size. */
export function parseSize(given: string): SizeText | undefined {
  if (given.length > LONGEST) return undefined;
  const text = fractionsInFigures(withoutDiameterSign(given))
    .replaceAll("−", "-")
    .replace(/\+\s*\/?\s*-(?=\s*[\d.])/, "±");
  const plain = parseFileLength(text);
  if (plain !== undefined) return { nominal: plain };
  const drill = drillNamed(text);
  if (drill !== undefined) return { nominal: { value: drill, unit: "mm", text } };
  const [, size = "", fit] = FIT.exec(text) ?? [];
  if (fit !== undefined) {
    const nominal = parseFileLength(size.trim());
    return nominal && { nominal, fit, text: given };
  }
  const [, middle, either] = /^([^±]+)±([^±]+)$/.exec(text) ?? [];
  if (middle !== undefined && either !== undefined) return differing(middle, either, `-${either.trim()}`, given);
  const range = rangeIn(text) ?? hyphened(text);
  if (range !== undefined) return withinLimits(...range, given);
  const [, base, first, second] = DEVIATIONS.exec(text) ?? [];
  if (base === undefined || first === undefined) return undefined;
  // "12 0" is a slip of the keyboard; a lone deviation has 0 on its other side.
  return first === "0" && second === undefined ? undefined : differing(base, first, second ?? "0", given);
}

/** From where to where, with a hyphen between: it is a minus where what stands behind it may be a deviation. */
function hyphened(text: string): readonly [from: string, to: string] | undefined {
  const [, from = "", to = ""] = /^(\S.*?)\s+-\s+(\S.*)$/.exec(text) ?? [];
  const [low, high] = lengths(from, to) ?? [];
  return low !== undefined && high !== undefined && mayBeHalf(high.value, low.value) ? [from, to] : undefined;
}

/** No size may differ by half of itself: so much behind it is another size. */
const mayBeHalf = (difference: number, size: number): boolean => 2 * Math.abs(difference) >= size;

/** Units that a whole drawing may be in. */
const drawn = /^(?:mm|millimet(?:re|er)s?|in\.?|inch(?:es)?|["″])$/i;

/** A unit behind any of the numbers holds for those without one. It does not where it is a finer one, or one of two: of "12 ± 10 µm"
 *  nobody can tell what the 12 is. */
function lengths(...texts: string[]): LengthText[] | undefined {
  const own = texts.map((text) => text.replace(/\s+/g, " ").trim());
  const parts = own.map(splitUnit);
  const [unit = "", ...others] = new Set(parts.flatMap((part) => (part?.unit ? [part.unit] : [])));
  const shared = others.length === 0 && drawn.test(unit);
  const read = own.map((text, index) => {
    const part = parts[index];
    if (part === undefined || part.unit !== "" || unit === "") return parseFileLength(text);
    // Nought is the same in all.
    return shared || part.number === 0 ? parseFileLength(`${text} ${unit}`) : undefined;
  });
  return read.every((length) => length !== undefined) ? read : undefined;
}

function differing(middle: string, first: string, second: string, text: string): SizeText | undefined {
  const [nominal, one, other] = lengths(middle, first, second) ?? [];
  if (nominal === undefined || one === undefined || other === undefined) return undefined;
  const [upper, lower] = one.value >= other.value ? [one, other] : [other, one];
  return { nominal, deviations: { upper, lower }, text };
}

function withinLimits(from: string, to: string, text: string): SizeText | undefined {
  const [one, other] = lengths(from, to) ?? [];
  if (one === undefined || other === undefined) return undefined;
  const [low, high] = one.value <= other.value ? [one, other] : [other, one];
  const nought = { value: 0, unit: high.unit };
  return {
    nominal: high,
    deviations: { upper: nought, lower: { value: low.value - high.value, unit: high.unit } },
    limits: true,
    text,
  };
}

/** A diameter of a job file, more than zero, with what a drawing may say beside it. */
export const size = readAs(
  z.union([numberOrText, z.tuple([numberOrText, numberOrText])]),
  (input, refuse): SizeText => {
    const text = Array.isArray(input) ? input.map(String).join(" to ") : String(input);
    const read = parseSize(text);
    if (read === undefined) return refuse(`${quoted(input)} is not a size`, `write it as ${EXAMPLES}`);
    const { nominal, deviations } = read;
    const fault = tooLong(nominal);
    if (fault) return refuse(...fault);
    if (!(nominal.value > 0)) return refuse("the value must be more than zero", "mind the sign and the decimal point");
    if (deviations !== undefined) {
      const { upper, lower } = deviations;
      if (!(upper.value > lower.value))
        return refuse(
          `${quoted(input)} leaves nothing between its limits`,
          "give the smallest and the largest that will do, or the size alone",
        );
      if (2 * Math.max(Math.abs(upper.value), Math.abs(lower.value)) >= nominal.value)
        return refuse(
          `${quoted(input)} may differ by half its size or more`,
          Array.isArray(input)
            ? `a list is the smallest and the largest that will do: ${inEither("[11.98, 12.00]", "[.374, .375]")}`
            : `what stands behind the size is in its own unit, no thousandths: ${EXAMPLES}`,
        );
    }
    return read;
  },
);
