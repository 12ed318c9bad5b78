import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { bind } from "../../src/sheets/binder.js";
import { inLanguage } from "../../src/words/language.js";
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
