import { describe, expect, test } from "vitest";
import { walk } from "../support/marks.js";
import { measurePage } from "../support/measurePage.js";
import { findingsOf, printOf } from "../support/sheets.js";

/** Lines of the foot of an upright page on small paper, its correction with them. */
function footOf(name: string, language = "en") {
  const findings = findingsOf(`name: L
language: ${language}
paper: { size: A5, printer: ${name} }
printers: { ${name}: { across: 199.3 of 200, down: 250.4 of 250 } }
`);
  const page = printOf(findings, "threads").pages[0];
  const marks = [...(page?.drawing.marks ?? []), ...(page?.correctionNote ?? [])];
  const lines: string[] = [];
  walk(page?.correctionNote ?? [], (mark) => void (mark.kind === "text" && lines.push(mark.text)));
  return { lines, faults: page ? measurePage({ ...page.drawing, marks }) : [] };
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
