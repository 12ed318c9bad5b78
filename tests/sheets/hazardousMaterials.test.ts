import { describe, expect, test } from "vitest";
import { hazardsOf } from "../../src/cutting/hazards.js";
import { coolant } from "../../src/cutting/materials.js";
import { burns } from "../../src/findings/chipFire.js";
import { readJob } from "../../src/job/read.js";
import { arrange } from "../../src/sheets/arrange.js";
import { exercises } from "../../src/student/exercises.js";
import { explainCuttingSpeed } from "../../src/working/cuttingSpeed.js";
import { findingsOf, printOf, sheetNames, template } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

/** A machine that cuts nothing else but that (and what is named beside it), with speeds of one's own where none is in print. */
const lathe = (material: string, units = "mm", others = "") =>
  findingsOf(`name: L
units: ${units}
drive:
  motor: { speed: 1425 }
  stages: [{ name: belt, steps: [{ driver: 50 mm, driven: 150 mm }, { driver: 100 mm, driven: 100 mm }] }]
handwheels:
  - { name: Cross slide, reads: diameter, feed: 2 mm, dial: { shape: drum, diameter: 40 mm, width: 10 mm } }
  - { name: Carriage, feed: 44 mm }
  - { name: Top slide, feed: 1.5 mm }
  - { name: Tailstock barrel, feed: 2.5 mm, travel: 40 mm }
work:
  materials: [${others}${material}]
  cuttingSpeeds:
    - { material: ${material}, speed: [20 m/min, 30 m/min] }
    - { material: ${material}, speed: [20 m/min, 30 m/min], operation: drilling }
`);

/** The job in it, where a job may be: a name that is only one's own is not in the data. */
const jobIn = (material: string) =>
  readJob(`name: Try
units: mm
material: ${material}
bar: { diameter: 16, out: 40 }
steps:
  - { do: face, depth: 0.5 }
  - { do: turn, from: 16, to: 14, length: 20, tolerance: 0.001 }
  - { do: taper, large: 14, small: 12, length: 5 }
  - { do: drill, diameter: 3.3, depth: 10 }
  - { do: bore, from: 3.3, to: 6, depth: 8 }
  - { do: ream, diameter: 6, depth: 8 }
  - { do: tap, thread: M4, depth: 6 }
  - { do: part, diameter: 14, length: 20, blade: 2 }
`).job;

const burning = [
  "magnesium",
  "magnesium alloy",
  "magnesium AZ31",
  "titanium",
  "titanium alloy",
  "Ti grade 2",
  "zirconium",
];
const poisoning = ["beryllium copper", "BeCu", "CuBe2", "PTFE", "PVDF", "PVC", "hard wood", "yew"];
const all = [...burning, ...poisoning];

/** What a sentence forbids is not what it advises. */
const advised = (words: string) => words.replace(/\b(no|not|never|none|nothing)\b[^.;:]*/gi, "");
const contradicting: readonly (readonly [RegExp, (material: string) => boolean])[] = [
  [/oil for steel/i, () => true],
  [/spring|same setting again/i, burns],
  [/dwell|pause|let it turn/i, burns],
  [/fine feed|finely|lightest feed|at the least feed/i, burns],
  [/water|soluble|paraffin|kerosene/i, burns],
  [
    /finish by hand|emery|\bfil(e|ing) (it|to|the|down)\b|polish|abrasive/i,
    (material) => burns(material) || /be/i.test(material),
  ],
  [/\bdry\b/i, (material) => /^be|^cube/i.test(material)],
];
/** Whichever unit of a cutting speed comes first. */
const eitherUnit = (words: string) =>
  words.replace(/([\d.,]+ ft\/min) \(([\d.,]+ m\/min)\)/g, (_, feet, metres) => `${metres} (${feet})`);
const sheetsOf = (material: string, units: string) => {
  const job = jobIn(material);
  const findings = { ...lathe(material, units), ...(job && { job }) };
  return sheetNames().flatMap((sheet) => {
    const found = arrange(findings, template(sheet));
    return "missing" in found ? [] : [{ sheet, words: wordsOf(found.print) }];
  });
};

describe.each(all.flatMap((material) => ["mm", "in"].map((units) => [material, units] as const)))(
  "%s on every sheet of a machine in %s",
  (material, units) => {
    const sheets = sheetsOf(material, units);
    const cautions = hazardsOf([material]).map(({ caution }) => caution);
    const naming = sheets.filter(({ words }) => words.includes(material));

    test("there are sheets that name it", () => {
      expect(cautions.length).toBeGreaterThan(0);
      expect(naming.map(({ sheet }) => sheet)).toEqual(
        expect.arrayContaining(["belt-card", "drilling-card", "speed-diagram", "student"]),
      );
      if (jobIn(material)) expect(naming.map(({ sheet }) => sheet)).toContain("plan");
    });

    test("each that names it bears its caution", () => {
      for (const { sheet, words } of naming)
        for (const caution of cautions) expect(eitherUnit(words), sheet).toContain(caution);
    });

    test("so does each of its pages: one may lie apart", () => {
      const job = jobIn(material);
      const findings = { ...lathe(material, units), ...(job && { job }) };
      for (const { sheet } of naming) {
        const print = printOf(findings, sheet);
        for (const page of print.pages)
          for (const caution of cautions)
            expect(eitherUnit(wordsOf({ ...print, pages: [page] })), sheet).toContain(caution);
      }
    });

    test("none contradicts it", () => {
      for (const { sheet, words } of naming)
        for (const [contradiction, minds] of contradicting)
          if (minds(material)) expect(advised(words), sheet).not.toMatch(contradiction);
    });
  },
);

