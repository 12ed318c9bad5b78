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
  const { machine } = readMachine(text);
  if (machine === undefined) return "";
  return (
    inLanguage(language, () => compute(machine))
      .drive?.speeds.map(({ position }) => position.name)
      .join(" ") ?? ""
  );
};

test.each([
  "open",
  "direct",
  "offen",
  "direkt",
  "ausgerückt",
  "Ausgerückt zum Drehen",
  "eingerückt",
  "disengaged",
  "engaged",
])("a step without gears called %s hands the speed on as it is; others are asked for their gears", (label) => {
  const { problems } = readMachine(drive(label));
  expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
  expect(readMachine(drive(`x${label}`)).problems.some(({ code }) => code === "missing")).toBe(true);
});

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

test("a word of another language for what every such step is becomes the paper's; an owner's own stays", () => {
  expect(names(drive("ausgerückt", "eingerückt"), "en")).toMatch(/open.*geared|geared.*open/);
  expect(names(drive("Ausgerückt", "eingerückt"), "en")).not.toMatch(/gerückt/i);
  expect(names(drive("direkt", "langsam"), "en")).toMatch(/direct.*langsam|langsam.*direct/);
  expect(names(drive("disengaged", "engaged"), "de")).toMatch(/ausgerückt.*eingerückt|eingerückt.*ausgerückt/);
  // Of two words of the paper's own language the owner's stays.
  expect(names(drive("disengaged", "engaged"), "en")).toMatch(/disengaged.* engaged|engaged.* disengaged/);
  expect(names(drive("direkt", "eingerückt"), "de")).toMatch(/direkt.*eingerückt|eingerückt.*direkt/);
  // Also of a machine that was in another language's words before.
  const { machine } = findingsOf(drive("offen", "langsam"));
  expect(
    inLanguage("de", () => compute(machine))
      .drive?.speeds.map(({ position }) => position.name)
      .join(),
  ).toContain("offen");
  const measured = findingsOf(drive("ausgerückt")).drive?.speeds.filter(({ from }) => from === "measured");
  expect(measured?.map(({ position }) => position.name)).toEqual([expect.stringContaining("open")]);
});

test("names of several words have a sign between them; short ones stand side by side", () => {
  const long = drive("open").replace("label: A,", "label: large pulley,").replace("[A, open]", "[large pulley, open]");
  const { machine } = readMachine(long);
  expect(
    machine &&
      compute(machine)
        .drive?.speeds.map(({ position }) => position.name)
        .sort(),
  ).toEqual(["B geared", "B open", "large pulley + geared", "large pulley + open"]);
});

test("two words for one thing stay two, where a drive has both", () => {
  expect(names(drive("ausgerückt", "offen").replace(", teeth: [[24, 60], [22, 62]]", ""), "en")).toMatch(
    /offen.*ausgerückt|ausgerückt.*offen/,
  );
});

test("a coupling in gear is no gear pair: in English it is engaged", () => {
  const coupled = drive("eingerückt", "langsam");
  expect(names(coupled, "en")).toMatch(/engaged/);
  expect(names(coupled, "en")).not.toMatch(/geared/);
});

test.each([
  ["disengaged", "engaged"],
  ["direkt", "eingerückt"],
  ["open", "Engaged, slow"],
])("a back gear in mesh, beside %s, is asked for its teeth", (out, into) => {
  const bare = drive(out, `"${into}"`).replace(", teeth: [[24, 60], [22, 62]]", "");
  const [problem, ...more] = readMachine(bare).problems.filter(({ severity }) => severity === "error");
  expect(problem).toMatchObject({ code: "missing", path: ["drive", "stages", 1, "steps", 1] });
  expect(JSON.stringify(problem)).toContain("teeth:");
  expect(more).toEqual([]);
});

test("a belt that is called open, beside a crossed one, is not out of mesh", () => {
  const belts = drive("open").replace("label: A,", "label: open,").replace("label: B,", "label: crossed,");
  expect(names(belts.replace("[A, open]", "[open, open]"), "de")).toMatch(/\bopen ausgerückt/);
  const { machine } = findingsOf(belts.replace("[A, open]", "[open, open]"));
  const measured = inLanguage("de", () => compute(machine)).drive?.speeds.filter(({ from }) => from === "measured");
  expect(measured?.map(({ position }) => position.name)).toEqual(["open ausgerückt"]);
});

test("two words that differ by a capital only stay two", () => {
  // Its own word is free for it to keep; the other's is taken by it.
  const named = names(drive("Eingerückt", "geared"), "de");
  expect(named.toLowerCase().match(/eingerückt/g)).toHaveLength(2);
  expect(named).toContain("geared");
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
