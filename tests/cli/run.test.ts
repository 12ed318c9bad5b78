import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { file, folder, witnessmark } from "../support/command.js";

const demo = "templates/machines/boathouse.yaml";

describe("new", () => {
  test("writes a starter file that passes check without a remark", async () => {
    const path = join(folder(), "mine.yaml");
    expect((await witnessmark("new", path)).code).toBe(0);
    const checked = await witnessmark("check", path);
    expect(checked).toMatchObject({ code: 0, err: "" });
    expect(checked.out).toMatch(/^ {2}Cross slide +1\.99455 ± 0\.00028 mm {2}measured +80 × 0\.05 mm/m);
  });

  test("never writes over a file", async () => {
    const path = file("name: Mine\n");
    const { code, err } = await witnessmark("new", path);
    expect(code).toBe(1);
    expect(err).toContain("is there already");
    expect(readFileSync(path, "utf8")).toBe("name: Mine\n");
  });
});

describe("check", () => {
  test("--json prints the documented object", async () => {
    const { code, out } = await witnessmark("check", demo, "--json");
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(answer.handwheels[0]).toMatchObject({
      name: "Cross slide",
      reads: "diameter",
      feedPerTurn: { from: "readings" },
      lostMotionMm: expect.closeTo(0.13, 9),
    });
    expect(answer.handwheels[1].dial).toMatchObject({
      shape: "drum",
      closure: "even",
      divisions: 63,
      rows: 1,
      errorPerTurnMm: expect.closeTo(0.0127, 9),
    });
    expect(answer.handwheels[1].dial.stripLengthMm).toBeCloseTo(Math.PI * (40 + 2 * 0.03 + 0.11), 9);
    expect(answer.speeds.map(({ position }: { position: string }) => position)).toEqual([
      "C geared",
      "B geared",
      "A geared",
      "C open",
      "B open",
      "A open",
    ]);
    expect(answer.slip).toBeCloseTo((1 - 462 / 475 + 1 - 702 / 722 + 1 - 78 / (722 / 9)) / 3, 9);
    expect(answer.problems).toEqual([]);
  });

  test("every problem at once, each with file, line, column, what and remedy; status 1; no stack trace", async () => {
    const path = file(
      "name: Lathe\nunit: mm\nhandwheels:\n  - name: Slide\n    feed: { perTrun: 2 mm }\n    dial: { shape: drum, width: 9 }\n",
    );
    const { code, out, err } = await witnessmark("check", path);
    expect(code).toBe(1);
    expect(out).toBe("");
    expect(err).not.toMatch(/\n\s+at /);
    expect(err.trim().split("\n")).toEqual([
      `${path}:2:1: "unit" is not a key of a machine file; did you mean "units"?`,
      `${path}:5:13: "perTrun" is not a key of feed; did you mean "perTurn"?`,
      `${path}:6:11: a drum dial needs its diameter or its wrap length; measure across the drum, or once round it with a strip of paper`,
    ]);
  });

  test("a file that is not there is a plain refusal", async () => {
    const { code, err } = await witnessmark("check", "nowhere.yaml");
    expect(code).toBe(1);
    expect(err).toMatch(/^nowhere\.yaml: cannot be read \(there is no such file or folder\)/);
  });
});

describe("print", () => {
  test("one sheet, one handwheel; the same file gives the same bytes", async () => {
    const [a, b] = [folder(), folder()];
    for (const out of [a, b])
      expect(
        (await witnessmark("print", demo, "--sheet", "dial", "--handwheel", "Cross slide", "--out", out)).code,
      ).toBe(0);
    expect(readdirSync(a)).toEqual(["boathouse-dial.pdf", "boathouse-printed.json"]);
    expect(readFileSync(join(a, "boathouse-dial.pdf")).equals(readFileSync(join(b, "boathouse-dial.pdf")))).toBe(true);
  });

  test("replaces its own pages, but nothing that it did not make", async () => {
    const out = folder();
    const args = ["print", demo, "--sheet", "turns", "--out", out];
    expect((await witnessmark(...args)).code).toBe(0);
    expect((await witnessmark(...args)).code).toBe(0);
    writeFileSync(join(out, "boathouse-turns.pdf"), "somebody's notes");
    const refused = await witnessmark(...args);
    expect(refused.code).toBe(1);
    expect(refused.err).toContain("was not made by witnessmark");
    expect(readFileSync(join(out, "boathouse-turns.pdf"), "utf8")).toBe("somebody's notes");
    expect((await witnessmark(...args, "--replace")).code).toBe(0);
  });

  test("a faulty file leaves nothing behind", async () => {
    const out = folder();
    const { code } = await witnessmark("print", file("name: Lathe\nunits: feet\n"), "--out", out);
    expect(code).toBe(1);
    expect(readdirSync(out)).toEqual([]);
  });

  test("a sheet without its data says what is missing; when asked for by name it is an error", async () => {
    const path = file("name: Lathe\nhandwheels: [{ name: Slide, feed: 2 }]\n");
    const every = await witnessmark("print", path, "--out", folder());
    expect(every.code).toBe(0);
    expect(every.err).toContain("no belt-card sheet: the file has no drive");
    const asked = await witnessmark("print", path, "--sheet", "belt-card", "--out", folder());
    expect(asked.code).toBe(1);
    expect(asked.err).toContain("the file has no drive");
  });

  test("misspelt sheets, handwheels, options and commands name the nearest", async () => {
    expect(await witnessmark("print", demo, "--sheet", "dail")).toMatchObject({
      code: 1,
      err: expect.stringContaining("did you mean dial?"),
    });
    expect(await witnessmark("print", demo, "--handwheel", "Crosslide")).toMatchObject({
      code: 1,
      err: expect.stringContaining('"Cross slide"'),
    });
    expect(await witnessmark("print", demo, "--shet", "dial")).toMatchObject({
      code: 2,
      err: expect.stringContaining("--sheet"),
    });
    expect(await witnessmark("prnt", demo)).toMatchObject({ code: 2, err: expect.stringContaining("print") });
    expect(await witnessmark()).toMatchObject({
      code: 2,
      err: expect.stringContaining("witnessmark print lathe.yaml"),
    });
  });
});

test("--help shows the commands with examples", async () => {
  const { code, out } = await witnessmark("--help");
  expect(code).toBe(0);
  for (const word of ["new", "check", "print", "First steps:", "Exit status"]) expect(out).toContain(word);
});

test("a mistyped key, an unknown printer and an unknown material are told in one round, each at its place", async () => {
  const path = file(
    "name: Mix\nlimts: { chuck: 1500 }\npaper: { printer: nope }\nwork: { materials: [brass, unobtainium] }\n",
  );
  const { code, err } = await witnessmark("check", path);
  expect(code).toBe(1);
  const lines = err.split("\n").map((line) => line.replace(path, "").slice(0, 7));
  expect(lines.filter((line) => line !== "")).toEqual([':2:1: "', expect.stringMatching(/^:3:\d+:/), ":4:28: "]);
  expect(err).toContain('no cutting speeds are known for "unobtainium"');
});
