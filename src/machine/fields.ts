import * as z from "zod/mini";
import { parseAngle } from "../quantity/angle.js";
import { drillNamed } from "../quantity/drill.js";
import { parseDiametralPitch } from "../quantity/gear.js";
import { type LengthUnit, parseLength, withoutDiameterSign } from "../quantity/length.js";
import { fractionsInFigures, parseNumber, parseTurns, splitUnit } from "../quantity/number.js";
import { parsePair } from "../quantity/pair.js";
import { rangeIn } from "../quantity/range.js";
import { parseSpeed } from "../quantity/speed.js";
import { parseThreadsPerInch } from "../quantity/thread.js";
import { defOf, partsOf } from "./schemaPath.js";

/** The kinds of value that machine and job files are made of: each reads a number or text, and says in plain words what is
 *  wrong and what would be right. */

/** mm: already in millimetres; otherwise in the file's unit. `text`: as it was written, where that is no plain number. */
export type LengthText = { readonly value: number; readonly unit: "mm" | "file"; readonly text?: string };
/** A bare one goes by the file's units: m/min in mm, ft/min in inches. */
export type CuttingSpeedText = { readonly value: number; readonly unit: "m/min" | "ft/min" | "file" };
export type FeedText = LengthText | { readonly value: number; readonly unit: "tpi" };

/** Teeth of a rack: from tooth to tooth, or teeth to an inch of pitch diameter. */
export type RackPitchText = LengthText | { readonly value: number; readonly unit: "DP" };

/** What is wrong and what would be right. */
type Fault = readonly [what: string, remedy: string];
type Refuse = (...fault: Fault) => never;

/** Between the two parts of a fault, which travel in one message. */
export const FAULT_PARTS = "\u001f";

/** Around an example that differs by the file's unit, and between its two forms. */
const [IN_EITHER, OR_IN] = ["\u001e", "\u001d"];

/** An example for files in millimetres and one for files in inches: which it is for, a kind of value does not know. */
export const inEither = (mm: string, inches: string): string => `${IN_EITHER}${mm}${OR_IN}${inches}${IN_EITHER}`;

/** The words for a file in this unit. */
export const inUnitsOf = (units: LengthUnit, words: string): string =>
  words
    .split(IN_EITHER)
    .map((part) => (part.includes(OR_IN) ? (part.split(OR_IN)[units === "in" ? 1 : 0] ?? "") : part))
    .join("");

/** A value of one kind, and what `read` makes of it or refuses. */
export const readAs = <S extends z.ZodMiniType, T>(kind: S, read: (input: z.output<S>, refuse: Refuse) => T) =>
  z.pipe(
    kind,
    z.transform((input: z.output<S>, { issues }): T => {
      const refuse: Refuse = (...fault) => {
        issues.push({ code: "custom", input, message: fault.join(FAULT_PARTS) });
        return z.NEVER;
      };
      return read(input, refuse);
    }),
  );

export const numberOrText = z.union([z.number(), z.string()]);
export const quoted = (value: unknown): string => JSON.stringify(value);

/** A number, or text that `parse` makes sense of. `faultOf`: what is wrong with it though it was understood. */
const quantity = <T>(
  kind: string,
  example: string,
  parse: (text: string) => T | undefined,
  faultOf: (value: T) => Fault | undefined = () => undefined,
) =>
  readAs(numberOrText, (input, refuse): T => {
    const value = parse(String(input));
    if (value === undefined) return refuse(`${quoted(input)} is not ${kind}`, `write it as ${example}`);
    const fault = faultOf(value);
    return fault ? refuse(...fault) : value;
  });

export function parseFileLength(text: string): LengthText | undefined {
  const parts = splitUnit(withoutDiameterSign(text));
  if (parts?.unit === "")
    return { value: parts.number, unit: "file", ...(fractionsInFigures(text).includes("/") && { text }) };
  const mm = parseLength(text, "mm");
  return mm === undefined ? undefined : { value: mm, unit: "mm", text };
}

function parseDrill(text: string): LengthText | undefined {
  const mm = drillNamed(text);
  return mm === undefined ? parseFileLength(text) : { value: mm, unit: "mm", text };
}

