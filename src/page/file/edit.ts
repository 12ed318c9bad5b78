/** Edits of a file's text at single places, so that all the rest stays as its owner wrote it: comments, order, blank lines. */
import { isMap, isScalar, isSeq, type Node, type Pair, parseDocument, type YAMLMap, type YAMLSeq } from "yaml";
import { blockText, endOf, flowText, type Plain, scalarText } from "./yamlText.js";

export type Way = readonly (string | number)[];

/** With a value at a place. What is missing on the way is made; an index past a list's end makes it so long, with empty words between.
 *  `order`: names of keys in the order in which new ones of the outermost level are put.
 *  @throws Error where the text is no YAML, or the way leads through a single value. */
export function withValue(text: string, way: Way, value: Plain, order: readonly string[] = []): string {
  const root = rootOf(text);
  const [key, ...rest] = way;
  if (key === undefined) throw new Error("no place is named");
  if (root === undefined) return appended(text, String(key), nested(rest, value));
  let at: Node = root;
  for (const [depth, step] of way.entries()) {
    const left = way.slice(depth + 1);
    const next = childOf(at, step);
    if (next === undefined) return added(text, at, step, nested(left, value), depth === 0 ? order : []);
    if (left.length > 0 && (isMap(next) || isSeq(next))) {
      at = next;
      continue;
    }
    return replaced(text, at, step, next, nested(left, value));
  }
  throw new Error("no place is named");
}

/** Without what stands at a place; a list or map that this leaves empty goes with it, save an item of a list. */
export function without(text: string, way: Way): string {
  const root = rootOf(text);
  if (root === undefined) return text;
  const trail: Node[] = [root];
  for (const step of way.slice(0, -1)) {
    const next = childOf(trail.at(-1) as Node, step);
    if (next === undefined) return text;
    trail.push(next);
  }
  const parent = trail.at(-1) as Node;
  const last = way.at(-1);
  if (last === undefined || !(isMap(parent) || isSeq(parent)) || !holds(parent, last)) return text;
  if (parent.items.length > 1) return parent.flow ? outOfFlow(text, parent, last) : outOfBlock(text, parent, last);
  if (way.length > 1 && typeof way.at(-2) === "string") return without(text, way.slice(0, -1));
  if (way.length > 1) return text.slice(0, startOf(parent)) + (isMap(parent) ? "{}" : "[]") + text.slice(endOf(parent));
  return parent.flow ? text.slice(0, startOf(parent)) + text.slice(endOf(parent)) : outOfBlock(text, parent, last);
}

/** With an entry of a list before the one that stands there now. @throws Error where no list with such an entry is there */
export function withEntry(text: string, list: Way, index: number, value: Plain): string {
  const seq = listAt(text, list);
  const { from } = entryAt(text, seq, index);
  if (seq.flow) return `${text.slice(0, from)}${flowText(value)}, ${text.slice(from)}`;
  const item = seq.items[index] as Node;
  const indent = columnOf(text, dashBefore(text, item));
  const written = `-${blockText(value, indent, "dash")}\n`;
  return inLine(text, from)
    ? `${text.slice(0, from)}${written}${" ".repeat(indent)}${text.slice(from)}`
    : `${text.slice(0, from)}${" ".repeat(indent)}${written}${text.slice(from)}`;
}

/** With two neighbours of a list in each other's place, each with the remarks above it and behind it. `index`: of the first of them.
 *  @throws Error where no list with both is there */
export function withSwapped(text: string, list: Way, index: number): string {
  const seq = listAt(text, list);
  const [one, other] = [entryAt(text, seq, index), entryAt(text, seq, index + 1)];
  const part = ({ from, to }: Span) => text.slice(from, to);
  // The file's last line may end without a sign for it.
  const [first, second] = [part(one), part(other)].map((words) => words.replace(/\n$/, ""));
  const end = part(other).endsWith("\n") ? "\n" : "";
  const between = seq.flow ? text.slice(one.to, other.from) : "\n";
  // Behind the dash of a list around it the first entry has no line of its own.
  const indent = !seq.flow && inLine(text, one.from) ? columnOf(text, one.from) : 0;
  const [up, down] = indent === 0 ? [second, first] : [second?.trimStart(), `${" ".repeat(indent)}${first}`];
  return `${text.slice(0, one.from)}${up}${between}${down}${end}${text.slice(other.to)}`;
}

type Span = { readonly from: number; readonly to: number };

function listAt(text: string, way: Way): YAMLSeq {
  const root = rootOf(text);
  const found = way.reduce<Node | undefined>((at, step) => at && childOf(at, step), root);
  if (!isSeq(found)) throw new Error("no list stands there");
  return found;
}

