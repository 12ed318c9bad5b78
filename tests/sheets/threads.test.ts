import { describe, expect, test } from "vitest";
import { arrange } from "../../src/sheets/arrange.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { nearestInchDrill, nextDrill } from "../../src/thread/nextDrill.js";
import { dieBlank, isTight, tappingHole, threadsOf } from "../../src/thread/thread.js";
import { inLanguage } from "../../src/words/language.js";
import { explainTappingHole } from "../../src/working/threads.js";
import { walk } from "../support/marks.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

const machine = findingsOf("name: T\n");
const workingOf = (name: string) => {
  const working = explainTappingHole(machine)
    .find((subject) => subject.name === name)
    ?.explain();
  if (working === undefined || "missing" in working) throw new Error(name);
  return working;
};

test("a published drill that leaves over 80 % is marked, on the sheet and in the working; none other is", () => {
  const all = (["metric coarse", "metric fine", "UNC", "UNF", "BA", "BSW", "BSF"] as const).flatMap(threadsOf);
  const tight = all.filter(({ publishedEngagement }) => isTight(publishedEngagement));
  expect(tight.length).toBeGreaterThan(3);
  expect(tight.length).toBeLessThan(all.length);
  for (const { publishedEngagement = 0 } of all)
    expect(publishedEngagement > 0.8005).toBe(tight.some((one) => one.publishedEngagement === publishedEngagement));
  const sheet = textsOf(machine, "threads");
  expect(sheet).toContain("! tight: this drill makes more than 80 % of a full thread");
  const shown = (["metric coarse", "metric fine", "BA", "UNC", "UNF", "BSW", "BSF", "ME"] as const)
    .flatMap(threadsOf)
    .filter(({ major }) => major <= 25.4);
  const signs = shown
    .filter(({ publishedEngagement }) => isTight(publishedEngagement))
    .map(({ publishedEngagement = 0 }) => `${(100 * publishedEngagement).toFixed(0)}!`);
  expect(sheet.match(/\b\d+!/g)).toEqual(signs);
  const [first] = tight;
  const words = (workingOf(first?.designation.replace(" × ", "x") ?? "").notes ?? []).join(" ");
  expect(words).toContain("over 80 % is hard on a tap turned by hand");
  // M6 on 5 mm leaves 77 %.
  expect((workingOf("M6").notes ?? []).join(" ")).not.toContain("hard on a tap");
});

test("where two threads share a name each has its own hole: 1/4-20 of 60° and of 55°", () => {
  const [unc, bsw] = ["1/4-20 UNC", "1/4-20 BSW"].map((name) => workingOf(name).result.value as number);
  expect(unc).toBeCloseTo(6.35 - 0.75 * 1.299038 * 1.27, 9);
  expect(bsw).toBeCloseTo(6.35 - 0.75 * 1.280655 * 1.27, 9);
});

const titles: Readonly<Record<string, string>> = {
  "metric coarse": "Metric coarse",
  "metric fine": "Metric fine",
  UNC: "Unified coarse, UNC",
  UNF: "Unified fine, UNF",
  BA: "British Association, BA",
  BSW: "British Standard Whitworth, BSW",
  BSF: "British Standard Fine, BSF",
  ME: "32 and 40 per inch, Whitworth form",
};

