import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
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
  for (const sheet of goesOn.filter(isNoForm))
    expect((await ask("sheet", broken, { sheet })).pages, sheet).toEqual((await ask("sheet", whole, { sheet })).pages);
  for (const sheet of ["dial", "plan", "student"])
    expect(whys.get(sheet), sheet).toMatch(/^it needs .+, where something is to be mended first$/);
  const { files, why } = await ask("print", broken, { format: "svg", sheets: ["belt-card", "dial"] });
  expect(files.every(({ name }) => name.includes("belt-card"))).toBe(true);
  expect(files.length).toBeGreaterThan(0);
  expect(why).toEqual([expect.stringMatching(/^dial: it needs/)]);
});

test("what a sheet lacks is said in English, as all of the page is, whatever the paper's language", async () => {
  const small = "name: D\nhandwheels: [{ name: Schlitten, feed: 2, travel: 60 }]\n";
  const [german, english] = [filesOf(`${small}language: de\n`), filesOf(small)];
  expect([...(await made(german))]).toEqual([...(await made(english))]);
  expect((await made(german)).get("belt-card")).toContain("the file has no drive");
  const asked = { sheet: "belt-card" };
  expect((await ask("sheet", german, asked)).why).toBe((await ask("sheet", english, asked)).why);
  const { why } = await ask("print", german, { format: "svg", sheets: ["belt-card"] });
  expect(why).toEqual((await ask("print", english, { format: "svg", sheets: ["belt-card"] })).why);
  expect(why[0]).toContain("the file has no drive");
});

test.each([
  ["a fault elsewhere", withValue(demo, ["limits", "chuck"], "fast")],
  ["no YAML", `${demo}\n  : [`],
])("%s stops every sheet", async (_, text) => {
  expect(new Set((await made(filesOf(text))).values())).toEqual(new Set(["the file has something to mend first"]));
});

test.each<[string, string, (string | number)[], Plain]>([
  ["a drum whose diameter is still to be measured", demo, ["handwheels", 0, "dial", "diameter"], ""],
  ["a step half filled", demo, ["drive", "stages", 0, "steps", 0], { driver: 40 }],
])("the form to measure by is printed for %s, with blanks for it", async (_, text, way, value) => {
  const broken = filesOf(withValue(text, way, value));
  expect((await ask("read", broken, {})).sound).toBe(false);
  expect((await made(broken)).get("measuring-form")).toBeUndefined();
  const svg = (await ask("sheet", broken, { sheet: "measuring-form" })).pages.map((page) => page.svg).join("");
  expect(svg).toContain("Cross slide");
  const { files, why } = await ask("print", broken, { format: "svg", sheets: ["measuring-form"] });
  expect(why).toEqual([]);
  expect(files.length).toBeGreaterThan(0);
});

/** It waits for nothing, and has blanks where the whole machine has figures. */
const isNoForm = (sheet: string) => sheet !== "measuring-form";

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
      const goesOn = [...(await made(broken))]
        .filter(([name, why]) => why === undefined && isNoForm(name))
        .map(([name]) => name);
      for (const sheet of goesOn)
        expect((await ask("sheet", broken, { sheet })).pages, `${fault}, ${sheet}`).toEqual(sheets.get(sheet));
      if (way.at(-1) === "diameter") expect(goesOn, fault).toContain("speed-diagram");
    }
  },
);

