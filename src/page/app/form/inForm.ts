import { inWords, jobSchema, machineSchema, type Schema } from "../../schema.js";

/** Words that show how something is written into the file, as one fills it into a form: braces and the colon behind a key are the
 *  file's. What is already a sentence stays as it is, and what stands in quotes, which is the user's own. */
export function inForm(words: string): string {
  const quoted = words.match(/"[^"]*"/g) ?? [];
  let at = 0;
  // A sign of nobody's stands for each meanwhile.
  return outsideQuotes(words.replace(/"[^"]*"/g, "\uE000")).replace(/\uE000/g, () => quoted[at++] ?? "");
}

function outsideQuotes(words: string): string {
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
      // A key within another, as where a remedy names both: its field, and the part that it stands in.
      .replace(/\b([a-z]\w*): ([a-z]\w*):(?=$|[;,.)])/g, (_, of, key) => `“${inWords(key)}” of “${inWords(of)}”`)
      .replace(/\b([a-z]\w*):(?=$|[;,.)]| (?:and|is|both)\b)/g, (_, key) => `“${inWords(key)}”`)
      .replace(/(?<![\w“".])([a-z]+(?:[A-Z][a-z]+)+)\b(?!\.(?:csv|yaml)\b)(: )?/g, (words, key, on) =>
        keys.has(key) ? `“${inWords(key)}”${on ? " " : ""}` : words,
      )
  );
}

const parts = (words: string): string => words.replace(/(\w+): /g, (_, key) => `${inWords(key)} `);

/** All that the files of a machine and of a job may hold: other words that look like keys are names of the user's own. */
const keys: ReadonlySet<string> = new Set([machineSchema, jobSchema].flatMap(keysOf));

function keysOf(schema: Schema): string[] {
  const { properties = {}, additionalProperties, items, prefixItems = [], anyOf = [] } = schema;
  const within = [...Object.values(properties), additionalProperties, items, ...prefixItems, ...anyOf];
  return [...Object.keys(properties), ...within.flatMap((one) => (typeof one === "object" ? keysOf(one) : []))];
}
