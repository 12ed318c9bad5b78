import { isMap, isScalar, isSeq, LineCounter, type Node, type Pair, parseDocument } from "yaml";
import type { Way } from "./edit.js";
import { endOf } from "./yamlText.js";

/** A file as a form sees it. */
export type Nodes = {
  /** Why there is no form for so much text, where there is none. */
  readonly tooMuch?: string;
  /** Why the text is no YAML, where it is none. */
  readonly fault?: { readonly line: number; readonly words: string };
  /** What stands at a place: a record, a list, words, a tick; undefined where nothing does. */
  readonly value: (way: Way) => unknown;
  /** A single value's words as they were typed. */
  readonly words: (way: Way) => string;
  /** The place of what stands at a line and column, counted from 1. */
  readonly at: (line: number, column: number) => Way;
  /** Where a place's text begins and ends, as offsets; a key that is not there has none. */
  readonly span: (way: Way) => { readonly from: number; readonly to: number } | undefined;
};

/** The place that something told is about. */
export const placesOf = (
  { way, line, column }: { readonly way?: Way; readonly line: number; readonly column: number },
  { at }: Pick<Nodes, "at">,
): Way => way ?? at(line, column);

/** The most text that a form takes: it is read anew at every keystroke, where one waits for it. A large machine has a tenth. */
const MOST = 30_000;

/** Beyond these a text is no machine's, and takes YAML longer to read than one waits: brackets one inside the other, and keys or
 *  dashes one inside the other on one line. */
const DEPTH = 50;

function tooMuch(text: string): string | undefined {
  if (text.length > MOST)
    return `The file has ${Math.ceil(text.length / 1000)} thousand letters, and the form takes ${MOST / 1000} thousand`;
  return tooDeep(text)
    ? `Its parts lie more than ${DEPTH} deep in one another, and the form does not go so deep`
    : undefined;
}

export function tooDeep(text: string): boolean {
  let depth = 0;
  let deepest = 0;
  for (const [sign] of text.replaceAll(/(?<=^|\s)#.*/gm, "").matchAll(/[[\]{}]/g))
    if (sign === "[" || sign === "{") deepest = Math.max(deepest, ++depth);
    else depth = Math.max(0, depth - 1);
  let row = 0;
  // Word by word: a pattern over the whole would try a long word anew from each of its letters.
  for (const [word] of text.matchAll(/\S+|\n/g)) {
    row = word.endsWith(":") || word === "-" || word === "?" ? row + 1 : 0;
    deepest = Math.max(deepest, row);
  }
  return deepest > DEPTH;
}

const nothing: Nodes = { value: () => undefined, words: () => "", at: () => [], span: () => undefined };

export function nodesOf(text: string): Nodes {
  const much = tooMuch(text);
  if (much !== undefined) return { ...nothing, tooMuch: much };
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    logLevel: "silent",
    prettyErrors: false,
    uniqueKeys: false,
    maxAliasCount: 0,
  } as Parameters<typeof parseDocument>[1]);
  const root = document.contents as Node | null;
  const [error] = document.errors;
  const node = (way: Way): Node | undefined =>
    way.reduce<Node | undefined>((at, step) => childOf(at, step), root ?? undefined);
  return {
    ...(error && { fault: { line: lines.linePos(error.pos[0]).line, words: error.message } }),
    value: (way) => {
      const at = node(way);
      if (isMap(at)) return Object.fromEntries(at.items.map((pair) => [keyName(pair), true]));
      if (isSeq(at)) return at.items.map(() => true);
      return isScalar(at) ? (at.value ?? undefined) : undefined;
    },
    words: (way) => {
      const at = node(way);
      if (!isScalar(at) || at.value === null) return "";
      return typeof at.value === "string" ? at.value : (at.source ?? String(at.value));
    },
    at: (line, column) => wayAt(root, (lines.lineStarts[line - 1] ?? 0) + column - 1),
    span: (way) => {
      const at = node(way);
      return at?.range ? { from: at.range[0], to: endOf(at) } : undefined;
    },
  };
}

const keyName = (pair: Pair): string => (isScalar(pair.key) ? String(pair.key.source ?? pair.key.value) : "");

function childOf(at: Node | undefined, step: string | number): Node | undefined {
  if (isMap(at)) return (at.items.find((pair) => keyName(pair) === String(step))?.value as Node | null) ?? undefined;
  return isSeq(at) ? (at.items[Number(step)] as Node | undefined) : undefined;
}

/** The innermost thing whose text, or whose key, an offset lies in. */
function wayAt(root: Node | null, offset: number): Way {
  const way: (string | number)[] = [];
  let at: Node | null | undefined = root;
  while (isMap(at) || isSeq(at)) {
    if (isSeq(at)) {
      const index = at.items.findIndex((item) => within(item as Node, offset));
      if (index < 0) return way;
      way.push(index);
      at = at.items[index] as Node;
    } else {
      const pair: Pair | undefined = at.items.find(
        (one) => within(one.key as Node, offset) || within(one.value as Node | null, offset),
      );
      if (pair === undefined) return way;
      way.push(keyName(pair));
      if (within(pair.key as Node, offset)) return way;
      at = pair.value as Node | null;
    }
  }
  return way;
}

const within = (node: Node | null | undefined, offset: number): boolean =>
  node?.range !== undefined && node?.range !== null && offset >= node.range[0] && offset <= endOf(node);
