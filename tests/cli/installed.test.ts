import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { formats } from "../../src/output/formats.js";

const { engines, bin, files, dependencies } = JSON.parse(readFileSync("package.json", "utf8"));
const demo = "templates/machines/boathouse.yaml";

/** What npm would ship, in a folder of its own with no packages anywhere above it. */
let installed: string;
beforeAll(() => {
  installed = mkdtempSync(join(tmpdir(), "witnessmark-installed-"));
  for (const file of ["package.json", ...files]) cpSync(file, join(installed, file), { recursive: true });
});
afterAll(() => rmSync(installed, { recursive: true, force: true }));

const run = (...args: string[]) =>
  spawnSync(process.execPath, [join(installed, bin.witnessmark), ...args], { cwd: installed, encoding: "utf8" });
const printDial = (out: string) => {
  const { status, stderr } = run("print", demo, "--sheet", "dial", "--handwheel", "Cross slide", "--out", out);
  expect(stderr).toBe("");
  expect(status).toBe(0);
  return readFileSync(join(installed, out, "boathouse-dial.pdf"));
};

test("what is shipped needs no other package", () => {
  expect(dependencies).toBeUndefined();
  expect(run("check", demo).status).toBe(0);
  // The second time it replaces its own pages, which it knows by their mark.
  for (const format of formats.filter((format) => format !== "png"))
    for (const _ of ["new", "replaced"])
      expect(run("print", demo, "--sheet", "engraving", "--format", format, "--out", "all").status).toBe(0);
  expect(readdirSync(join(installed, "all")).length).toBeGreaterThan(2);
});

test("the notices name every package of which the bundle holds anything, each with its licence", () => {
  const notices = readFileSync(join(installed, "dist/NOTICES.txt"), "utf8");
  for (const name of ["pdf-lib", "yaml", "zod", "yargs", "d3-scale", "d3-shape", "@tarikjabiri/dxf", "papaparse"])
    expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+ \\(`, "m"));
  expect(notices.match(/permission/gi)?.length).toBeGreaterThanOrEqual(8);
  expect(readFileSync(join(installed, "dist/fonts/LICENSE"), "utf8")).toContain("SIL OPEN FONT LICENSE");
});

describe("kept code", () => {
  test("is used for both bundles", () => {
    const hook = join(installed, "hook.cjs");
    writeFileSync(
      hook,
      `const vm = require("node:vm");
const { Script } = vm;
vm.Script = class extends Script {
  constructor(source, options) {
    super(source, options);
    console.error(this.cachedDataRejected);
  }
};`,
    );
    const args = ["-r", hook, join(installed, bin.witnessmark), "check", demo];
    const { stderr } = spawnSync(process.execPath, args, { cwd: installed, encoding: "utf8" });
    expect(stderr).toBe("false\nfalse\n");
  });

  test("a flipped bit anywhere in it changes nothing but the time", () => {
    const file = join(installed, "dist/commands.code");
    const whole = readFileSync(file);
    const page = printDial("whole");
    for (let trial = 0; trial < 12; trial++) {
      const damaged = Buffer.from(whole);
      const at = Math.floor((trial / 11) * (whole.length - 1));
      damaged[at] = (damaged[at] ?? 0) ^ (1 << (trial % 8));
      writeFileSync(file, damaged);
      expect(Buffer.compare(printDial(`damaged-${trial}`), page)).toBe(0);
    }
    writeFileSync(file, whole.subarray(0, 1000));
    expect(Buffer.compare(printDial("short"), page)).toBe(0);
    rmSync(file);
    expect(Buffer.compare(printDial("none"), page)).toBe(0);
    writeFileSync(file, whole);
  });

  test("a bundle that differs, be it of the same length, runs as it stands", () => {
    const file = join(installed, "dist/main.js");
    const whole = readFileSync(file, "latin1");
    writeFileSync(file, whole.replace("makes dials, turn tables", "makes DIALS, turn tables"), "latin1");
    expect(run("--help").stdout).toContain("makes DIALS");
    writeFileSync(file, whole, "latin1");
    expect(run("--help").stdout).toContain("makes dials");
  });
});

test("a Node that is too old is told so in one line", () => {
  const old = join(installed, "old.cjs");
  writeFileSync(
    old,
    `Object.defineProperty(process, "versions", { value: { node: "18.20.4" } });
Object.defineProperty(process, "version", { value: "v18.20.4" });`,
  );
  const { status, stdout, stderr } = spawnSync(process.execPath, ["-r", old, join(installed, bin.witnessmark)], {
    encoding: "utf8",
  });
  expect({ status, stdout, stderr }).toEqual({
    status: 1,
    stdout: "",
    stderr: `witnessmark needs Node.js ${engines.node.slice(2)} or later; this is v18.20.4\n`,
  });
});
