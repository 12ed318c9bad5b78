import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { entryLines } from "../../src/blocks/measuring/printerWords.js";
import { readMachine } from "../../src/machine/read.js";
import { bind } from "../../src/sheets/binder.js";
import { folder, witnessmark } from "../support/command.js";
import { pdfOf } from "../support/pdfOf.js";
import { type LineRead, type PageRead, readPdf, type Spot } from "../support/readPdf.js";
import { demoFindings, findingsOf, printOf } from "../support/sheets.js";

const read = async (text: string): Promise<PageRead> => {
  const { pages } = await readPdf(await pdfOf(printOf(findingsOf(text), "printer-check")));
  expect(pages).toHaveLength(1);
  return pages[0] as PageRead;
};
const demo = "templates/machines/boathouse.yaml";
const apart = (a: Spot, b: Spot) => Math.hypot(b.x - a.x, b.y - a.y);
const long = ({ lines }: PageRead, length: number, pen: number) =>
  lines.filter(({ from, to, pen: p }) => Math.abs(apart(from, to) - length) < 0.001 && Math.abs(p - pen) < 0.001);

/** Of the two bars. */
const BAR = 0.18;

/** The corner and the nine feet of comb lines that lie at whole steps from it towards `to`, each within 0.001 mm. */
function expectComb({ lines }: PageRead, end: Spot, to: Spot, step = 2.1) {
  const length = apart(end, to);
  const along = { x: (to.x - end.x) / length, y: (to.y - end.y) / length };
  for (let k = 0; k < 10; k++) {
    const foot = { x: end.x + along.x * step * k, y: end.y + along.y * step * k };
    const square = ({ from, to }: LineRead) =>
      Math.abs((to.x - from.x) * along.x + (to.y - from.y) * along.y) < 0.001 && apart(from, to) < 4.001;
    const found = lines.filter((stroke) => square(stroke) && apart(stroke.from, foot) < 0.001);
    expect(found, `comb line ${k}`).toHaveLength(1);
    expect(found[0]?.pen).toBeLessThan(0.12);
  }
}

describe.each([
  ["A4", 200, 250],
  ["Letter", 200, 250],
  ["A5", 130, 180],
  ["A3", 200, 250],
  ["Legal", 200, 250],
])("the printer check on %s, read back from the PDF", (size, across, down) => {
  let page: PageRead;
  let corner: { topLeft: Spot; topRight: Spot; bottomLeft: Spot; bottomRight: Spot };
  beforeAll(async () => {
    page = await read(`name: Test\npaper: { size: ${size} }\n`);
    const { from: topLeft, to: topRight } = long(page, across, BAR)[0] as LineRead;
    corner = {
      topLeft,
      topRight,
      bottomLeft: { x: topLeft.x, y: topLeft.y + down },
      bottomRight: { x: topRight.x, y: topRight.y + down },
    };
  });

  test("one bar across, one down, and the other two sides, within 0.001 mm", () => {
    const ends = (lines: LineRead[]) => lines.map(({ from, to }) => [from, to]);
    expect(long(page, across, BAR)).toHaveLength(1);
    expect(long(page, down, BAR)).toHaveLength(1);
    expect(corner.topRight.y - corner.topLeft.y).toBeCloseTo(0, 4);
    const [[bottom, top] = []] = ends(long(page, down, BAR));
    expect(apart(bottom as Spot, corner.bottomLeft)).toBeLessThan(0.001);
    expect(apart(top as Spot, corner.topLeft)).toBeLessThan(0.001);
    const right = long(page, down - 12, 0.1).filter(({ to }) => apart(to, corner.bottomRight) < 0.001);
    expect(right).toHaveLength(1);
    expect(right[0]?.from.x).toBeCloseTo(corner.topRight.x, 4);
    expect(apart(corner.topLeft, corner.bottomRight)).toBeCloseTo(Math.hypot(across, down), 3);
    expect(apart(corner.topRight, corner.bottomLeft)).toBeCloseTo(Math.hypot(across, down), 3);
  });

  test("no bar comes nearer to an edge of the paper than 5 mm, and head and foot stand where they stand on every sheet", async () => {
    const [width, height] = {
      A4: [210, 297],
      Letter: [215.9, 279.4],
      A5: [148, 210],
      A3: [297, 420],
      Legal: [215.9, 355.6],
    }[size] as [number, number];
    for (const { x, y } of Object.values(corner)) {
      expect(Math.min(x, y, width - x, height - y)).toBeGreaterThan(5 - 0.001);
    }
    const other = (await readPdf(await pdfOf(printOf(findingsOf(`name: Test\npaper: { size: ${size} }\n`), "threads"))))
      .pages[0] as PageRead;
    const place = ({ texts }: PageRead, words: RegExp) => {
      const found = texts.find(({ text }) => words.test(text));
      return [found?.x, found?.y];
    };
    for (const words of [/^(Printer check|Threads by hand)$/, /^machine$/, /^page$/]) {
      const here = place(page, words);
      expect(here[1]).toBeDefined();
      expect(here[1]).toBeCloseTo(place(other, words)[1] as number, 3);
    }
    expect(place(page, /^Printer check$/)[0]).toBeCloseTo(place(other, /^Threads by hand$/)[0] as number, 3);
  });

  test("each corner carries its comb of ten lines, 2.1 mm apart, inward", () => {
    expectComb(page, corner.topRight, corner.topLeft);
    expectComb(page, corner.topLeft, corner.bottomLeft);
    expectComb(page, corner.bottomRight, corner.topLeft);
    expectComb(page, corner.bottomLeft, corner.topRight);
  });

  test("the cross stands in the middle", () => {
    const middle = { x: (corner.topLeft.x + corner.topRight.x) / 2, y: (corner.topLeft.y + corner.bottomLeft.y) / 2 };
    const arms = page.lines.filter(
      ({ from, to }) =>
        Math.abs(apart(from, to) - 6) < 0.001 && Math.abs(apart(from, middle) - 3) < 0.001 && apart(to, middle) < 3.001,
    );
    expect(arms).toHaveLength(2);
  });
});

