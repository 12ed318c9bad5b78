import * as z from "zod";
import { parseAngle } from "../quantity/angle.js";
import { MM_PER_FOOT, parseLength } from "../quantity/length.js";
import { splitUnit } from "../quantity/number.js";
import { parsePair } from "../quantity/pair.js";
import { parseSpeed } from "../quantity/speed.js";
import { parseThreadsPerInch } from "../quantity/thread.js";

/** The kinds of value that machine and job files are made of: each reads a number or text, and says in plain words what is
 *  wrong and what would be right. */

/** mm: already in millimetres; otherwise in the file's unit. */
export type LengthText = { readonly value: number; readonly unit: "mm" | "file" };
export type FeedText = LengthText | { readonly value: number; readonly unit: "tpi" };

/** What is wrong and what would be right travel together in an issue's message; U+001F parts them. */
export const issueText = (what: string, remedy: string): string => `${what}\u001f${remedy}`;

const quoted = (value: unknown): string => JSON.stringify(value);

/** A number, or text that `read` makes sense of. */
export function quantity<T>(kind: string, example: string, read: (text: string) => T | undefined) {
  return z.union([z.number(), z.string()]).transform((input, context): T => {
    const result = read(String(input));
    if (result === undefined) {
      context.addIssue({
        code: "custom",
        message: issueText(`${quoted(input)} is not ${kind}`, `write it as ${example}`),
      });
      return z.NEVER;
    }
    return result;
  });
}

function readLength(text: string): LengthText | undefined {
  const parts = splitUnit(text);
  if (parts?.unit === "") return { value: parts.number, unit: "file" };
  const mm = parseLength(text, "mm");
  return mm === undefined ? undefined : { value: mm, unit: "mm" };
}

function readFeed(text: string): FeedText | undefined {
  const perInch = parseThreadsPerInch(text);
  return perInch === undefined ? readLength(text) : { value: perInch, unit: "tpi" };
}

export const positive = <T extends { value: number }>(quantity: T, context: z.RefinementCtx): T => {
  if (!(quantity.value > 0))
    context.addIssue({
      code: "custom",
      message: issueText("the value must be more than zero", "measure it again, and mind the sign"),
    });
  return quantity;
};

/** mm, and inches all the more: longer than anything about a small machine, its belts and its bed included. */
const longest = 10_000;
const notTooLong = (quantity: LengthText, context: z.RefinementCtx): LengthText => {
  if (Math.abs(quantity.value) > longest)
    context.addIssue({
      code: "custom",
      message: issueText("no small machine has such a length", "check the decimal point and the unit"),
    });
  return quantity;
};

export const anyLength = () => quantity("a length", "38, 38 mm, 1.5 in or 3/8 in", readLength).transform(notTooLong);
export const length = () => anyLength().transform(positive);
export const feedText = () => quantity("a feed per turn", "1.5 mm, 0.0625 in or 16 tpi", readFeed).transform(positive);
export const rpm = () =>
  quantity("a speed", "1425 rpm", parseSpeed).transform((value, context) => {
    if (!(value > 0 && value <= 100_000))
      context.addIssue({
        code: "custom",
        message: issueText(
          `${value} rpm is not a speed that a shaft can have`,
          "give it in turns per minute, more than zero",
        ),
      });
    return value;
  });
export const angle = () => quantity("an angle", "5 deg, 5.5° or 5 deg 30 min", parseAngle);
export const count = (least: number, most: number) =>
  z.number().transform((value, context) => {
    if (!Number.isInteger(value) || value < least || value > most)
      context.addIssue({
        code: "custom",
        message: issueText(`${value} cannot be right here`, `give a whole number from ${least} to ${most}`),
      });
    return value;
  });
export const words = () => z.union([z.string(), z.number()]).transform(String);

/** "199.3 of 200": measured, then what it should have been, mm. */
export const measuredOf = () =>
  z.string().transform((input, context): { measured: number; nominal: number } => {
    const pair = parsePair(input, "mm");
    if (pair === undefined || !(pair.measured > 0 && pair.nominal > 0)) {
      context.addIssue({
        code: "custom",
        message: issueText(
          `${quoted(input)} does not say what a bar measures`,
          "write what was measured, and what it should be: 199.3 of 200",
        ),
      });
      return z.NEVER;
    }
    return pair;
  });

function readCuttingSpeed(text: string): number | undefined {
  const parts = splitUnit(text);
  if (parts === undefined) return undefined;
  if (["m/min", ""].includes(parts.unit)) return parts.number;
  return ["ft/min", "fpm"].includes(parts.unit) ? (parts.number * MM_PER_FOOT) / 1000 : undefined;
}

export const metresPerMinute = () =>
  quantity("a cutting speed", "25 m/min or 80 ft/min", readCuttingSpeed).transform((value, context) => {
    if (!(value > 0 && value <= 5000))
      context.addIssue({
        code: "custom",
        message: issueText(`${value} m/min is not a cutting speed`, "give it in m/min or ft/min, more than zero"),
      });
    return value;
  });
