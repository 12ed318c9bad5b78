import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { withValue } from "../../src/page/file/edit.js";
import type { Plain } from "../../src/page/file/yamlText.js";
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

const inMagnesium = demo.replace("  materials: [", "  materials: [magnesium, ");

type Fault = readonly [string, readonly (string | number)[], Plain];
const dialOf = (wheel: number): Fault => [`dial of wheel ${wheel + 1}`, [wheel, "dial", "diameter"], "wide"];

test.each<[string, string, Fault[]]>([
  ["the lathe", inMagnesium, [0, 1, 2, 3].map((wheel) => dialOf(wheel))],
  [
    "a drill whose quill is named like no wheel",
    `name: D
kind: drill
work: { materials: [magnesium, mild steel] }
handwheels:
  - { name: Depth, moves: quill, feed: 2 mm, dial: { shape: drum, diameter: 40 mm, width: 10 mm } }
drive: { motor: { speed: 1400 }, stages: [{ name: belt, steps: [{ label: A, driver: 40, driven: 100 }, { label: B, driver: 70, driven: 70 }, { label: C, driver: 100, driven: 40 }] }] }
`,
    [dialOf(0), ["what it moves", [0, "moves"], "wildly"], ["what it is called", [0, "name"], ["no", "name"]]],
  ],
])(
  "of %s no sheet goes on with other words than the whole machine’s, whichever wheel is faulty",
  async (_, text, faults) => {
    const whole = filesOf(text);
    expect((await ask("read", whole, {})).sound).toBe(true);
    const sheets = new Map<string, unknown>();
    for (const { name } of await ask("sheets", whole, {}))
      sheets.set(name, (await ask("sheet", whole, { sheet: name })).pages);
    for (const [fault, way, value] of faults) {
      const broken = filesOf(withValue(text, ["handwheels", ...way], value));
      const goesOn = [...(await made(broken))].filter(([, why]) => why === undefined).map(([name]) => name);
      for (const sheet of goesOn)
        expect((await ask("sheet", broken, { sheet })).pages, `${fault}, ${sheet}`).toEqual(sheets.get(sheet));
      if (way.at(-1) === "diameter") expect(goesOn, fault).toContain("speed-diagram");
    }
  },
  120_000,
);
