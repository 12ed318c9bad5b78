import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { lowestWords, writeSamples } from "../scripts/samplePages.mjs";

test("out/sample shows what the demo prints today (mend with: npm run samples)", () => {
  const out = mkdtempSync(join(tmpdir(), "witnessmark-"));
  writeSamples(out);
  const names = readdirSync(out);
  expect(names.length).toBeGreaterThan(20);
  // The picture of the page is taken where there is a browser, and no two draw the same pixels.
  expect(readdirSync("out/sample").filter((name) => name !== "page.png")).toEqual(names);
  for (const name of names) {
    // The embedded fonts are left out of a failure's message.
    const drawn = (folder: string) => readFileSync(join(folder, name), "utf8").replace(/base64,[^)]*/g, "base64,…");
    expect(drawn("out/sample"), name).toBe(drawn(out));
  }
});

test("README shows only pictures that are there, and every sheet that there is", () => {
  const readme = readFileSync("README.md", "utf8");
  const shown = [...readme.matchAll(/out\/sample\/([\w-]+\.(?:svg|png))/g)].map(([, name]) => name as string);
  const there = readdirSync("out/sample");
  expect(shown.filter((name) => !there.includes(name))).toEqual([]);
  const sheets = readdirSync("templates/sheets").map((name) => name.replace(".yaml", ""));
  expect(sheets.length).toBeGreaterThan(20);
  const missing = sheets.filter((sheet) => !shown.some((name) => name.startsWith(`boathouse-${sheet}-`)));
  expect(missing).toEqual([]);
});

test("the enlarged strip is shown with all words beneath it", () => {
  const drawn = `<g class="strip"><text x="0" y="90" font-size="3">no</text></g>
<g transform="translate(1 10)"><g class="caption" transform="translate(0 20)"><text x="0" y="4" font-size="3">a</text>
<g transform="translate(5 2)"><text class="bold" x="1" y="6" font-size="2">b</text></g></g><text x="0" y="70" font-size="3">no</text></g>`;
  expect(lowestWords(drawn, "caption")).toBeCloseTo(10 + 20 + 2 + 6 + 0.26 * 2, 9);
  const out = mkdtempSync(join(tmpdir(), "witnessmark-"));
  writeSamples(out);
  const strip = readFileSync(join(out, "strip.svg"), "utf8");
  const [, top, height] = /viewBox="[\d.]+ ([\d.]+) [\d.]+ ([\d.]+)"/.exec(strip) ?? [];
  expect(strip).toMatch(/class="seam"/);
  expect(Number(top) + Number(height)).toBeGreaterThan(lowestWords(strip, "caption") + 0.5);
});
