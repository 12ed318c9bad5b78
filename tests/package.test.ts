import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { folder } from "./support/command.js";

const own = JSON.parse(readFileSync("package.json", "utf8"));

test("the package as it is packed makes the README's first sheets in an empty folder, and needs no other", () => {
  const place = folder();
  execFileSync("npm", ["pack", "--ignore-scripts", "--pack-destination", place], { stdio: "pipe" });
  const [tarball = ""] = readdirSync(place);
  execFileSync("tar", ["xzf", tarball], { cwd: place });
  const program = join(place, "package", own.bin.witnessmark);
  const empty = folder();
  const run = (...words: string[]) =>
    spawnSync(process.execPath, [program, ...words], { cwd: empty, encoding: "utf8" });
  for (const words of [
    ["new", "lathe.yaml"],
    ["check", "lathe.yaml"],
    ["print", "lathe.yaml", "--sheet", "measuring-form"],
    ["print", "lathe.yaml", "--sheet", "dial", "--format", "dxf"],
    ["page", "lathe.yaml"],
  ]) {
    const { status, stderr } = run(...words);
    expect({ words, status, stderr }).toEqual({ words, status: 0, stderr: "" });
  }
  expect(readdirSync(join(empty, "out"))).toContain("lathe-measuring-form.pdf");
  expect(existsSync(join(empty, "page.html"))).toBe(true);

  // Nothing is fetched with it save what draws pictures, and no script runs where it is installed.
  expect(own.dependencies ?? {}).toEqual({});
  expect(Object.keys(own.scripts).filter((name) => /^(pre|post)?install$|^prepare$/.test(name))).toEqual([]);

  const notices = readFileSync(join(place, "package/dist/NOTICES.txt"), "utf8");
  for (const name of ["pdf-lib", "yaml", "zod", "yargs", "d3-scale", "papaparse", "pako", "preact", "@codemirror/view"])
    expect(notices).toContain(name);
});
