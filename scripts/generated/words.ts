import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { parseDocument } from "yaml";
import * as z from "zod/mini";

/** One text, or one for each form of the plural. */
const text = z.union([
  z.string(),
  z.strictObject({
    zero: z.optional(z.string()),
    one: z.string(),
    two: z.optional(z.string()),
    few: z.optional(z.string()),
    many: z.optional(z.string()),
    other: z.string(),
  }),
]);
type Text = z.output<typeof text>;
const file = z.record(z.string(), z.nullable(z.record(z.string(), text)));

/** Gaps of a text, each once: "{page} of {pages}" has page and pages. What counts has `n`, shown or not. */
export const gapsOf = (words: Text): string[] => [
  ...new Set([
    ...(typeof words === "string" ? [] : ["n"]),
    ...(typeof words === "string" ? [words] : Object.values(words)).flatMap((form) =>
      [...(form ?? "").matchAll(/\{([a-zA-Z]+)\}/g)].map(([, name = ""]) => name),
    ),
  ]),
];

/** Texts of one language by "section.key", in the order of its file; throws where the file cannot be understood. */
export function readWords(code: string, folder = "templates/words"): Record<string, Text> {
  const path = `${folder}/${code}.yaml`;
  const document = parseDocument(readFileSync(path, "utf8"));
  const fault = document.errors[0];
  if (fault) throw new Error(`${path}: ${fault.message}`);
  const read = file.safeParse(document.toJS());
  if (!read.success)
    throw new Error(
      read.error.issues.map(({ path: at, message }) => `${path}: ${at.join(".")}: ${message}`).join("\n"),
    );
  return Object.fromEntries(
    Object.entries(read.data).flatMap(([section, words]) =>
      Object.entries(words ?? {}).map(([key, value]) => [`${section}.${key}`, value]),
    ),
  );
}

/** Every language that has a file, English first: its keys are everybody's. */
export const codes = (folder = "templates/words"): string[] => [
  "en",
  ...readdirSync(folder)
    .map((name) => basename(name, ".yaml"))
    .filter((code) => code !== "en")
    .sort(),
];

/** Lines of a language's texts, one for each English key. */
const inOrder = (english: Record<string, Text>, own: Record<string, Text>): string[] =>
  Object.keys(english).map((key) => `  ${JSON.stringify(own[key] ?? 0)},`);

/** Printed words as data, from path to text. */
export function words(): Readonly<Record<string, string>> {
  const english = readWords("en");
  const others = codes().filter((code) => code !== "en");
  const gaps = Object.entries(english).map(
    ([key, value]) =>
      `  ${JSON.stringify(key)}: ${
        gapsOf(value)
          .map((name) => JSON.stringify(name))
          .join(" | ") || "never"
      };`,
  );
  return {
    "src/words/languages.generated.ts": `/** Languages that there are words for, English first; written by \`npm run generate\`, never by hand. Apart from the words, which
 *  the command line's help need not load. */
export const languages = [${codes()
      .map((code) => JSON.stringify(code))
      .join(", ")}] as const;
export type LanguageCode = (typeof languages)[number];
`,
    "src/words/words.generated.ts": `/** Printed words by language; written by \`npm run generate\` from templates/words, never by hand. */
import type { LanguageCode } from "./languages.generated.js";

/** What is to be filled into each text. */
export type Gaps = {
${gaps.join("\n")}
};
export type Key = keyof Gaps;
/** One text, or one for each form of the plural. */
export type Text = string | { readonly [form in Intl.LDMLPluralRule]?: string } & { readonly other: string };

const en: Readonly<Record<Key, Text>> = {
${Object.entries(english)
  .map(([key, value]) => `  ${JSON.stringify(key)}: ${JSON.stringify(value)},`)
  .join("\n")}
};

/** Another language has its texts in the order of the English keys, which are long and stand here once; 0 where it has none. */
const keyed = (own: readonly (Text | 0)[]): Readonly<Record<Key, Text>> =>
  Object.fromEntries(
    Object.entries(en).map(([key, text], index) => [key, own[index] || text]),
  ) as Readonly<Record<Key, Text>>;

${others.map((code) => `let ${code}: Readonly<Record<Key, Text>> | undefined;`).join("\n")}

/** Those of another language are laid beside the English ones when they are first asked for: most runs need none. */
export const texts: Readonly<Record<LanguageCode, Readonly<Record<Key, Text>>>> = {
  en,
${others
  .map(
    (code) => `  get ${code}() {
    ${code} ??= keyed([
${inOrder(english, readWords(code)).join("\n")}
    ]);
    return ${code};
  },`,
  )
  .join("\n")}
};
`,
  };
}
