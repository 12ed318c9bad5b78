import { describe, expect, test } from "vitest";
import { inLanguage } from "../../src/words/language.js";
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

  test("a motor has", () => expect(textsOf(lathe(""), "belt-card")).toContain("PLUG OUT, then open."));
});

test("where there is one position, the card does not say which to begin with", () => {
  expect(textsOf(lathe(""), "belt-card")).toMatch(/Begin with \w, as drawn\./);
  expect(textsOf(lathe("", "{ driver: 60, driven: 90 }"), "belt-card")).not.toContain("Begin with");
});
