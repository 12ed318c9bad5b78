import { describe, expect, test } from "vitest";
import { remarks } from "../../src/findings/remarks.js";
import { readJob } from "../../src/job/read.js";
import { arrange } from "../../src/sheets/arrange.js";
import { inLanguage } from "../../src/words/language.js";
import { findingsOf, printOf, sheetNames, template } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

const lathe = (materials: string, extra = "") =>
  findingsOf(`name: L
drive:
  motor: { speed: 1425 }
  stages: [{ name: belt, steps: [{ driver: 50, driven: 150 }, { driver: 100, driven: 100 }] }]
handwheels:
  - { name: Cross slide, reads: diameter, feed: 2 mm }
  - { name: Tailstock barrel, feed: 2.5 mm, travel: 40 }
work:
  materials: [${materials}]
${extra}`);
const magnesiumJob = readJob(
  "name: Flare\nmaterial: magnesium\nbar: { diameter: 16, out: 40 }\nsteps: [{ do: turn, from: 16, to: 14, length: 20 }]\n",
).job;

const caution = "Magnesium chips catch fire.";

describe("what burns or poisons stands on every sheet that names it", () => {
  test.each(["belt-card", "speed-diagram", "drilling-card", "hand-feed", "student"])("%s", (sheet) => {
    expect(wordsOf(printOf(lathe("brass, magnesium"), sheet))).toContain(caution);
    expect(wordsOf(printOf(lathe("brass, mild steel"), sheet))).not.toContain("catch fire");
  });

  test("plan: for the job's material, whatever the file's", () => {
    const words = wordsOf(printOf({ ...lathe("brass"), ...(magnesiumJob && { job: magnesiumJob }) }, "plan"));
    expect(words).toContain(caution);
  });

  test.each(sheetNames())("%s: none names magnesium without it", (sheet) => {
    const found = arrange(
      { ...lathe("brass, magnesium"), ...(magnesiumJob && { job: magnesiumJob }) },
      template(sheet),
    );
    if ("missing" in found) return;
    const words = wordsOf(found.print);
    expect(/magnesium/i.test(words)).toBe(words.includes(caution));
  });

  test("its greatest speed in the machine's own unit first", () => {
    const own = lathe("magnesium");
    const words = (units: "mm" | "in") =>
      wordsOf(printOf({ ...own, machine: { ...own.machine, units } }, "speed-diagram"));
    expect(words("mm")).toContain("below 213 m/min (700 ft/min)");
    expect(words("in")).toContain("below 700 ft/min (213 m/min)");
    inLanguage("de", () => expect(words("in")).toContain("unter 700 ft/min (213 m/min)"));
  });

  test("a material of one's own too, and its source on paper", () => {
    const found = lathe("beryllium copper", "  cuttingSpeeds: [{ material: beryllium copper, speed: [20, 30] }]\n");
    const words = wordsOf(printOf(found, "speed-diagram"));
    expect(words).toContain("Beryllium dust and fumes harm the lungs for life");
    expect(words).toContain("29 CFR 1910, safety at work (from memory)");
    const card = wordsOf(printOf(found, "belt-card"));
    expect(card).toContain("Beryllium dust and fumes harm the lungs for life");
    expect(card).not.toContain("29 CFR 1910");
  });

  test("one that no speed is known for is refused with its caution", () => {
    const [found] = remarks(lathe("zirconium"));
    expect(found).toMatchObject({ code: "unknown-material", remedy: expect.stringContaining("catch fire") });
  });
});
