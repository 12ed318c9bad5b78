import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeSamples } from "../scripts/samplePages.mjs";

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

test("README shows only pictures that are there, and every sheet of the plain pack", () => {
  const readme = readFileSync("README.md", "utf8");
  const shown = [...readme.matchAll(/out\/sample\/([\w-]+\.(?:svg|png))/g)].map(([, name]) => name as string);
  const there = readdirSync("out/sample");
  expect(shown.filter((name) => !there.includes(name))).toEqual([]);
  const sheets = new Set(there.flatMap((name) => /^boathouse-(.*?)-\d+\.svg$/.exec(name)?.[1] ?? []));
  const missing = [...sheets].filter((sheet) => !shown.some((name) => name.startsWith(`boathouse-${sheet}-`)));
  expect(missing).toEqual([]);
});
