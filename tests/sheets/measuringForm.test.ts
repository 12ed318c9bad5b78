import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { dialEntry } from "../../src/blocks/measuring/dialBlank.js";
import { driveEntry } from "../../src/blocks/measuring/driveForm.js";
import { formBasis, readingsEntry } from "../../src/blocks/measuring/measuringForm.js";
import { readingsPlan } from "../../src/feed/readingsPlan.js";
import { readMachine } from "../../src/machine/read.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { inLanguage } from "../../src/words/language.js";
import { say } from "../../src/words/say.js";
import { walk } from "../support/marks.js";
import { pdfOf } from "../support/pdfOf.js";
import { type PageRead, readPdf } from "../support/readPdf.js";
import { demoFindings, findingsOf, printOf, textsOf } from "../support/sheets.js";

const read = async (findings: ReturnType<typeof findingsOf>): Promise<PageRead[]> =>
  (await readPdf(await pdfOf(printOf(findings, "measuring-form")))).pages;
const words = (page: PageRead | undefined) => (page?.texts ?? []).map(({ text }) => text).join(" ");
/** Numbers of the table's first column, down the page: those centred under the heading "turns". */
function turns(page: PageRead): number[] {
  const heading = page.texts.find(({ text }) => text === "turns");
  return page.texts
    .filter(({ text, x, y }) => /^[\d.]+$/.test(text) && Math.abs(x - (heading?.x ?? 0)) < 6 && y > (heading?.y ?? 0))
    .sort((a, b) => a.y - b.y)
    .map(({ text }) => Number(text));
}

