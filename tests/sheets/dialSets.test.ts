import { expect, test } from "vitest";
import type { Mark } from "../../src/drawing/drawing.js";
import { demoFindings, findingsOf, printOf } from "../support/sheets.js";

const wordsOf = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : mark.kind === "group" ? wordsOf(mark.marks) : []));
/** The pages on which a caption begins with these words. */
const pagesOf = (findings: ReturnType<typeof demoFindings>, begin: RegExp): number[] =>
  printOf(findings, "dial").pages.flatMap(({ drawing }, page) =>
    captionsOn(drawing.marks).some((caption) => begin.test(caption)) ? [page + 1] : [],
  );
const captionsOn = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark): string[] =>
    mark.kind !== "group" ? [] : mark.name === "caption" ? [wordsOf(mark.marks).join(" ")] : captionsOn(mark.marks),
  );

test("dial, index line and picture of each of the demo's wheels lie on one page, and so do the pieces of a scale", () => {
  const findings = demoFindings();
  for (const { handwheel } of findings.handwheels)
    expect(pagesOf(findings, new RegExp(`^${handwheel.name}[,:]`))).toHaveLength(1);
  expect(pagesOf(findings, /^Headstock\b/)).toHaveLength(1);
});

test("what takes more than a page says on each piece whose it is", () => {
  const findings = findingsOf(`
name: Large wheel
units: mm
paper: { size: A5 }
handwheels:
  - { name: Cross slide, reads: travel, feed: 2 mm, dial: { shape: face, outside: 90, inside: 60, increases: clockwise } }
`);
  const { pages } = printOf(findings, "dial");
  expect(pages.length).toBeGreaterThan(1);
  const captions = pages.flatMap(({ drawing }) => captionsOn(drawing.marks));
  expect(captions.length).toBeGreaterThan(3);
  for (const caption of captions) expect(caption).toMatch(/^Cross slide/);
});

/** Wheels of several sizes, whose pieces fill pages badly. */
const wheels = (paper: string, count: number): string =>
  `
name: Many wheels
units: mm
paper: { size: ${paper} }
handwheels:
${Array.from({ length: count }, (_, at) => {
  const size = 24 + ((at * 7) % 30);
  const shapes = [
    `drum, diameter: ${size}, width: 9`,
    `face, outside: ${size + 14}, inside: ${size - 4}`,
    `bevel, diameter: ${size + 6}, smallDiameter: ${size - 4}, width: 9`,
  ];
  const feed = [2, 1.5, 1.27, 3][at % 4];
  return `  - { name: Wheel ${"ABCDEFGHIJKL"[at]}, travel: 60, feed: ${feed}, dial: { shape: ${shapes[at % 3]}, increases: clockwise } }\n`;
}).join("")}`;

test.each([
  ["A4", 8],
  ["A4", 12],
  ["A5", 8],
])(
  "%s, %d wheels: index line and picture lie on a page of their dial, and no copy comes before the first",
  (paper, count) => {
    const findings = findingsOf(wheels(paper, count));
    for (const { handwheel } of findings.handwheels) {
      const of = (what: string) => pagesOf(findings, new RegExp(`^${handwheel.name}${what}`));
      const copies = [of(", copy 1"), of(", copy 2")] as const;
      expect(Math.max(...copies[0])).toBeLessThanOrEqual(Math.min(...copies[1]));
      for (const page of [...of(": index line"), ...of(": how")])
        expect(copies.flat(), `${handwheel.name}, page ${page}`).toContain(page);
    }
  },
);
