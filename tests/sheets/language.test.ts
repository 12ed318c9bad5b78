import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Findings } from "../../src/findings/findings.js";
import { bind } from "../../src/sheets/binder.js";
import { inLanguage, type Language } from "../../src/words/language.js";
import { anyMachine, sound } from "../support/anyMachine.js";
import { doubled, longWorded } from "../support/doubled.js";
import { faultLine, measureSheets } from "../support/measureSheets.js";
import { demoFindings, findingsOf, printOf, textsOf } from "../support/sheets.js";

const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");

describe("German paper", () => {
  const german = inLanguage("de", () => {
    const findings = demoFindings();
    const prints = ["belt-card", "turns"].map((sheet) => printOf(findings, sheet));
    return {
      binder: bind(findings, prints, []),
      turns: textsOf(findings, "turns"),
      threads: textsOf(findings, "threads"),
    };
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
    expect(german.threads).toContain("M2,5 ");
    expect(german.threads).not.toMatch(/\d\.\d/);
  });

  test("is English again for whoever comes next", () =>
    expect(textsOf(demoFindings(), "turns")).toContain("revision 3"));
});

/** Faults of every sheet of the demo and of machines at random; a nearly empty page is none here, since words of any length may end on one,
 *  nor is a unit that words said twice have twice. */
function faultsIn(language: Language | "de", numRuns = 24): string[] {
  const machines = fc.sample(anyMachine, { numRuns, seed: 77 });
  return inLanguage(language, () =>
    [demoFindings(), ...machines.map((machine) => sound(machine) as Findings)].flatMap((findings) =>
      measureSheets(findings)
        .faults.filter(
          ({ kind }) =>
            kind !== "page nearly empty" &&
            kind !== "cautions alone" &&
            (kind !== "unit twice" || language !== doubled),
        )
        .map(faultLine),
    ),
  );
}

test("the layout holds in German", () => expect(faultsIn("de")).toEqual([]));

test("with twice as many words", () => expect(faultsIn(doubled)).toEqual([]));

test("and with words twice as long", () => expect(faultsIn(longWorded, 12)).toEqual([]));

test.each([
  ["German", "de" as const],
  ["twice as many words", doubled],
  ["words twice as long", longWorded],
])("no sheet of the demo is refused for %s", (_, language) => {
  const refused = inLanguage(language, () => measureSheets(demoFindings()).refused.map(({ sheet }) => sheet));
  expect(refused).toEqual(measureSheets(demoFindings()).refused.map(({ sheet }) => sheet));
});

test("the machine file's language is kept, and is one that there is", () => {
  expect(findingsOf(`${demo}\nlanguage: de\n`).machine.language).toBe("de");
  expect(findingsOf(demo).machine.language).toBeUndefined();
  expect(() => findingsOf(`${demo}\nlanguage: xx\n`)).toThrow(/language/);
});
