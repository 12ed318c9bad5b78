import { crc32 } from "node:zlib";
import { describe, expect, test } from "vitest";
import { pictureAt } from "../../src/cli/picture.js";
import type { TextMark } from "../../src/drawing/drawing.js";
import { isOurOutput } from "../../src/drawing/ours.js";
import { textWidth } from "../../src/drawing/text.js";
import { renderPng } from "../../src/output/png.js";
import { identity } from "../../src/paper/printerCorrection.js";
import { largestOf, smallestOf } from "../../src/quantity/extremes.js";
import { textCorners, walk } from "../support/marks.js";
import { type PngRead, readPng } from "../support/readPng.js";
import { demoFindings, printOf } from "../support/sheets.js";

const print = printOf(demoFindings(), "belt-card");
const [page] = print.pages;
if (page === undefined) throw new Error("the demo has no belt card");
const drawn = async (dpi: number) => renderPng(page, print, identity, await pictureAt(dpi));

/** The darkest that is seen in a box of the page (mm). */
function darkest(png: PngRead, dpi: number, box: { left: number; right: number; top: number; bottom: number }): number {
  const pixel = (mm: number) => Math.round((mm / 25.4) * dpi);
  let least = 255;
  for (let y = pixel(box.top); y <= pixel(box.bottom); y++)
    for (let x = pixel(box.left); x <= pixel(box.right); x++) least = Math.min(least, png.grey(x, y));
  return least;
}

describe("a page as a picture", () => {
  test.each([150, 72, 300])("at %s dpi has the size of its paper, and says so", async (dpi) => {
    const bytes = await drawn(dpi);
    const { width, height, perMetre } = readPng(bytes);
    expect(width).toBe(Math.round((210 / 25.4) * dpi));
    expect(Math.abs(height - (297 / 25.4) * dpi)).toBeLessThanOrEqual(1);
    expect(perMetre).toEqual([Math.round(dpi / 0.0254), Math.round(dpi / 0.0254)]);
    expect(isOurOutput(bytes)).toBe(true);
  });

  test("shows every text where it stands, from its first letter to its last", async () => {
    const dpi = 150;
    const png = readPng(await drawn(dpi));
    let seen = 0;
    walk(page.drawing.marks, (mark, toPage) => {
      if (mark.kind !== "text" || mark.text.trim() === "") return;
      const corners = textCorners(mark).map(toPage);
      const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
      const [left, right] = [smallestOf(xs), largestOf(xs)];
      const [top, bottom] = [smallestOf(ys), largestOf(ys)];
      const letter = Math.min(0.6 * mark.size, right - left);
      for (const end of [
        { left, right: left + letter },
        { left: right - letter, right },
      ])
        expect(darkest(png, dpi, { ...end, top, bottom }), mark.text).toBeLessThan(200);
      seen++;
    });
    expect(seen).toBeGreaterThan(60);
  });

  test("keeps spaces that follow each other, and sets no pair of letters closer", async () => {
    const [dpi, size] = [150, 6];
    for (const words of ["A          B", "AVAVAVAVAVAVAVAV"]) {
      const mark: TextMark = {
        ...{ kind: "text", at: { x: 5, y: 10 }, size, weight: "regular", ink: "black", anchor: "start" },
        text: words,
      };
      const only = { title: "", drawing: { width: 90, height: 20, marks: [mark] } };
      const png = readPng(renderPng(only, { ...print, pages: [only] }, identity, await pictureAt(dpi)));
      const right = 5 + textWidth(words, size, "regular");
      const band = { top: 2, bottom: 15 };
      expect(darkest(png, dpi, { left: right - 0.25 * size, right, ...band }), words).toBeLessThan(100);
      expect(darkest(png, dpi, { left: right + 0.1, right: 89, ...band }), words).toBeGreaterThan(250);
    }
  });

  test("says the same each time", async () => {
    expect(crc32(await drawn(150))).toBe(crc32(await drawn(150)));
  });
});
