import { readFileSync } from "node:fs";
import { deflateSync } from "node:zlib";
import fc from "fast-check";
import { deflate } from "pako";
import { expect, test } from "vitest";
import { pageContent } from "../../src/output/pdfContent.js";
import { identity } from "../../src/paper/printerCorrection.js";
import { findingsOf, printOf } from "../support/sheets.js";

/** The same file must give the same bytes on every machine, and a page made in a browser the bytes of the command line. Both
 *  are ports of one algorithm (zlib's deflate, level 6); that they stay so is checked here, against a library that shares no
 *  code with Node. */
function same(bytes: Uint8Array): void {
  expect(Buffer.compare(deflateSync(bytes), deflate(bytes))).toBe(0);
}

test("Node packs the content of every page to the same bytes as the library for browsers", () => {
  const findings = findingsOf(readFileSync("templates/machines/boathouse.yaml", "utf8"));
  for (const sheet of ["dial", "turns", "threads", "belt-card"])
    for (const { drawing } of printOf(findings, sheet).pages) {
      const letters = { regular: new Set<string>(), bold: new Set<string>() };
      same(new TextEncoder().encode(pageContent(drawing, identity, letters)));
    }
});

test("and whatever else one packs", () => {
  const few = fc.uint8Array({ max: 3, maxLength: 3000 });
  const runs = fc
    .array(fc.uint8Array({ maxLength: 40 }), { maxLength: 60 })
    .map((parts) => Buffer.concat([...parts, ...parts]));
  fc.assert(fc.property(fc.oneof(fc.uint8Array({ maxLength: 5000 }), few, runs), same), { numRuns: 300 });
});
