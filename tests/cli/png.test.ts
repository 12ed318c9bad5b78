import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { file, folder, witnessmark } from "../support/command.js";
import { readPng } from "../support/readPng.js";

const machine = "name: L\nhandwheels: [{ name: Slide, feed: 2.1, dial: { shape: drum, diameter: 38, width: 9 } }]\n";

test("each page is a picture, at 150 dpi or as asked, and replaces its own earlier ones", async () => {
  const out = folder();
  const path = file(machine);
  const print = (...more: string[]) =>
    witnessmark("print", path, "--sheet", "dial,turns", "--format", "png", "--out", out, ...more);
  const height = () => readPng(readFileSync(join(out, "lathe-dial-1.png"))).height;
  expect(await print()).toMatchObject({ code: 0, err: "" });
  expect(height()).toBe(1240);
  expect(await print("--dpi", "300")).toMatchObject({ code: 0, err: "" });
  expect(height()).toBe(2480);
  expect(readdirSync(out).sort()).toEqual(["lathe-dial-1.png", "lathe-printed.json", "lathe-turns-1.png"]);
  writeFileSync(join(out, "lathe-dial-1.png"), "a holiday");
  expect((await print()).err).toContain("was not made by witnessmark");
});

test.each([
  [["--dpi", "300"], "--dpi is for pictures; add --format png"],
  [["--format", "png", "--dpi", "0"], "--dpi takes a number from 20 to 600"],
  [["--format", "png", "--dpi", "fine"], "--dpi takes a number from 20 to 600"],
  [["--format", "png", "--dpi", "9999"], "--dpi takes a number from 20 to 600"],
])("%j is wrong usage", async (words, told) => {
  const out = folder();
  const { code, err } = await witnessmark("print", file(machine), "--out", out, ...words);
  expect(code).toBe(2);
  expect(err).toContain(told);
  expect(readdirSync(out)).toEqual([]);
});

describe("where the package that draws is missing", () => {
  // As installed, but with no packages anywhere above it.
  const installed = mkdtempSync(join(tmpdir(), "witnessmark-bare-"));
  for (const name of ["dist", "package.json"]) symlinkSync(join(process.cwd(), name), join(installed, name));
  const run = (...args: string[]) =>
    spawnSync(
      process.execPath,
      ["--preserve-symlinks", "--preserve-symlinks-main", join(installed, "dist/witnessmark.cjs"), ...args],
      { encoding: "utf8" },
    );

  test.each([
    ["one machine", 1],
    ["more than are done by one thread", 13],
  ])("that is told once for %s, and nothing is written", (_, count) => {
    const out = join(folder(), "out");
    const where = folder();
    const files = Array.from({ length: count }, (_, index) => join(where, `lathe-${index}.yaml`));
    for (const path of files) writeFileSync(path, machine);
    const { status, stdout, stderr } = run("print", ...files, "--format", "png", "--out", out);
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(stderr.match(/--format png needs the package @resvg\/resvg-js, which is not here/g)).toHaveLength(1);
    expect(stderr).toContain(`npm install --no-save @resvg/resvg-js@${version}`);
    expect(stderr).toContain("--format pdf and svg need nothing more");
    expect(stderr).not.toMatch(/\n\s+at /);
    expect(existsSync(out)).toBe(false);
  });

  test("nothing else misses it", () => {
    const out = folder();
    for (const format of ["pdf", "svg", "dxf"])
      expect(run("print", file(machine), "--sheet", "dial", "--format", format, "--out", out)).toMatchObject({
        status: 0,
        stderr: "",
      });
  });
});

const version = JSON.parse(readFileSync("package.json", "utf8")).optionalDependencies["@resvg/resvg-js"];
