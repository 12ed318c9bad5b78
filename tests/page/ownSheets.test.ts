import { expect, test } from "vitest";
import { blocks } from "../../src/blocks/registry.js";
import type { Block } from "../../src/blocks/shared/block.js";
import { offeredAt } from "../../src/page/app/offered.js";
import { type Schema, schemaAt } from "../../src/page/schema.js";
import { answersWith } from "../../src/page/work/answers.js";
import type { Files } from "../../src/page/work/protocol.js";
import { sheetSchema } from "../../src/page/work/sheetSchema.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";

const ask = answersWith({
  fonts() {
    throw new Error("no page is made");
  },
  deflate: (bytes) => bytes,
});
const machine = "name: L\nhandwheels: [{ name: Slide, feed: 2 mm }]\n";
const filesOf = (...sheets: readonly (readonly [name: string, text: string])[]): Files => ({
  machine: { name: "lathe.yaml", text: machine },
  jobs: [],
  readings: [],
  sheets: sheets.map(([name, text]) => ({ name, text })),
});
const sound = "title: Mine\nblocks:\n  - turn tables\n";

test("the reader's own sheet takes the place of the program's of that name", async () => {
  const states = await ask("sheets", filesOf(["turns.yaml", sound]), {});
  expect(states.filter(({ name }) => name === "turns")).toEqual([
    { name: "turns", title: "Mine (turns)", onRequest: false, own: true },
  ]);
});

test("a sheet that cannot be read stays in the list, with what it lacks", async () => {
  const faulty = filesOf(["mine.yaml", "title: Mine\n"]);
  const why = "its template has something to mend first";
  expect((await ask("sheets", faulty, {})).at(-1)).toEqual({
    ...{ name: "mine", title: "mine", onRequest: true, own: true, why },
  });
  expect(await ask("sheet", faulty, { sheet: "mine" })).toEqual({ pages: [], why });
});

test("of a sheet faults, slips and a handwheel that is not there are told at their places", async () => {
  const told = async (text: string) => (await ask("read", filesOf(["mine.yml", text]), {})).told;
  expect(await told("title: Mine\nneds: drive\nblocks:\n  - turn tables\n")).toEqual([
    {
      ...{ file: "mine.yml", severity: "error", line: 2, column: 1, stops: "its own" },
      what: '"neds" is not a key of a sheet',
      remedy: 'did you mean "needs"?',
    },
  ]);
  expect(await told(`margin: 3\n${sound}`)).toMatchObject([
    { file: "mine.yml", severity: "warning", line: 1, what: expect.stringMatching(/^margin is less/) },
  ]);
  expect(await told("title: Mine\nblocks:\n  - turn tables: { handwheel: Slope }\n")).toMatchObject([
    { file: "mine.yml", severity: "error", line: 3, column: 31 },
  ]);
  expect(await told(sound)).toEqual([]);
});

test("all that a template may say is offered, and nothing that it may not", () => {
  const schema = sheetSchema();
  const { properties } = schema as Required<Schema>;
  for (const key of Object.keys(properties)) {
    const { problems } = readTemplate(`${key}: 3\n`, "mine");
    expect(problems.filter((line) => line.includes("is not a key"))).toEqual([]);
  }
  for (const [name, { defaults }] of Object.entries(blocks as Readonly<Record<string, Block>>)) {
    const own = schemaAt(schema, ["blocks", 0, name], () => ({}));
    expect(own?.description, name).toMatch(/\w{3}/);
    expect(Object.keys(own?.properties ?? {})).toEqual(expect.arrayContaining(Object.keys(defaults)));
  }
});

test("completion knows blocks of several words, their settings, and the words that these may be", () => {
  const schema = sheetSchema();
  const labels = (text: string) => offeredAt(text, text.length, schema).options.map(({ label }) => label);
  expect(labels("title: T\nblocks:\n  - drill b")).toContain("drill bars");
  expect(labels("title: T\nblocks:\n  - drill bars:\n      op")).toContain("operations");
  expect(labels("title: T\nblocks:\n  - positions:\n      caution: ")).toContain("belt");
  expect(labels("orientation: ")).toEqual(["portrait", "landscape", "either"]);
  expect(labels("bare: ")).toEqual(["true", "false"]);
});
