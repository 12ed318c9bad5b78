import { type LengthUnit, parseLength } from "./length.js";
import { LONGEST } from "./number.js";

/** `199.3 of 200`: what was measured beside what it should have been, both in mm. Each may carry its unit, and a unit
 *  on the second alone holds for both (`7.97 of 8 in`). Undefined where it is no such pair. */
export function parsePair(
  text: string,
  units: LengthUnit,
): { readonly measured: number; readonly nominal: number } | undefined {
  if (text.length > 2 * LONGEST) return undefined;
  const sides = text.split(/\s+of\s+/i);
  if (sides.length !== 2) return undefined;
  const [first = "", second = ""] = sides.map((side) => side.trim());
  const unit = /[^\d.,/\s-].*$/.exec(second)?.[0] ?? "";
  const bare = /[\d.]$/.test(first);
  const measured = parseLength(bare ? `${first} ${unit}` : first, units);
  const nominal = parseLength(second, units);
  return measured === undefined || nominal === undefined ? undefined : { measured, nominal };
}
