import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { file, folder, witnessmark } from "../support/command.js";
import { readPdf } from "../support/readPdf.js";
import { demoFindings, findingsOf, ownTexts } from "../support/sheets.js";

const own = "tests/sheets/wallCard.yaml";

async function printed(machine: string, stem: string) {
  const out = folder();
  const { code, err } = await witnessmark("print", machine, "--sheet", own, "--out", out);
  expect(err).toBe("");
  expect(code).toBe(0);
  return (await readPdf(readFileSync(join(out, `${stem}-wallCard.pdf`)))).pages;
}

describe("a card of the user's own, in ten lines", () => {
  test("no more than ten", () =>
    expect(readFileSync(own, "utf8").trimEnd().split("\n").length).toBeLessThanOrEqual(10));

  test("as the README shows it", () =>
    expect(readFileSync("README.md", "utf8")).toContain(`\`\`\`yaml\n${readFileSync(own, "utf8")}\`\`\``));

  test("of the demo: every belt position, the turns of that wheel alone, the cautions", async () => {
    const machine = "templates/machines/boathouse.yaml";
    const pages = await printed(machine, "boathouse");
    expect(pages).toHaveLength(1);
    const texts = pages.flatMap((page) => page.texts.map(({ text }) => text));
    const answer = JSON.parse((await witnessmark("check", machine, "--json")).out);
    for (const { position, rpm } of answer.speeds) {
      expect(texts.join(" ")).toContain(position);
      expect(texts).toContain(String(Math.round(rpm)));
    }
    // Seventeen whole turns of 2.54 mm in 45 mm of travel, the last told by the feed that check tells.
    const wheels: { name: string; feedPerTurn: { mm: number } }[] = answer.handwheels;
    const barrel = wheels.find(({ name }) => name === "Tailstock barrel");
    const others = wheels.filter((one) => one !== barrel);
    expect(texts).toContain(barrel?.name);
    expect(texts).toContain((17 * (barrel?.feedPerTurn.mm ?? 0)).toFixed(3));
    expect(texts.filter((text) => text === "Whole turns")).toHaveLength(1);
    const all = texts.join(" ");
    for (const { name } of others) expect(all).not.toContain(name);
    expect(all).not.toContain("turns dial");
    expect(all).toContain("PLUG OUT, then open.");
    expect(all).toContain("Lock the tailstock. Key out of the chuck.");
    // 7 in wide, as asked; the demo's printer is corrected, by less than half a per cent.
    const xs = pages[0]?.points.map(({ x }) => x) ?? [];
    const edges = [Math.min(...xs.filter((x) => x > 15)), Math.max(...xs.filter((x) => x < 195))];
    expect((edges[1] ?? 0) - (edges[0] ?? 0)).toBeGreaterThan(176.5);
    expect((edges[1] ?? 0) - (edges[0] ?? 0)).toBeLessThan(179.5);
  });

  test("of a machine in inches: in its own unit, cautions and all", async () => {
    const machine = file(
      `name: Inch lathe
units: in
drive:
  motor: { speed: 1725 rpm }
  stages:
    - name: spindle belt
      steps: [{ label: High, driver: 4, driven: 2 }, { label: Low, driver: 2, driven: 4 }]
handwheels:
  - { name: Saddle, feed: 0.5, travel: 10 }
  - { name: Tailstock barrel, feed: 10 tpi, travel: 2 }
`,
      "inch.yaml",
    );
    const all = (await printed(machine, "inch")).flatMap((page) => page.texts.map(({ text }) => text)).join(" ");
    for (const word of ["High", "Low", "Tailstock barrel", "0.1000", "2.0000", "PLUG OUT, then open."])
      expect(all).toContain(word);
    expect(all).not.toContain("Saddle");
  });

  test("of a drill without that wheel: which it has, at the place in the card's file", async () => {
    const machine = file("name: Drill\nkind: drill\nhandwheels: [{ name: Quill, feed: 20 }]\n", "drill.yaml");
    const { code, err } = await witnessmark("print", machine, "--sheet", own, "--out", folder());
    expect(code).toBe(1);
    expect(err).toContain(`${own}:8:31: there is no handwheel "Tailstock barrel"; there are "Quill"`);
  });
});

test("belt positions stand closer where the turns of a wheel then share their page", () => {
  const steps = (labels: string) =>
    [...labels].map((label, at) => `{ label: "${label}", driver: ${100 - 9 * at}, driven: ${60 + 9 * at} }`).join(", ");
  const findings = findingsOf(
    `name: B
limits: { chuck: 4000 }
drive:
  motor: { speed: 1425 }
  stages: [{ name: low, steps: [${steps("1234")}] }, { name: high, steps: [${steps("ABCD")}] }]
handwheels: [{ name: Quill, feed: 3.175, travel: 60 }]
`,
  );
  const words = ownTexts(
    findings,
    "title: Mine\nneeds: feed\nblocks:\n  - positions: { materials: 4 }\n  - turn tables: { handwheel: Quill, tables: [whole turns] }\n  - cautions: { of: drill }\n",
  );
  expect(words).toContain("1 of 1");
  expect(words).toContain("Clamp the work");
});

test("a long title gets smaller, then two lines, and is not cut", () => {
  const title = "Wall card for the old lathe in the back room, belts and the turns of the cross slide, "
    .repeat(2)
    .trim();
  for (const length of [60, 100, 150]) {
    const own = title.slice(0, length).trim();
    const template = `title: "${own}"\nneeds: drive\nblocks:\n  - positions: { materials: 2 }\n`;
    expect(ownTexts(demoFindings(), template)).toContain(own);
  }
});

test("what is not said to be of other work is of the machine's: a drill's card is for drilling, a lathe's for turning, each part for its use", () => {
  const machine = (kind: string) =>
    findingsOf(
      `name: M
kind: ${kind}
drive:
  motor: { speed: 1400 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 60, driven: 100 }, { label: B, driver: 100, driven: 60 }] }]
work: { materials: [mild steel, brass], diameters: [10, 25], drills: [3, 8] }
`,
    );
  const card = "title: C\nblocks: [positions]\n";
  expect(ownTexts(machine("drill"), card)).toContain("drills in mm by speed");
  expect(ownTexts(machine("lathe"), card)).toContain("turning: diameters");
  const onEnd = machine("lathe stood on end");
  expect(ownTexts(onEnd, card)).toContain("turning: diameters");
  expect(ownTexts(onEnd, "title: C\nblocks: [positions: { for: drilling }]\n")).toContain("drills in mm by speed");
  expect(ownTexts(machine("drill"), "title: C\nblocks: [positions: { operation: tapping }]\n")).not.toContain(
    "drills in mm by speed",
  );
  // A drill has no diameters of work to draw the diagram for.
  expect(ownTexts(machine("drill"), "title: D\nblocks: [speed diagram]\n")).toBe(
    ownTexts(machine("drill"), "title: D\nblocks: [speed diagram: { operation: drilling }]\n"),
  );
});
