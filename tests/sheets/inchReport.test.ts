import { expect, test } from "vitest";
import { inLanguage } from "../../src/words/language.js";
import { explainDial } from "../../src/working/dial.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const text = `name: L
units: in
handwheels:
  - name: Cross slide
    reads: diameter
    travel: 3
    feed:
      readings: { turns: [0, 4, 8, 12, 16, 20], travel: [0, 0.4001, 0.8001, 1.2002, 1.6003, 2.0003], gauge: 0.0001 }
    dial: { shape: drum, diameter: 1 1/2, width: 1/2, increases: clockwise }
`;

test("behind inches no turn is spoken of as though the unit were the word: in a turn", () => {
  const findings = findingsOf(text);
  const report = textsOf(findings, "measured-report");
  expect(report).toMatch(/Cross slide: 0\.10\d+ ± 0\.0\d+ in per turn/);
  expect(report).toMatch(/= ± [\d.]+ µin per turn, 95 times in 100\. µin: millionths of an inch\./);
  expect(report).not.toMatch(/\d in a turn|000 001/);
  const dial = explainDial(findings)[0]?.explain();
  expect(JSON.stringify(dial)).toMatch(/error [−\d.]+ (?:in|mm) per turn/);
  expect(JSON.stringify(dial)).not.toMatch(/\d in a turn/);
  inLanguage("de", () => expect(textsOf(findingsOf(text), "measured-report")).toContain("µZoll"));
});
