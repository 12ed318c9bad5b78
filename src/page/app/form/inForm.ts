import { inWords } from "../../schema.js";

/** Words that show how something is written into the file, as one fills it into a form: braces and the colon behind a key are the
 *  file's. What is already a sentence stays as it is. */
export function inForm(words: string): string {
  return (
    words
      .replace(
        /\{ do: ([^,{}]+)(?:, ([^{}]*))? \}/g,
        (_, kind, rest) => `a step “${kind}”${rest ? ` (${parts(rest)})` : ""}`,
      )
      .replace(/\b(\w+): \{ (\w+: [^{}]*) \}/g, (_, key, rest) => `“${inWords(key)}” (${parts(rest)})`)
      .replace(/\{ (\w+: [^{}]*) \}/g, (_, rest) => parts(rest))
      .replace(/^(\w+) cannot be empty; it must be [^;]*$/, (_, key) => `“${inWords(key)}” is not filled in yet`)
      .replace(/^(\w+) is missing(?:; add it$|(?=;))/, (_, key) => `“${inWords(key)}” is not filled in yet`)
      .replace("; it must be keys and values", "; it is filled in part by part")
      .replace(/\badd (\w+):(?=$|[;,.]| and\b)/g, (_, key) => `fill in “${inWords(key)}”`)
      // Two blanks part what is the file's from the sentence.
      .replace(/ {2}(\w+): (\w+)( {2})?/g, (_, key, value, on) => ` “${inWords(key)}” ${value}${on ? " " : ""}`)
      // Lists in a list are rows of fields.
      .replace(/\[(\[[\d, ]+\](?:, \[[\d, ]+\])*)\]/g, (_, lists) => lists.slice(1, -1).replaceAll("], [", " and "))
      .replace(/\b([a-z]\w*):(?=$|[;,.]| (?:and|is|both)\b)/g, (_, key) => `“${inWords(key)}”`)
      .replace(
        /(?<![\w“".])[a-z]+(?:[A-Z][a-z]+)+(: )?/g,
        (words) => `“${inWords(words.replace(": ", ""))}”${words.endsWith(" ") ? " " : ""}`,
      )
  );
}

const parts = (words: string): string => words.replace(/(\w+): /g, (_, key) => `${inWords(key)} `);
