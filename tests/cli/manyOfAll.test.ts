import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { MOST } from "../../src/machine/bounds.js";
import { file, folder } from "../support/command.js";
import { readPdf } from "../support/readPdf.js";

/** The real command with a tenth of the usual stack, so that a list handed over as arguments overflows it at some ten thousand; the
 *  lists are as long as a file may have them. */
const witnessmark = (...args: string[]) =>
  spawnSync(process.execPath, ["--stack-size=100", "dist/witnessmark.cjs", ...args], {
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });

const list = (count: number, make: (index: number) => string | number) =>
  Array.from({ length: count }, (_, i) => make(i));
const slide = "{ name: Cross slide, feed: 2, travel: 300, dial: { shape: drum, diameter: 38, width: 9 }";

test.each([
  ["distances", "turns", `handwheels: [${slide}, distances: [${list(MOST.distances, (i) => 0.3 * (i + 1))}] }]`],
  [
    "diameters",
    "speed-diagram",
    `drive: { motor: { speed: 1425 rpm }, stages: [{ name: belt, steps: [{ driver: 80, driven: 50 }] }] }\nwork: { materials: [brass], diameters: [${list(MOST.diameters, (i) => 5 + i / 50)}] }`,
  ],
])("%s by the thousand are printed", (_, sheet, text) => {
  const out = folder();
  const path = file(`name: L\n${text}\n`);
  const { status, stderr } = witnessmark("print", path, "--sheet", sheet, "--out", out);
  expect(stderr).not.toContain("fault of its own");
  expect(status).toBe(0);
  expect(readFileSync(join(out, `lathe-${sheet}.pdf`)).length).toBeGreaterThan(5000);
});

test("a CSV in which every line is faulty has every line told", () => {
  const path = file("name: L\nhandwheels: [{ name: Slide, feed: { readings: slide.csv } }]\n");
  writeFileSync(join(dirname(path), "slide.csv"), `turns;travel\n${list(15_000, (i) => `${i};x`).join("\n")}\n`);
  const { status, stderr } = witnessmark("check", path);
  expect(status).toBe(1);
  expect(stderr).not.toContain("fault of its own");
  expect(stderr.match(/slide\.csv:\d+:\d+: "x" is not a length/g)).toHaveLength(15_000);
});

test("as many dials for the engraver as there may be make one PDF, every one of them in it", async () => {
  const wheels = list(
    MOST.handwheels,
    (i) =>
      `  - { name: W${i}, feed: ${(1.9 + i / 77).toFixed(3)}, travel: 60, dial: { shape: drum, diameter: ${30 + i}, width: 9 } }`,
  );
  const out = folder();
  const path = file(`name: L\nhandwheels:\n${wheels.join("\n")}\n`);
  const { status, stderr } = witnessmark("print", path, "--sheet", "engraving", "--out", out);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  const { pages } = await readPdf(readFileSync(join(out, "lathe-engraving.pdf")));
  // A dial has no fewer marks than a hundredth of a turn's length in millimetres would make.
  expect(pages.reduce((sum, { lines }) => sum + lines.length, 0)).toBeGreaterThan(MOST.handwheels * 40);
});