describe("a fault that is not a handwheel's", () => {
  const small = `name: L
limits: { chuck: 1500 rpm }
drive:
  motor: { speed: 1425 }
  stages: [{ name: belt, steps: [{ label: A, driver: 20, driven: 200 }, { label: B, driver: 80, driven: 80 }] }]
handwheels:
  - { name: Cross slide, reads: diameter, travel: 60, feed: 2, dial: { shape: drum, diameter: 40, width: 9 } }
  - { name: Carriage, travel: 120, feed: 18 }
stops: [{ name: Shoulder, length: 10, handwheel: Carriage }]
printers:
  laser: { across: 199.3 of 200, down: 250.4 of 250 }
  inkjet: { across: 200.2 of 200, down: 250 of 250 }
paper: { thickness: 0.11, printer: laser }
`;
  const whole = filesOf(small);
  const pagesOf = async (files: Files, sheet: string) => (await ask("sheet", files, { sheet })).pages;
  const goesOn = async (files: Files) =>
    [...(await made(files))].filter(([, why]) => why === undefined).map(([name]) => name);
  const stops = async (files: Files) =>
    (await ask("read", files, {})).told.filter(({ severity }) => severity === "error").map((one) => one.stops);

  test("of the drive stops what speeds stand on; the rest comes out as it was, and dials are still asked about", async () => {
    const broken = filesOf(withValue(small, ["drive", "motor", "speed"], "fast"));
    expect(await stops(broken)).toEqual(["what needs it"]);
    const on = await goesOn(broken);
    expect(on).toEqual(expect.arrayContaining(["dial", "turns", "stops", "printer-check"]));
    for (const sheet of ["belt-card", "drilling-card", "speed-diagram", "student", "hand-feed"])
      expect(on).not.toContain(sheet);
    for (const sheet of on.filter(isNoForm))
      expect(await pagesOf(broken, sheet), sheet).toEqual(await pagesOf(whole, sheet));
    expect((await made(broken)).get("belt-card")).toBe(
      "it needs the belts and gears, where something is to be mended first",
    );
    const asked = { wheel: "Cross slide", distance: "5" };
    expect(await ask("distance", broken, asked)).toEqual(await ask("distance", whole, asked));
    expect((await ask("read", broken, {})).handwheels).toEqual(["Cross slide", "Carriage"]);
    const material = { material: "mild steel", operation: "turning", diameter: "10" };
    expect((await ask("speed", broken, material)).said).toEqual(["The file has something to mend first."]);
  });

  test("of the printer in use stops what must be true; what it makes of a length can be measured all the same", async () => {
    const broken = filesOf(withValue(small, ["printers", "laser", "across"], "150 of 200"));
    expect(await stops(broken)).toEqual(["what needs it"]);
    const whys = await made(broken);
    expect(whys.get("dial")).toBe('it needs the printer "laser", where something is to be mended first');
    const named = filesOf(small.replace(/printers:\n.*\n.*\n/, "").replace(", printer: laser", ""));
    for (const sheet of ["printer-check", "belt-card", "turns"])
      expect(await pagesOf(broken, sheet), sheet).toEqual(await pagesOf(named, sheet));
    const measured = { handwheel: "Cross slide", measured: "124" };
    const [judged, sound] = [await ask("verify", broken, measured), await ask("verify", whole, measured)];
    expect(sound.mend?.printer).toBe("laser");
    expect(judged.mend).toBeUndefined();
    expect(judged.refused).toBeUndefined();
    expect(judged.lines).toEqual([...sound.lines, 'Mend first what the file says of the printer "laser".']);
    expect((await ask("measures", broken, {})).length).toBeGreaterThan(0);
  });

  test("of a printer not in use stops nothing, of the paper's thickness the pieces alone", async () => {
    const other = filesOf(withValue(small, ["printers", "inkjet", "across"], "150 of 200"));
    const thick = filesOf(withValue(small, ["paper", "thickness"], "thick"));
    expect(await goesOn(other)).toEqual(await goesOn(whole));
    const on = await goesOn(thick);
    expect(on).not.toContain("dial");
    expect(on).toEqual(expect.arrayContaining(["belt-card", "stops"]));
    for (const [files, sheets] of [
      [other, ["dial", "belt-card", "turns"]],
      [thick, on],
    ] as const)
      for (const sheet of sheets) expect(await pagesOf(files, sheet), sheet).toEqual(await pagesOf(whole, sheet));
  });

  test("of the paper's size stops every sheet but the form to measure by, by that name, and nothing that is asked without paper", async () => {
    const broken = filesOf(withValue(small, ["paper", "size"], "A44"));
    expect(await goesOn(broken)).toEqual(["measuring-form"]);
    expect((await made(broken)).get("dial")).toBe("it needs the paper’s size, where something is to be mended first");
    const asked = { wheel: "Cross slide", distance: "5" };
    expect(await ask("distance", broken, asked)).toEqual(await ask("distance", whole, asked));
    expect((await ask("read", broken, {})).handwheels).toEqual(["Cross slide", "Carriage"]);
  });

  test("of a printer that is not there, beside one of a wheel: each stops its own", async () => {
    const text = withValue(withValue(small, ["paper", "printer"], "plotter"), ["handwheels", 1, "feed"], "far");
    const whys = await made(filesOf(text));
    expect(whys.get("belt-card")).toBeUndefined();
    expect(whys.get("turns")).toMatch(
      /^it needs (the printer "plotter" and "Carriage"|"Carriage" and the printer "plotter"), /,
    );
  });

  test("of a table of readings is the same whether it is not there or cannot be read: its wheel waits", async () => {
    const text = withValue(small, ["handwheels", 1, "feed"], { readings: "slide.csv" });
    const bad = { name: "slide.csv", text: "turns,travel\n0,0\n1,1,99\n" };
    const [missing, unread] = [filesOf(text), { ...filesOf(text), readings: [bad] }];
    for (const files of [missing, unread]) {
      expect(await stops(files)).toEqual(["what needs it"]);
      const whys = await made(files);
      expect(whys.get("belt-card")).toBeUndefined();
      expect(whys.get("turns")).toBe('it needs "Carriage", where something is to be mended first');
    }
    expect([...(await made(unread))]).toEqual([...(await made(missing))]);
    // Where no wheel takes them nobody knows whose they are.
    const remark = { ...filesOf(`# readings: slide.csv\n${small}`), readings: [bad] };
    expect(await stops(remark)).toEqual(["every sheet"]);
  });
});
