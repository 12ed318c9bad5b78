import type { Language } from "../../src/words/language.js";
import { type Key, type Text, texts } from "../../src/words/words.generated.js";

const veil = (text: string): string =>
  text
    .split(/(\{[a-zA-Z]+\})/)
    .map((part, index) => (index % 2 === 1 ? part : part.replace(/[a-z]/g, "ö").replace(/[A-Z]/g, "Ö")))
    .join("");

/** A language in which every letter of every text is an ö, units and marks aside: whatever word can be read on its paper was not said in
 *  a language. */
export const veiled: Language = {
  code: "en",
  texts: Object.fromEntries(
    Object.entries(texts.en).map(([key, text]): [string, Text] => [
      key,
      key.startsWith("units and numbers.")
        ? text
        : typeof text === "string"
          ? veil(text)
          : (Object.fromEntries(Object.entries(text).map(([form, one]) => [form, veil(one as string)])) as Text),
    ]),
  ) as Record<Key, Text>,
};
