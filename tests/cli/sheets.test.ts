import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type BlockName, blocks } from "../../src/blocks/registry.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { file, folder, witnessmark } from "../support/command.js";
import { sheetNames } from "../support/sheets.js";

const demo = "templates/machines/boathouse.yaml";

describe("sheets", () => {
  test("lists every sheet and every block, what each shows and needs, in lines that a plain terminal holds", async () => {
    const { code, out } = await witnessmark("sheets");
    expect(code).toBe(0);
    const lines = out.split("\n");
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
    for (const name of [...sheetNames(), ...Object.keys(blocks)])
      expect(
        lines.filter((line) => line.startsWith(`  ${name}  `)),
        name,
      ).toHaveLength(name in blocks && sheetNames().includes(name) ? 2 : 1);
    expect(out).toMatch(/belt-card .*\n(?:.*\n)?.*Needs drive:\./);
    expect(out).toMatch(/tapers [^.]*\.\s+For\s+turning only\./);
    const asked = out.indexOf("Only when asked for by name");
    expect(out.indexOf("  turns ")).toBeLessThan(asked);
    expect(out.indexOf("  engraving ")).toBeGreaterThan(asked);
  });

  test("of a machine: which it gets, and why not the others", async () => {
    const path = file("name: Small drill\nkind: drill\nhandwheels: [{ name: Quill, feed: 20 }]\n");
    const { code, out } = await witnessmark("sheets", path);
    expect(code).toBe(0);
    const [made = "", not = ""] = out.split("\nNot made\n");
    expect(made).toMatch(new RegExp(`^Small drill: \\d+ of ${sheetNames().length} sheets`));
    expect(made).toMatch(/^ {2}turns /m);
    expect(made).not.toMatch(/^ {2}belt-card /m);
    expect(not).toMatch(/^ {2}belt-card +the file has no drive/m);
    expect(not).toMatch(/^ {2}tapers +it is for turning, and the file says kind:/m);
    const [, empty = ""] = not.split("Blocks that have nothing to show");
    expect(empty).toMatch(/^ {2}drill bars /m);
    expect(empty).not.toMatch(/^ {2}turn tables /m);
    const whole = (await witnessmark("sheets", demo)).out;
    expect(whole).toMatch(/^ {2}plan +no job was given/m);
    expect(whole).toMatch(new RegExp(`^Boathouse bench lathe: ${sheetNames().length - 1} of `));
  });

  test("a faulty machine file, or a sheet's name in its place", async () => {
    const faulty = await witnessmark("sheets", file("nam: L\n"));
    expect(faulty).toMatchObject({ code: 1, out: "", err: expect.stringContaining('did you mean "name"?') });
    const sheet = await witnessmark("sheets", "belt-card");
    expect(sheet).toMatchObject({ code: 1, err: expect.stringContaining("--copy belt-card mine.yaml") });
  });
});

