import type { LanguageCode } from "./languages.generated.js";
import { type Key, type Text, texts } from "./words.generated.js";

/** Words of one language. One that comes with the program has all of them; what another lacks is shown in English. */
export type Language = {
  /** By which the plural is chosen, as `Intl` knows it: "en", "de". */
  readonly code: string;
  readonly texts: Readonly<Partial<Record<Key, Text>>>;
};

const languageOf = (code: LanguageCode): Language => ({ code, texts: texts[code] });

/** The language of what is being made. It is set around the work and not handed through it: everything on paper is made
 *  synchronously, and every block, table and number would else carry one more parameter through some hundred functions, each of
 *  which could forget it. */
let current: Language = languageOf("en");

/** What `work` makes, in a language; afterwards, also after a fault, the one before is there again. Words that were made before,
 *  such as those of a finding, stay in theirs. @throws TypeError for work that goes on later, when the language is another's again. */
export function inLanguage<T>(language: LanguageCode | Language, work: () => T): T {
  const before = current;
  current = typeof language === "string" ? languageOf(language) : language;
  try {
    const made = work();
    if (made instanceof Promise) throw new TypeError("only work that is done at once can be in a language");
    return made;
  } finally {
    current = before;
  }
}

/** The text as it stands in the words file, with its gaps. */
export const textOf = (key: Key): Text => current.texts[key] ?? texts.en[key];

const rules = new Map<string, Intl.PluralRules>();

/** Which form of a plural a count takes: "one", "other"… */
export function pluralForm(count: number): Intl.LDMLPluralRule {
  const { code } = current;
  const rule = rules.get(code) ?? new Intl.PluralRules(code);
  rules.set(code, rule);
  return rule.select(count);
}
