import { describe, expect, test } from "vitest";
import type { Mark } from "../../src/drawing/drawing.js";
import { walk } from "../support/marks.js";
import { findingsOf, printOf } from "../support/sheets.js";

/** Signs of a sheet's tables, and what their meaning begins with. */
const signs: readonly { readonly sheet: string; readonly sign: RegExp; readonly means: RegExp }[] = [
  { sheet: "threads", sign: /^[\w/. ]+!$/, means: /^! tight/ },
  { sheet: "threads", sign: /^\d+\+$/, means: /^\+ none/ },
  { sheet: "threads", sign: /^[\d/]+-\d+\*$/, means: /^\* size/ },
  { sheet: "stops", sign: /^\?$/, means: /^\? is not known/ },
  { sheet: "drilling-card", sign: /^\d+ s$/, means: /: one turn/ },
  { sheet: "drilling-card", sign: /^¼ : \d+ s$/, means: /: a quarter/ },
];

const textsIn = (marks: readonly Mark[]): string[] => {
  const found: string[] = [];
  walk(marks, (mark) => mark.kind === "text" && found.push(mark.text));
  return found;
};

describe.each(["A5", "A4"])("on %s every page with a sign says what it means", (paper) => {
  const stops = Array.from(
    { length: 14 },
    (_, at) => `  - { name: shoulder ${at}, handwheel: Leadscrew, length: ${at + 3} }`,
  );
  const findings = findingsOf(`name: L
paper: { size: ${paper} }
drive:
  motor: { speed: 1400 rpm }
  stages: [{ name: belt, steps: [{ label: 1, driver: 50, driven: 150 }, { label: 2, driver: 70, driven: 110 }] }]
handwheels:
  - { name: Tailstock barrel, travel: 60, feed: 20 mm, dial: { shape: drum, diameter: 40, width: 9 } }
  - { name: Leadscrew, travel: 60, feed: 3 mm, dial: { shape: drum, diameter: 40, width: 9 } }
  - name: Cross slide
    travel: 60
    feed: { readings: { gauge: 0.01, turns: [0, 4, 8, 12, 16], travel: [0, 8, 16, 24, 32], return: [0.1, 8.1, 16.1, 24.1, 32.1] } }
    dial: { shape: drum, diameter: 40, width: 9 }
stops:
  - { name: collar, handwheel: Cross slide, length: 5 }
${stops.join("\n")}
`);
  test.each(signs)("$sheet, $means", ({ sheet, sign, means }) => {
    const pages = printOf(findings, sheet).pages.map(({ drawing }) => textsIn(drawing.marks));
    const bearing = pages.filter((texts) => texts.some((text) => sign.test(text)));
    for (const texts of bearing) expect(texts.filter((text) => means.test(text))).toHaveLength(1);
    const [, ...further] = pages.filter((texts) => texts.some((text) => means.test(text)));
    if (paper === "A5" && sheet === "threads") expect(further).not.toEqual([]);
  });
});
