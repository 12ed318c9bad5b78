import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import type { Schema } from "../../src/page/schema.js";

const page = readFileSync("dist/page.html", "utf8");

test("the page is no more than 700 kB, packed as a host sends it", () => {
  expect(gzipSync(page, { level: 9 }).length).toBeLessThanOrEqual(700_000);
});

test("what both of its programs need stands once", () => {
  // A message of the yaml library's.
  expect(page.split("Block collections are not allowed within flow collections").length - 1).toBe(1);
});

const within = (id: string): string =>
  new RegExp(`<script[^>]* id="${id}">([\\s\\S]*?)</script>`).exec(page)?.[1] ?? "";

test("the texts that editors show beside the keys of a file stand once, where they are shown", () => {
  const core = within("core");
  const textsOf = ({ description, properties = {}, items, additionalProperties, anyOf = [] }: Schema): string[] => [
    ...(description === undefined ? [] : [description]),
    ...[...Object.values(properties), items, additionalProperties, ...anyOf].flatMap((one) =>
      typeof one === "object" ? textsOf(one) : [],
    ),
  ];
  const texts = ["machine", "job"]
    .flatMap((name) => textsOf(JSON.parse(readFileSync(`templates/${name}.schema.json`, "utf8")) as Schema))
    .filter((text) => text.length > 30 && !/["\\]/.test(text));
  expect(texts.length).toBeGreaterThan(100);
  expect(core.length).toBeGreaterThan(100_000);
  expect(texts.filter((text) => core.includes(text))).toEqual([]);
  expect(texts.filter((text) => !page.includes(text))).toEqual([]);
});

test("one deflate, and no inflate that nothing calls", () => {
  // Messages of pako's inflate, of which a second copy comes with pdf-lib.
  expect(within("core")).not.toContain("incorrect header check");
  expect(page.split("need dictionary").length - 1).toBeLessThanOrEqual(1);
});

test("a licence that several packages bear stands once, under all of them", () => {
  const texts = within("notices")
    .split("\n\n----------\n\n")
    .map((one) => one.replace(/^(?:.+ \d+\.\d+\.\d+ \(.+\)\n)+\n/, ""));
  expect(texts.length).toBeGreaterThan(10);
  expect(texts.filter((text, at) => texts.indexOf(text) !== at)).toEqual([]);
});
