import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { compute } from "../../src/findings/compute.js";
import type { Findings } from "../../src/findings/findings.js";
import { readMachine } from "../../src/machine/read.js";
import { identity, pageCorrection, printerDistortion } from "../../src/paper/printerCorrection.js";
import { arrange } from "../../src/sheets/arrange.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { pdfOf } from "../support/pdfOf.js";
import { type PageRead, readPdf } from "../support/readPdf.js";

function findingsOf(text: string): Findings {
  const { machine, problems } = readMachine(text);
  if (machine === undefined) throw new Error(JSON.stringify(problems));
  return compute(machine);
}

async function printed(findings: Findings, sheet: string, correction = identity) {
  const { template } = readTemplate(readFileSync(`templates/sheets/${sheet}.yaml`, "utf8"), sheet);
  if (template === undefined) throw new Error("template");
  const result = arrange(findings, template);
  if ("missing" in result) throw new Error(result.missing);
  return readPdf(await pdfOf(result.print, correction));
}

const screw = (feed: string, dial: string) =>
  `name: Test\nhandwheels: [{ name: Slide, feed: ${feed}, dial: { shape: drum, diameter: 38, width: 9, ${dial} } }]\n`;

/** The three pens of graduations, mm; a correction may change them by a hundredth. */
const isGraduation = ({ pen, stroked }: { readonly pen: number; readonly stroked: boolean }): boolean =>
  stroked && [0.25, 0.18, 0.13].some((own) => Math.abs(pen - own) < 0.003);

/** Of strokes those that begin at the height at which most of them do: no picture has as many as a strip. */
function fromOneHeight<T extends { readonly y: number }>(places: readonly T[]): T[] {
  const level = (height: number) => places.filter(({ y }) => Math.abs(y - height) < 0.001);
  return places.reduce((most: T[], { y }) => (level(y).length > most.length ? level(y) : most), []);
}

/** Upright strokes of a copy, the first where two stand side by side, left to right: the graduations' x. */
function graduations(page: PageRead, count: number): number[] {
  const marks = page.lines.filter(
    (line) => isGraduation(line) && line.from.x === line.to.x && Math.abs(line.to.y - line.from.y) < 8.5,
  );
  const strip = fromOneHeight(marks.map(({ from }) => from)).map(({ x }) => x);
  expect([count, 2 * count]).toContain(strip.length);
  return strip.sort((a, b) => a - b).slice(0, count);
}

describe("the dial strip, read back from the PDF", () => {
  const length = Math.PI * (38 + 0.1);

  test("even: 127 equal gaps on a 1.27 mm screw, every mark within 0.001 mm of the mathematics", async () => {
    const { pages } = await printed(findingsOf(screw("1.27 mm", "divisions: 0.01 mm, closure: even")), "dial");
    const marks = graduations(pages[0] as PageRead, 127);
    const first = marks[0] as number;
    const worst = Math.max(...marks.map((x, index) => Math.abs(x - first - (index * length) / 127)));
    expect(worst).toBeLessThan(0.001);
  });

  test("true: marks lie where the feed puts them, and the short gap is the short one", async () => {
    const { pages } = await printed(findingsOf(screw("2.1 mm", "divisions: 0.04 mm, closure: true")), "dial");
    const marks = graduations(pages[0] as PageRead, 53);
    const gaps = marks.slice(1).map((x, index) => x - (marks[index] as number));
    const whole = (length * 0.04) / 2.1;
    const short = (length * 0.02) / 2.1;
    expect(gaps.filter((gap) => Math.abs(gap - short) < 0.002)).toHaveLength(1);
    expect(gaps.filter((gap) => Math.abs(gap - whole) < 0.002)).toHaveLength(51);
  });

  test("numbers grow to the left for a wheel turned clockwise, to the right for anticlockwise", async () => {
    for (const [sense, sign] of [
      ["clockwise", -1],
      ["anticlockwise", 1],
    ] as const) {
      const { pages } = await printed(
        findingsOf(screw("2 mm", `divisions: 0.02 mm, closure: even, increases: ${sense}`)),
        "dial",
      );
      const texts = (pages[0] as PageRead).texts;
      const [five, ten] = ["0.4", "0.6"].map((label) => texts.find(({ text }) => text === label)?.x ?? Number.NaN);
      expect(Math.sign((ten as number) - (five as number))).toBe(sign);
    }
  });

  test("the page is A4, asks not to be scaled, and its check bars are 100 mm", async () => {
    const { pages, printScaling } = await printed(findingsOf(screw("2 mm", "increases: clockwise")), "dial");
    const [page] = pages as [PageRead];
    expect(printScaling).toBe("None");
    expect(page.width).toBeCloseTo(297, 6);
    expect(page.height).toBeCloseTo(210, 6);
    const bar = (along: "x" | "y") =>
      page.lines.filter(({ from, to }) => Math.abs(Math.abs(to[along] - from[along]) - 100) < 0.001);
    expect(bar("x")).toHaveLength(1);
    expect(bar("y")).toHaveLength(1);
  });

  test("a strip longer than the page is cut into pieces whose lengths add up to the whole", async () => {
    const findings = findingsOf(
      screw("2 mm", "divisions: 0.02 mm, closure: even").replace("diameter: 38", "diameter: 150"),
    );
    const { pages } = await printed(findings, "dial");
    const texts = pages.flatMap((page) => page.texts.map(({ text }) => text));
    // Beneath each piece of the first copy its name, then its numbers, each before what it is.
    const said = texts.flatMap((text, at) =>
      /copy 1, piece \d of \d$/.test(text)
        ? [Number.parseFloat(texts[texts.indexOf("between the cut ends", at) - 1] ?? "")]
        : [],
    );
    expect(said.length).toBeGreaterThan(1);
    expect(said.reduce((sum, length) => sum + length, 0)).toBeCloseTo(Math.PI * 150.1, 1);
  });
});

