import type { Way } from "../../file/edit.js";
import type { Nodes } from "../../file/nodes.js";
import { inWords } from "../../schema.js";
import { readingHead } from "./readingHeads.js";

/** What an entry of a list is called: by its owner, else by what is done in it. */
export const nameAt = ({ words }: Pick<Nodes, "words">, way: Way): string =>
  words([...way, "name"]) || words([...way, "label"]) || words([...way, "do"]);

/** A place of a file in words, the innermost first: "dial divisions of Cross slide". */
export function placeWords(way: Way, nodes: Pick<Nodes, "words">): string {
  const parts: string[] = [];
  let keys: string[] = [];
  for (const [depth, step] of way.entries()) {
    if (typeof step === "string") {
      // Its owner's names are nobody's to spell anew.
      keys.push(way[depth - 1] === "printers" ? `“${step}”` : inWords(step));
      continue;
    }
    const at = way.slice(0, depth + 1);
    const head = way[depth - 2] === "readings" ? readingHead(way[depth - 1]) : undefined;
    const one = head ? `row ${step + 1}, “${head}”,` : `${singular(String(way[depth - 1] ?? "entry"))} ${step + 1}`;
    const name = nodes.words([...at, "name"]);
    const called = nameAt(nodes, at);
    parts.unshift(name || (called && called !== name ? `${one} (${called})` : one));
    keys = [];
  }
  if (keys.length > 0) parts.unshift(keys.join(" "));
  return parts.join(" of ") || "the file";
}

export function singular(key: string): string {
  const words = inWords(key);
  if (words.endsWith("ies")) return `${words.slice(0, -3)}y`;
  return words.endsWith("s") ? words.slice(0, -1) : words;
}
