import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";

const words = parse(readFileSync("templates/words/en.yaml", "utf8")) as Record<string, Record<string, unknown>>;

/** The word "in" before or behind a number: on an inch machine's paper "¼ in 10" is a quarter of an inch. */
const besideNumber =
  /(\}|\d|¼)\s+in\s+(\{|\d|one\b|two\b|three\b|ten\b)|(¼|\{parts\}|\{counts\})\s+in\b|\b(one|two|three) in (two|ten)/;

test.each(["hand feed", "turns", "drilling card", "belt card", "speed diagram", "stops", "tapers", "threads"])(
  "%s: the word “in” never stands beside a number, where inches are read",
  (section) => {
    const told = Object.entries(words[section] ?? {}).flatMap(([key, value]) =>
      (typeof value === "string" ? [value] : Object.values(value as object)).map((text) => `${key}: ${text}`),
    );
    expect(told.length).toBeGreaterThan(5);
    expect(told.filter((one) => besideNumber.test(one.replace(/^[^:]*: /, "")))).toEqual([]);
  },
);

test("over a column no unit stands where the word belongs", () => {
  // "side goes in", and below it "in".
  const heads = ["goes in", "sine bar", "turns"].map((key) => words.tapers?.[key]).concat(words.turns?.turns);
  for (const head of heads.filter((one) => one !== undefined)) expect(head).not.toMatch(/\bin$/);
});
