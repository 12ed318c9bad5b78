import { deflateSync } from "node:zlib";
import fc from "fast-check";
import { expect, test } from "vitest";
import { readFonts } from "../../scripts/font.js";
import { readDxfStrictly, readPdfStrictly, readXmlStrictly } from "../../scripts/sound/readers.js";
import { render } from "../../src/output/render.js";
import { bind } from "../../src/sheets/binder.js";
import { anyMachine, sound } from "../support/anyMachine.js";
import { measureSheets } from "../support/measureSheets.js";
import { seed } from "../support/seed.js";

const ttf = readFonts();
const tools = { fonts: () => ttf, deflate: deflateSync };

/** `npm run sound` reads those of a thousand machines, by more readers. */
test("independent readers complain of no sheet of three machines, as PDF, SVG or DXF", {
  timeout: 120_000,
}, async () => {
  let [pages, drawings] = [0, 0];
  for (const made of fc.sample(anyMachine, { numRuns: 3, seed })) {
    const findings = sound(made);
    if (findings === undefined) throw new Error("a machine was sound when it was made, and is not now");
    const prints = measureSheets(findings).prints.filter(({ sheet }) => sheet !== "binder");
    const whole = bind(findings, prints, []);
    for (const { bytes } of await render(whole, "pdf", undefined, tools))
      expect(await readPdfStrictly(bytes as Uint8Array)).toEqual([]);
    pages += whole.pages.length;
    for (const print of prints) {
      for (const { bytes } of await render(print, "svg", undefined, tools))
        expect(readXmlStrictly(String(bytes)), print.sheet).toEqual([]);
      if (!print.outlines) continue;
      for (const { bytes } of await render(print, "dxf", undefined, tools))
        expect(readDxfStrictly(String(bytes)), print.sheet).toEqual([]);
      drawings++;
    }
  }
  expect(pages).toBeGreaterThan(30);
  expect(drawings).toBeGreaterThan(0);
});

test("the readers do complain", async () => {
  const print = {
    sheet: "empty",
    title: "Empty",
    pages: [{ title: "", drawing: { width: 100, height: 100, marks: [] } }],
  };
  const [file] = await render(print, "pdf", undefined, tools);
  const bytes = file?.bytes as Uint8Array;
  expect((await readPdfStrictly(bytes)).join()).toContain("nothing on page 1");
  expect(await readPdfStrictly(bytes.slice(0, bytes.length / 2))).not.toEqual([]);
  expect(readXmlStrictly("<svg><text>a < b</text></svg>")).not.toEqual([]);
  expect(readXmlStrictly("<svg><text>\u0001</text></svg>")).not.toEqual([]);
  expect(readXmlStrictly("<svg><g></svg>")).not.toEqual([]);
  expect(readDxfStrictly("0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF\n")).not.toEqual([]);
});
