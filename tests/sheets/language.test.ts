import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { bind } from "../../src/sheets/binder.js";
import { inLanguage } from "../../src/words/language.js";
import { type Key, texts } from "../../src/words/words.generated.js";
import { doubled } from "../support/doubled.js";
import { walk } from "../support/marks.js";
import { demoFindings, findingsOf, printOf, sheetNames, template, textsOf } from "../support/sheets.js";

const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");

describe("German paper", () => {
  const german = inLanguage("de", () => {
    const findings = demoFindings();
    const prints = ["belt-card", "turns"].map((sheet) => printOf(findings, sheet));
    return { binder: bind(findings, prints, []), turns: textsOf(findings, "turns") };
  });

  test("bears German head, foot and titles", () => {
    expect(german.binder.title).toBe("Boathouse bench lathe: Mappe");
    expect(german.binder.sections?.map(({ title }) => title)).toEqual(["Riemenkarte", "Umdrehungen und Wege"]);
    expect(german.turns).toContain("Stand 3");
    expect(german.turns).toMatch(/Blatt Umdrehungen und Wege .* Seite 1 von \d/);
    expect(german.turns).not.toMatch(/revision 3|measured 2026/);
  });

  test("has decimal commas and no decimal point", () => {
    expect(german.turns).toMatch(/\d,\d{3}/);
    expect(german.turns).not.toMatch(/\d\.\d/);
  });

  test("is English again for whoever comes next", () =>
    expect(textsOf(demoFindings(), "turns")).toContain("revision 3"));
});

/** Sheets whose words still stand in the code; none is added here, and each goes when its words have moved. */
const inCode = [
  "angle-scale",
  "belt-card",
  "dial",
  "dial-choices",
  "drilling-card",
  "engraving",
  "hand-feed",
  "measured-report",
  "measuring-form",
  "printer-check",
  "ring-cutting",
  "scales",
  "speed-diagram",
  "speed-tree",
  "start-readings",
  "stops",
  "tapers",
  "threads",
  "turns",
  "vernier",
];

describe("nothing on German paper is left in English but names of the file's own", () => {
  const job = readFileSync("templates/jobs/deck-pin.yaml", "utf8");
  const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}{3,}/gu) ?? [];
  const own = new Set([demo, job].flatMap((text) => ownWords(parse(text)).flatMap(wordsOf)));
  /** What is written alike in both languages. */
  const keys = readFileSync("tests/words/alike.txt", "utf8").split("\n").filter(Boolean) as Key[];
  const alike: readonly unknown[] = keys.map((key) => texts.en[key]);
  const drawn = (name: string): string[] => {
    const found: string[] = [];
    for (const { drawing } of printOf(demoFindings(), name).pages)
      walk(drawing.marks, (mark) => {
        if (mark.kind === "text") found.push(mark.text);
      });
    return found;
  };

  test.each(sheetNames().filter((name) => !inCode.includes(name)))("%s", (name) => {
    const english = new Set(drawn(name));
    const german = inLanguage("de", () => drawn(name));
    expect(german.length).toBeGreaterThan(10);
    const left = german.filter(
      (text) => english.has(text) && !alike.includes(text) && wordsOf(text).some((word) => !own.has(word)),
    );
    expect([...new Set(left)]).toEqual([]);
  });
});

/** Every text of a file that is no key. */
function ownWords(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(ownWords) : [];
}

describe("words twice as long", () => {
  // Whatever else happens to the layout, no sheet is lost and no number changes.
  const sheets = sheetNames().filter((name) => !template(name).onRequest);
  test.each(sheets)("%s is made all the same", (name) => {
    const findings = inLanguage(doubled, demoFindings);
    let texts = 0;
    const { pages } = inLanguage(doubled, () => printOf(findings, name));
    for (const { drawing } of pages)
      walk(drawing.marks, (mark) => {
        if (mark.kind === "text") texts++;
      });
    expect(texts).toBeGreaterThan(10);
  });
});

test("the machine file's language is kept, and is one that there is", () => {
  expect(findingsOf(`${demo}\nlanguage: de\n`).machine.language).toBe("de");
  expect(findingsOf(demo).machine.language).toBeUndefined();
  expect(() => findingsOf(`${demo}\nlanguage: xx\n`)).toThrow(/language/);
});
