/** Words that show how something is written in the file, as one fills it into a form: braces, brackets and colons are YAML's. */
export function inForm(words: string): string {
  return words
    .replace(/\b(write|add) {1,2}(\w+): \{ ([^{}]*) \}/g, (_, verb, key, parts) => `${verb} ${key} (${partsOf(parts)})`)
    .replace(
      /(?:\b(\w+): )?\{ do: ([^,{}]+)((?:, [^{}]*)?) \}/g,
      (_, key, step, rest) =>
        `${key ? `${key} ` : ""}a step “${step.trim()}”${rest ? ` (${partsOf(rest.slice(2))})` : ""}`,
    )
    .replace(/: (\w+): \{ ([^{}]*) \}/g, (_, key, parts) => `: ${key} (${partsOf(parts)})`)
    .replace(/\b(\w+): \{ ([^{}]*) \}/g, (_, key, parts) => `${key} (${partsOf(parts)})`)
    .replace(/: \{ ([^{}]*) \}/g, (_, parts) => `: ${partsOf(parts)}`)
    .replace(/\{ ([^{}]*) \}/g, (_, parts) => partsOf(parts))
    .replace(/\b(\w+): \[([^[\]]*)\]/g, "$1 $2")
    .replace(/\bit must be keys and values\b/g, "it is filled in part by part")
    .replace(/\badd (\w+):(?=$|[;,. ])/g, "fill in “$1”")
    .replace(/\b([a-z][A-Za-z]*):(?=$|[;,.]| (?:and|or|both|is|say)\b)/g, "“$1”");
}

const partsOf = (parts: string): string => parts.replace(/(\w+): /g, "$1 ");
