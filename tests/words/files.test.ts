import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { codes, gapsOf, readWords } from "../../scripts/generated/words.js";
import { missingGlyphs } from "../../src/drawing/text.js";
import { builtIn } from "../../src/sheets/builtIn.generated.js";

const english = readWords("en");
const sources = readdirSync("src", { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.includes(".generated."))
  .map((file) => readFileSync(join("src", file), "utf8"))
  .join("\n");
/** Keys that are put together: say(`plan.place ${what}`). */
const patterns = [...sources.matchAll(/`([a-z][a-z ]*\.[^`]*\$\{[^`]*)`/g)].map(
  ([, key = ""]) =>
    new RegExp(
      `^${key
        .split(/\$\{[^}]*\}/)
        .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"))
        .join(".+")}$`,
    ),
);
const templateWords: readonly unknown[] = builtIn.flatMap(({ title, blocks }) => [
  title,
  ...blocks.flatMap(({ block, settings }) => (block === "words" ? [settings.text] : [])),
]);

const sections = [...new Set(Object.keys(english).map((key) => key.split(".")[0]))];

/** What is written alike in both: units, signs, names, and words that German has too. */
const alike: readonly string[] = readFileSync("tests/words/alike.txt", "utf8").split("\n").filter(Boolean);

/** "{wheel}: {touch}; {set}." has none. */
const hasWords = (text: unknown): boolean => /\p{L}/u.test(JSON.stringify(text).replace(/\{[a-zA-Z]+\}/g, ""));

test("every text is used", () => {
  const unused = Object.entries(english).filter(
    ([key, text]) =>
      !sources.includes(`"${key}"`) &&
      !patterns.some((pattern) => pattern.test(key)) &&
      // Words of the data and of templates stand there in English.
      !sources.includes(JSON.stringify(text)) &&
      !templateWords.includes(text),
  );
  expect(unused.map(([key]) => key)).toEqual([]);
});

test("the words of the sheets that come with the program can be translated", () => {
  const known = Object.values(english);
  const words = builtIn.flatMap(({ title, blocks }) => [
    title,
    ...blocks.flatMap(({ block, settings }) => (block === "words" ? [settings.text] : [])),
  ]);
  expect(words.length).toBeGreaterThan(20);
  expect(words.filter((text) => !known.includes(text as string))).toEqual([]);
});

test("no key that is put together could be any of its section", () =>
  expect(
    patterns.filter((pattern) => sections.some((section) => pattern.test(`${section}.any word`))).map(String),
  ).toEqual([]));

test("no two texts of a template's words are alike, which would leave open which is meant", () => {
  const ambiguous = templateWords.filter(
    (text) => typeof text === "string" && Object.values(english).filter((other) => other === text).length > 1,
  );
  expect(ambiguous).toEqual([]);
});

describe.each(codes().filter((code) => code !== "en"))("%s", (code) => {
  const other = readWords(code);

  test("has every text and no other, in the same order", () =>
    expect(Object.keys(other)).toEqual(Object.keys(english)));

  test("fills in the same gaps", () => {
    const gaps = (texts: typeof english) =>
      Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, gapsOf(text).sort()]));
    expect(gaps(other)).toEqual(gaps(english));
  });

  test("leaves nothing in English but what is written alike", () => {
    const same = Object.entries(other).filter(
      ([key, text]) => hasWords(text) && JSON.stringify(text) === JSON.stringify(english[key]) && !alike.includes(key),
    );
    expect(same.map(([key]) => key)).toEqual([]);
  });
});

test.each(codes())("%s holds no letter that the font lacks", (code) => {
  const lacking = Object.entries(readWords(code)).flatMap(([key, text]) => {
    const letters = JSON.stringify(typeof text === "string" ? [text] : Object.values(text));
    const missing = [...missingGlyphs(letters, "regular"), ...missingGlyphs(letters, "bold")];
    return missing.length === 0 ? [] : [`${key}: ${missing.join(" ")}`];
  });
  expect(lacking).toEqual([]);
});

test("what is listed as written alike is alike", () => {
  const german = readWords("de");
  expect(alike.filter((key) => JSON.stringify(german[key]) !== JSON.stringify(english[key]))).toEqual([]);
});
