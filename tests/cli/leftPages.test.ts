import { existsSync, mkdtempSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { witnessmark } from "../support/command.js";

test("of a sheet that has become shorter no page of before stays, and nothing of the user's goes", async () => {
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-"));
  const machine = join(folder, "lathe.yaml");
  const out = join(folder, "out");
  const turns = (travel: number) =>
    writeFileSync(
      machine,
      `name: L\nhandwheels: [{ name: Cross slide, travel: ${travel}, feed: 1 mm, dial: { shape: drum, diameter: 30, width: 9 } }]\n`,
    );
  const print = () => witnessmark("print", machine, "--sheet", "turns", "--format", "svg", "--out", out);
  turns(1000);
  expect((await print()).code).toBe(0);
  const before = readdirSync(out).filter((name) => name.endsWith(".svg")).length;
  const foreign = join(out, `lathe-turns-${before + 1}.svg`);
  writeFileSync(foreign, "<svg/>");
  turns(5);
  expect((await print()).code).toBe(0);
  const after = readdirSync(out).filter((name) => name.endsWith(".svg"));
  expect(before).toBeGreaterThan(after.length - 1);
  expect(after).toEqual([
    ...Array.from({ length: after.length - 1 }, (_, n) => `lathe-turns-${n + 1}.svg`),
    foreign.split("/").at(-1),
  ]);
  expect(after.length - 1).toBeLessThan(before);
  expect(existsSync(foreign)).toBe(true);
});

test("a German binder's front page has no decimal point", async () => {
  const folder = mkdtempSync(join(tmpdir(), "witnessmark-"));
  const { code } = await witnessmark(
    ...["print", "templates/machines/boathouse.yaml", "--all", "--language", "de", "--sheet", "belt-card"],
    ...["--out", folder],
  );
  expect(code).toBe(0);
  const { readPdf } = await import("../support/readPdf.js");
  const { readFileSync } = await import("node:fs");
  const { pages } = await readPdf(readFileSync(join(folder, "boathouse-binder.pdf")));
  const words = pages[0]?.texts.map(({ text }) => text).join(" ") ?? "";
  expect(words).toMatch(/\d,\d/);
  expect(words).not.toMatch(/\d\.\d/);
});
