import { describe, expect, test } from "vitest";
import { size } from "../../src/blocks/shared/style.js";
import { table, tableWidth } from "../../src/blocks/shared/table.js";
import { turnTables } from "../../src/blocks/work/turnTables.js";
import type { Page } from "../../src/drawing/page.js";
import { arrange } from "../../src/sheets/arrange.js";
import { walk } from "../support/marks.js";
import { emptyPages } from "../support/measureSheets.js";
import { demoFindings, findingsOf, ownTexts, printOf, template, textsOf } from "../support/sheets.js";

type Placed = {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly bold: boolean;
};

function placed({ drawing }: Page): Placed[] {
  const found: Placed[] = [];
  walk(drawing.marks, (mark, toPage) => {
    if (mark.kind !== "text") return;
    const { x, y } = toPage(mark.at);
    found.push({ text: mark.text, x, y, size: mark.size, bold: mark.weight === "bold" });
  });
  return found;
}

const wheel = (name: string, rest: string) => `{ name: ${name}, ${rest} }`;
const machine = (wheels: readonly string[], more = "") =>
  findingsOf(`name: T\n${more}\nhandwheels: [${wheels.join(", ")}]\n`);
const drum = "dial: { shape: drum, diameter: 40, width: 9, closure: even, divisions: 0.02 mm }";

describe("distances", () => {
  const findings = machine([wheel("Slide", `travel: 60, feed: { perTurn: 2, uncertainty: 0.001 }, ${drum}`)]);
  const words = placed(printOf(findings, "turns").pages[0] as Page);

  test("of the file's own stand once, not again in the list below them", () => {
    const own = machine(
      [
        wheel(
          "Slide",
          "travel: 3, feed: 0.1, distances: [1/4, 0.125, 3 mm], dial: { shape: drum, diameter: 1.6, width: 0.4 }",
        ),
      ],
      "units: in",
    );
    const sizes = placed(printOf(own, "turns").pages[0] as Page).filter(
      ({ bold, size: em }) => bold && em === size.text,
    );
    const count = (text: string) => sizes.filter((one) => one.text === text).length;
    // Those of the file, and one of them on the column of whole turns.
    expect(["1/4", "1/8", "3 mm", "3/8", "1/2"].map(count)).toEqual([1, 1, 1, 1, 1]);
    const millimetres = sizes.filter(({ text }) => text === "3" || text === "4");
    expect(new Set(millimetres.filter(({ x }) => x > 60 && x < 140).map(({ text }) => text))).toEqual(new Set(["4"]));
  });

  test("less than a division is no distance of the list: it is estimated, not set", () => {
    const coarse = machine([
      wheel(
        "Slide",
        "travel: 60, feed: { perTurn: 2, uncertainty: 0.001 }, dial: { shape: drum, diameter: 40, width: 9, closure: even, divisions: 0.2 mm }",
      ),
    ]);
    const rows = placed(printOf(coarse, "turns").pages[0] as Page).map(({ text }) => text);
    for (const less of ["0.05", "0.1", "0.001", "0.005"]) expect(rows).not.toContain(less);
    for (const enough of ["0.2", "0.5", "0.01"]) expect(rows).toContain(enough);
  });

  test("a part of a division that a vernier shows is set, not estimated", () => {
    const rowsWith = (vernier: string) => {
      const dial = `dial: { shape: drum, diameter: 60, width: 9, divisions: 0.1 mm${vernier} }`;
      const fine = machine([wheel("Slide", `travel: 60, feed: { perTurn: 2, uncertainty: 0.0001 }, ${dial}`)]);
      expect(fine.handwheels[0]?.dial?.vernier?.parts).toBe(vernier === "" ? undefined : 10);
      return placed(printOf(fine, "turns").pages[0] as Page).map(({ text }) => text);
    };
    expect(rowsWith("")).not.toContain("0.05");
    expect(rowsWith(", vernier: 10")).toContain("0.05");
  });

  test("what the hand needs, whole turns and reading, is larger and bold; ± is neither", () => {
    // 15 mm: 7 turns and 1 mm; no other row reads so.
    const row = words.filter(({ y }) => Math.abs(y - (words.find(({ text }) => text === "15")?.y ?? 0)) < 0.01);
    const [distance, turns, reading, doubt] = row.sort((a, b) => a.x - b.x);
    expect([distance?.text, turns?.text, reading?.text]).toEqual(["15", "7", "1.000"]);
    for (const cell of [turns, reading]) expect(cell).toMatchObject({ size: size.card, bold: true });
    expect(doubt?.text).toMatch(/^0\.\d{3}$/);
    expect(doubt).toMatchObject({ size: size.text, bold: false });
  });

  test("the machine's unit stands to the left of the other, both on one page, whole turns to their right", () => {
    const at = (text: string) => words.find((one) => one.text === text)?.x ?? Number.NaN;
    expect(at("15")).toBeLessThan(at("1/16"));
    expect(at("1/16")).toBeLessThan(at("60.000"));
  });
});