/** An entry's own text; of one on lines of its own all of them, with those of remarks above it: above the first they head
 *  the list. */
function entryAt(text: string, list: YAMLSeq, index: number): Span {
  const [before, item] = [list.items[index - 1], list.items[index]] as (Node | undefined)[];
  if (item === undefined) throw new Error("the list has no such entry");
  if (list.flow) return { from: startOf(item), to: endOf(item) };
  const dash = dashBefore(text, item);
  const from = before ? lineEndOf(text, before) + 1 : inLine(text, dash) ? dash : lineStart(text, dash);
  return { from, to: Math.min(text.length, lineEndOf(text, item) + 1) };
}

/** Whether something stands before it in its line. */
const inLine = (text: string, at: number): boolean => text.slice(lineStart(text, at), at).trim() !== "";

function rootOf(text: string): Node | undefined {
  const document = parseDocument(text, { logLevel: "silent", keepSourceTokens: false });
  const [error] = document.errors;
  if (error) throw new Error(error.message);
  const root = document.contents as Node | null;
  if (root === null || (isScalar(root) && root.value === null && !root.source)) return undefined;
  return root;
}

const startOf = (node: Node): number => node.range?.[0] ?? 0;
const keyOf = (pair: Pair): Node => pair.key as Node;
const keyName = (pair: Pair): string => (isScalar(pair.key) ? String(pair.key.source ?? pair.key.value) : "");
const pairAt = (map: YAMLMap, step: string | number): Pair | undefined =>
  map.items.find((pair) => keyName(pair) === String(step));

function childOf(node: Node, step: string | number): Node | undefined {
  if (isMap(node)) return (pairAt(node, step)?.value as Node | null | undefined) ?? undefined;
  return isSeq(node) ? (node.items[Number(step)] as Node | undefined) : undefined;
}

const holds = (node: YAMLMap | YAMLSeq, step: string | number): boolean =>
  isMap(node) ? pairAt(node, step) !== undefined : Number(step) < node.items.length;

/** What a way through things that are not there yet comes to. */
const nested = (way: Way, value: Plain): Plain =>
  way.reduceRight<Plain>(
    (inner, step) => (typeof step === "number" ? [...empty(step), inner] : { [step]: inner }),
    value,
  );

/** Empty words for so many places of a list. */
const empty = (count: number): Plain[] => Array.from({ length: count }, () => "");

const lineStart = (text: string, at: number): number => text.lastIndexOf("\n", at - 1) + 1;
const lineEnd = (text: string, at: number): number => {
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : end;
};
/** Columns from the line's start to a place. */
const columnOf = (text: string, at: number): number => at - lineStart(text, at);

/** The end of the lines that a node takes, its comment on the last of them with it. */
function lineEndOf(text: string, node: Node): number {
  const end = endOf(node);
  return lineEnd(text, text[end - 1] === "\n" ? end - 1 : end);
}

function appended(text: string, key: string, value: Plain): string {
  const before = text === "" || text.endsWith("\n") ? text : `${text}\n`;
  return `${before}${scalarText(key, "block")}:${blockText(value, 0, "key")}\n`;
}

function added(text: string, to: Node, step: string | number, value: Plain, order: readonly string[]): string {
  if (!isMap(to) && !isSeq(to)) throw new Error("a single value stands there");
  const between = isSeq(to) ? empty(Number(step) - to.items.length) : [];
  const name = isMap(to) ? `${scalarText(String(step), to.flow ? "flow" : "block")}:` : "";
  const pair = isMap(to) ? pairAt(to, step) : undefined;
  // A key that stands there with nothing behind it.
  if (pair !== undefined) {
    const at = text.indexOf(":", endOf(keyOf(pair))) + 1;
    const written = to.flow ? ` ${flowText(value)}` : blockText(value, columnOf(text, startOf(keyOf(pair))), "key");
    return text.slice(0, at) + written + text.slice(at);
  }
  if (to.flow) {
    const written = isMap(to) ? `${name} ${flowText(value)}` : [...between, value].map(flowText).join(", ");
    const last = to.items.at(-1);
    if (last === undefined)
      return `${text.slice(0, startOf(to))}${isMap(to) ? `{ ${written} }` : `[${written}]`}${text.slice(endOf(to))}`;
    const at = itemEnd(text, last as Node | Pair);
    return `${text.slice(0, at)}, ${written}${text.slice(at)}`;
  }
  const before = isMap(to) ? neighbour(to, String(step), order) : undefined;
  if (before === "first") {
    const [first] = (to as YAMLMap).items;
    const at = startOf(keyOf(first as Pair));
    const indent = columnOf(text, at);
    return `${text.slice(0, at)}${name}${blockText(value, indent, "key")}\n${" ".repeat(indent)}${text.slice(at)}`;
  }
  const indent = isMap(to)
    ? columnOf(text, startOf(keyOf(to.items[0] as Pair)))
    : columnOf(text, dashBefore(text, to.items[0] as Node));
  const written = isMap(to)
    ? `${name}${blockText(value, indent, "key")}`
    : [...between, value].map((one) => `-${blockText(one, indent, "dash")}`).join(`\n${" ".repeat(indent)}`);
  const at = before === undefined ? lineEndOf(text, to) : pairLineEnd(text, before);
  return `${text.slice(0, at)}\n${" ".repeat(indent)}${written}${text.slice(at)}`;
}

