import { describe, expect, test } from "vitest";
import type { Mark } from "../../src/drawing/drawing.js";
import { headHeight, pageHead } from "../../src/sheets/furniture.js";
import { walk } from "../support/marks.js";
import { measurePage } from "../support/measurePage.js";
import { findingsOf, printOf } from "../support/sheets.js";

function wordsIn(marks: readonly Mark[]): string[] {
  const words: string[] = [];
  walk(marks, (mark) => void (mark.kind === "text" && words.push(mark.text)));
  return words;
}

/** Lines of the foot of an upright page on small paper, its correction with them. */
function footOf(name: string, language = "en") {
  const findings = findingsOf(`name: L
language: ${language}
paper: { size: A5, printer: ${name} }
printers: { ${name}: { across: 199.3 of 200, down: 250.4 of 250 } }
`);
  const page = printOf(findings, "threads").pages[0];
  const marks = [...(page?.drawing.marks ?? []), ...(page?.correctionNote ?? [])];
  return { lines: wordsIn(page?.correctionNote ?? []), faults: page ? measurePage({ ...page.drawing, marks }) : [] };
}

describe("on small paper", () => {
  test.each(["office", "the laser printer beside the long bench in the school workshop"])(
    "the foot names the printer %s in full, clear of all else",
    (name) => {
      const { lines, faults } = footOf(name);
      expect(lines.join(" ")).toContain(`printer ${name}: across × 1.0035, down × 0.9984`);
      expect(faults).toEqual([]);
    },
  );

  test("a short name takes one line", () => {
    expect(footOf("office").lines).toHaveLength(1);
  });
});

describe("a card as large as small paper holds", () => {
  const names = ["office", "Laserdrucker in der Werkstatt"];
  test.each(names.flatMap((name) => ["en", "de"].map((language) => [name, language])))(
    "the printer %s in %s leaves it room",
    (name, language) => {
      const findings = findingsOf(`name: D
kind: drill
language: ${language}
drive:
  motor: { speed: 1425 rpm }
  cover: { width: 150, height: 110 }
  stages: [{ name: belt, steps: [{ driver: 50, driven: 100 }, { driver: 100, driven: 50 }] }]
paper: { size: A5, printer: ${name} }
printers: { ${name}: { across: 199.3 of 200, down: 250.4 of 250 } }
`);
      const { pages } = printOf(findings, "belt-card");
      expect(pages).toHaveLength(1);
      for (const { drawing, correctionNote = [] } of pages)
        expect(measurePage({ ...drawing, marks: [...drawing.marks, ...correctionNote] })).toEqual([]);
    },
  );
});

describe("of a very long name on small paper", () => {
  const machine = "Kleine Tischdrehbank aus der Werkstatt am alten Hafenbecken, Spindelstock erneuert, Nr. 17";
  const findings = findingsOf(`name: "${machine}"
paper: { size: A5 }
handwheels: [{ name: Oberschlitten, feed: 1 mm, travel: 60 }]
`);

  test.each(["turns", "threads"])("the foot of %s tells what stands at its end", (sheet) => {
    const [first] = printOf(findings, sheet).pages;
    expect(wordsIn(first?.drawing.marks ?? []).join(" ")).toContain("Nr. 17");
    expect(first && measurePage(first.drawing)).toEqual([]);
  });

  test("the head tells it too, above its rule, which stays clear of the body", () => {
    const frame = { left: 20, top: 10, width: 118, height: 190 };
    const marks = pageHead(`${machine}: ${machine}, ${machine.slice(0, -6)}Nr. 18`, frame);
    const lines = wordsIn(marks);
    expect(lines).toHaveLength(3);
    expect(lines.join(" ")).toMatch(/Nr\. 18$/);
    const drawing = { width: 148, height: 210, marks };
    expect(measurePage(drawing).filter(({ kind }) => kind !== "page nearly empty")).toEqual([]);
    const rule = marks.flatMap((mark) => (mark.kind === "path" ? mark.segments : []));
    expect(rule).toHaveLength(2);
    for (const end of rule) expect("y" in end ? end.y : Number.NaN).toBeLessThan(frame.top + headHeight - 1);
  });
});
