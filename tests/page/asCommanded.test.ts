import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { explainedLines } from "../../src/answers/explained.js";
import { supposedLines } from "../../src/answers/supposed.js";
import { mendWords } from "../../src/answers/verified.js";
import { answersWith } from "../../src/page/work/answers.js";
import type { Files } from "../../src/page/work/protocol.js";
import { file, witnessmark } from "../support/command.js";

const demo = "templates/machines/boathouse.yaml";
const ask = answersWith({
  fonts() {
    throw new Error("no page is made");
  },
  deflate: (bytes) => bytes,
});
const filesOf = (text: string): Files => ({
  machine: { name: "lathe.yaml", text },
  jobs: [],
  readings: [],
  sheets: [],
});
const files = filesOf(readFileSync(demo, "utf8"));
/** A terminal's lines are broken at its width, and parted from the command by an empty one. */
const words = (lines: string | readonly string[]): string =>
  (typeof lines === "string" ? lines : lines.join("\n")).replace(/\s+/g, " ").trim();

test("every quantity that is offered is explained as the command explains it", async () => {
  const offered = await ask("explainable", files, {});
  expect(offered.length).toBeGreaterThan(10);
  for (const { name, subjects } of offered) {
    // Of all where there is one alone.
    const of = subjects.length > 1 ? subjects.at(-1) : undefined;
    const { parts, refused } = await ask("explain", files, { quantity: name, ...(of !== undefined && { of }) });
    const { out, err } = await witnessmark("explain", demo, name, ...(of === undefined ? [] : ["--of", of]));
    if (refused === undefined) expect(out.trimEnd(), name).toBe([`From ${demo}`, ...explainedLines(parts)].join("\n"));
    else expect(err, name).toContain(`${demo}: ${refused}`);
  }
});

test("a piece is judged as the command judges it, and wrong input refused in its words", async () => {
  const text = `name: L
handwheels:
  - { name: Drum, feed: 2 mm, dial: { shape: drum, diameter: 38, width: 9, divisions: 0.02 mm } }
  - { name: Bevel, feed: 2 mm, dial: { shape: bevel, diameter: 40, smallDiameter: 30, width: 12, divisions: 0.02 mm } }
  - { name: Bare, feed: 2 mm }\n`;
  const path = file(text);
  const measures = await ask("measures", filesOf(text), {});
  expect(measures.map(({ wheel, measures: ways }) => [wheel, ways.map(({ by }) => by)])).toEqual([
    ["Drum", ["strip"]],
    ["Bevel", ["arc", "chord"]],
  ]);
  for (const [handwheel, measured, by] of [
    ["Drum", "119.7"],
    ["Drum", "4.71"],
    ["Drum", "abc"],
    ["Bare", "100"],
    ["Bevel", "100", "arc"],
    ["Bevel", "60", "chord"],
  ] as const) {
    const { lines, mend, refused } = await ask("verify", filesOf(text), { handwheel, measured, by });
    const asked = ["--handwheel", handwheel, "--measured", measured, ...(by ? ["--by", by] : [])];
    const { out, err } = await witnessmark("verify", path, ...asked);
    expect(out.trimEnd(), measured).toBe([...lines, ...(mend ? [mendWords(mend)] : [])].join("\n"));
    if (refused !== undefined) expect(err).toContain(refused);
    expect(lines.length > 0 || refused !== undefined).toBe(true);
  }
});

test("what is supposed is answered and refused as the command does", async () => {
  const wishes = await ask("wishes", files, {});
  expect(wishes.length).toBeGreaterThan(6);
  for (const wish of [wishes[0], wishes[3], wishes.at(-1)].flatMap((one) => one ?? [])) {
    const { parts } = await ask("suppose", files, { wishes: [wish] });
    const lines = supposedLines(parts).slice(1);
    const { out } = await witnessmark("check", demo, "--suppose", wish);
    expect(lines[0]).toMatch(/^Supposed: /);
    expect(words(out), wish).toContain(words(lines));
  }
  const two = ["60 Hz", wishes[2] ?? ""];
  const { parts } = await ask("suppose", files, { wishes: two });
  const lines = supposedLines(parts);
  expect(words((await witnessmark("check", demo, ...two.flatMap((wish) => ["--suppose", wish]))).out)).toContain(
    words(lines),
  );
  const { refused } = await ask("suppose", files, { wishes: ["belt square"] });
  expect((await witnessmark("check", demo, "--suppose", "belt square")).err).toContain(refused ?? "nothing");
});

test("of a file with a fault nothing is told but that", async () => {
  const faulty = filesOf("name: L\nhandwheels: 3\n");
  expect(await ask("explain", faulty, { quantity: "feed" })).toMatchObject({
    parts: [],
    refused: expect.stringContaining("mend first"),
  });
  expect(await ask("wishes", faulty, {})).toEqual([]);
});

describe("a job on an inch machine", () => {
  const machine = "templates/machines/boathouse.yaml";
  const inches = readFileSync("tests/machine/sound/inch-lathe.yaml", "utf8");
  const pin = readFileSync("tests/job/inch-pin.yaml", "utf8");

  test.each([
    ["in inches", inches, pin],
    ["in millimetres", inches, pin.replace("units: in", "units: mm")],
    ["that says no units", inches, pin.replace("units: in\n", "")],
    ["that says none, on a machine in millimetres", readFileSync(machine, "utf8"), pin.replace("units: in\n", "")],
    ["of turning, on a drill", `kind: drill\n${inches}`, pin],
  ])("%s is told and planned as the command does", async (_, text, job) => {
    const [path, jobPath] = [file(text), file(job)];
    const asked: Files = { ...filesOf(text), jobs: [{ name: "pin.yaml", text: job }] };
    const { told } = await ask("read", asked, {});
    const { err } = await witnessmark("check", path, "--job", jobPath);
    const against = told.filter((one) => one.file === "pin.yaml");
    for (const { what } of against) expect(words(err)).toContain(words(what));
    const sheet = await ask("sheet", asked, { sheet: "plan" });
    const printed = await witnessmark(
      "print",
      path,
      "--sheet",
      "plan",
      "--job",
      jobPath,
      "--anyway",
      "--out",
      `${path}.out`,
    );
    expect(sheet.pages.length > 0).toBe(printed.code === 0);
    if (sheet.why !== undefined) expect(words(printed.err)).toContain(words(against[0]?.what ?? "nothing"));
    if (sheet.why !== undefined) expect(sheet.why).toBe(`pin.yaml: ${against[0]?.what}; ${against[0]?.remedy}`);
  });
});
