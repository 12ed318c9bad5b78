import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

const page = readFileSync("dist/page.html", "utf8");

test("the page is no more than 700 kB, packed as a host sends it", () => {
  expect(gzipSync(page, { level: 9 }).length).toBeLessThanOrEqual(700_000);
});

test("what both of its programs need stands once", () => {
  // A message of the yaml library's.
  expect(page.split("Block collections are not allowed within flow collections").length - 1).toBe(1);
});
