import { isMap, isScalar, isSeq, type Node, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import type * as z from "zod/mini";
import { takesWords } from "./fields.js";
import { stepInto } from "./schemaPath.js";

/** A fault that YAML does not see, at its place in the text. */
export type Misreading = {
  readonly severity: "error" | "warning";
  readonly code: string;
  readonly offset: number;
  readonly what: string;
  readonly remedy: string;
};

/** No key of our files lies deeper. */
const deepest = 12;

/** Finds what YAML reads otherwise than its writer meant, and puts it right in the tree, so that the rest is judged as it was
 *  meant: words that look like numbers keep their figures (revision 1.10), decimal commas that cut a number in two, a # that
 *  cuts a name short. */
export function misreadings(root: unknown, text: string, schema: z.ZodMiniType): Misreading[] {
  const found: Misreading[] = [];
  walk(root, [schema], 0);
  return found;

  function walk(node: unknown, schemas: readonly z.core.$ZodType[], depth: number): void {
    if (depth > deepest) return;
    if (isScalar(node)) {
      if (schemas.some(takesWords)) judgeWords(node);
    } else if (isSeq(node)) {
      if (node.flow) joinEntries(node);
      const inner = schemas.flatMap((one) => stepInto(one, 0));
      if (inner.length > 0) for (const item of node.items) walk(item, inner, depth + 1);
    } else if (isMap(node)) {
      if (node.flow) joinPairs(node);
      for (const { key, value } of node.items as Pair[])
        if (isScalar(key))
          walk(
            value,
            schemas.flatMap((one) => stepInto(one, String(key.value))),
            depth + 1,
          );
    }
  }

  function judgeWords(node: Scalar): void {
    if (typeof node.value === "number" && node.source !== undefined) node.value = node.source;
    const end = node.range?.[1];
    if (node.type !== "PLAIN" || end === undefined) return;
    const [, cut] = /^[ \t]+(#\w[^\n\r#]*)/.exec(text.slice(end, end + 200)) ?? [];
    if (cut !== undefined)
      found.push({
        severity: "warning",
        code: "cut-short",
        offset: node.range?.[0] ?? 0,
        what: `this is read as "${node.source}" alone: # begins a comment`,
        remedy: `if "${cut.trim()}" belongs to it, put it in quotes: "${node.source} ${cut.trim()}"; before a comment's words leave a space`,
      });
  }

  function comma(offset: number, whole: string, where: string): void {
    found.push({
      severity: "error",
      code: "decimal-comma",
      offset,
      what: `"${whole}" within ${where} is two entries: the comma parts them`,
      remedy: `write ${whole.replace(",", ".")}; if two are meant, leave a space behind the comma`,
    });
  }

  /** Where some commas part entries tightly and others with a space, the tight ones may be decimal: told by what grows with them
   *  and falls without. */
  function joinEntries(list: YAMLSeq): void {
    const items = list.items as Node[];
    const tight = items.map((item, index) => isTight(items[index - 1], item));
    const pairs = tight.filter(Boolean).length;
    const apart = items.length - pairs;
    // None; no space anywhere; or three in a row, which no number is made of.
    if (pairs === 0 || apart === 1 || tight.some((one, index) => one && tight[index + 1])) return;
    const sources = items.map((item) => (isScalar(item) ? (item.source ?? "") : ""));
    if (sources.some((source) => source.includes("."))) return;
    const read = falls(sources);
    const joined = falls(
      sources.flatMap((source, index) =>
        tight[index] ? [] : [tight[index + 1] ? `${source}.${sources[index + 1]}` : source],
      ),
    );
    if (!(joined < read || (read > 0 && 2 * pairs >= apart))) return;
    for (const [index, fraction] of items.entries())
      if (tight[index]) {
        const whole = items[index - 1] as Scalar;
        comma(whole.range?.[0] ?? 0, `${whole.source},${(fraction as Scalar).source}`, "brackets");
        join(whole, fraction as Scalar);
      }
    list.items = items.filter((_, index) => !tight[index]);
  }

  /** `{ driver: 31,5 }` reads as driver: 31 and a key 5 of no value. */
  function joinPairs(map: YAMLMap): void {
    const pairs = map.items as Pair[];
    for (let index = pairs.length - 1; index > 0; index--) {
      const [before, pair] = [pairs[index - 1]?.value, pairs[index]];
      if (pair === undefined || (pair.value as Scalar | null)?.source || !isTight(before, pair.key)) continue;
      const [whole, fraction] = [before as Scalar, pair.key as Scalar];
      comma(whole.range?.[0] ?? 0, `${whole.source},${fraction.source}`, "braces");
      join(whole, fraction);
      pairs.splice(index, 1);
    }
  }

  function isTight(before: unknown, after: unknown): boolean {
    if (!isScalar(before) || !isScalar(after) || !/^-?\d+$/.test(before.source ?? "")) return false;
    return /^\d+(?![\d.])/.test(after.source ?? "") && text.slice(before.range?.[1], after.range?.[0]) === ",";
  }
}

/** How often a list of numbers falls. */
const falls = (sources: readonly string[]): number =>
  sources.filter((source, index) => Number.parseFloat(source) < Number.parseFloat(sources[index - 1] ?? "")).length;

function join(whole: Scalar, fraction: Scalar): void {
  const source = `${whole.source}.${fraction.source}`;
  whole.value = /^-?\d+\.\d+$/.test(source) ? Number(source) : source;
  whole.source = source;
}