describe.each(all)("%s", (material) => {
  const findings = lathe(material);

  test("explain bears the caution", () => {
    const working = explainCuttingSpeed(findings)[0]?.explain();
    const notes = working && "notes" in working ? (working.notes ?? []).join(". ") : "";
    for (const { caution } of hazardsOf([material])) expect(`${notes}.`).toContain(caution);
  });

  test("no exercise teaches a beginner to cut what no beginner cuts alone, and the student's sheet says to ask", () => {
    const alone = hazardsOf([material]).every(({ notAlone }) => !notAlone);
    const asked = exercises(lathe(material, "mm", "brass, "), "turning").map(({ question }) => question);
    expect(exercises(findings, "turning").some(({ question }) => question.includes(material))).toBe(alone);
    expect(asked.some((question) => question.includes("turn"))).toBe(true);
    if (!alone) expect(asked.some((question) => question.includes(material))).toBe(false);
    const side = wordsOf(printOf(findings, "student"));
    expect(/\bask ask ask\b/.test(side)).toBe(!alone);
  });
});

describe("hand feed", () => {
  test.each(["magnesium", "magnesium AZ31"])("%s alone: nothing finer than the least is offered", (material) => {
    const words = wordsOf(printOf(lathe(material), "hand-feed"));
    expect(words).toContain(`Never feed ${material} more finely than 0.25 mm a revolution`);
    expect(words).toContain("coarse 0.25 mm");
    expect(words).not.toMatch(/\b(fine|medium) 0/);
    expect(words).not.toMatch(/0\.13/);
    if (material === "magnesium") expect(words).toContain("magnesium 0.25 finishing, 0.38–0.64 roughing");
  });

  test("titanium alone: the coarsest alone is offered, and that no least is known is said", () => {
    const words = wordsOf(printOf(lathe("titanium"), "hand-feed"));
    expect(words).toContain("Never feed titanium finely");
    expect(words).not.toMatch(/\b(fine|medium) 0/);
    expect(words).toContain("coarse 0.2 mm");
  });

  test("beside brass the finer columns are marked, and the coarsest is coarse enough", () => {
    const words = wordsOf(printOf(lathe("magnesium", "mm", "brass, "), "hand-feed"));
    // At the head of each column, and what the sign means above them all.
    expect(words).toMatch(/fine\* 0\.05 mm medium\* 0\.1 mm coarse 0\.25 mm/);
    expect(words.indexOf("* never in magnesium.")).toBeGreaterThan(0);
    expect(words.indexOf("* never in magnesium.")).toBeLessThan(words.indexOf("fine*"));
    expect(words).toContain("coarse 0.25 mm");
    expect(words).toContain("parting 0.05, but not magnesium");
  });

  test("brass alone has its three feeds", () => {
    const words = wordsOf(printOf(lathe("brass"), "hand-feed"));
    expect(words).toContain("fine 0.05 mm");
    expect(words).toContain("coarse 0.2 mm");
    expect(words).not.toContain("Never feed");
  });
});

test("drilling card: in magnesium the coarsest feed in print, at a speed that the hand keeps up with", () => {
  const words = wordsOf(printOf(lathe("magnesium"), "drilling-card"));
  expect(words).toContain("it must not turn without cutting");
  // No dash in the column of what to count, nor words for it.
  expect(words).not.toContain("too fast by hand");
  expect(words).not.toMatch(/ – /);
  expect(words).not.toContain("0.05–0.10");
  expect(wordsOf(printOf(lathe("brass"), "drilling-card"))).toContain("0.05–0.10");
});

test("drilling card without a barrel: how to drill what burns stands there all the same", () => {
  const { handwheels, ...rest } = lathe("titanium");
  const findings = { ...rest, handwheels: handwheels.filter(({ handwheel }) => !/barrel/.test(handwheel.name)) };
  expect(wordsOf(printOf(findings, "drilling-card"))).toContain("it must not turn without cutting");
});

test("what wets the cut never contradicts the caution", () => {
  for (const material of ["magnesium", "titanium", "zirconium"])
    expect(advised(coolant(material)?.words ?? "none"), material).not.toMatch(/water|soluble|paraffin|oil/);
});
