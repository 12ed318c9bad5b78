import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { helps } from "../../src/cli/help.js";
import { builtInTemplate } from "../../src/cli/templates.js";
import { asHelp, languageAsCode, options, repeated, shortOptions, usageWords } from "../../src/cli/usage.js";
import { file, folder, witnessmark } from "../support/command.js";

describe("wrong usage is answered in our own words, with exit status 2", () => {
  test.each([
    ["check", /^the machine file is missing; for example: witnessmark check lathe\.yaml/],
    ["check a.yaml b.yaml", /^"b\.yaml" is one word too many/],
    ["verify a.yaml", /^verify needs --handwheel and --measured; for example/],
    ["print a.yaml --format gif", /^--format cannot be "gif"; it is one of pdf, svg, dxf, png/],
    ["print a.yaml --out", /^--out needs a value behind it; for example: --out pages/],
    ["print a.yaml --out a --out b", /^--out is given twice; keep one of them/],
    ["print a.yaml --format=pdf --format=svg", /^--format is given twice/],
    ["explain a.yaml --of x --of y", /^--of is given twice/],
    ["check a.yaml --handwheel x", /^check has no option --handwheel; it has --json/],
    ["check -x a.yaml", /^check has no option -x; it has --json/],
    ["check a.yaml --no-json", /^check has no option --no-json/],
    ["print a.yaml --wach", /^print has no option --wach; did you mean --watch\?/],
    ["--versoin", /^witnessmark has no option --versoin; did you mean --version\?/],
    ["explain a.yaml feed --of", /^--of needs a value behind it/],
    ["print a.yaml --lang de", /^print has no option --lang; did you mean --language\?/],
    ["lathe.yaml", /^say what to do with lathe\.yaml: witnessmark check lathe\.yaml, or witnessmark print/],
    ["print a.yaml –sheet dial", /^"–sheet" begins with a long dash, as pasted text has it; write --sheet/],
    ["help prnt", /^there is no command "prnt"; did you mean print\?/],
  ])("%s", async (line, words) => {
    const { code, err } = await witnessmark(...line.split(" "));
    expect(code).toBe(2);
    expect(err).toMatch(words);
    expect(err).not.toMatch(/argument|Invalid|\n\s+at /);
  });

  test("-h and -v are help and version, a language's code may be written large, a sheet asked for by its title", async () => {
    expect((await witnessmark("-h")).out).toBe((await witnessmark("--help")).out);
    expect(await witnessmark("-v")).toEqual(await witnessmark("--version"));
    expect(shortOptions(["print", "--", "-v"])).toEqual(["print", "--", "-v"]);
    expect(languageAsCode(["print", "A.yaml", "--language", "DE"])).toEqual(["print", "A.yaml", "--language", "de"]);
    for (const title of ["Riemenkarte", "belt card"]) expect(builtInTemplate(title).name).toBe("belt-card");
    expect(() => builtInTemplate("no such")).toThrow('there is no sheet "no such"');
  });

  test("help new is new --help", async () => {
    expect(asHelp(["help", "new"])).toEqual(["new", "--help"]);
    expect((await witnessmark("help", "new")).out).toContain("witnessmark new [file]");
  });

  test("help is our own: every option of every command, in 80 columns, nothing of the library's", async () => {
    for (const command of Object.keys(helps) as (keyof typeof helps)[]) {
      const { code, out } = await witnessmark(command, "--help");
      expect(code).toBe(0);
      for (const option of options[command]) expect(out).toMatch(new RegExp(`^ +--${option.replace("+", "")}\\b`, "m"));
      for (const [shown] of helps[command].options)
        expect(options[command].map((option: string) => `--${option.replace("+", "")}`)).toContain(shown.split(" ")[0]);
      expect(out).not.toMatch(/\[(boolean|string|array|choices|default)|Positionals|Options:|Show help/);
      expect(out.split("\n").filter((line) => line.length > 80)).toEqual([]);
    }
    const { out } = await witnessmark("--help");
    for (const { call } of Object.values(helps)) expect(out).toContain(call);
    expect(out.split("\n").filter((line) => line.length > 80)).toEqual([]);
  });

  test("what may be given again is not called repeated", () => {
    expect(repeated(["print", "a", "--sheet", "x", "--sheet", "y", "--job", "p", "--job", "q"])).toBeUndefined();
    expect(repeated(["verify", "a", "--handwheel", "x", "--handwheel", "y"])).toBe(
      "--handwheel is given twice; keep one of them",
    );
    expect(repeated(["print", "a", "--out", "x", "--", "--out"])).toBeUndefined();
  });

  test("a message that is not known says no more than its example", () =>
    expect(usageWords("Something of the library's", ["check"])).toBe(
      "this is not understood; for example: witnessmark check lathe.yaml",
    ));
});

test("a path that the shell cut at its space is told with its quotes", async () => {
  const path = join(folder(), "my lathe.yaml");
  writeFileSync(path, "name: L\n");
  const { code, err } = await witnessmark("check", ...path.split(" "));
  expect(code).toBe(2);
  expect(err).toContain(`a path with a space needs quotes: "${path}"`);
  expect((await witnessmark("print", ...path.split(" "), "--out", folder())).err).toContain("needs quotes");
});

describe("jobs", () => {
  const pin = (units = "") =>
    `name: Pin\n${units}material: brass\nbar: { diameter: 16, out: 40 }\nsteps: [{ do: face, depth: 1 }]\n`;
  const inch = "name: L\nunits: in\nhandwheels: [{ name: Cross slide, reads: diameter, feed: 0.1 }]\n";

  test("two make two plans, whose names carry the job", async () => {
    const out = folder();
    const [a, b] = [file(pin(), "pin.yaml"), file(pin(), "bush.yaml")];
    const demo = "templates/machines/boathouse.yaml";
    const printed = await witnessmark("print", demo, "--job", a, "--job", b, "--sheet", "plan", "--out", out);
    expect(printed.code).toBe(0);
    for (const name of ["pin", "bush"]) expect(existsSync(join(out, `boathouse-plan-${name}.pdf`))).toBe(true);
    expect((await witnessmark("print", demo, "--job", a, "--job", a, "--out", out)).err).toContain(
      'two job files are named "pin"',
    );
  });

  test("without units beside an inch machine one is asked, not read as mm", async () => {
    const machine = file(inch);
    const print = (job: string) => witnessmark("print", machine, "--job", job, "--sheet", "plan", "--out", folder());
    const asked = await print(file(pin(), "pin.yaml"));
    expect(asked.code).toBe(1);
    expect(asked.err).toMatch(/pin\.yaml: the job does not say its units.*units: in.*units: mm/);
    expect((await print(file(pin("units: mm\n"), "pin.yaml"))).code).toBe(0);
    const written = pin().replace("16", "16 mm").replace("40", "40 mm").replace("depth: 1", "depth: 1 mm, cut: 0.3 mm");
    expect((await print(file(written, "pin.yaml"))).code).toBe(0);
  });

  test("a job file that is not there, or is a machine's", async () => {
    const missing = await witnessmark("print", file(inch), "--job", "nowhere.yaml");
    expect(missing.err).toMatch(/^nowhere\.yaml: cannot be read .*; name a job file/);
    const swapped = await witnessmark("print", file(inch), "--job", "templates/machines/boathouse.yaml");
    expect(swapped.err).toContain("this is a machine file, not a job file");
    const checked = await witnessmark("check", file(pin(), "pin.yaml"));
    expect(checked.err).toContain("this is a job file, not a machine file");
  });
});
