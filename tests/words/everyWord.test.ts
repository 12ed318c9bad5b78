import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { materials } from "../../src/cutting/published/materials.js";
import { tools } from "../../src/cutting/published/source.js";
import { knownSources, sourceTitle } from "../../src/cutting/sources.js";
import type { Print } from "../../src/drawing/page.js";
import { compute } from "../../src/findings/compute.js";
import { readJob } from "../../src/job/read.js";
import { readMachine } from "../../src/machine/read.js";
import { arrange } from "../../src/sheets/arrange.js";
import { bind } from "../../src/sheets/binder.js";
import { threadSource } from "../../src/thread/sources.js";
import { inLanguage } from "../../src/words/language.js";
import { translated } from "../../src/words/say.js";
import { anyMachine } from "../support/anyMachine.js";
import { flatten } from "../support/flatMarks.js";
import { templates } from "../support/measureSheets.js";
import { veiled } from "../support/veiled.js";

const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];

/** Every text in a file that is no key. */
const ownTexts = (value: unknown): string[] =>
  typeof value === "string"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(ownTexts)
      : [];

/** A line of a file is told as one writes it. */
const fileWords = ["drill", "lathe", "do", "at", "groove"];
/** Written alike in every language: units, systems of threads and tapers, and standards. */
const signs = new Set(
  "mm in ft min rpm tpi hz a b c s ba unc unf bsw bsf me din iso morse jarno no hb hss dxf svg max".split(" "),
);
/** Names of the data, which are words of a language although a file may write them. */
const data = new Set([...materials.map(({ name }) => name), ...tools, "turning", "drilling"].flatMap(wordsOf));

/** What a reader of another language would meet in English: sheet and text. */
function leftIn(text: string, jobText: string | undefined): string[] {
  const { machine } = readMachine(text);
  if (machine === undefined) throw new Error("not a sound machine");
  const job = jobText === undefined ? undefined : readJob(jobText).job;
  return inLanguage(veiled, () => {
    const findings = { ...compute(machine), ...(job && { job }) };
    const titles = [...knownSources().map(sourceTitle), ...THREAD_SOURCES.map(threadSource)].flatMap(wordsOf);
    const own = ownTexts([parse(text), jobText === undefined ? "" : parse(jobText)]).flatMap(wordsOf);
    const known = new Set([...own.filter((word) => !data.has(word)), ...titles, ...signs, ...fileWords]);
    const left = (sheet: string, said: string): string[] =>
      wordsOf(said).some((word) => /[a-z]{2}/.test(word) && !known.has(word) && !cutFrom(word, own))
        ? [`${sheet}: ${said}`]
        : [];
    const prints: Print[] = [];
    const absent: { title: string; why: string }[] = [];
    const found = templates().flatMap((template) => {
      const made = arrange(findings, template);
      if ("missing" in made) {
        absent.push({ title: translated(template.title), why: made.missing });
        return left(template.name, made.missing);
      }
      prints.push(made.print);
      return KEYS_ARE_SHOWN.has(template.name) ? [] : made.print.pages.flatMap(leftOn(template.name, left));
    });
    return [...found, ...bind(findings, prints, absent).pages.slice(0, 2).flatMap(leftOn("binder", left))];
  });
}
const leftOn =
  (sheet: string, left: (sheet: string, said: string) => string[]) =>
  ({ drawing }: Print["pages"][number]): string[] =>
    flatten(drawing).texts.flatMap(({ mark }) => left(sheet, mark.text));

/** A name that was cut to the room there is. */
const cutFrom = (word: string, own: readonly string[]): boolean => own.some((name) => name.includes(word));

/** They show lines of the machine file, whose keys are in English. */
const KEYS_ARE_SHOWN = new Set(["measuring-form", "printer-check"]);
const THREAD_SOURCES = ["trainee-handbook", "ibls", "threading-tables"];

const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");
const jobs = readdirSync("tests/job/sound").map((file) => readFileSync(`tests/job/sound/${file}`, "utf8"));

test.each(jobs.map((job) => [/^name: .*/m.exec(job)?.[0], job]))("no word on paper stands in the code: %s", (_, job) =>
  expect([...new Set(leftIn(demo, job))]).toEqual([]),
);

test("nor of any machine", () => {
  const machines = fc.sample(anyMachine, { numRuns: 24, seed: 31 });
  expect([...new Set(machines.flatMap(({ text, job }) => leftIn(text, job)))]).toEqual([]);
});