function parseFeed(text: string): FeedText | undefined {
  const perInch = parseThreadsPerInch(text);
  return perInch === undefined ? parseFileLength(text) : { value: perInch, unit: "tpi" };
}

/** A module is in mm whatever the file's unit: there is none in inches. */
function parseModule(text: string): LengthText | undefined {
  const parsed = parseFileLength(text);
  return parsed && { ...parsed, unit: "mm" };
}

function parseRackPitch(text: string): RackPitchText | undefined {
  const diametral = parseDiametralPitch(text);
  return diametral === undefined ? parseFileLength(text) : { value: diametral, unit: "DP" };
}

function parseCuttingSpeed(text: string): CuttingSpeedText | undefined {
  const parts = splitUnit(text);
  if (parts === undefined) return undefined;
  if (parts.unit === "") return { value: parts.number, unit: "file" };
  if (parts.unit === "m/min") return { value: parts.number, unit: "m/min" };
  return ["ft/min", "fpm"].includes(parts.unit) ? { value: parts.number, unit: "ft/min" } : undefined;
}

/** mm, and inches all the more: longer than anything about a small machine, its belts and its bed included. */
const longest = 10_000;

export const tooLong = ({ value }: LengthText): Fault | undefined =>
  Math.abs(value) > longest
    ? ["no small machine has such a length", "check the decimal point and the unit"]
    : undefined;
/** Finer than anything is measured, on any machine. */
const shortest = 1e-9;
const tooShort = ({ value }: { readonly value: number }): Fault | undefined =>
  value > 0 && value < shortest ? ["nothing is as small as that", "check the decimal point and the unit"] : undefined;
const notPositive = ({ value }: { readonly value: number }): Fault | undefined =>
  value > 0 ? undefined : ["the value must be more than zero", "measure it again, and mind the sign"];

const LENGTHS = inEither("38, 38 mm, 1.5 in or 3/8 in", "1.5, 3/8, .375 or 38 mm");
const lengthOf = (faultOf: (length: LengthText) => Fault | undefined) =>
  quantity("a length", LENGTHS, parseFileLength, faultOf);

/** A feed that no handwheel has; threads to the inch neither. */
const tooFar = ({ value }: { readonly value: number }): Fault | undefined =>
  value > longest ? ["no handwheel has such a feed", "check the decimal point and the unit"] : undefined;

/** Zero and less included. */
export const anyLength = lengthOf(tooLong);
/** A reading, or an empty place where none was taken. */
export const reading = readAs(z.union([z.number(), z.string(), z.null()]), (input, refuse): LengthText | undefined => {
  if (input === null || String(input).trim() === "") return undefined;
  const value = parseFileLength(String(input));
  if (value === undefined) return refuse(`${quoted(input)} is not a length`, `write it as ${LENGTHS}`);
  const fault = tooLong(value);
  return fault ? refuse(...fault) : value;
});
const sized = (value: LengthText): Fault | undefined => tooLong(value) ?? tooShort(value) ?? notPositive(value);
export const length = lengthOf(sized);
/** A drill by its diameter, or by the name stamped on it: no. 21, letter F. */
export const drillSize = quantity("a drill", "6, 6 mm, 1/4 in, no. 21 or letter F", parseDrill, sized);
export const feed = quantity(
  "a feed per turn",
  "1.5 mm, 0.0625 in or 16 tpi",
  parseFeed,
  (value) => tooFar(value) ?? tooShort(value) ?? notPositive(value),
);
export const gearModule = quantity("a module", "1 or 1.25, always in mm", parseModule, sized);
export const rackPitch = quantity(
  "the pitch of a rack",
  "1/4 in, 3.14 mm or 16 DP",
  parseRackPitch,
  (value) => tooFar(value) ?? tooShort(value) ?? notPositive(value),
);
export const angle = quantity("an angle", "5 deg, 5.5° or 5 deg 30 min", parseAngle);
/** Inches on diameter in a foot of length. */
export const perFoot = quantity("a taper per foot", "0.75 or 3/4", parseNumber);
const unlikeSpeed = (value: number): Fault | undefined =>
  value > 0 && value <= 100_000
    ? undefined
    : [`${value} rpm is not a speed that a shaft can have`, "give it in turns per minute, more than zero"];