describe("the measuring form of the demo", async () => {
  const findings = demoFindings();
  const pages = await read(findings);

  test("has a page for each handwheel with its name, and one for the drive", () => {
    expect(pages).toHaveLength(findings.handwheels.length + 1);
    for (const [index, { handwheel }] of findings.handwheels.entries())
      expect(pages[index]?.texts.map(({ text }) => text)).toContain(handwheel.name);
  });

  test("the turns filled in are those of the plan for its own feed, travel, gauge and scatter", () => {
    for (const [index, { handwheel, feed }] of findings.handwheels.entries()) {
      const held = handwheel.feed?.from === "readings" ? handwheel.feed : undefined;
      const plan = readingsPlan({
        feed: feed?.perTurn ?? Number.NaN,
        travel: handwheel.travel ?? Number.NaN,
        gauge: held?.gauge ?? 0.01,
        within: 0.01,
        ends: Math.min(feed?.perTurn ?? Number.NaN, (handwheel.travel ?? Number.NaN) / 10),
        ...(feed?.fit && { scatter: feed.fit.residualDeviation }),
      });
      expect(turns(pages[index] as PageRead)).toEqual(plan.turns.map((turn) => Number(turn.toFixed(4))));
      // Room to take up the lost motion before the first mark, and to run past the last.
      const furthest = (plan.turns.at(-1) ?? 0) * (feed?.perTurn ?? Number.NaN);
      expect((handwheel.travel ?? Number.NaN) - furthest).toBeGreaterThan(7 * (feed?.lostMotion?.travel ?? 0.1));
      const said = words(pages[index]);
      for (const why of plan.why) expect(said.replace(/\s+/g, " ")).toContain(say(`measuring form.why ${why}`));
    }
  });

  test("beside the turns stands about what the gauge will say, so that a miscounted turn shows at once", () => {
    const feed = findings.handwheels[0]?.feed?.perTurn ?? 0;
    const last = turns(pages[0] as PageRead).at(-1) ?? 0;
    expect(pages[0]?.texts.map(({ text }) => text)).toContain((last * feed).toFixed(2));
  });

  test("every row leaves room to write out and return, twice, at least 4.5 mm high and 20 mm wide", async () => {
    // Without the printer's correction, which leans.
    const { printer: _, ...paper } = findings.machine.paper;
    const plain = await read({ ...findings, machine: { ...findings.machine, paper } });
    for (const page of plain.slice(0, -1)) {
      const heading = page.texts.find(({ text }) => text === "turns");
      const edges = page.lines.filter(
        ({ from, to, pen }) =>
          Math.abs(from.x - to.x) < 0.001 &&
          from.x < (heading?.x ?? 0) + 108 &&
          from.y > (heading?.y ?? 0) &&
          to.y > from.y &&
          Math.abs(pen - 0.18) < 0.001,
      );
      const columns = [...new Set(edges.map(({ from }) => Number(from.x.toFixed(2))))].sort((a, b) => a - b);
      expect(columns, columns.join(" ")).toHaveLength(7);
      expect(edges).toHaveLength(7 * turns(page).length);
      for (const { from, to } of edges) expect(to.y - from.y).toBeGreaterThan(4.5 - 0.001);
      for (const column of [2, 3, 4, 5])
        expect((columns[column + 1] ?? 0) - (columns[column] ?? 0)).toBeGreaterThan(20);
    }
  });

  test("steps come in the order of the work, and each number stands in the picture too", () => {
    const said = words(pages[0]);
    const order = [
      "Plug out",
      "Take up the lost motion",
      "Dial on its mark",
      "Go one way only",
      "run past the end",
      "Come back",
      "Run past zero",
    ];
    const places = order.map((step) => said.replace(/\s+/g, " ").indexOf(step));
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    const heading = pages[0]?.texts.find(({ text }) => text === "turns");
    const drawn = pages[0]?.texts.filter(
      ({ text, x, y }) => /^[1-7]$/.test(text) && y < (heading?.y ?? 0) && x < (heading?.x ?? 0) + 108,
    );
    for (const step of order.keys())
      expect(drawn?.filter(({ text }) => text === String(step + 1)).length, `${step + 1}`).toBeGreaterThan(0);
  });

  test("the picture goes out to the right and comes back to the left, later by the lost motion", () => {
    const { drawing } = printOf(findings, "measuring-form").pages[0] ?? { drawing: { marks: [] } };
    const circles: { x: number; y: number; full: boolean }[] = [];
    walk(drawing.marks, (mark, toPage) => {
      if (mark.kind !== "path") return;
      const [first] = mark.segments;
      if (first?.to === "arc" && Math.abs(first.radius - 0.9) < 1e-9 && first.end - first.start > 6)
        circles.push({ ...toPage(first.centre), full: mark.fill === "black" });
    });
    const low = Math.max(...circles.map(({ y }) => y));
    const back = circles.filter(({ y }) => Math.abs(y - low) < 0.01).map(({ x }) => x);
    const level = Math.max(...circles.filter(({ y }) => y < low - 1).map(({ y }) => y));
    const out = circles.filter(({ y, full }) => full && Math.abs(y - level) < 0.01).map(({ x }) => x);
    expect(out.length).toBeGreaterThanOrEqual(4);
    expect(back).toHaveLength(out.length);
    const lags = back.map((x, index) => x - (out[index] ?? 0));
    for (const lag of lags) expect(lag).toBeCloseTo(lags[0] ?? 0, 6);
    expect(lags[0]).toBeGreaterThan(1);
  });

  test("there is room for the size of the dial, its sense and the chuck's mark", () => {
    for (const [index, { handwheel }] of findings.handwheels.entries()) {
      const texts = pages[index]?.texts.map(({ text }) => text) ?? [];
      const asked = { drum: "drum across", face: "outside", bevel: "large end" }[handwheel.dial?.shape ?? "drum"];
      expect(texts).toContain(asked);
      // The box under the dial that the file describes says so; the other stands empty.
      expect(texts.filter((text) => text === "in file")).toHaveLength(1);
    }
    expect(words(pages.at(-1))).toContain("Mark on the chuck");
  });

  test("the drive's page holds the file's pulleys, centres, positions and tachometer readings", () => {
    const texts = pages.at(-1)?.texts.map(({ text }) => text) ?? [];
    const { drive } = findings.machine;
    for (const stage of drive?.stages ?? []) {
      expect(texts).toContain(stage.name);
      if (stage.centres !== undefined) expect(texts).toContain(String(stage.centres));
      for (const step of stage.steps) if (step.kind === "belt") expect(texts).toContain(String(step.driver));
    }
    for (const { position } of findings.drive?.speeds ?? []) expect(texts).toContain(position.name);
    for (const { rpm } of drive?.tachometer ?? []) expect(texts).toContain(String(rpm));
    // Two pairs of wheels, and the word once for both.
    expect(texts).toContain("20, 18 teeth");
  });
});

describe("a machine with nothing but a name", () => {
  test.each([
    ["mm", "2.000 mm (assumed)", "0.010 mm (assumed)"],
    ["in", "0.1000 in (assumed)", "0.0005 in (assumed)"],
  ])("in %s gets a blank form that says what is assumed", async (units, turn, gauge) => {
    const pages = await read(findingsOf(`name: Test\nunits: ${units}\n`));
    expect(pages).toHaveLength(2);
    const said = words(pages[0]);
    expect(said).toContain(turn);
    expect(said).toContain(gauge);
    expect(turns(pages[0] as PageRead).length).toBeGreaterThanOrEqual(9);
  });

  test("the template's own reach shortens the run, and the form says what that leaves unproven", () => {
    const usual = { within: 0.01, travel: 50, nominal: 2, gauge: 0.01, reach: 0 };
    const short = formBasis(undefined, { ...usual, reach: 10 }, "mm").plan;
    expect(Math.max(...short.turns) * 2).toBeLessThanOrEqual(10);
    expect(short.why).toContain("short gauge");
    const { template } = readTemplate(readFileSync("templates/sheets/measuring-form.yaml", "utf8"), "measuring-form");
    expect(template?.blocks[0]?.settings).toEqual(usual);
  });
});

