import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { formBasis, readingsEntry } from "../../src/blocks/measuring/measuringForm.js";
import { readingsPlan } from "../../src/feed/readingsPlan.js";
import { readMachine } from "../../src/machine/read.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { pdfOf } from "../support/pdfOf.js";
import { type PageRead, readPdf } from "../support/readPdf.js";
import { demoFindings, findingsOf, printOf } from "../support/sheets.js";

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
      for (const why of plan.why) expect(said.toLowerCase().replace(/\s+/g, " ")).toContain(why.toLowerCase());
    }
  });

  test("beside the turns stands about what the gauge will say, so that a miscounted turn shows at once", () => {
    const feed = findings.handwheels[0]?.feed?.perTurn ?? 0;
    const last = turns(pages[0] as PageRead).at(-1) ?? 0;
    expect(pages[0]?.texts.map(({ text }) => text)).toContain((last * feed).toFixed(2));
  });

  test("every row leaves room to write out and return, twice, at least 4.5 mm high", () => {
    for (const page of pages.slice(0, -1)) {
      const edges = page.lines.filter(({ from, to }) => from.x === to.x && to.y - from.y > 4.4 && to.y - from.y < 12);
      const columns = new Set(edges.map(({ from }) => from.x.toFixed(2)));
      expect(columns.size).toBe(7);
      expect(edges).toHaveLength(7 * turns(page).length);
    }
  });

  test("steps come in the order of the work", () => {
    const said = words(pages[0]);
    const order = ["plug out", "Take up the lost motion", "Go one way only", "run past the end", "Run past zero"];
    const places = order.map((step) => said.indexOf(step));
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
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
    expect(short.why.join()).toContain("does not reach");
    const { template } = readTemplate(readFileSync("templates/sheets/measuring-form.yaml", "utf8"), "measuring-form");
    expect(template?.blocks[0]?.settings).toEqual(usual);
  });
});

test("what the form says to write is what the file reads", async () => {
  const said = words((await read(findingsOf("name: Test\n")))[0]).replace(/\s+/g, " ");
  expect(said).toContain(readingsEntry(0.01, { turns: "0, …", travel: "out, …", back: "return, …" }));
  const entry = readingsEntry(0.01, { turns: "0, 1, 2, 3", travel: "0, 2, 4, 6", back: "0.1, 2.1, 4.1, 6.1" });
  const { machine, problems } = readMachine(`name: Test\nhandwheels: [{ name: Slide, ${entry} }]\n`);
  expect(problems).toEqual([]);
  expect(machine?.handwheels[0]?.feed).toMatchObject({ from: "readings", gauge: 0.01, back: [0.1, 2.1, 4.1, 6.1] });
});
