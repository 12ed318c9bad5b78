import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { withValue } from "../../src/page/file/edit.js";
import { answersWith } from "../../src/page/work/answers.js";
import type { Files } from "../../src/page/work/protocol.js";

const ask = answersWith({
  fonts: () => ({ regular: new Uint8Array(), bold: new Uint8Array() }),
  deflate: (bytes) => bytes,
});
const filesOf = (text: string): Files => ({
  machine: { name: "lathe.yaml", text },
  jobs: [{ name: "pin.yaml", text: readFileSync("templates/jobs/deck-pin.yaml", "utf8") }],
  readings: [],
  sheets: [],
});
const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");
const made = async (files: Files) => {
  const whys = new Map<string, string | undefined>();
  for (const { name } of await ask("sheets", files, {}))
    whys.set(name, (await ask("lacks", files, { sheet: name })).why);
  return whys;
};

test("one unfinished dial stops what needs it alone; the others come out as they were", async () => {
  const [whole, broken] = [filesOf(demo), filesOf(withValue(demo, ["handwheels", 0, "dial", "diameter"], "wide"))];
  const { sound, told } = await ask("read", broken, {});
  expect(sound).toBe(false);
  expect(told.filter(({ severity }) => severity === "error").map(({ stops }) => stops)).toEqual(["what needs it"]);
  const whys = await made(broken);
  const goesOn = [...whys].filter(([, why]) => why === undefined).map(([name]) => name);
  expect(goesOn).toEqual(expect.arrayContaining(["belt-card", "drilling-card", "speed-diagram"]));
  for (const sheet of goesOn)
    expect((await ask("sheet", broken, { sheet })).pages, sheet).toEqual((await ask("sheet", whole, { sheet })).pages);
  for (const sheet of ["dial", "plan", "student"])
    expect(whys.get(sheet), sheet).toMatch(/^it needs .+, where something is to be mended first$/);
  const { files, why } = await ask("print", broken, { format: "svg", sheets: ["belt-card", "dial"] });
  expect(files.every(({ name }) => name.includes("belt-card"))).toBe(true);
  expect(files.length).toBeGreaterThan(0);
  expect(why).toEqual([expect.stringMatching(/^dial: it needs/)]);
});

test.each([
  ["a fault elsewhere", withValue(demo, ["paper", "size"], "A9")],
  ["no YAML", `${demo}\n  : [`],
])("%s stops every sheet", async (_, text) => {
  expect(new Set((await made(filesOf(text))).values())).toEqual(new Set(["the file has something to mend first"]));
});
