import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { inForm } from "../../src/page/app/form/inForm.js";
import { ofEntry, placeWords } from "../../src/page/app/form/placeWords.js";
import { inPage } from "../../src/page/app/inPage.js";
import type { Way } from "../../src/page/file/edit.js";
import { nodesOf } from "../../src/page/file/nodes.js";

const atTheCommand = /(?<![\w-])--[a-z]{3,}|\bwitnessmark [a-z]+|\bcheck (?:says|sagt)/;

const filesIn = (folder: string, ending: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(ending))
    .map((file) => `${folder}/${file}`);

/** Every text in the core, and of those words that say what a sheet lacks, that speaks of the command line. */
function commandTalk(): string[] {
  const files = filesIn("src", ".ts").filter((file) => !/^src\/(?:cli|page)\/|\.generated\.ts$/.test(file));
  const code = files.flatMap((file) =>
    readFileSync(file, "utf8")
      .split("\n")
      .filter((line) => !/^\s*(?:\/\*\*|\*|\/\/)/.test(line)),
  );
  // Of what is printed: in English, in which the page says it.
  const words = readFileSync("templates/words/en.yaml", "utf8").split("\n");
  const missing = words.filter((line) => /^ {2}missing /.test(line));
  return [...code, ...missing].filter((line) => atTheCommand.test(line));
}

test("what the core says for the command line is said for the page", () => {
  const talk = commandTalk();
  expect(talk.length).toBeGreaterThan(10);
  expect(talk.map(inPage).filter((line) => atTheCommand.test(line))).toEqual([]);
});

test("the page's own words know no command line", () => {
  const lines = filesIn("src/page/app", ".tsx").flatMap((file) => readFileSync(file, "utf8").split("\n"));
  expect(lines.length).toBeGreaterThan(1000);
  expect(lines.filter((line) => !line.trim().startsWith("/**") && /command line|--[a-z]{3,} /.test(line))).toEqual([]);
});

test.each([
  [
    "add bar: { diameter: 16, out: 45 }, its diameter and how far it stands out",
    "add “bar” (diameter 16, out 45), its diameter and how far it stands out",
  ],
  [
    "turn it round and hold it again before this step ({ do: turn round, out: … })",
    "turn it round and hold it again before this step (a step “turn round” (out …))",
  ],
  ["give the blank's length (bar: length:)", "give the blank's length (“length” of “bar”)"],
  ["a stop (spindleStop:, bar: length:)", "a stop (“spindle stop”, “length” of “bar”)"],
  ["take deeper cuts (cut:)", "take deeper cuts (“cut”)"],
  ["allow more (cut:, work: { deepest: … })", "allow more (“cut”, “work” (deepest …))"],
  ["add { do: centre drill } before it", "add a step “centre drill” before it"],
  [
    "give divisions: 1 mm, or turnsOf: and a handwheel's name",
    "give divisions: 1 mm, or “turns of” and a handwheel's name",
  ],
  ["add moves: across to one of them", "add moves: across to one of them"],
  ['"turn" needs its length; add length:', '"turn" needs its length; fill in “length”'],
  [
    "motor cannot be 1400; it must be keys and values: motor: { speed: 1400 rpm }",
    "motor cannot be 1400; it is filled in part by part: “motor” (speed 1400 rpm)",
  ],
  [
    "the bracket { is opened and not closed; close it with }",
    "the bracket { is opened and not closed; close it with }",
  ],
  ["stages is missing; add it", "“stages” is not filled in yet"],
  ["shape is missing; it is one of drum, face", "“shape” is not filled in yet; it is one of drum, face"],
  ["add  units: in  to the job, or  units: mm", "add “units” in to the job, or “units” mm"],
  ["the file has no angleScales", "the file has no “angle scales”"],
  ["write smallDiameter: 30", "write “small diameter” 30"],
  [
    "Gear pairs, driver first: [[20, 60], [18, 54]]; idlers: [[20, 35, 60]]",
    "Gear pairs, driver first: 20, 60 and 18, 54; idlers: 20, 35, 60",
  ],
  [
    'it needs "my oldDial" and "bar: { out: 4 }", where something is to be mended first',
    'it needs "my oldDial" and "bar: { out: 4 }", where something is to be mended first',
  ],
  ["my topSlide has a feed; crossSlide.csv is not there", "my topSlide has a feed; crossSlide.csv is not there"],
  ["oldDial.csv is not there; fill in oldDial: again", "oldDial.csv is not there; fill in “old dial” again"],
  ["write it as 12 or [11.98, 12.00]", "write it as 12 or [11.98, 12.00]"],
])("how something is written into the file, as one fills it in: %s", (words, filledIn) => {
  expect(inForm(words)).toBe(filledIn);
});

test.each([
  [
    "no dial in the file asks for a vernier: give one vernier: 10",
    "fill in “Vernier” of a dial at the station Handwheels, as 10",
  ],
  ["it is for turning, and the file says kind: drill", "“Kind” at the station Machine says drill"],
  ["name a CSV beside this file, with columns turns", "open it, or name a CSV that lies on the desk"],
  [
    "the file has no drive: give it a motor and stages",
    "the file has no drive: fill in its motor and stages at the station Belts and gears",
  ],
  ['entry 9 of travel: "x" is not a length', 'row 9, “out”: "x" is not a length'],
])("what is said of the file is said of its fields: %s", (words, here) => {
  expect(inPage(words)).toContain(here);
});

test.each<[string, Way, string]>([
  [
    'entry 2 of speed: "fast" is not a speed; write it as 1425 rpm',
    ["drive", "motor", "speed", 1],
    '“fastest” of speed: "fast" is not a speed; write it as 1425 rpm',
  ],
  [
    'entry 2 of speed: "x" is not a cutting speed',
    ["work", "cuttingSpeeds", 0, "speed", 1],
    '“most” of speed: "x" is not a cutting speed',
  ],
  ['entry 3 of diameters: "x" is not a length', ["work", "diameters", 2], 'diameter 3: "x" is not a length'],
  ["entry 2 of gears cannot be empty; it must be a number", ["gears", 1], "gear 2 is not filled in yet"],
  [
    'entry 2 of teeth cannot be "x"; it must be a number',
    ["drive", "stages", 0, "steps", 0, "teeth", 0, 1],
    'entry 2 of teeth 1 cannot be "x"; it must be a number',
  ],
  ["depth cannot be empty; it must be a length", ["steps", 0, "depth"], "depth cannot be empty; it must be a length"],
])("an entry of a list is told by what stands beside its field: %s", (words, way, here) => {
  expect(ofEntry(words, way)).toBe(here);
});

test("a place in a list is named as its field is, and what is about a position by that", () => {
  const { value: _, ...nodes } = nodesOf(
    "drive: { tachometer: [{ position: [A, open], speed: 700 }, { position: B, speed: x }] }\n",
  );
  const place = (...way: Way) => placeWords(way, nodes);
  expect(place("drive", "motor", "speed", 1)).toBe("“fastest” of drive motor speed");
  expect(place("work", "cuttingSpeeds", 0, "speed", 0)).toBe("“least” of speed of cutting speed 1");
  expect(place("drive", "tachometer", 0, "speed")).toBe("speed of tachometer 1 (A, open)");
  expect(place("drive", "tachometer", 1)).toBe("tachometer 2 (B)");
});