test("whole turns go over the entire travel, every one where a dial begins again at zero", () => {
  const long = machine([
    wheel(
      "Screw",
      "travel: 150, feed: 1.587 mm, dial: { shape: drum, diameter: 40, width: 9, closure: true, divisions: 0.02 mm }",
    ),
  ]);
  const said = textsOf(long, "turns");
  for (const turn of [1, 37, 61, 93]) expect(said).toContain(` ${turn} ${(turn * 1.587).toFixed(3)} `);
  expect(said).not.toContain(` 95 ${(95 * 1.587).toFixed(3)} `);
  expect(said).toContain("count whole turns, and add the figure under “dial 0 is”");
});

test("a wheel whose turns cannot be told is named at the foot, with why", () => {
  const known = wheel("Slide", `travel: 20, feed: 2 mm, ${drum}`);
  const said = textsOf(machine([known, wheel("Top slide", "travel: 50")]), "turns");
  expect(said).toMatch(/Not on this sheet: Top slide\. [^.]*feed[^.]*\./);
  expect(textsOf(machine([known]), "turns")).not.toContain("Not on this sheet");
});

describe("a dial that begins again at zero", () => {
  const carriage = wheel(
    "Carriage",
    "travel: 200, feed: { rack: { module: 1, teeth: 14 } }, dial: { shape: face, outside: 70, inside: 52 }",
  );
  test("has beside its whole turns the gears that would make it round, with what they are out by", () => {
    const said = textsOf(machine([carriage], "gears: [20, 25, 55]"), "turns");
    // π · 14 mm a turn; 25/55 of it is 19.9920: a dial turn of 20 reads 0.0080 too much.
    expect(said).toContain(" 55 25 11 : 5 20.0 +0.0080 ");
    expect(said).toContain("+ reads too much");
  });
  test("says how to have them where the file lists none", () =>
    expect(textsOf(machine([carriage]), "turns")).toContain("List the gears at hand in the machine's file"));
  test("another has none", () =>
    expect(
      textsOf(machine([wheel("Slide", `travel: 20, feed: 2 mm, ${drum}`)], "gears: [20, 25]"), "turns"),
    ).not.toMatch(/[Gg]ears/));
});

test("handwheels that fit wholly share a page, each under its name", () => {
  const short = ["Quill", "Barrel"].map((name) => wheel(name, `travel: 3, feed: 2 mm, ${drum}`));
  const { pages } = printOf(machine(short), "turns");
  expect(pages).toHaveLength(1);
  const names = placed(pages[0] as Page).filter(
    ({ text, size: em }) => /^(Quill|Barrel)$/.test(text) && em === size.card,
  );
  expect(names.map(({ text }) => text)).toEqual(["Quill", "Barrel"]);
  // The demo's wheels fill a page each; none is torn but the one with an old dial.
  expect(printOf(demoFindings(), "turns").pages).toHaveLength(5);
});

test("the caution stands at the head of the sheet, and no page is left for what does not fit beneath it", () => {
  for (const paper of ["A4", "Letter"])
    for (let turns = 10; turns <= 60; turns += 5) {
      const first = wheel(
        "Tailstock barrel",
        `travel: ${turns * 0.0652}, feed: 0.0652 in, dial: { shape: drum, diameter: 40 mm, width: 9 mm, divisions: 0.05 mm, increases: clockwise }`,
      );
      const second = wheel(
        "Top slide",
        `travel: 2.75, feed: 0.0833 in, dial: { shape: drum, diameter: 1.5, width: 0.4, increases: clockwise }`,
      );
      const head = `name: T\nunits: in\npaper: { size: ${paper} }\ngears: [20, 24, 25, 28, 30, 35, 40, 45]\n`;
      const { pages } = printOf(findingsOf(`${head}handwheels: [${first}, ${second}]\n`), "turns");
      const [strip, title] = ["Stop the spindle, then measure or set.", "Tailstock barrel"].map(
        (words) => placed(pages[0] as Page).find(({ text }) => text === words)?.y ?? Number.NaN,
      );
      expect(strip).toBeLessThan(title as number);
      expect(emptyPages({ pages }), `${paper}, ${turns} turns`).toEqual([]);
    }
});

test("each page of the turns, of the form and of the drive form names at its head what goes on there", () => {
  const wheels = ["Left", "Right"].map((name) =>
    wheel(name, `travel: 150, feed: { screw: { pitch: 1.587 } }, ${drum}`),
  );
  const findings = machine(wheels, "paper: { size: A5 }");
  for (const sheet of ["turns", "measuring-form"] as const) {
    const { pages } = printOf(findings, sheet);
    expect(pages.length).toBeGreaterThan(3);
    for (const page of pages) {
      const bold = placed(page).filter(({ bold }) => bold);
      expect(bold.some(({ text }) => /^(Left|Right|Pulleys, centres and speeds)(, continued)?$/.test(text))).toBe(true);
    }
  }
});