describe("what the form says to write is what the file reads", async () => {
  const pages = await read(findingsOf("name: Test\n"));
  const said = words(pages[0]).replace(/\s+/g, " ");

  test("the readings", () => {
    expect(said).toContain(readingsEntry(0.01, { turns: "0, …", travel: "…", back: "…" }));
    const entry = readingsEntry(0.01, { turns: "0, 1, 2, 3", travel: "0, 2, 4, 6", back: "0.1, 2.1, 4.1, 6.1" });
    const { machine, problems } = readMachine(`name: Test\nhandwheels: [{ name: Slide, ${entry} }]\n`);
    expect(problems).toEqual([]);
    expect(machine?.handwheels[0]?.feed).toMatchObject({
      ...{ from: "readings", gauge: 0.01, back: [0.1, 2.1, 4.1, 6.1] },
      // The line that the third step has drawn.
      zeroAt: "line on the ways",
    });
    expect(said).toContain("gauge on 0; scribe a line across slide and ways.");
  });

  test.each(["drum", "face", "bevel"] as const)("a %s", (shape) => {
    if (shape === "drum") expect(said).toContain(dialEntry("drum"));
    const figures = [40, 30, 8];
    const entry = dialEntry(shape, "@", "anticlockwise").replace(/@/g, () => String(figures.shift()));
    const { machine, problems } = readMachine(`name: Test\nhandwheels: [{ name: Slide, feed: 2, ${entry} }]\n`);
    expect(problems).toEqual([]);
    expect(machine?.handwheels[0]?.dial).toMatchObject({ shape, increases: "anticlockwise" });
  });

  test("drive and chuck", () => {
    const last = words(pages.at(-1)).replace(/\s+/g, " ");
    for (const entry of driveEntry()) expect(last).toContain(entry);
    const figures = [1400, 5, 200, 80, 130, 42, 82, 2700, 2000];
    const filled = driveEntry("@", "belt")
      .join("\n")
      .replace(/@/g, () => String(figures.shift()));
    expect(figures).toEqual([]);
    const { machine, problems } = readMachine(`name: Test\n${filled}\n`);
    expect(problems).toEqual([]);
    expect(machine?.drive?.stages[0]?.steps[0]).toMatchObject({
      label: "A",
      driverBy: { by: "overBelt", size: 80 },
      drivenBy: { by: "stringOver", size: 130 },
    });
    expect(machine?.drive?.tachometer).toHaveLength(1);
    expect(machine?.limits.chuckRpm).toBe(2000);
  });

  test("with a point also where the paper is German", () => {
    inLanguage("de", () => {
      const findings = findingsOf("name: Test\n");
      expect(textsOf(findings, "measuring-form").replace(/\s+/g, " ")).toContain(
        readingsEntry(0.01, { turns: "0, …", travel: "…", back: "…" }),
      );
    });
    expect(inLanguage("de", () => readingsEntry(0.01, { turns: "", travel: "", back: "" }))).toContain("gauge: 0.01,");
  });
});

test("a part of a turn stands in one line, however many its decimals", async () => {
  const [page] = await read(findingsOf("name: D\nhandwheels: [{ name: Quill, feed: 66, travel: 80 }]\n"));
  const texts = page?.texts.map(({ text }) => text) ?? [];
  expect(texts).toEqual(expect.arrayContaining(["0.125", "0.375", "0.625", "0.875"]));
});

test("what a sheet sets holds on a machine in inches too; what it leaves has the usual of its unit", () => {
  const [wheel] = findingsOf("name: L\nunits: in\nhandwheels: [{ name: Slide }]\n").handwheels;
  const usual = { within: 0.01, travel: 50, nominal: 2, gauge: 0.01, reach: 0 };
  const inch = 25.4;
  const { wish } = formBasis(wheel, { ...usual, travel: 3 * inch }, "in");
  expect(wish.travel).toBeCloseTo(3 * inch, 9);
  expect(wish.gauge).toBeCloseTo(0.0005 * inch, 9);
  expect(wish.feed).toBeCloseTo(0.1 * inch, 9);
  expect(formBasis(wheel, { ...usual, travel: 3 * inch }, "mm").wish).toMatchObject({ gauge: 0.01, feed: 2 });
});

test("the form of a quill speaks of no slide", () => {
  const form = textsOf(
    findingsOf("name: D\nkind: drill\nhandwheels: [{ name: Quill, travel: 60, feed: 59 }]\n"),
    "measuring-form",
  );
  expect(form).toContain("A worn stretch");
  expect(form).not.toMatch(/\bslide/i);
});
