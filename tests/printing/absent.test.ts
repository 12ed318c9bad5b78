import fc from "fast-check";
import { expect, test } from "vitest";
import { absentInEnglish, leftOutInEnglish, printsOf } from "../../src/printing/prints.js";
import { languages } from "../../src/words/languages.generated.js";
import { anyMachine, sound } from "../support/anyMachine.js";
import { templates } from "../support/measureSheets.js";
import { seed } from "../support/seed.js";
import { findingsOf, template } from "../support/sheets.js";

/** Invented; its card is nearly as large as A5 holds. */
const drill = (more = "") =>
  findingsOf(`name: School drill
kind: drill
limits: { chuck: 3000 rpm }
drive:
  motor: { speed: 1400 rpm }
  cover: { width: 150, height: 110 }
  stages:
    - { name: belt, steps: [{ label: 1, driver: 110, driven: 70 }, { label: 2, driver: 70, driven: 110 }] }
${more}`);
const asked = (findings: ReturnType<typeof findingsOf>, language: "en" | "de") => {
  const wish = { templates: [template("belt-card")], language };
  const made = printsOf(findings, wish);
  return { prints: made.prints.length, absent: absentInEnglish(findings, wish, made) };
};

test("a sheet that long words in its foot leave no room for is not left out without a word", () => {
  const named = (printer: string) =>
    drill(`paper: { size: A5, printer: ${printer} }
printers: { ${printer}: { across: 199.3 of 200, down: 250.4 of 250 } }
`);
  for (const language of ["en", "de"] as const)
    expect(asked(named("office"), language)).toEqual({ prints: 1, absent: [] });
  const corrected = named("p".repeat(40));
  const german = asked(corrected, "de");
  expect(german.prints).toBe(0);
  expect(german.absent.map(({ why }) => why)).toEqual([expect.stringMatching(/150 mm × 110 mm.*A5.*;/)]);
});

test("where no printer is named the longer words of a foot take its line, and no room from the card", () => {
  expect(asked(drill("paper: { size: A5 }\n"), "de")).toEqual({ prints: 1, absent: [] });
});

test("what a sheet is made without is told in English, whatever its language", () => {
  const findings = findingsOf(`name: L
language: de
handwheels: [{ name: Planschlitten, travel: 60, feed: 2, dial: { shape: drum, diameter: 40, width: 9 } }]
angleScales: [{ name: Teilscheibe, part: spindle, radius: 140 }]
`);
  const wish = { templates: [template("dial"), template("threads")] };
  const made = printsOf(findings, wish);
  expect(made.prints.map(({ sheet }) => sheet)).toEqual(["dial", "threads"]);
  expect(leftOutInEnglish(findings, wish, made).map(({ sheet, leftOut }) => [sheet, leftOut])).toEqual([
    ["dial", ["without Teilscheibe, which is larger than the paper; choose a smaller radius or larger paper"]],
  ]);
});

test("whatever the machine and the language, each sheet is made or its absence told with a reason", () => {
  fc.assert(
    fc.property(
      anyMachine,
      fc.constantFrom(...languages),
      fc.shuffledSubarray([...templates()], { minLength: 3, maxLength: 5 }),
      (own, language, chosen) => {
        const findings = sound(own);
        if (findings === undefined) return;
        const wish = { templates: chosen, language };
        const made = printsOf(findings, wish);
        const told = absentInEnglish(findings, wish, made);
        expect([...made.prints.map(({ sheet }) => sheet), ...told.map(({ name }) => name)].sort()).toEqual(
          chosen.map(({ name }) => name).sort(),
        );
        for (const { why } of told) expect(why).not.toBe("");
        for (const { pages } of made.prints) expect(pages.length).toBeGreaterThan(0);
      },
    ),
    { seed, numRuns: 25 },
  );
});