describe("series", () => {
  test.each([
    ["mm", ["metric coarse", "metric fine", "BA", "UNC", "UNF", "BSW", "BSF", "ME"]],
    ["in", ["UNC", "UNF", "BSW", "BSF", "ME", "metric coarse", "metric fine", "BA"]],
  ])("of the machine's own unit come first: %s", (units, order) => {
    const words = textsOf(findingsOf(`name: T\nunits: ${units}\n`), "threads");
    const at = order.map((system) => words.indexOf(titles[system] ?? ""));
    expect(Math.min(...at)).toBeGreaterThanOrEqual(0);
    expect([...at].sort((a, b) => a - b)).toEqual(at);
  });

  test("only those asked for are printed, in the order asked for", () => {
    const { template } = readTemplate(
      "title: T\nneeds: nothing\nblocks:\n  - thread table: { systems: [BSF, metric fine, UNC] }\n",
      "t",
    );
    const made = template && arrange(machine, template);
    const words: string[] = [];
    if (made === undefined || !("print" in made)) throw new Error("no sheet");
    for (const { drawing } of made.print.pages)
      walk(drawing.marks, (mark) => mark.kind === "text" && words.push(mark.text));
    const named = Object.entries(titles).flatMap(([system, title]) => (words.includes(title) ? [system] : []));
    expect(named.sort()).toEqual(["BSF", "UNC", "metric fine"]);
    expect(words.indexOf("Metric fine")).toBeLessThan(words.indexOf("British Standard Fine, BSF"));
    expect(words.indexOf("British Standard Fine, BSF")).toBeLessThan(words.indexOf("Unified coarse, UNC"));
  });

  test.each(["mm", "in"])("none loses a thread, its hole, its drill, its rod or its turns, in %s", (units) => {
    for (const size of ["A4", "A5", "Letter"]) {
      const words = ` ${textsOf(findingsOf(`name: T\nunits: ${units}\npaper: { size: ${size} }\n`), "threads")} `;
      const [scale, places, depth] = units === "mm" ? [1, 2, 10] : [25.4, 4, 12.7];
      // A half is rounded up, which binary fractions hide.
      const rounded = (value: number, to: number) => (Math.round(value * 10 ** to + 1e-9) / 10 ** to).toFixed(to);
      const figure = (mm: number) => rounded(mm / scale, places);
      for (const system of ["metric coarse", "metric fine", "BA", "UNC", "UNF", "BSW", "BSF", "ME"] as const)
        for (const thread of threadsOf(system).filter(({ major }) => major <= 25.4)) {
          const row = words.split(` ${thread.name}${thread.fromMemory ? "*" : ""} `).slice(1);
          const hole = tappingHole(thread, 0.75);
          const published = thread.publishedDrill;
          // A drill of millimetres is in an inch shop's box for metric threads alone.
          const sold = units === "mm" || thread.drillName !== undefined || system.startsWith("metric");
          const drill =
            (published === undefined
              ? nextDrill(hole, units as "mm" | "in")?.diameter
              : sold
                ? published
                : nearestInchDrill(published)?.diameter) ?? Number.NaN;
          const wanted = [hole, dieBlank(thread), drill].map(figure);
          // In an inch file that has no room beside, #10-24 says itself how many turns half an inch takes.
          const turns =
            units === "in" && system.startsWith("UN") ? [] : [String(Number(rounded(depth / thread.pitch, 2)))];
          expect(
            row.some((after) => {
              const cells = after.split(" ").slice(0, 11);
              return [...wanted, ...turns].every((cell) => cells.includes(cell));
            }),
            `${size} ${thread.designation}`,
          ).toBe(true);
        }
    }
  });
});

test("on A4 and Letter two series stand side by side", () => {
  for (const units of ["mm", "in"])
    for (const size of ["A4", "Letter"]) {
      const { pages } = printOf(findingsOf(`name: T\nunits: ${units}\npaper: { size: ${size} }\n`), "threads");
      // In inches metric fine threads and BA hold too much for that.
      expect(pages.length).toBeLessThanOrEqual(units === "mm" ? 3 : 4);
      const columns = new Set<number>();
      for (const { drawing } of pages)
        walk(drawing.marks, (mark, toPage) => {
          if (mark.kind === "text" && /^\d+\/\d+-\d+\*?$/.test(mark.text)) columns.add(Math.round(toPage(mark.at).x));
        });
      expect(columns.size, `${units} ${size}`).toBe(2);
    }
});

test("where no drill is published the next usual one above the hole stands, with a sign; a hole never comes out tighter by it", () => {
  expect(nextDrill(2.381, "mm")?.diameter).toBe(2.4);
  expect(nextDrill(1.18, "mm")?.diameter).toBe(1.2);
  expect(nextDrill(5.01, "mm")?.diameter).toBe(5.1);
  // 0.1325 in: no. 29 is 0.136 (from memory), 9/64 is 0.1406.
  expect(nextDrill(0.1325 * 25.4, "in")?.diameter).toBeCloseTo(0.136 * 25.4, 9);
  for (const units of ["mm", "in"] as const)
    for (const thread of (["BSW", "BSF", "ME", "BA"] as const).flatMap(threadsOf)) {
      const hole = tappingHole(thread, 0.75);
      expect(nextDrill(hole, units)?.diameter).toBeGreaterThanOrEqual(hole - 1e-6);
    }
  const sheet = textsOf(machine, "threads");
  expect(sheet).toMatch(/1\/16-60 1\.59 1\.18 1\.20 \d+\+/);
  expect(sheet).toContain("+ none is published: the next usual drill above the hole of 75 %");
});

