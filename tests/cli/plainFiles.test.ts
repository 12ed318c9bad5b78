import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { MOST } from "../../src/machine/bounds.js";
import { file, witnessmark } from "../support/command.js";

describe("what could be read for ever is told at once", () => {
  test.runIf(process.platform !== "win32").each(["machine", "job", "sheet", "CSV"])("a pipe as %s", async (as) => {
    const pipe = join(mkdtempSync(join(tmpdir(), "witnessmark-")), "pipe.yaml");
    execFileSync("mkfifo", [pipe]);
    const machine = file("name: L\nhandwheels: [{ name: Slide, feed: { readings: slide.csv } }]\n");
    if (as === "CSV") execFileSync("mkfifo", [join(dirname(machine), "slide.csv")]);
    const words = {
      machine: ["check", pipe],
      job: ["check", file("name: L\n"), "--job", pipe],
      sheet: ["print", file("name: L\n"), "--sheet", pipe],
      CSV: ["check", machine],
    }[as] as string[];
    const { code, err } = await witnessmark(...words);
    expect(code).toBe(1);
    expect(err).toContain("cannot be read (it is no plain file, but a pipe or a device: save it as a file)");
  });

  test.runIf(process.platform === "linux")("a device without end", async () => {
    const { code, err } = await witnessmark("check", "/dev/zero");
    expect(code).toBe(1);
    expect(err).toContain("no plain file");
  });

  test("a machine file of many megabytes", async () => {
    const { code, err } = await witnessmark("check", file(`name: L\n${"#".repeat(5 * MOST.letters)}\n`));
    expect(code).toBe(1);
    expect(err).toContain("larger than 0.8 MB");
  });

  test("a CSV of more rows than any measurement has", async () => {
    const machine = file("name: L\nhandwheels: [{ name: Slide, feed: { readings: slide.csv } }]\n");
    const rows = Array.from({ length: MOST.readings + 1 }, (_, turn) => `${turn};${turn / 10}`);
    writeFileSync(join(dirname(machine), "slide.csv"), `turns;travel\n${rows.join("\n")}\n`);
    const { code, err } = await witnessmark("check", machine);
    expect(code).toBe(1);
    expect(err).toContain(`slide.csv:${MOST.readings + 2}:1: the CSV has more than ${MOST.readings} rows`);
  });
});