describe("sheets --copy", () => {
  test.each(sheetNames())("%s: a commented template that reads as the sheet does", async (name) => {
    const path = join(folder(), "mine.yaml");
    expect(await witnessmark("sheets", "--copy", name, path)).toMatchObject({
      code: 0,
      out: expect.stringContaining(`--sheet ${path}`),
    });
    const text = readFileSync(path, "utf8");
    expect(text).toMatch(/^# [A-Z].*\.\n/);
    const read = (from: string) => readTemplate(from, "mine").template;
    expect(read(text)).toBeDefined();
    expect(read(text)).toEqual(read(readFileSync(`templates/sheets/${name}.yaml`, "utf8")));
  });

  test("never over another file, and only to a name that print takes for a file", async () => {
    const path = file("mine\n", "mine.yaml");
    const again = await witnessmark("sheets", "--copy", "dial", path);
    expect(again).toMatchObject({ code: 1, err: expect.stringContaining("is there already") });
    expect(readFileSync(path, "utf8")).toBe("mine\n");
    const plain = join(folder(), "mine.txt");
    expect(await witnessmark("sheets", "--copy", "dial", plain)).toMatchObject({
      code: 1,
      err: expect.stringContaining(".yaml"),
    });
    expect(existsSync(plain)).toBe(false);
  });

  test.each([
    [["--copy", "belt-crad", "x.yaml"], 1, /^there is no sheet "belt-crad"; did you mean belt-card\?/],
    [["--copy", "toString", "x.yaml"], 1, /^there is no sheet "toString"; there are angle-scale/],
    [["--copy", "../machines/starter", "x.yaml"], 1, /^there is no sheet/],
    [["--copy", "dial"], 2, /^say where the copy goes; for example/],
    [["--copy", "dial", "x.yaml", "--blocks"], 2, /do not go together/],
    [["--blocks", "dril bars"], 1, /^there is no block "dril bars"; did you mean drill bars\?/],
    [["--blocks", "constructor"], 1, /^there is no block "constructor"; there are positions/],
    [["--blocks", "drill", "bars"], 2, /"bars" is one word too many/],
  ])("%j is refused", async (words, status, message) => {
    const { code, err } = await witnessmark("sheets", ...words);
    expect(code).toBe(status);
    expect(err).toMatch(message);
    expect(existsSync("x.yaml")).toBe(false);
  });

  test("a name that begins with a dash is a name, with or without -- before it", async () => {
    const names = [`-${process.pid}x.yaml`, `-${process.pid}y.yaml`] as const;
    try {
      expect((await witnessmark("sheets", "--copy", "dial", names[0])).code).toBe(0);
      expect((await witnessmark("sheets", "--copy", "turns", "--", names[1])).code).toBe(0);
      expect(readFileSync(names[0], "utf8")).toContain("dial pieces");
      expect(readFileSync(names[1], "utf8")).toContain("turn tables");
      expect((await witnessmark("print", demo, "--sheet", names[0], "--out", folder())).code).toBe(0);
    } finally {
      for (const name of names) rmSync(name, { force: true });
    }
  });
});

describe("sheets --blocks", () => {
  const mustBeGiven: Record<string, object> = {
    cautions: { of: "tailstock" },
    words: { text: "Belt cover shut before the motor runs." },
  };
  test("is a template of every block, with every setting as it is when left out", async () => {
    const { code, out } = await witnessmark("sheets", "--blocks");
    expect(code).toBe(0);
    expect(out.split("\n").filter((line) => line.length > 80)).toEqual([]);
    const { template, problems } = readTemplate(out, "all");
    expect(problems).toEqual([]);
    expect(template?.blocks.map(({ block }) => block)).toEqual(Object.keys(blocks));
    for (const { block, settings } of template?.blocks ?? [])
      expect(settings, block).toEqual({ ...blocks[block as BlockName].defaults, ...mustBeGiven[block] });
    // What it says of margins, cards and the like holds as well.
    const open = readTemplate(out.replace(/^( *)# (?=(card|each|for|handwheel): )/gm, "$1"), "all");
    expect(open.problems).toEqual([]);
    expect(open.template).toMatchObject({ card: { width: 127 }, each: "handwheel", for: "turning" });
    expect(open.template?.blocks.filter(({ handwheel }) => handwheel).length).toBeGreaterThan(7);
    const path = file(out, "all.yaml");
    expect((await witnessmark("print", demo, "--sheet", path, "--out", folder())).code).toBe(0);
  });

  test("of one: to be pasted into a list of blocks", async () => {
    const { out } = await witnessmark("sheets", "--blocks", "drill bars");
    const { template, problems } = readTemplate(`title: T\nblocks:\n${out}`, "t");
    expect(problems).toEqual([]);
    expect(template?.blocks).toEqual([{ block: "drill bars", settings: blocks["drill bars"].defaults }]);
    for (const word of ["needs drive:", "true or false", "a length", "fraction, number, letter"])
      expect(out.replace(/\n\s*# /g, " ")).toContain(word);
  });
});

test("a handwheel that the machine has not is told at its place in the template", async () => {
  const path = join(folder(), "mine.yaml");
  writeFileSync(path, "title: Mine\nblocks:\n  - turn tables: { handwheel: Cros slide }\n");
  const { code, err } = await witnessmark("print", demo, "--sheet", path, "--out", folder());
  expect(code).toBe(1);
  expect(err).toContain(`${path}:3:31: there is no handwheel "Cros slide"; did you mean "Cross slide"?`);
});
