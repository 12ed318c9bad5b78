import { isMap, isScalar, isSeq, type Node, parseDocument } from "yaml";

/** What a form puts into a file: the words of a field as they were typed, a tick, or lists and maps of such. */
export type Plain = string | number | boolean | readonly Plain[] | { readonly [key: string]: Plain };

/** Where a value stands: inside brackets commas and braces end a plain scalar, elsewhere they do not. */
export type Surroundings = "block" | "flow";

/** Words of a field as YAML source: as they were typed where YAML reads just these words, else in quotes. */
export function scalarText(words: string | number | boolean, surroundings: Surroundings): string {
  if (typeof words !== "string") return String(words);
  const read = plainly(words, surroundings);
  const same = typeof read === "string" ? read === words : typeof read === "number" && words.trim() === words;
  return same ? words : JSON.stringify(words);
}

/** What YAML makes of words without quotes; undefined where it is not one scalar. */
function plainly(words: string, surroundings: Surroundings): unknown {
  if (words === "" || /[\n\r]/.test(words)) return undefined;
  const document = parseDocument(surroundings === "flow" ? `{ key: ${words}, end: 1 }` : `key: ${words}\nend: 1\n`, {
    logLevel: "silent",
  });
  if (document.errors.length > 0 || !isMap(document.contents)) return undefined;
  const [first, second, ...rest] = document.contents.items;
  const value = first?.value as Node | null | undefined;
  if (rest.length > 0 || !isScalar(second?.value) || second.value.value !== 1) return undefined;
  return isScalar(value) && value.source === words && !value.comment ? value.value : undefined;
}

const isList = (value: Plain): value is readonly Plain[] => Array.isArray(value);
const isRecord = (value: Plain): value is { readonly [key: string]: Plain } =>
  typeof value === "object" && !Array.isArray(value);

/** On one line, in brackets. */
export function flowText(value: Plain): string {
  if (isList(value)) return `[${value.map(flowText).join(", ")}]`;
  if (!isRecord(value)) return scalarText(value, "flow");
  const pairs = Object.entries(value).map(([key, one]) => `${scalarText(key, "flow")}: ${flowText(one)}`);
  return pairs.length === 0 ? "{}" : `{ ${pairs.join(", ")} }`;
}

/** What follows `key:` or `-`, from the blank or the line's end on: short records on one line, others a key a line.
 *  `indent`: how far the key or the dash stands in. */
export function blockText(value: Plain, indent: number, after: "key" | "dash"): string {
  if (isList(value)) {
    if (value.every((one) => !isRecord(one))) return ` ${flowText(value)}`;
    const lead = `\n${" ".repeat(indent + 2)}-`;
    return value.map((one) => lead + blockText(one, indent + 2, "dash")).join("");
  }
  if (!isRecord(value)) return ` ${scalarText(value, "block")}`;
  const entries = Object.entries(value);
  const simple = after === "key" && entries.every(([, one]) => !isRecord(one) && !isList(one));
  if (entries.length === 0 || simple) return ` ${flowText(value)}`;
  const pairs = entries.map(([key, one]) => `${scalarText(key, "block")}:${blockText(one, indent + 2, "key")}`);
  const between = `\n${" ".repeat(indent + 2)}`;
  return after === "dash" ? ` ${pairs.join(between)}` : between + pairs.join(between);
}

/** The end of a node's own text, without comments and blank lines after it. */
export function endOf(node: Node): number {
  if ((isMap(node) || isSeq(node)) && !node.flow) {
    const last = node.items.at(-1);
    if (isSeq(node) && last !== undefined) return endOf(last as Node);
    if (isMap(node)) {
      const pair = node.items.at(-1);
      const value = pair?.value as Node | null | undefined;
      if (value?.range && !(isScalar(value) && value.source === "" && value.type === "PLAIN")) return endOf(value);
      const key = pair?.key as Node | undefined;
      if (key) return endOf(key) + 1;
    }
  }
  return node.range?.[1] ?? 0;
}
