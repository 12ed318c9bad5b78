import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { file, folder, witnessmark } from "../support/command.js";
import { readPdf } from "../support/readPdf.js";

const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");

/** All words of the printed turns sheet. */
async function printed(path: string, ...options: string[]) {
  const out = folder();
  const { code, err } = await witnessmark("print", path, "--sheet", "turns", "--out", out, ...options);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  const { pages } = await readPdf(readFileSync(join(out, "lathe-turns.pdf")));
  return { out, text: pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(" ") };
}

test("paper is in the language of the file, and one asked for comes before it", async () => {
  const german = file(`${demo}\nlanguage: de\n`);
  expect((await printed(file(demo))).text).toContain("revision 3");
  expect((await printed(german)).text).toContain("Stand 3");
  expect((await printed(file(demo), "--language", "de")).text).toContain("Stand 3");
  expect((await printed(german, "--language", "en")).text).toContain("revision 3");
});

test("what was printed in German is up to date in German", async () => {
  const path = file(demo);
  const { out } = await printed(path, "--language", "de");
  expect((await witnessmark("check", path, "--out", out)).out).toContain("What was printed is up to date.");
  // Laid out again because something else in the file changed.
  const other = file(demo.replace("chuck: 2000", "chuck: 2100"));
  expect((await witnessmark("check", other, "--out", out)).out).toContain("What was printed is up to date.");
});

test("a language that there is not is answered with those that there are", async () => {
  const { code, err } = await witnessmark("print", file(demo), "--language", "xx");
  expect(code).toBe(2);
  expect(err).toMatch(/en/);
  expect(err).toMatch(/de/);
});