/** The pair after which a key belongs by the order of names; undefined: at the end. */
function neighbour(map: YAMLMap, key: string, order: readonly string[]): Pair | "first" | undefined {
  const rank = order.indexOf(key);
  if (rank < 0) return undefined;
  const earlier = map.items.filter((pair) => {
    const own = order.indexOf(keyName(pair));
    return own >= 0 && own < rank;
  });
  return earlier.at(-1) ?? (map.items.some((pair) => order.includes(keyName(pair))) ? "first" : undefined);
}

function replaced(text: string, parent: Node, step: string | number, node: Node, value: Plain): string {
  const collection = parent as YAMLMap | YAMLSeq;
  const simple = typeof value !== "object";
  const [start, end] = [startOf(node), endOf(node)];
  const block = (isMap(node) || isSeq(node)) && !node.flow;
  if (collection.flow || (simple && !block)) {
    const written = simple ? scalarText(value, collection.flow ? "flow" : "block") : flowText(value);
    return text.slice(0, start) + written + (text[end - 1] === "\n" && !block ? "\n" : "") + text.slice(end);
  }
  const from = isMap(collection)
    ? text.indexOf(":", endOf(keyOf(pairAt(collection, step) as Pair))) + 1
    : dashBefore(text, node) + 1;
  const indent = isMap(collection)
    ? columnOf(text, startOf(keyOf(pairAt(collection, step) as Pair)))
    : columnOf(text, from - 1);
  const written = blockText(value, indent, isMap(collection) ? "key" : "dash");
  return text.slice(0, from) + written + (text[end - 1] === "\n" ? "\n" : "") + text.slice(end);
}

const dashBefore = (text: string, item: Node): number => text.lastIndexOf("-", startOf(item) - 1);

function pairLineEnd(text: string, pair: Pair): number {
  const value = pair.value as Node | null | undefined;
  return value?.range
    ? Math.max(lineEndOf(text, value), lineEnd(text, endOf(keyOf(pair))))
    : lineEnd(text, endOf(keyOf(pair)));
}

const isPair = (item: Node | Pair): item is Pair => "key" in item;

function itemEnd(text: string, item: Node | Pair): number {
  if (!isPair(item)) return endOf(item);
  const value = item.value as Node | null | undefined;
  const end = value?.range ? endOf(value) : 0;
  const key = endOf(keyOf(item));
  // With nothing behind it, the colon is the end; a key alone has none.
  return end > key ? end : text.slice(key).match(/^\s*:/) ? text.indexOf(":", key) + 1 : key;
}

const itemStart = (item: Node | Pair): number => startOf(isPair(item) ? keyOf(item) : item);

const indexIn = (parent: YAMLMap | YAMLSeq, step: string | number): number =>
  isMap(parent) ? parent.items.findIndex((pair) => keyName(pair) === String(step)) : Number(step);

function outOfFlow(text: string, parent: YAMLMap | YAMLSeq, step: string | number): string {
  const items = parent.items as (Node | Pair)[];
  const index = indexIn(parent, step);
  const item = items[index] as Node | Pair;
  const next = items[index + 1];
  if (next !== undefined) return text.slice(0, itemStart(item)) + text.slice(itemStart(next));
  return text.slice(0, itemEnd(text, items[index - 1] as Node | Pair)) + text.slice(itemEnd(text, item));
}

function outOfBlock(text: string, parent: YAMLMap | YAMLSeq, step: string | number): string {
  const items = parent.items as (Node | Pair)[];
  const index = indexIn(parent, step);
  const item = items[index] as Node | Pair;
  const start = isPair(item) ? itemStart(item) : dashBefore(text, item);
  const end = isPair(item) ? pairLineEnd(text, item) : lineEndOf(text, item);
  const next = items[index + 1];
  // The first key of a list's item stands behind the dash: the next one takes its place.
  if (text.slice(lineStart(text, start), start).trim() !== "" && next !== undefined)
    return text.slice(0, start) + text.slice(isPair(next) ? itemStart(next) : dashBefore(text, next));
  return text.slice(0, lineStart(text, start)) + text.slice(Math.min(text.length, end + 1));
}
