import { expect, test } from "vitest";
import { walk } from "../support/marks.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

test("what the signs mean stands before the first of them", () => {
  const words = textsOf(
    findingsOf(`name: L
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 80, driven: 50 }, { label: B, driver: 50, driven: 80 }] }]
handwheels: [{ name: Leadscrew, travel: 300, feed: 3 }]
`),
    "hand-feed",
  );
  const key = words.search(/one turn of the wheel takes /);
  // A count in a cell, and a speed by ratio.
  for (const sign of [/\d s(?! ?:)/, /\d ~/]) {
    const first = words.search(sign);
    expect(first, String(sign)).toBeGreaterThan(0);
    expect(words.indexOf("~ by ratio")).toBeLessThan(words.search(/\d ~/));
    expect(key).toBeGreaterThan(0);
  }
  expect(key).toBeLessThan(words.indexOf("Leadscrew"));
});

test("a turn of minutes is told as minutes, and no second of it", () => {
  const words = textsOf(
    findingsOf(`name: L
drive:
  motor: { speed: 50 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 80, driven: 80 }, { label: B, driver: 40, driven: 120 }] }]
handwheels: [{ name: Carriage, moves: along, travel: 300, feed: 72 }]
`),
    "hand-feed",
  );
  // 72 mm at 0.05 mm and 50 / 3 rpm: 5184 s; at 0.2 mm and 50 rpm 432 s.
  expect(words).toMatch(/\b86 min\b/);
  expect(words).toMatch(/\b7 min\b/);
  expect(words).not.toMatch(/\d{3,} s\b/);
  expect(words).toContain("2 min: so long for one turn");
  expect(words).not.toContain("4 s:");
});

test("every cell tells seconds for one turn: no cell counts otherwise, and names of all wheels are of one size", () => {
  const findings = findingsOf(`name: L
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 120, driven: 40 }, { label: B, driver: 40, driven: 180 }] }]
handwheels:
  - { name: Leadscrew, travel: 300, feed: 3, dial: { shape: drum, diameter: 60, width: 10 } }
  - { name: Carriage along the bed with a very long name, moves: along, travel: 300, feed: 50, dial: { shape: drum, diameter: 60, width: 10 } }
`);
  const sizes = new Map<string, number>();
  const cells: string[] = [];
  for (const { drawing } of printOf(findings, "hand-feed").pages)
    walk(drawing.marks, (mark) => {
      if (mark.kind !== "text") return;
      if (/^(Leadscrew|Carriage)/.test(mark.text)) sizes.set(mark.text, mark.size);
      if (/\d s$/.test(mark.text)) cells.push(mark.text);
    });
  expect(sizes.size).toBeGreaterThanOrEqual(2);
  expect(new Set(sizes.values()).size).toBe(1);
  // Three feeds at two speeds for two wheels, none of which is too fast here but some.
  expect(cells.length).toBeGreaterThan(6);
  for (const cell of cells) expect(cell).toMatch(/^\d+(\.\d)? s$/);
  // 3 mm a turn at 0.05 mm and 1425 × 40 / 180 rpm less slip: some 11 seconds.
  expect(
    cells.map(Number.parseFloat).some((seconds) => Math.abs(seconds - (3 * 60 * 180) / 0.05 / 1425 / 40) < 1),
  ).toBe(true);
});

test("positions beyond the limit are named once, and have no empty row in every table", () => {
  const sixteen = (limit: number) => {
    const step = (label: string, at: number) =>
      `{ label: "${label}", driver: ${50 + 20 * at}, driven: ${110 - 20 * at} }`;
    const steps = (labels: string) => [...labels].map(step).join(", ");
    return findingsOf(`name: L
limits: { chuck: ${limit} rpm }
drive:
  motor: { speed: 1400 rpm }
  stages: [{ name: first, steps: [${steps("ABCD")}] }, { name: last, steps: [${steps("1234")}] }]
handwheels: [{ name: Carriage, travel: 200, feed: 20 }, { name: Cross slide, travel: 60, feed: 2 }, { name: Top slide, travel: 60, feed: 1.5 }]
`);
  };
  const words = textsOf(sixteen(4000), "hand-feed");
  expect(words).toMatch(/Beyond the limit, do not use: [^.]*D 4 \(6776 rpm\)/);
  expect(words.match(/\bD 4\b/g)).toHaveLength(1);
  expect(words).not.toContain("×");
  expect(printOf(sixteen(4000), "hand-feed").pages).toHaveLength(1);
  // With none that may be used each is told in its row.
  expect(textsOf(sixteen(100), "hand-feed")).toMatch(/D 4 6776 ×/);
});