test("a long list that is a little too wide for two columns has narrower ones rather than a page more", () => {
  const heading = ["aa bb cc dd ee ff", "mm"];
  const columns = [1, 2, 3, 4, 5].map(() => ({ heading, align: "decimal" as const }));
  const rows = (count: number) =>
    Array.from({ length: count }, (_, row) => columns.map(() => ({ text: `${row},000` })));
  const wide = tableWidth(columns, rows(40), { width: 500 });
  const width = 2 * wide - 4;
  const [first] = table(columns, rows(40), { width, list: true });
  expect(first?.list?.columns).toBe(2);
  expect((first?.list?.step ?? 0) + (first?.drawing.width ?? 0)).toBeLessThanOrEqual(width + 1e-6);
  expect(table(columns, rows(6), { width, list: true })[0]?.list).toBeUndefined();
});

describe("a wheel whose whole travel is less than one turn", () => {
  const quill = (rest = "") =>
    machine([
      wheel(
        "Quill",
        `travel: 80, feed: { perTurn: 100, uncertainty: 0.2 }, dial: { shape: drum, diameter: 62, width: 12 }${rest}`,
      ),
    ]);

  test("has no column of noughts, says why in one sentence, and tells no distance smaller than its ±", () => {
    const texts = printOf(quill(), "turns").pages.flatMap(placed);
    expect(texts.some(({ text }) => text === "turns")).toBe(false);
    expect(textsOf(quill(), "turns")).toContain("less than one turn");
    const bold = texts.filter(({ bold, text }) => bold && /^\d+(\.\d+)?$/.test(text)).map(({ text }) => Number(text));
    expect(bold.length).toBeGreaterThan(10);
    expect(Math.min(...bold)).toBeGreaterThan(0);
    const two = machine([wheel("Cross", `travel: 80, feed: 2, ${drum}`)]);
    expect(
      printOf(two, "turns")
        .pages.flatMap(placed)
        .some(({ text }) => text === "turns"),
    ).toBe(true);
    expect(textsOf(two, "turns")).not.toContain("less than one turn");
  });

  test("speaks of no start readings, rows or gears: the dial never completes a turn", () => {
    const racked = machine([
      wheel(
        "Quill",
        "travel: 60, feed: { rack: { module: 1.5, teeth: 16 } }, dial: { shape: drum, diameter: 46, width: 12 }",
      ),
    ]);
    expect(racked.handwheels[0]?.dial?.chosen.beginsAgain).toBe(true);
    expect(textsOf(racked, "turns")).not.toMatch(/dial 0 is|gears|rows of/);
    expect(arrange(racked, template("start-readings"))).toHaveProperty("missing");
  });

  test("a block of its whole turns alone says that there is nothing to show", () => {
    const [finding] = quill().handwheels;
    const runs = turnTables.draw({
      findings: quill(),
      handwheels: finding ? [finding] : [],
      width: 180,
      height: 200,
      settings: { ...turnTables.defaults, tables: ["whole turns"] },
    } as never);
    expect(JSON.stringify(runs)).toContain("Nothing to show");
  });
});

describe("what is named", () => {
  test("what the foot says of start readings names the column that stands there", () => {
    expect(textsOf(demoFindings(), "turns")).toContain("figures under “dial 0 is”");
    expect(textsOf(demoFindings(), "start-readings")).toContain("figures under “begins at”");
  });

  test("the old dial's table that goes on overleaf says again which it is", () => {
    const [, second] = printOf(demoFindings(), "turns").pages;
    expect(second && placed(second).map(({ text }) => text)).toContain("The same on the old dial, continued");
  });
});

test("a dial that is too low for its rows does not say that no division comes round in a few turns", () => {
  const cone = (width: number) =>
    machine(
      [
        wheel(
          "Slide",
          `travel: 3, feed: 12 tpi, dial: { shape: bevel, diameter: 1.75, smallDiameter: 1.4, width: ${width} }`,
        ),
      ],
      "units: in",
    );
  const words = (width: number) => textsOf(cone(width), "turns");
  expect(words(0.35)).toContain("3 rows of 0.001 in, one a turn, would run on: they close exactly.");
  expect(words(0.35)).not.toContain("No round division");
  expect(words(0.8)).toContain("3 rows of 0.001 in, one a turn, run on: they close exactly.");
});

test("what the old dial is out by is told where distances are, and of whole turns alone not spoken of", () => {
  const findings = findingsOf(
    "name: L\nunits: in\nhandwheels: [{ name: Top slide, travel: 2.25, feed: 16 tpi, oldDial: { reads: travel, perTurn: 0.06 in } }]\n",
  );
  const own = (tables: string) =>
    ownTexts(findings, `title: T\nneeds: feed\nblocks: [turn tables: { handwheel: Top slide, tables: [${tables}] }]\n`);
  expect(own("distances")).toContain("Out by: ");
  expect(own("whole turns")).toContain("2.2500");
  expect(own("whole turns")).not.toContain("Out by: ");
});
