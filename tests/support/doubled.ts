import type { Language } from "../../src/words/language.js";
import { type Key, type Text, texts } from "../../src/words/words.generated.js";

/** Twice as many words: what wraps takes twice the lines. */
const moreWords = (text: string): string => `${text} ${text.replace(/\{[a-zA-Z]+\}/g, "…")}`;

/** As many, each twice as long, so that none wraps earlier: a column is as wide as its longest word. */
const longerWords = (text: string): string =>
  text.replace(/\{[^{}]*\}|\p{L}{3,}/gu, (word) => (word.startsWith("{") ? word : word.toLowerCase() + word));

/** A language of English texts lengthened so: paper must bear it. Units and marks stay. */
const lengthened = (longer: (text: string) => string): Language => ({
  code: "en",
  texts: Object.fromEntries(
    Object.entries(texts.en).map(([key, text]): [string, Text] => [
      key,
      key.startsWith("units and numbers.")
        ? text
        : typeof text === "string"
          ? longer(text)
          : (Object.fromEntries(Object.entries(text).map(([form, one]) => [form, longer(one as string)])) as Text),
    ]),
  ) as Record<Key, Text>,
});

export const doubled = lengthened(moreWords);
export const longWorded = lengthened(longerWords);
