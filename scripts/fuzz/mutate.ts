import { isMap, isSeq, parseDocument } from "yaml";
import { type Dice, dice } from "../../src/student/dice.js";

export type Throws = Pick<Dice, "whole" | "pick">;
export const throwsOf = (seed: string): Throws => dice(seed);

/** What goes wrong where a number, a word or a part is expected. */
const nasty: readonly [string, ...string[]] = [
  "0",
  "-0",
  "-1",
  "1e308",
  "-1e308",
  "5e-324",
  "1e-12",
  "1e9",
  "99999999999999999999",
  ".nan",
  ".inf",
  "-.inf",
  "NaN",
  "0x1f",
  "1e",
  "1,5",
  "1.5.2",
  "½",
  "1/0",
  "0/0",
  "1/3 in",
  "16 tpi",
  "0 tpi",
  "-3 mm",
  "1e400 mm",
  "12 V",
  "12:30",
  "true",
  "null",
  "~",
  '""',
  '" "',
  "[]",
  "{}",
  "[[[[]]]]",
  "{ a: { b: { c: [] } } }",
  "[1, [2, [3]]]",
  "toString",
  "constructor",
  "__proto__",
  "hasOwnProperty",
  "valueOf",
  "../../etc",
  "C:\\\\x",
  "a".repeat(300),
  "名前",
  "\u202eab",
  "e\u0301",
  "😀",
  "<b>&amp;",
  "*a",
  "&a 1",
  "!!binary x",
  "!x y",
  "|",
  ">",
  "2026-02-30",
  "M8 × 1",
  "H7",
  "12 h7",
  "12 ± 0.02",
  "[12.1, 12.0]",
  "1 in 0",
  "1 in 20",
  "no. 21",
  "letter F",
  "50 Hz",
  "60",
  "A open",
];
const pieces: readonly [string, ...string[]] = [
  ": ",
  " #",
  "- ",
  "  ",
  "\t",
  "[",
  "]",
  "{",
  "}",
  ",",
  ":",
  "'",
  '"',
  "\n",
  "\r\n",
  "\u0000",
  "\ufeff",
  "%",
  "@",
  "`",
  "?",
  "…",
  "|\n",
  "<<: ",
];

const line = (text: string, throws: Throws): [string[], number] => {
  const lines = text.split("\n");
  return [lines, throws.whole(0, lines.length - 1)];
};

type Mutation = (text: string, throws: Throws, other: string) => string;

/** Of letters and lines, whatever they mean. */
const ofText: readonly Mutation[] = [
  (text, throws) => {
    const at = throws.whole(0, text.length);
    return text.slice(0, at) + throws.pick(pieces) + text.slice(at);
  },
  (text, throws) => {
    const at = throws.whole(0, text.length);
    return text.slice(0, at) + text.slice(at + throws.whole(1, 12));
  },
  (text, throws) => {
    const [lines, at] = line(text, throws);
    return lines.toSpliced(at, throws.whole(1, 3)).join("\n");
  },
  (text, throws) => {
    const [lines, at] = line(text, throws);
    const times = throws.pick([1, 2, 30]);
    return lines.toSpliced(at, 0, ...Array(times).fill(lines[at] ?? "")).join("\n");
  },
  (text, throws) => {
    const [lines, at] = line(text, throws);
    lines[at] = " ".repeat(throws.whole(1, 6)) + lines[at];
    return lines.join("\n");
  },
  (text, throws) => text.slice(0, throws.whole(0, text.length)),
  (text, throws, other) => {
    const [lines, at] = line(text, throws);
    const [others, from] = line(other, throws);
    return lines.toSpliced(at, 0, ...others.slice(from, from + throws.whole(1, 8))).join("\n");
  },
];

/** Of values: a number or a word in the place of another. */
const ofValues: readonly Mutation[] = [
  (text, throws) => swap(text, /-?\d[\d.,/]*/g, throws, () => throws.pick(nasty)),
  (text, throws) =>
    swap(text, /-?\d+(\.\d+)?/g, throws, (found) =>
      String(Number(found) * throws.pick([-1, 0, 0.001, 0.1, 10, 1000, 1e6])),
    ),
  (text, throws) => swap(text, /(?<=: )[^\n{[#]+/g, throws, () => throws.pick(nasty)),
  (text, throws) =>
    swap(text, /\w+(?=:)/g, throws, () => throws.pick(["name", "feed", "drive", "steps", "toString", "x"])),
];

function swap(text: string, pattern: RegExp, throws: Throws, by: (found: string) => string): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const one = found[throws.whole(0, found.length - 1)] as RegExpMatchArray;
  const at = one.index as number;
  return text.slice(0, at) + by(one[0]) + text.slice(at + one[0].length);
}

/** Of structure: parts taken out, doubled many times, or put where others belong. */
const ofStructure: readonly Mutation[] = [
  (text, throws) => changed(text, throws, (items, at) => void items.splice(at, 1)),
  (text, throws) => {
    const times = throws.pick([1, 5, 60]);
    return changed(text, throws, (items, at) => void items.splice(at, 0, ...Array(times).fill(items[at])));
  },
  (text, throws) =>
    changed(text, throws, (items, at, all) => {
      const other = throws.pick(all as [unknown[], ...unknown[][]]);
      items[at] = other[throws.whole(0, Math.max(0, other.length - 1))] ?? items[at];
    }),
];

function changed(
  text: string,
  throws: Throws,
  change: (items: unknown[], at: number, all: unknown[][]) => void,
): string {
  const document = parseDocument(text, { strict: false, logLevel: "silent" });
  const all: unknown[][] = [];
  const gather = (node: unknown, depth: number): void => {
    if (depth > 12) return;
    if (isMap(node)) {
      if (node.items.length > 0) all.push(node.items as unknown[]);
      for (const { value } of node.items) gather(value, depth + 1);
    } else if (isSeq(node)) {
      if (node.items.length > 0) all.push(node.items);
      for (const item of node.items) gather(item, depth + 1);
    }
  };
  gather(document.contents, 0);
  const [first, ...rest] = all;
  if (first === undefined || document.errors.length > 0) return text;
  // Pairs stay among pairs and items among items, or nothing could be written.
  const items = throws.pick([first, ...rest]);
  const kind = all.filter((one) => isPair(one[0]) === isPair(items[0]));
  change(items, throws.whole(0, items.length - 1), kind);
  try {
    return document.toString();
  } catch {
    return text;
  }
}

const isPair = (item: unknown): boolean => typeof item === "object" && item !== null && "key" in item;

/** One to four mutations, one after the other. */
export function mutated(text: string, throws: Throws, other: string): string {
  let now = text;
  for (let left = throws.pick([1, 1, 2, 4]); left > 0; left--) {
    const kind = throws.pick([ofText, ofValues, ofValues, ofStructure]);
    now = throws.pick(kind as [Mutation, ...Mutation[]])(now, throws, other);
  }
  return now;
}
