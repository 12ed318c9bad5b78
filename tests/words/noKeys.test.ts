import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readWords } from "../../scripts/generated/words.js";
import { remedyInFile } from "../../src/plan/finding.js";
import { planOf } from "../../src/plan/plan.js";
import { arrange } from "../../src/sheets/arrange.js";
import { inLanguage } from "../../src/words/language.js";
import { jobOf, lathe } from "../support/job.js";
import { demoFindings, findingsOf, sheetNames, template } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

/** Every key that a machine's or a job's file may have. */
const keys = new Set<string>();
const gather = (part: unknown): void => {
  if (typeof part !== "object" || part === null) return;
  const { properties } = part as { properties?: unknown };
  if (typeof properties === "object" && properties !== null) for (const key of Object.keys(properties)) keys.add(key);
  Object.values(part).forEach(gather);
};
for (const file of ["machine", "job"]) gather(JSON.parse(readFileSync(`templates/${file}.schema.json`, "utf8")));

/** What is written in a file, and said by nobody at a lathe: a key with its colon (in German every one, since a German word is none;
 *  in English one of two words run together, or one with another behind its colon, or nothing), braces, several keys in a row. */
const anyKey = [...keys].filter((key) => key !== "name").join("|");
const runTogether = [...keys].filter((key) => /[a-z][A-Z]/.test(key)).join("|");
const written = {
  de: new RegExp(`\\{ |… \\}|(?<![\\p{L}-])(${anyKey}):|\\b(${runTogether})\\b|\\b\\w+\\.\\p{Ll}\\w+ in der`, "u"),
  en: new RegExp(
    `\\{ |… \\}|\\b(${runTogether})\\b|\\b(${anyKey}): ?((${anyKey}):|(?:true|false)(?![ \\w]))|\\b(${anyKey}):[,.;)]|\\b\\w+\\.\\w+ in the`,
  ),
} as const;
const isWritten = (text: string, code: "de" | "en") => written[code].exec(text)?.[0];

test("a key is known for one where it stands in a text", () => {
  expect(keys.size).toBeGreaterThan(100);
  for (const said of [
    "{ do: turn round, out: … }",
    "leave spindleStop: out",
    "limits: drill: 10 mm",
    "(drive.stretch in the file)",
  ])
    expect(isWritten(said, "en")).toBeDefined();
  for (const said of ["cut: erhöhen", "by: top slide nehmen", "(drive.stretch in der Datei)", "from: weglassen"])
    expect(isWritten(said, "de")).toBeDefined();
});

describe.each(["de", "en"] as const)("%s", (code) => {
  test("no text for paper names a key of a file", () => {
    // Why a sheet is not made is said at the terminal and in the page alone, to whoever has the file before him.
    const toWhomPrints = /^(no room\.|binder\.missing )/;
    const named = Object.entries(readWords(code))
      .filter(([key]) => !toWhomPrints.test(key))
      .flatMap(([key, text]) => Object.values(typeof text === "string" ? [text] : text).map((one) => `${key}| ${one}`))
      .filter((line) => isWritten(line.replace(/^[^|]*\|/, "").replace(/\{\w+\}/g, "–"), code));
    expect(named).toEqual([]);
  });
});

/** Jobs that the lathe refuses, or takes with care, each for another reason whose remedy is a key. */
const refusedJobs = [
  jobOf(["do: part, length: 20, blade: 2", "do: turn, to: 12, length: 10"]),
  jobOf(["do: turn round, out: 20", "do: face, length: 30"]),
  jobOf(["do: turn, to: 12, length: 10", "do: turn, from: 16, to: 11, length: 10", "do: chamfer, at: 30, size: 1"]),
  jobOf(["do: drill, diameter: 12, depth: 10", "do: turn, to: 8, length: 60, cut: 4, finish: 0.001"]),
  jobOf(["do: knurl, length: 10, pitch: 1", "do: taper, large: 16, small: 12, length: 20, by: headstock"]),
  jobOf(
    ["do: turn, to: 12, length: 10"],
    "bar: { diameter: 16, out: 40 }\nspindleStop: true\nparts: 5\nbatch: operation",
  ),
  jobOf(["do: hold, out: 30, held: between centres", "do: face, depth: 1", "do: part, length: 10, blade: 2"]),
];
/** The one worn and not known where, so that remarks of the file stand on the sheets too. */
const poor = findingsOf(`name: P
handwheels:
  - { name: Cross slide, travel: 60 mm, dial: { shape: drum, diameter: 40 mm, width: 9 mm } }
  - { name: Carriage, travel: 120 mm, feed: 18 mm, dial: { shape: drum, diameter: 40 mm, width: 9 mm, divisions: 0.7 mm } }
`);

test.each(["de", "en"] as const)("nor does any sheet, of refused jobs neither: %s", (code) => {
  // These two show what is to be written into the file, as it stands there.
  const sheets = sheetNames().filter((sheet) => sheet !== "measuring-form" && sheet !== "printer-check");
  const machines = [demoFindings(), poor];
  const prints = inLanguage(code, () => [
    ...machines.flatMap((findings) => sheets.map((sheet) => ({ sheet, made: arrange(findings, template(sheet)) }))),
    ...refusedJobs.map((job) => ({ sheet: "plan", made: arrange({ ...lathe(), job }, template("plan")) })),
  ]);
  const said = prints.flatMap(({ sheet, made }) => ("missing" in made ? [] : [`${sheet}| ${wordsOf(made.print)}`]));
  expect(said.length).toBeGreaterThan(25);
  expect(
    said.filter((words) => isWritten(words, code)).map((words) => `${words.slice(0, 60)} ${isWritten(words, code)}`),
  ).toEqual([]);
});

test("the terminal still says which key it is", () => {
  const told = refusedJobs.flatMap((job) => planOf(job, lathe()).findings.map(remedyInFile));
  for (const key of ["{ do: turn round, out: … }", "bar: length:", "from:", "at:", "cut:", "by: top slide"])
    expect(told.some((line) => line.includes(`(${key}`) || line.includes(`, ${key}`))).toBe(true);
});
