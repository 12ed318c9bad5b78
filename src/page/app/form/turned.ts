import type { Plain } from "../../file/yamlText.js";
import type { Kind } from "../../schema.js";

/** What was said in one way, said in another: so much of it as that can hold. `before`: what was last said there in this way. Undefined
 *  where nothing of it can. A single value and a measure among several are not the same thing, whatever the figure. */
export function turned(said: Plain | undefined, kind: Kind, before: Plain | undefined): Plain | undefined {
  if (kind === "list" && isWord(said)) return [said, ...(isList(before) ? before.slice(1) : [""])];
  if (kind === "field" && isList(said)) return said.find((one) => one !== "") ?? before;
  return before;
}

const isList = (value: Plain | undefined): value is readonly Plain[] => Array.isArray(value);
const isWord = (value: Plain | undefined): value is string => typeof value === "string" && value !== "";
