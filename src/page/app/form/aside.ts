import type { Way } from "../../file/edit.js";
import type { Nodes } from "../../file/nodes.js";
import type { Plain } from "../../file/yamlText.js";
import type { FileDocument } from "../document.js";

const stores = new WeakMap<FileDocument, Map<string, Plain>>();

/** What was filled in and does not stand in the file just now, since that takes one of several ways to say it: who looks at another
 *  way loses none. */
export function asideOf(document: FileDocument): Map<string, Plain> {
  const store = stores.get(document) ?? new Map<string, Plain>();
  stores.set(document, store);
  return store;
}

/** Places of a list mean others now: what waits beside them would come back to the wrong ones. */
export const forgetAside = (document: FileDocument): void => {
  stores.delete(document);
};

/** What stands at a place, in the words in which it was typed. */
export function plainAt(nodes: Nodes, way: Way): Plain {
  const there = nodes.value(way);
  if (Array.isArray(there)) return there.map((_, at) => plainAt(nodes, [...way, at]));
  if (typeof there === "object" && there !== null)
    return Object.fromEntries(Object.keys(there).map((key) => [key, plainAt(nodes, [...way, key])]));
  return typeof there === "boolean" ? there : nodes.words(way);
}
