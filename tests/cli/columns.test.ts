import { expect, test } from "vitest";
import { inTable } from "../../src/cli/inColumns.js";
import { nextParts } from "../../src/cli/toAdd.js";
import { builtIn } from "../../src/sheets/builtIn.generated.js";
import type { Template } from "../../src/sheets/template.js";
import { file, folder, witnessmark } from "../support/command.js";

const demo = "templates/machines/boathouse.yaml";
const check = (path: string, ...words: string[]) => witnessmark("check", path, "--out", folder(), ...words);
const tooLong = (text: string) => text.split("\n").filter((line) => [...line].length > 80);

/** Names alike at both ends, of so many letters. */
const long = (index: number, letters: number) => {
  const [head, tail] = ["Wheel for the slide ", " beside the headstock"];
  return `${head}${String(index).padStart(letters - head.length - tail.length, "x")}${tail}`;
};

/** Ten handwheels and thirty positions, all names of sixty letters. */
const fullest = () => {
  const wheel = (_: unknown, index: number) =>
    `  - name: ${long(index, 60)}\n    reads: diameter\n    travel: 60\n    feed: { perTurn: 2.11255, uncertainty: 0.00027, nominal: 2.1167 }\n    dial: { shape: drum, diameter: 38, width: 9 }\n`;
  const step = (stage: number, count: number) =>
    Array.from(
      { length: count },
      (_, index) =>
        `{ label: ${long(index, stage === 1 ? 29 + 13 : 17 + 25)}, driver: ${50 + 7 * index}, driven: ${120 - 9 * index} }`,
    ).join(", ");
  return `name: ${"N".repeat(60)}\nlimits: { chuck: 700 rpm }\ndrive:\n  motor: { speed: 1425 rpm }\n  stages:\n    - name: first\n      steps: [${step(1, 5)}]\n    - name: second\n      steps: [${step(2, 6)}]\nhandwheels:\n${Array.from({ length: 10 }, wheel).join("")}`;
};

test("names of sixty letters, ten handwheels and thirty positions: a line for each, none beyond 80 columns", async () => {
  const { code, out } = await check(file(fullest()));
  expect(code).toBe(0);
  expect(tooLong(out)).toEqual([]);
  const lines = out.split("\n");
  expect(lines.filter((line) => / rpm /.test(line))).toHaveLength(30);
  // By the signs of the cards, which are told.
  expect(lines.filter((line) => /^ {2}\d [A-Z] +\d+ rpm /.test(line))).toHaveLength(30);
  expect(lines.some((line) => /A = Wheel for the slide/.test(line))).toBe(true);
  const wheels = lines.filter((line) => /2\.11255 ± 0\.00027 mm .*169 × 0\.05 mm Ø, 2 rows$/.test(line));
  expect(wheels).toHaveLength(10);
  // Which is which can still be told.
  expect(new Set(wheels.map((line) => line.split("2.11255")[0])).size).toBe(10);
  expect(tooLong((await check(file(fullest()), "--choices", "--suppose", "60 Hz")).out)).toEqual([]);
});

test("of a name that is too long whole words stay, with a sign of what is left out", () => {
  const words = "85 × 0.05 mm Ø, true, and as much more as leaves little";
  const name = "Cross slide of the old lathe by the window in the boat house";
  const shown = (own: string) =>
    inTable([[own, words]])[0]
      ?.split(`  ${words}`)[0]
      ?.trim() ?? "";
  expect(shown(name)).toContain("…");
  for (const word of shown(name).split(/[… ]+/)) expect(name.split(" ")).toContain(word);
  const [begin = "", end = ""] = shown(name).split("…");
  expect(name.startsWith(begin)).toBe(true);
  expect(name.endsWith(end)).toBe(true);
  expect(shown("Wheelofoneverylongwordthatgoesonandonwithoutanyend")).toMatch(/^Wheelof\w+…$/);
});

test("what was chosen comes first; the other ways to divide a dial come when asked for", async () => {
  const short = (await check(demo)).out;
  expect(short).toMatch(/^ {2}Cross slide +2\.11255 ± 0\.00027 mm {2}measured +169 × 0\.05 mm Ø, 2 rows$/m);
  expect(short).not.toMatch(/last division short|lost motion 0/);
  expect(short).toContain("--choices");
  expect(short).not.toContain("To add next");
  const all = (await check(demo, "--choices", "--suppose", "60 Hz", "--job", "templates/jobs/deck-pin.yaml")).out;
  expect(all).toMatch(/as told → even +63 × 0\.001 in/);
  expect(all).toContain("last division short (0.0251 mm): count whole turns");
  expect(all).toContain("lost motion 0.130 mm");
  expect(tooLong(all)).toEqual([]);
});

test("the emptiest file is told what to add for which sheet, the others what they still lack", async () => {
  const { out } = await check(file("name: X\n"));
  for (const { what, sheets } of Object.values(nextParts))
    for (const words of [what, ...sheets]) expect(out).toContain(words);
  expect(tooLong(out)).toEqual([]);
  const wheel = await check(file("name: X\nhandwheels: [{ name: Cross slide, feed: 2 }]\n"));
  expect(wheel.out).toContain("belt-card");
  expect(wheel.out).toContain("dial: beside feed:");
  expect(wheel.out).not.toContain("handwheels: feed:");
});

test("the sheets that a part makes are those whose templates need it", () => {
  const made = (...needs: Template["needs"][]) =>
    builtIn.filter((sheet) => !sheet.onRequest && needs.includes(sheet.needs)).map(({ name }) => name);
  const names = (part: keyof typeof nextParts) => [...nextParts[part].sheets].sort();
  expect(names("drive")).toEqual(made("drive", "drive or feed").sort());
  expect(names("feed")).toEqual(made("feed", "drive or feed").sort());
  expect(names("dial")).toEqual(made("pieces").sort());
  expect(names("readings")).toEqual(made("readings").sort());
});

test("nothing is coloured where it does not go to a terminal", async () => {
  const { out, err } = await check(file("name: X\nunits: feet\n"));
  expect(err).toContain("feet");
  expect(`${out}${err}`).not.toContain("\u001b");
});

test("another drive's speeds stand under what they are", async () => {
  const drive =
    "name: L\ndrive: { motor: { speed: 1425 rpm, mains: 50 Hz }, stages: [{ name: b, steps: [{ label: A, driver: 50, driven: 100 }] }] }\n";
  const { out } = await check(file(drive), "--suppose", "60 Hz");
  const [head = "", row = ""] = /^ {2}position, rpm.*\n.*$/m.exec(out)?.[0].split("\n") ?? [];
  expect(head.indexOf("after") + "after".length).toBe(row.indexOf(" 855") + 4);
  expect(head.indexOf("change") + "change".length).toBe(row.indexOf("%") + 1);
});

test("a feed that was measured too shortly is to be measured over more, one that was not is to be measured", async () => {
  const wheel = (feed: string) =>
    file(
      `name: L\nhandwheels: [{ name: S, travel: 100, feed: ${feed}, dial: { shape: drum, diameter: 40, width: 9 } }]\n`,
    );
  const short = await check(wheel("{ readings: { gauge: 0.01, turns: [0, 1, 2, 3], travel: [0, 2.01, 4, 6.02] } }"));
  expect(short.out).toMatch(/;\s+measure over more of the travel/);
  expect((await check(wheel("{ perTurn: 2, uncertainty: 0.01 }"))).out).toMatch(/;\s+measure it\n/);
  expect(short.out).toMatch(/Nothing was printed into \S+ yet/);
});