test("a metric thread's name has the decimal mark of its language", () => {
  const sheet = inLanguage("de", () => textsOf(machine, "threads"));
  expect(sheet).toContain("M2,5 × 0,35");
  expect(sheet).not.toMatch(/M\d+\.\d/);
});

describe("on an inch machine", () => {
  const sheet = ` ${textsOf(findingsOf("name: T\nunits: in\n"), "threads")} `;
  const whitworth = (["BSW", "BSF"] as const).flatMap(threadsOf);

  test("every drill of an inch thread is a number, a letter or a fraction", () => {
    for (const thread of [...whitworth, ...(["UNC", "UNF", "ME"] as const).flatMap(threadsOf)]) {
      const rows = sheet.split(` ${thread.name}${thread.fromMemory ? "*" : ""} `).slice(1);
      expect(rows.length, thread.designation).toBeGreaterThan(0);
      for (const row of rows) expect(row.split(" ").slice(0, 5).join(" "), thread.designation).not.toContain("mm");
    }
  });

  test("it is the published one, to half the step between drills there", () => {
    const told = whitworth.filter(({ publishedDrill }) => publishedDrill !== undefined);
    expect(told.length).toBeGreaterThan(12);
    for (const { publishedDrill = 0, designation } of told) {
      const off = Math.abs((nearestInchDrill(publishedDrill)?.diameter ?? Number.NaN) - publishedDrill);
      // Sixty-fourths of an inch lie farthest apart of all that there are.
      expect(off, designation).toBeLessThanOrEqual(25.4 / 128);
    }
    expect(sheet).toContain("the nearest that is sold in inches");
    expect(textsOf(machine, "threads")).not.toContain("sold in inches");
    // 5.1 mm is no. 7 but for 0.005 mm, 10.5 mm is Z but for 0.01 mm; by no. 7 1/4-20 is left 76 % of a full thread.
    expect(sheet).toMatch(/ 1\/4-20 (0\.2500 )?0\.2020 #7 0\.2010 /);
    expect(sheet).toMatch(/ 1\/2-12 (0\.5000 )?0\.4200 Z! 0\.4130 /);
  });

  test("unified and Whitworth threads go up to an inch", () => {
    for (const system of ["UNC", "UNF", "BSW", "BSF"] as const)
      expect(threadsOf(system).map(({ major }) => Number((major / 25.4).toFixed(4)))).toEqual(
        expect.arrayContaining([0.5625, 0.625, 0.75, 0.875, 1]),
      );
    expect(sheet).toMatch(/ 3\/4-10\* 0\.7500 0\.6526 21\/32 0\.6562 /);
    expect(sheet).toMatch(/ 3\/4-16\* 0\.7500 0\.6891 11\/16 0\.6875 /);
  });
});

test("no tapping hole is told that the machine's largest drill does not make, and how many are left out is", () => {
  const all = findingsOf("name: T\n");
  const small = findingsOf("name: T\nlimits: { drill: 6 }\n");
  expect(textsOf(all, "threads")).toMatch(/\bM10\b/);
  expect(textsOf(all, "threads")).not.toContain("left out");
  const words = textsOf(small, "threads");
  // M7 is drilled 6, M8 6.8.
  expect(words).toMatch(/\bM6\b/);
  expect(words).not.toMatch(/\bM(8|10|12)\b/);
  expect(words).toMatch(/\d+ larger threads are left out: their tapping drills are over 6 mm, the largest/);
});

test("a series that runs on in the next column says there that it goes on, and has what columns there is width for", () => {
  const sheet = textsOf(findingsOf("name: T\nunits: in\npaper: { size: Letter }\n"), "threads");
  expect(sheet.match(/Unified fine, UNF(?!, continued)/g)).toHaveLength(1);
  expect(sheet.match(/Unified fine, UNF, continued/g)).toHaveLength(1);
  // Metric threads in two columns have the turns beside.
  expect(sheet).toMatch(/Metric coarse[^M]*turns/);
});
