import { expect, test } from "vitest";
import { walk } from "../support/marks.js";
import { findingsOf, printOf } from "../support/sheets.js";

const small =
  "  - { name: Top, travel: 50, feed: 1.5, dial: { shape: drum, diameter: 40, width: 9, increases: clockwise } }\n";

/** Of each copy of a large ring its parts, in the order of the pages on which they lie. */
function partsOf(paper: string, outside: number, band: number, others = ""): Map<string, number[]> {
  const findings = findingsOf(
    `name: F\npaper: { size: ${paper} }\nhandwheels:\n  - { name: Wheel, travel: 60, feed: 2.5, dial: { shape: face, outside: ${outside}, inside: ${outside - 2 * band}, increases: clockwise } }\n${others}`,
  );
  const found = new Map<string, number[]>();
  for (const { drawing } of printOf(findings, "dial").pages) {
    const here: [string, number][] = [];
    walk(drawing.marks, (mark) => {
      const [, copy = "", part] = (mark.kind === "text" && /^(Wheel, copy \d).* piece (\d) of/.exec(mark.text)) || [];
      if (part !== undefined) here.push([copy, Number(part)]);
    });
    // On one page they may lie anyhow.
    for (const [copy, part] of here.sort(([, one], [, other]) => one - other))
      found.set(copy, [...(found.get(copy) ?? []), part]);
  }
  return found;
}

test.each<[string, number, number, string]>([
  ["A4", 250, 10, ""],
  ["A4", 250, 20, small],
  ["A4", 200, 20, ""],
  ["A5", 140, 40, small],
])("the parts of a ring come one after the other: %s, %d mm outside, band of %d", (...given) => {
  const parts = [...partsOf(...given).values()];
  expect(parts).toHaveLength(2);
  for (const numbers of parts) {
    expect(numbers.length).toBeGreaterThan(1);
    expect(numbers).toEqual(numbers.map((_, index) => index + 1));
  }
});
