import { expect, test } from "vitest";
import { compute } from "../../src/findings/compute.js";
import { inLanguage } from "../../src/words/language.js";
import { demoFindings, findingsOf, printOf } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

test.each(["en", "de"] as const)(
  "on small paper the exercises' heading stays with the first of them (%s)",
  (language) => {
    const { machine } = demoFindings();
    inLanguage(language, () => {
      const print = printOf(compute({ ...machine, paper: { ...machine.paper, size: "A5" } }), "student");
      const pages = print.pages.map((page) => wordsOf({ ...print, pages: [page] }));
      const begun = pages.filter((words) => /Try it|Probier es/.test(words));
      expect(begun).toHaveLength(1);
      expect(begun[0]).toMatch(/Name: 1 /);
    });
  },
);

test("steps with long names are called by signs on their pulleys, as on the belt card, and told whole below", () => {
  const steps = ["large step by the wall", "middle step", "small step by the door"];
  const print = printOf(
    findingsOf(`name: L
drive:
  motor: { speed: 1425 rpm }
  stages:
    - name: the motor belt behind the belt cover
      steps: [${steps.map((label, at) => `{ label: ${label}, driver: ${80 - 10 * at}, driven: ${60 + 10 * at} }`).join(", ")}]
    - name: spindle belt
      steps: [{ label: A, driver: 70, driven: 50 }, { label: B, driver: 50, driven: 70 }]
handwheels: [{ name: Cross slide, feed: 2, travel: 80, dial: { shape: drum, diameter: 38, width: 9 } }]
work: { materials: [mild steel], diameters: [10, 20] }
`),
    "student",
  );
  const words = wordsOf({ ...print, pages: print.pages.slice(0, 1) });
  for (const [at, label] of steps.entries()) expect(words).toContain(`${at + 1} = ${label}`);
  expect(words).toContain("the motor belt behind the belt cover");
  expect(words).not.toContain("…");
});
