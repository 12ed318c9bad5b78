import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { expect, test } from "vitest";
import { folder, witnessmark } from "../support/command.js";

const machine = (name: string) => `name: ${name}
handwheels:
  - { name: Slide, feed: 2.1, dial: { shape: drum, diameter: 38, width: 9 } }
`;

/** Fourteen files, enough for more than one thread; the third is faulty, the fifth is not there. */
function fourteen(): { paths: string[]; good: string[] } {
  const where = folder();
  const paths = Array.from({ length: 14 }, (_, index) => join(where, `lathe-${index}.yaml`));
  for (const [index, path] of paths.entries())
    if (index !== 4) writeFileSync(path, index === 2 ? "name: Bad\nunits: feet\n" : machine(`Lathe ${index}`));
  return { paths, good: paths.filter((_, index) => index !== 2 && index !== 4) };
}

test("a faulty file among many stops only itself, and all is told in the order of the files", async () => {
  const { paths, good } = fourteen();
  const out = folder();
  const { code, err, out: lines } = await witnessmark("print", ...paths, "--sheet", "dial", "--out", out);
  expect(code).toBe(1);
  expect(lines.trim().split("\n")).toEqual(good.map((path) => join(out, `${basename(path, ".yaml")}-dial.pdf`)));
  const places = ["lathe-2.yaml:2:8", "lathe-4.yaml: cannot be read"].map((words) => err.indexOf(words));
  expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
  expect(places[0]).toBeLessThan(places[1] ?? 0);
});

test("pages made on several threads are the pages made one by one", async () => {
  const { paths, good } = fourteen();
  const [together, apart] = [folder(), folder()];
  await witnessmark("print", ...paths, "--out", together);
  for (const path of good) expect((await witnessmark("print", path, "--out", apart)).code).toBe(0);
  expect(readdirSync(together)).toEqual(readdirSync(apart));
  for (const file of readdirSync(apart))
    expect(Buffer.compare(readFileSync(join(together, file)), readFileSync(join(apart, file)))).toBe(0);
});

test("of a file whose page would replace somebody's, nothing is written; the others' pages are", async () => {
  const { good } = fourteen();
  const out = folder();
  writeFileSync(join(out, "lathe-1-dial.pdf"), "notes");
  const { code, err } = await witnessmark("print", ...good, "--sheet", "dial,turns", "--out", out);
  expect(code).toBe(1);
  expect(err).toContain("lathe-1-dial.pdf is there already and was not made by witnessmark");
  expect(readFileSync(join(out, "lathe-1-dial.pdf"), "utf8")).toBe("notes");
  expect(existsSync(join(out, "lathe-1-turns.pdf"))).toBe(false);
  expect(existsSync(join(out, "lathe-7-turns.pdf"))).toBe(true);
});

test("a reader that goes away early stops nothing", async () => {
  const { good } = fourteen();
  const out = folder();
  const run = spawn(process.execPath, ["dist/witnessmark.cjs", "print", ...good, "--sheet", "dial", "--out", out]);
  run.stdout.destroy();
  run.stderr.destroy();
  expect(await new Promise((resolve) => run.on("close", resolve))).toBe(0);
  expect(readdirSync(out).sort()).toEqual(
    good.flatMap((path) => ["dial.pdf", "printed.json"].map((end) => `${basename(path, ".yaml")}-${end}`)).sort(),
  );
});

test("what stands in the way of a page is named, and nothing is written of that machine", async () => {
  const { good } = fourteen();
  const out = folder();
  mkdirSync(join(out, "lathe-1-turns.pdf"));
  const { code, err } = await witnessmark("print", ...good, "--sheet", "dial,turns", "--out", out, "--replace");
  expect(code).toBe(1);
  expect(err).toContain("lathe-1-turns.pdf: cannot be written (a folder of this name is there); nothing written");
  expect(readdirSync(out).filter((file) => file.includes("lathe-1-"))).toEqual(["lathe-1-turns.pdf"]);
});
