import { describe, expect, test } from "vitest";
import { pdfOf } from "../support/pdfOf.js";
import { readPdf } from "../support/readPdf.js";
import { findingsOf, printOf } from "../support/sheets.js";

describe("the angle gauge, read back from the PDF", () => {
  test.each([
    ["2.862405", "large: 20, small: 17.5, length: 25", Math.atan(0.05)],
    ["Morse 2 by feet", "perFoot: 0.59941", Math.atan(0.59941 / 24)],
    ["steep", "included: 80 deg", (40 * Math.PI) / 180],
  ])("%s: its long edges differ by just the half angle, to 0.001 mm over its length", async (_, taper, angle) => {
    const findings = findingsOf(`name: L\ntapers: [{ name: gauge, ${taper} }]\n`);
    const { pages } = await readPdf(await pdfOf(printOf(findings, "tapers")));
    const texts = pages.map(({ texts }) => texts.findIndex(({ text }) => text.startsWith("gauge: half angle")));
    const page = pages[texts.findIndex((at) => at >= 0)];
    const label = page?.texts.find(({ text }) => text.startsWith("gauge: half angle"));
    if (page === undefined || label === undefined) throw new Error("no gauge");
    // The one slanted stroke above the label that begins at the gauge's left edge.
    const slanted = page.lines.filter(
      ({ from, to }) => Math.abs(from.x - label.x + 2.5) < 0.01 && to.x - from.x > 40 && from.y - to.y > 0.1,
    );
    expect(slanted).toHaveLength(1);
    const [edge] = slanted;
    const run = (edge?.to.x ?? 0) - (edge?.from.x ?? 0);
    const rise = (edge?.from.y ?? 0) - (edge?.to.y ?? 0);
    expect(Math.abs(rise - run * Math.tan(angle))).toBeLessThan(0.001);
  });
});
