import { expect, test } from "vitest";
import type { Mark, TextMark } from "../../src/drawing/drawing.js";
import { findingsOf, printOf } from "../support/sheets.js";

const textsIn = (marks: readonly Mark[]): TextMark[] =>
  marks.flatMap((mark) => (mark.kind === "text" ? [mark] : mark.kind === "group" ? textsIn(mark.marks) : []));

/** A reading that no belt allows. */
const doubtful = findingsOf(`name: L
limits: { chuck: 2000 }
drive:
  motor: { speed: 1400 }
  stages:
    - { name: motor belt, steps: [{ label: A, driver: 55, driven: 135 }, { label: B, driver: 90, driven: 90 }] }
    - { name: spindle belt, steps: [{ label: "1", driver: 110, driven: 55 }, { label: "2", driver: 82, driven: 82 }, { label: "3", driver: 55, driven: 110 }] }
  tachometer: [{ position: [A, "3"], speed: 343 }, { position: [B, "2"], speed: 1372 }]
handwheels:
  - { name: Cross slide, reads: diameter, feed: 2 mm, travel: 60 }
`);

test.each(["belt-card", "speed-diagram", "drilling-card", "hand-feed"])(
  "%s: a warning is black and bold: in one bit red turns to dust",
  (sheet) => {
    const texts = printOf(doubtful, sheet).pages.flatMap(({ drawing }) => textsIn(drawing.marks));
    expect(texts.filter(({ ink }) => ink === "accent")).toEqual([]);
    const warning = texts.filter(({ text }) => /doubtful/.test(text));
    expect(warning.length).toBeGreaterThan(0);
    expect(warning.some(({ weight }) => weight === "bold")).toBe(true);
  },
);
