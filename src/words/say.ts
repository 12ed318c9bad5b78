import { pluralForm, textOf } from "./language.js";
import { type Gaps, type Key, texts } from "./words.generated.js";

type Values<K extends Key> = [Gaps[K]] extends [never] ? [] : [values: Readonly<Record<Gaps[K], string | number>>];

/** A printed text in the language of the paper, from templates/words, its gaps filled in. A number is written with the language's
 *  decimal mark, and one called `n` chooses between `one:` and `other:`; what wants a fixed number of places comes as text.
 *  @example say("page.sheet of", { sheet: "dial", page: 1, pages: 2 })   // "dial 1 of 2" */
export const say = <K extends Key>(key: K, ...values: Values<K>): string => filled(key, values[0] ?? {});

function filled(key: Key, values: Readonly<Record<string, string | number>>): string {
  const text = textOf(key);
  const form = typeof text === "string" ? text : (text[pluralForm(Number(values.n))] ?? text.other);
  return form.replace(/\{([a-zA-Z]+)\}/g, (gap, name: string) => {
    const value = values[name];
    return value === undefined ? gap : typeof value === "number" ? numberText(value) : value;
  });
}

const numberText = (value: number): string => String(value).replace("-", "−").replace(".", decimalMark());

/** What stands between whole and part of a number: a point, or a comma. */
export const decimalMark = (): string => textOf("units and numbers.decimal mark") as string;

/** What holds numbers with a point, with the decimal mark of the paper's language: "M2.5", "2/5 (0.400000)". */
export const inDecimals = (words: string): string => words.replaceAll(/(?<=\d)\.(?=\d)/g, decimalMark());

/** A title or name within a sentence: small where the language writes its nouns small.
 *  @example withinSentence("Belt card")   // "belt card"; "Riemenkarte" stays */
export const withinSentence = (title: string): string =>
  textOf("units and numbers.nouns") === "small" ? title.charAt(0).toLowerCase() + title.slice(1) : title;

let keys: ReadonlyMap<string, Key> | undefined;

/** The key of an English text that stands alone, word for word. */
const keyOf = (english: string): Key | undefined => {
  keys ??= new Map(
    Object.entries(texts.en).flatMap(([key, text]) => (typeof text === "string" ? [[text, key as Key]] : [])),
  );
  return keys.get(english);
};

/** What a text is called in every other language, for words that a reader may write in his own. */
export function otherTongues(english: string): string[] {
  const key = keyOf(english);
  if (key === undefined) return [];
  return Object.values(texts).flatMap((of) => (typeof of[key] === "string" && of[key] !== english ? [of[key]] : []));
}

/** A text that has no gaps, by its key. */
export const wordOf = (key: Key): string => filled(key, {});

/** What one text is in all languages, the paper's own among them. */
export const inEveryTongue = (key: Key): string[] =>
  Object.values(texts).flatMap((of) => (typeof of[key] === "string" ? [of[key]] : []));

/** A text of a template in the language of the paper, where it stands word for word in the English words: so are the sheets that
 *  come with the program. A user's own words stay as they are. */
export function translated(own: string): string {
  const key = keyOf(own);
  return key === undefined ? own : filled(key, {});
}