test("a machine in inches: bars of whole inches, and a comb for a rule in fiftieths", async () => {
  const page = await read("name: Test\nunits: in\npaper: { size: Letter }\n");
  const [across, down] = [8 * 25.4, 9 * 25.4];
  const top = long(page, across, BAR)[0] as LineRead;
  expect(long(page, down, BAR)).toHaveLength(1);
  expectComb(page, top.to, top.from, 0.102 * 25.4);
  expect(page.texts.map(({ text }) => text).join(" ")).toContain("line 3 on a graduation: 7.986");
});

test.each(["A4", "A5", "Letter", "Legal"].flatMap((size) => ["mm", "in"].map((units) => [size, units])))(
  "on %s in %s no comb stands in the title block",
  async (size, units) => {
    const { texts, lines } = await read(`name: Test\nunits: ${units}\npaper: { size: ${size} }\n`);
    const foot = texts.find(({ text }) => text === "machine")?.y ?? 0;
    const rule = Math.max(
      ...lines
        .filter(({ from, to }) => from.y === to.y && from.y < foot && apart(from, to) > 100)
        .map(({ from }) => from.y),
    );
    expect(foot - rule).toBeLessThan(6);
    // Numbers of the combs, by their figures alone; the foot's own stand in sentences.
    const combs = texts.filter(({ text, y }) => /^\d$/.test(text) && y < foot + 3);
    expect(combs.length).toBeGreaterThanOrEqual(40);
    expect(Math.max(...combs.map(({ y }) => y))).toBeLessThan(rule);
  },
);

// In graduations of the rule: millimetres, or fiftieths of an inch.
describe.each([2.1, 5.1])("a comb of lines %f graduations apart", (step) => {
  test.each(Array.from({ length: 10 }, (_, tenths) => tenths))("199.%i: that line meets a graduation", (tenths) => {
    const off = (k: number) => {
      const place = 199 + tenths / 10 - step * k;
      return Math.abs(place - Math.round(place));
    };
    const nearest = Array.from({ length: 10 }, (_, k) => k).sort((a, b) => off(a) - off(b))[0];
    expect(nearest).toBe(tenths);
  });
});

describe("what the page says", () => {
  test("what to write into the file is read as the file reads it, in either unit", async () => {
    for (const units of ["mm", "in"] as const) {
      const [across, down] = units === "mm" ? [200, 250] : [7 * 25.4, 10 * 25.4];
      const nominal = { across, down, diagonal: Math.hypot(across, down) };
      const page = await read(`name: Test\nunits: ${units}\n`);
      const said = page.texts.map(({ text }) => text).join(" ");
      for (const line of entryLines("my printer", nominal, units)) expect(said).toContain(line.trim());
      const figures = units === "mm" ? ["199.3", "250.4", "320.2", "319.6"] : ["6.975", "10.016", "12.23", "12.205"];
      const [measured, , diagonal] = figures.map(Number);
      const filled = entryLines("my printer", nominal, units, "@")
        .join("\n")
        .replace(/@/g, () => figures.shift() ?? "");
      const { machine, problems } = readMachine(`name: Test\nunits: ${units}\n${filled}\n`);
      expect(problems).toEqual([]);
      const printer = machine?.printers["my printer"];
      expect((printer?.across?.measured ?? 0) / (printer?.across?.nominal ?? 1)).toBeCloseTo(
        (measured ?? 0) / (units === "mm" ? 200 : 7),
        9,
      );
      expect((printer?.diagonals?.[0] ?? 0) / (printer?.down?.measured ?? 1)).toBeCloseTo(
        (diagonal ?? 0) / (units === "mm" ? 250.4 : 10.016),
        9,
      );
      expect(machine?.paper.printer).toBe("my printer");
    }
  });

  test("it is to be printed without the file's correction, and stays out of the binder, which is corrected", () => {
    const findings = demoFindings();
    const print = printOf(findings, "printer-check");
    expect(print.uncorrected).toBe(true);
    expect(printOf(findings, "dial").uncorrected).toBeUndefined();
    expect(bind(findings, [print, printOf(findings, "turns")], []).sections?.map(({ title }) => title)).toEqual([
      "Turns and distances",
    ]);
  });

  test("the command prints it as it is, and the dial beside it corrected", async () => {
    const out = folder();
    const { code } = await witnessmark("print", demo, "--sheet", "printer-check", "--sheet", "dial", "--out", out);
    expect(code).toBe(0);
    const pageOf = async (sheet: string) =>
      (await readPdf(readFileSync(join(out, `boathouse-${sheet}.pdf`)))).pages[0] as PageRead;
    const upright = ({ lines }: PageRead, length: number) =>
      lines.filter(({ from, to }) => from.x === to.x && Math.abs(Math.abs(to.y - from.y) - length) < 0.001);
    expect(upright(await pageOf("printer-check"), 250)).toHaveLength(1);
    // The demo's printer makes 250 mm down the page into 250.4, and leans.
    expect(upright(await pageOf("dial"), 100)).toHaveLength(0);
  });
});