describe("what stands on the dial itself", () => {
  const texts = async (dial: string) => {
    const { pages } = await printed(
      findingsOf(`name: Test\nrevision: 3\nhandwheels: [{ name: Cross slide, reads: diameter, ${dial} }]\n`),
      "dial",
    );
    return pages.flatMap((page) => page.texts.map(({ text }) => text));
  };
  const times = (all: string[], words: string) => all.filter((text) => text.split(" · ").includes(words)).length;

  test.each([
    [
      "one row",
      "feed: 2 mm, dial: { shape: drum, diameter: 38, width: 9, divisions: 0.02 mm }",
      "1 div 0.02 mm on diameter",
    ],
    ["three rows", "feed: 12 tpi, dial: { shape: drum, diameter: 38, width: 9, closure: rows }", "on diameter"],
    [
      "a narrow strip of one row",
      "feed: 2 mm, dial: { shape: drum, diameter: 38, width: 5, divisions: 0.1 mm }",
      "on diameter",
    ],
  ])("%s: revision, “on diameter” and name on both copies", async (_, dial, onDiameter) => {
    const all = await texts(dial);
    for (const words of ["rev 3", onDiameter]) expect(times(all, words), words).toBeGreaterThanOrEqual(2);
    expect(times(all, "Cross slide")).toBeGreaterThanOrEqual(2);
    expect(all.join(" ")).not.toContain("no room on it for");
  });

  test("what finds no place is told on the page, for a pencil", async () => {
    const all = await texts("feed: 12 tpi, dial: { shape: drum, diameter: 20, width: 4, closure: rows }");
    expect(all.join(" ")).toMatch(
      /no room on it for: (mm · )?(1st turn · 2nd turn · )?.*on diameter · rev 3 · Cross slide/,
    );
    expect(all.join(" ")).toContain("write it beside the piece");
  });

  test("a lower scale that counts thousandths of an inch says so beneath it, and bears no unit; the upper one's hangs beside a number", async () => {
    const all = await texts(
      "feed: 1.3333 mm, dial: { shape: drum, diameter: 40, width: 6, divisions: 0.02 mm, second: 0.001 in }",
    );
    // Its numbers leave no room for it: each copy is told what they count beneath it.
    expect(all.join(" ").match(/no room on it for: [^.]*1 = 0\.001 in/g)?.length).toBeGreaterThanOrEqual(2);
    expect(times(all, "mm")).toBe(2);
    expect(times(all, "in")).toBe(0);
    expect(all).toContain("0");
  });
});

describe("the printer's correction", () => {
  let page: PageRead;
  const printer = {
    across: { measured: 199.3, nominal: 200 },
    down: { measured: 250.4, nominal: 250 },
    diagonals: [320.3, 319.3] as const,
  };
  beforeAll(async () => {
    const { pages } = await printed(
      findingsOf(screw("1.27 mm", "divisions: 0.01 mm, closure: even")),
      "dial",
      pageCorrection(printer, { width: 297, height: 210 }),
    );
    page = pages[0] as PageRead;
  });

  test("what the untrue printer makes of the page is true again: marks upright, 127 equal gaps, 100 mm bars", () => {
    const [sx, , k, sy] = printerDistortion(printer);
    // The page is turned a quarter on to its sheet, printed, and looked at upright again.
    const onPaper = ({ x, y }: { x: number; y: number }) => ({ x: 297 - sy * (297 - x), y: sx * y + k * (297 - x) });
    const across = page.lines
      .map(({ from, to }) => [onPaper(from), onPaper(to)] as const)
      .filter(([a, b]) => Math.abs(b.x - a.x - 100) < 0.01);
    expect(across).toHaveLength(1);
    for (const [a, b] of across) expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(100, 3);
    const length = Math.PI * 38.1;
    const marks = page.lines
      .filter((line) => isGraduation(line) && line.to.y - line.from.y > 1 && line.to.y - line.from.y < 8.5)
      .map(({ from }) => onPaper(from));
    const xs = fromOneHeight(marks)
      .map(({ x }) => x)
      .sort((a, b) => a - b)
      .slice(0, 127);
    expect(xs).toHaveLength(127);
    expect(Math.max(...xs.map((x, index) => Math.abs(x - (xs[0] as number) - (index * length) / 127)))).toBeLessThan(
      0.001,
    );
  });
});
