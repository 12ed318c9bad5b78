import type { Language } from "../../src/words/language.js";
import { type Key, type Text, texts } from "../../src/words/words.generated.js";

const twice = (text: string): string => `${text} ${text.replace(/\{[a-zA-Z]+\}/g, "…")}`;

/** A language whose every word is twice as long as the English one: paper must bear it. Units and marks stay. */
export const doubled: Language = {
  code: "en",
  texts: Object.fromEntries(
    Object.entries(texts.en).map(([key, text]): [string, Text] => [
      key,
      key.startsWith("units and numbers.")
        ? text
        : typeof text === "string"
          ? twice(text)
          : (Object.fromEntries(Object.entries(text).map(([form, one]) => [form, twice(one as string)])) as Text),
    ]),
  ) as Record<Key, Text>,
};
