import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkShape } from "../../src/cli/checkShape.js";
import { summary } from "../../src/cli/summary.js";
import { ofText } from "../../src/findings/ofText.js";
import { file, folder, witnessmark } from "../support/command.js";

const demo = "templates/machines/boathouse.yaml";
const pin = "templates/jobs/deck-pin.yaml";

/** Parsed and held against the published shape. */
const held = (text: string) => checkShape.parse(JSON.parse(text));

describe("one object of the published shape", () => {
  const files = ["templates/machines", "tests/machine/sound", "tests/machine/bad"].flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith(".yaml"))
      .map((name) => `${folder}/${name}`),
  );
  test("for every machine file of ours, sound or not", () => {
    const texts = files.map((path) => {
      const { findings, problems } = ofText(readFileSync(path, "utf8"), { files: new Map(), problems: [] });
      return { path, text: JSON.stringify(summary(findings, problems)) };
    });
    expect(texts.length).toBeGreaterThan(100);
    for (const { path, text } of texts) expect(() => held(text), path).not.toThrow();
  });

  test.each([
    ["a sound file", [demo], 0],
    ["a job", [demo, "--job", pin], 0],
    ["another drive", [demo, "--suppose", "60 Hz"], 0],
    ["a drive that nobody understands", [demo, "--suppose", "nonsense"], 1],
    ["a file that is not there", ["nowhere.yaml"], 1],
    ["a folder", ["templates"], 1],
    ["no file", [], 2],
    ["an unknown option", [demo, "--foo"], 2],
    ["an option twice", [demo, "--out", "a", "--out", "b"], 2],
    ["a job that is not there", [demo, "--job", "nowhere.yaml"], 1],
    ["a faulty file with a job", [file("name: L\nhandwheels: 3\n"), "--job", pin], 1],
    ["no text", [file("\u0000\u0001")], 1],
    ["an empty file", [file("")], 1],
    ["words where keys should be", [file("toString")], 1],
    ["a name that objects have", [file("constructor: 1\n__proto__: 2\nname: L\n")], 1],
  ])("for %s", async (_, words, status) => {
    const { code, out } = await witnessmark("check", "--json", ...words);
    expect(code).toBe(status);
    const { problems, jobs = [] } = held(out);
    const told = problems.some(({ severity }) => severity === "error") || jobs.some(({ refused }) => refused);
    expect(told).toBe(status !== 0);
  });

  test("with what is to be printed again", async () => {
    const out = folder();
    const path = file(readFileSync(demo, "utf8"));
    await witnessmark("print", path, "--out", out);
    const { printed } = held((await witnessmark("check", "--json", path, "--out", out)).out);
    expect(printed).toEqual({ dials: [], sheets: [] });
  });
});
