import { expect, test } from "vitest";
import { compute } from "../../src/findings/compute.js";
import { readMachine } from "../../src/machine/read.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { inLanguage } from "../../src/words/language.js";
import { findingsOf } from "../support/sheets.js";

const drive = (open: string, geared = "geared") => `name: T
drive:
  motor: { speed: 1420 rpm }
  stages:
    - { name: belt, steps: [{ label: A, driver: 60, driven: 120 }, { label: B, driver: 90, driven: 90 }] }
    - { name: back gear, steps: [{ label: ${open} }, { label: ${geared}, teeth: [[24, 60], [22, 62]] }] }
  tachometer: [{ position: [A, ${open}], speed: 700 rpm }]
`;
const names = (text: string, language: "en" | "de") => {
  const { machine } = findingsOf(text);
  return (
    inLanguage(language, () => compute(machine))
      .drive?.speeds.map(({ position }) => position.name)
      .join(" ") ?? ""
  );
};

test.each(["open", "direct", "offen", "direkt", "ausgerückt", "Ausgerückt zum Drehen", "eingerückt"])(
  "a step without gears called %s hands the speed on as it is; others are asked for their gears",
  (label) => {
    const { problems } = readMachine(drive(label));
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(readMachine(drive(`x${label}`)).problems.some(({ code }) => code === "missing")).toBe(true);
  },
);

test("open and geared are printed in the language of the paper, own names as they are; the reading stays with its position", () => {
  expect(names(drive("open"), "en")).toMatch(/open.*geared|geared.*open/);
  expect(names(drive("open"), "de")).toMatch(/ausgerückt/);
  expect(names(drive("open"), "de")).not.toMatch(/open|geared/);
  expect(names(drive("frei offen", "langsam").replaceAll("frei offen", "offen"), "de")).toMatch(/offen/);
  const { machine } = findingsOf(drive("open"));
  const measured = inLanguage("de", () => compute(machine)).drive?.speeds.filter(({ from }) => from === "measured");
  expect(measured).toHaveLength(1);
  // Two steps of one name could not be told apart.
  expect(names(drive("open", "ausgerückt"), "de")).toMatch(/open/);
});

test("counterclockwise is anticlockwise", () => {
  const text = (sense: string) =>
    `name: T\nhandwheels: [{ name: W, feed: 2, dial: { shape: drum, diameter: 40, width: 9, increases: ${sense} } }]\n`;
  expect(readMachine(text("counterclockwise")).machine).toEqual(readMachine(text("anticlockwise")).machine);
});

test("in a template 1/2 is one half, and what is no number is refused still", () => {
  const feeds = (list: string) => readTemplate(`title: T\nblocks: [hand feed: { in: ${list} }]\n`, "mine.yaml");
  expect(JSON.stringify(feeds("[1/2, 0.004]"))).toContain("0.5");
  expect(JSON.stringify(feeds("[a/b]"))).toContain("cannot be");
});
