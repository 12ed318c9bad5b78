import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readFonts } from "../../scripts/font.js";
import type { Print } from "../../src/drawing/page.js";
import type { Findings } from "../../src/findings/findings.js";
import { outlined } from "../../src/output/outlines.js";
import { arrange } from "../../src/sheets/arrange.js";
import { type AnyMachine, anyMachine, sound } from "../support/anyMachine.js";
import { FaultFiles } from "../support/faultFiles.js";
import { flatten } from "../support/flatMarks.js";
import { faultLine, measureSheets, templates } from "../support/measureSheets.js";
import { pdfOf } from "../support/pdfOf.js";
import { readPdf } from "../support/readPdf.js";
import { seed } from "../support/seed.js";

const ttf = readFonts();

/** `FAULTS=/tmp/faults npx vitest run tests/sheets/anyMachine.test.ts` measures every sheet of every machine, and writes a summary
 *  with the smallest machine for each kind of fault. `SEED` and `MACHINES` choose others. */
const numRuns = Number(process.env.MACHINES ?? 300);
const folder = process.env.FAULTS;
/** Every twenty-fifth machine is measured whole, with its binder; of the others a quarter of the sheets in turn, for the time it takes,
 *  unless somebody asks for all. */
const sheetsOf = (index: number): readonly string[] | undefined =>
  folder !== undefined || index % 25 === 0
    ? undefined
    : templates().flatMap(({ name }, sheet) => ((sheet + index) % 4 === 0 ? [name] : []));

/** A cover may be too small for a card of long names, and a small paper for the bars of the printer check. */
const mayBeTooSmall = ["belt-card", "printer-check"];

const machines: readonly AnyMachine[] = fc.sample(anyMachine, { numRuns, seed });
const findingsOf = machines.map((machine): Findings => {
  const findings = sound(machine);
  if (findings === undefined) throw new Error("a machine was sound when it was made, and is not now");
  return findings;
});

describe("whatever the machine", () => {
  test("nothing on paper lies over another, over a cut or off the page, is too small, thin or pale, and no page is nearly empty", () => {
    const files = new FaultFiles();
    let pages = 0;
    const nearlyEmpty: string[] = [];
    const noRoom: string[] = [];
    for (const [index, machine] of machines.entries()) {
      const measured = measureSheets(findingsOf[index] as Findings, sheetsOf(index));
      pages += measured.pages;
      noRoom.push(
        ...measured.refused
          .filter(({ sheet, why }) => !mayBeTooSmall.includes(sheet) && /needs \d|is wider than|no room/.test(why))
          .map(({ sheet, why }) => `${sheet}: ${why}`),
      );
      const faults = measured.faults.filter(({ kind }) => kind !== "page nearly empty");
      const empty = measured.faults.filter(({ kind }) => kind === "page nearly empty");
      if (empty.length > 0) nearlyEmpty.push(`machine ${index}: ${empty.map(faultLine).join("; ")}`);
      files.add(machine, index, folder === undefined ? faults : measured.faults);
    }
    // Layout must not hold by giving up: of a hundred machines one sheet is refused for want of room.
    expect(noRoom.length, noRoom.join("\n")).toBeLessThanOrEqual(numRuns / 100);
    const lines = files.lines();
    const head = `${numRuns} machines of seed ${seed}, ${pages} pages`;
    const kept = folder ?? (lines.length > 0 ? mkdtempSync(join(tmpdir(), "witnessmark-faults-")) : undefined);
    if (kept !== undefined) files.write(kept, head);
    // Where one piece fills the page before and none of it can be moved, a page may stay nearly empty: with other seeds, since of those
    // of the check none does.
    expect(nearlyEmpty.length, nearlyEmpty.join("\n")).toBeLessThanOrEqual(
      process.env.SEED === undefined ? 0 : Math.ceil(numRuns / 150),
    );
    expect(pages).toBeGreaterThan(numRuns);
    expect(lines, `${head}; the smallest machines are in ${kept}`).toEqual([]);
  }, 1_800_000);

  test("the machines are of every kind", () => {
    const share = (is: (one: Findings) => boolean) => findingsOf.filter(is).length / findingsOf.length;
    const dials = findingsOf.flatMap(({ handwheels }) => handwheels.flatMap(({ dial }) => (dial ? [dial] : [])));
    expect(share(({ machine }) => machine.units === "in")).toBeGreaterThan(0.3);
    expect(share(({ machine }) => machine.kind === "drill")).toBeGreaterThan(0.1);
    expect(share(({ drive }) => (drive?.speeds.length ?? 0) >= 16)).toBeGreaterThan(0.05);
    expect(share(({ handwheels }) => handwheels.length >= 8)).toBeGreaterThan(0.03);
    expect(share(({ handwheels }) => handwheels.some(({ study }) => study))).toBeGreaterThan(0.2);
    expect(share(({ machine }) => machine.work.materials.length >= 12)).toBeGreaterThan(0.2);
    expect(share(({ machine }) => machine.drive?.cover !== undefined)).toBeGreaterThan(0.2);
    expect(share(({ job }) => job !== undefined)).toBeGreaterThan(0.3);
    for (const paper of ["A4", "A5", "Letter"] as const)
      expect(share(({ machine }) => machine.paper.size === paper)).toBeGreaterThan(0.1);
    for (const shape of ["drum", "face", "bevel"])
      expect(
        share(({ handwheels }) => handwheels.some(({ dial, handwheel }) => dial && handwheel.dial?.shape === shape)),
      ).toBeGreaterThan(0.1);
    expect(dials.filter(({ vernier }) => vernier !== undefined).length).toBeGreaterThan(20);
    expect(dials.filter(({ second }) => second !== undefined).length).toBeGreaterThan(10);
    expect(dials.filter(({ rows }) => rows.length > 1).length).toBeGreaterThan(10);
  });

  test("a PDF holds the words that were measured, where they were measured", async () => {
    for (const findings of findingsOf.filter((_, index) => index % Math.ceil(numRuns / 3) === 0)) {
      for (const template of templates()) {
        const made = arrange(findings, template);
        if ("print" in made) await sameWords(made.print);
      }
    }
  });
});

async function sameWords(print: Print): Promise<void> {
  const { pages } = await readPdf(await pdfOf(print.outlines ? outlined(print, ttf) : print));
  expect(pages.length).toBe(print.pages.length);
  if (print.outlines) return;
  for (const [index, { drawing }] of print.pages.entries()) {
    const drawn = flatten(drawing).texts;
    const read = pages[index]?.texts ?? [];
    expect(read.map(({ text }) => text)).toEqual(drawn.map(({ mark }) => mark.text));
    for (const [at, { mark, letters }] of drawn.entries()) {
      const { x, y, size } = read[at] ?? { x: Number.NaN, y: Number.NaN, size: Number.NaN };
      expect(size).toBeCloseTo(mark.size, 3);
      const first = letters()[0];
      expect(first && Math.hypot(first.x - x, first.y - y)).toBeLessThan(mark.size * 1.1);
    }
  }
}
