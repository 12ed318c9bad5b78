const DIGITS = /^\d+(?:\.\d*)?$|^\.\d+$/;
const COMMA = /^(\d+),(\d+)$/;
const FRACTION = /^(?:(\d+)(?:-|\s+))?(\d+)\s*\/\s*(\d+)$/;
/** Longer than any quantity that someone writes by hand; also keeps the patterns quick on whatever is thrown at them. */
export const LONGEST = 80;

/** Marks that are a fraction each. */
const MARKS = /[¼-¾⅐-⅞]/g;

/** With fractions in figures: 2½ as "2 1/2". */
export const fractionsInFigures = (text: string): string =>
  text.replaceAll(MARKS, (mark) => ` ${mark.normalize("NFKC").replace("⁄", "/")}`).trim();

/** A number as people write it: `1.5875`, `1,27`, `3/8`, `1-1/2`, `1 1/2`, `1½`, with a sign or a true minus before it.
 *  A comma followed by just three figures (`1,270`) might be a thousand or a decimal: undefined, as for all that is
 *  not a finite number, unless the comma follows a lone 0. */
export function parseNumber(text: string): number | undefined {
  if (text.length > LONGEST) return undefined;
  const signed = /^([-+−]?)\s*(.*)$/.exec(fractionsInFigures(text));
  if (signed === null) return undefined;
  const size = unsigned(signed[2] ?? "");
  if (size === undefined || !Number.isFinite(size)) return undefined;
  return signed[1] === "-" || signed[1] === "−" ? 0 - size : size;
}

/** Turns of a handwheel: of those nobody counts thousands, and a comma is always decimal (`1,125`). */
export const parseTurns = (text: string): number | undefined =>
  parseNumber(/^\D*\d+,\d+$/.test(text.trim()) ? text.replace(",", ".") : text);

function unsigned(text: string): number | undefined {
  if (DIGITS.test(text)) return Number(text);
  const comma = COMMA.exec(text);
  if (comma !== null) {
    const [, whole = "", part = ""] = comma;
    if (part.length === 3 && whole !== "0") return undefined;
    return Number(`${whole}.${part}`);
  }
  const fraction = FRACTION.exec(text);
  if (fraction === null) return undefined;
  const [, whole = "0", over, under] = fraction;
  return Number(whole) + Number(over) / Number(under);
}

/** Splits `50 thou` into `50` and `thou`; the unit is empty for a bare number. Undefined where neither is there. */
export function splitUnit(text: string): { readonly number: number; readonly unit: string } | undefined {
  if (text.length > LONGEST) return undefined;
  const parts = /^([-+−\d.,/\s]*\d\.?)\s*([^\d].*)?$/s.exec(fractionsInFigures(text));
  const number = parseNumber(parts?.[1] ?? "");
  return number === undefined ? undefined : { number, unit: parts?.[2] ?? "" };
}
