import { describe, expect, test } from "vitest";
import { inLanguage } from "../../src/words/language.js";
import { jobOf } from "../support/job.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const lathe = (by: string, steps = "{ label: A, driver: 60, driven: 90 }, { label: B, driver: 90, driven: 60 }") =>
  findingsOf(
    `name: L\ndrive:\n  motor: { speed: ${by === "" ? "1425" : "120"} rpm${by} }\n  stages: [{ name: belt, steps: [${steps}] }]\n`,
  );

describe("what is not turned by a motor has no plug to pull", () => {
  test.each([
    [", by: hand", "HAND OFF THE CRANK, then open.", "HAND VON DER KURBEL, dann öffnen."],
    [", by: treadle", "FOOT OFF THE TREADLE, then open.", "FUSS VOM TRITT, dann öffnen."],
  ])("%s", (by, en, de) => {
    const card = textsOf(lathe(by), "belt-card");
    expect(card).toContain(en);
    expect(card).not.toMatch(/plug/i);
    expect(inLanguage("de", () => textsOf(lathe(by), "belt-card"))).toContain(de);
    expect(textsOf(lathe(by), "threads")).not.toContain("PLUG OUT");
  });

  test.each([
    [", by: hand", "hand off the crank", "Hand von der Kurbel"],
    [", by: treadle", "foot off the treadle", "Fuß vom Tritt"],
    ["", "plug out", "Stecker gezogen"],
  ])("nor on any other sheet: %s", (by, en, de) => {
    const findings = findingsOf(
      `name: L
kind: lathe stood on end
drive:
  motor: { speed: ${by === "" ? "1425" : "120"} rpm${by} }
  stages: [{ name: belt, steps: [{ label: A, driver: 60, driven: 90 }, { label: B, driver: 90, driven: 60 }] }]
handwheels: [{ name: Carriage, travel: 100, feed: 5 }]
stops: [{ name: shoulder, handwheel: Carriage, length: 20 }]
angleScales: [{ name: Degree plate, part: spindle, radius: 40 }]
`,
    );
    const steps = [
      "do: turn, to: 14, length: 30",
      "do: drill, diameter: 5, depth: 20",
      "do: tap, thread: M6, depth: 10",
    ];
    const planned = {
      ...findings,
      job: jobOf([...steps, "do: turn, to: 6, length: 5"], "parts: 2\nbar: { diameter: 16, out: 40 }"),
    };
    for (const sheet of ["plan", "student", "measuring-form", "drilling-card", "stops", "angle-scale"]) {
      const words = textsOf(planned, sheet);
      expect(words.toLowerCase(), sheet).toContain(
        sheet === "student" && by === "" ? "pull the plug" : sheet === "student" ? en.replace(/^(\w+)/, "your $1") : en,
      );
      if (by !== "") expect(words.replace(/a plug with a drawbolt/g, ""), sheet).not.toMatch(/\bplug\b/i);
      if (by !== "")
        expect(
          inLanguage("de", () => textsOf(planned, sheet)),
          sheet,
        ).not.toMatch(/Stecker/);
    }
    expect(inLanguage("de", () => textsOf(planned, "plan"))).toContain(de);
  });

  test("a motor has", () => expect(textsOf(lathe(""), "belt-card")).toContain("PLUG OUT, then open."));
});

test("where there is one position, the card does not say which to begin with", () => {
  expect(textsOf(lathe(""), "belt-card")).toMatch(/Begin with \w, as drawn\./);
  expect(textsOf(lathe("", "{ driver: 60, driven: 90 }"), "belt-card")).not.toContain("Begin with");
});
