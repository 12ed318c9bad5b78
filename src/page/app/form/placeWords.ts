import type { Way } from "../../file/edit.js";
import type { Nodes } from "../../file/nodes.js";
import { inWords } from "../../schema.js";
import { readingHead } from "./readingHeads.js";
import { entryWords } from "./saying.js";

/** What an entry of a list is called: by its owner, else by what is done in it, or by the position that it is about. */
export const nameAt = ({ words }: Pick<Nodes, "words">, way: Way): string =>
  words([...way, "name"]) || words([...way, "label"]) || words([...way, "do"]) || positionAt({ words }, way);

/** "A, open", however it is written. */
function positionAt({ words }: Pick<Nodes, "words">, way: Way): string {
  const labels: string[] = [];
  for (;;) {
    const label = words([...way, "position", labels.length]);
    if (label === "") return labels.join(", ") || words([...way, "position"]);
    labels.push(label);
  }
}

/** What is told of an entry of a list, by the words in which the form shows it: "“fastest” of speed", "material 2". */
export const ofEntry = (told: string, way: Way): string =>
  told
    .replace(/\bentry (\d+) of (\w+)\b/g, (_, number: string, list: string) => {
      const at = way.lastIndexOf(list);
      const words = at < 0 ? undefined : entryWords(way.slice(0, at + 1), Number(number) - 1);
      if (words !== undefined) return `“${words}” of ${inWords(list)}`;
      const [outer, inner] = way.slice(at + 1);
      // A list of lists, as of gear pairs.
      return at >= 0 && typeof outer === "number" && typeof inner === "number"
        ? `entry ${number} of ${singular(list)} ${outer + 1}`
        : `${singular(list)} ${number}`;
    })
    .replace(/^((?:“[^”]+” of )?[\w ]+?) cannot be empty; it must be [^;]*$/, (all, one: string) =>
      /\d$|^“/.test(one) ? `${one} is not filled in yet` : all,
    );

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
    const one = head ? `row ${step + 1}, “${head}”,` : `${entryOf(way[depth - 1])} ${step + 1}`;
    const entry = entryWords(way.slice(0, depth), step);
    if (entry !== undefined) {
      keys = [`“${entry}” of ${keys.join(" ") || inWords(String(way[depth - 1]))}`];
      continue;
    }
    const name = nodes.words([...at, "name"]);
    const called = nameAt(nodes, at);
    parts.unshift(name || (called && called !== name ? `${one} (${called})` : one));
    keys = [];
  }
  if (keys.length > 0) parts.unshift(keys.join(" "));
  return parts.join(" of ") || "the file";
}

const entryOf = (list: Way[number] | undefined): string => (typeof list === "string" ? singular(list) : "entry");

export function singular(key: string): string {
  const words = inWords(key);
  if (words.endsWith("ies")) return `${words.slice(0, -3)}y`;
  return words.endsWith("s") ? words.slice(0, -1) : words;
}