export const rpm = quantity("a speed", "1425 rpm", parseSpeed, unlikeSpeed);

/** One speed, or the slowest and the fastest in the same words. */
function parseSpeeds(text: string): number | [number, number] | undefined {
  // Of a speed there is no fraction, and none is negative: a hyphen leads to the faster one.
  const [, slow, fast] = /^(\d[^-]*)-([^-]*)$/.exec(text) ?? [];
  const [from, to] = (rangeIn(text) ?? [slow, fast]).map((end) => parseSpeed(end ?? ""));
  return from === undefined || to === undefined ? parseSpeed(text) : [from, to];
}
export const rpmOrRange = quantity("a speed", "1425 rpm, or 300 to 3000", parseSpeeds, (value) =>
  [value]
    .flat()
    .map(unlikeSpeed)
    .find((fault) => fault !== undefined),
);
export const cuttingSpeed = quantity("a cutting speed", "25 m/min or 80 ft/min", parseCuttingSpeed, ({ value }) =>
  value > 0 && value <= 5000
    ? undefined
    : [`${value} is not a cutting speed`, "give it in m/min or ft/min, more than zero"],
);

export const count = (least: number, most: number) =>
  readAs(z.number(), (value, refuse): number =>
    Number.isInteger(value) && value >= least && value <= most
      ? value
      : refuse(`${value} cannot be right here`, `give a whole number from ${least} to ${most}`),
  );

/** A list of no more than `most`, and of no fewer than `least`. */
export const listOf = <S extends z.ZodMiniType>(kind: S, most: number, least = 0) =>
  z.array(kind).check(z.maxLength(most), ...(least > 0 ? [z.minLength(least)] : []));

/** More than anybody turns a handwheel in one measurement. */
const mostTurns = 100_000;
const leastTurns = 1e-6;
export const turnsFault = (value: number): Fault | undefined =>
  !(Math.abs(value) <= mostTurns)
    ? ["nobody turned it so often", "check the decimal point"]
    : value !== 0 && Math.abs(value) < leastTurns
      ? ["nobody sees so small a part of a turn", "check the decimal point"]
      : undefined;

/** Turns of a handwheel, in parts too: 0.125, 0,125 or 1/8. */
export const turns = quantity("a count of turns", "1.25, 1,25 or 1 1/4", parseTurns, turnsFault);

const wordsAsRead = z.union([z.string(), z.number()]);
/** Words that reach paper or name a part: of blanks alone an empty place would be left there. */
const wordsOr = (remedy: string) =>
  readAs(wordsAsRead, (input, refuse): string =>
    String(input).trim() === "" ? refuse("nothing stands there", remedy) : String(input),
  );
/** Words that may be left out with their key. */
export const words = wordsOr("write it in words, or leave the key out");
/** Words that cannot be left out. */
export const name = wordsOr("write it in words");

/** Whether a schema, or one that it is made of, is that of words: figures then stand as they were written. */
export const takesWords = (schema: z.core.$ZodType): boolean =>
  defOf(schema).in === wordsAsRead || (defOf(schema).in === undefined && partsOf(schema).some(takesWords));

type Pair = NonNullable<ReturnType<typeof parsePair>>;

/** "199.3 of 200": measured, then what it should have been, mm; bare numbers taken as mm and as inches, for the file's unit to tell. */
export const measuredOf = readAs(numberOrText, (given, refuse): Readonly<Record<LengthUnit, Pair>> => {
  const input = String(given);
  const [mm, inches] = [parsePair(input, "mm"), parsePair(input, "in")];
  return mm !== undefined && inches !== undefined && mm.measured > 0 && mm.nominal > 0
    ? { mm, in: inches }
    : refuse(
        `${quoted(given)} does not say what a bar measures`,
        `write what was measured, and what it should be: ${inEither("199.3 of 200", "6.98 of 7")}`,
      );
});
