import { expect, test } from "vitest";
import { compute } from "../../src/findings/compute.js";
import type { Findings } from "../../src/findings/findings.js";
import { pdfOf } from "../support/pdfOf.js";
import { type PageRead, readPdf } from "../support/readPdf.js";
import { demoFindings, printOf } from "../support/sheets.js";

const cover = { width: 180, height: 120, corner: 8, holes: [{ x: 8, y: 8, diameter: 4.5 }] };

function covered(): Findings {
  const { machine } = demoFindings();
  return machine.drive === undefined ? demoFindings() : compute({ ...machine, drive: { ...machine.drive, cover } });
}

test("the card has the size of the cover, and no print where the screw sits", async () => {
  const { pages } = await readPdf(await pdfOf(printOf(covered(), "belt-card")));
  for (const page of pages) {
    const { left, right, top, bottom } = edges(page);
    expect(right - left).toBeCloseTo(cover.width, 2);
    expect(bottom - top).toBeCloseTo(cover.height, 2);
    for (const { x, y } of page.texts.filter((one) => one.y > top && one.y < bottom))
      expect(Math.hypot(x - left - 8, y - top - 8)).toBeGreaterThan(4.5 / 2);
  }
});

/** Of the trim line: the straight parts between the rounded corners. */
function edges(page: PageRead) {
  const upright = page.lines.filter(
    ({ from, to, pen }) => from.x === to.x && pen < 0.2 && Math.abs(Math.abs(to.y - from.y) - 104) < 0.01,
  );
  const level = page.lines.filter(
    ({ from, to, pen }) => from.y === to.y && pen < 0.2 && Math.abs(Math.abs(to.x - from.x) - 164) < 0.01,
  );
  const [xs, ys] = [upright.map(({ from }) => from.x), level.map(({ from }) => from.y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
