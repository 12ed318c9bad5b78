import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { writeWhole } from "../../src/cli/wholeFiles.js";
import { folder, witnessmark } from "../support/command.js";

const disk = vi.hoisted(() => ({ renamesLeft: Number.POSITIVE_INFINITY, links: true }));
vi.mock("node:fs", async (original) => {
  const fs = await original<typeof import("node:fs")>();
  return {
    ...fs,
    renameSync: (from: string, to: string) => {
      if (disk.renamesLeft-- === 0) throw Object.assign(new Error("full"), { code: "ENOSPC" });
      fs.renameSync(from, to);
    },
    linkSync: (from: string, to: string) => {
      if (!disk.links) throw Object.assign(new Error("no links here"), { code: "EPERM" });
      fs.linkSync(from, to);
    },
  };
});
afterEach(() => {
  disk.renamesLeft = Number.POSITIVE_INFINITY;
  disk.links = true;
});

const all = (place: string) =>
  Object.fromEntries(readdirSync(place).map((name) => [name, readFileSync(join(place, name), "utf8")]));
const pages = (place: string, text: string) =>
  ["a", "b", "c", "d"].map((name) => ({ path: join(place, name), bytes: `${name} ${text}` }));

describe("all files or none", () => {
  test.each([
    [1, true],
    [2, true],
    [3, false],
  ])("when putting the one after %d in its place fails, what stood there stands there again", (after, links) => {
    const place = folder();
    writeFileSync(join(place, "a"), "old a");
    writeFileSync(join(place, "c"), "old c");
    const before = all(place);
    disk.links = links;
    disk.renamesLeft = after;
    expect(() => writeWhole(pages(place, "new"))).toThrow(
      `${join(place, "abcd"[after] ?? "")}: cannot be written (the disk is full); nothing written`,
    );
    expect(all(place)).toEqual(before);
  });

  test("written over what was there, nothing else is left behind", () => {
    const place = folder();
    writeWhole(pages(place, "old"));
    writeWhole(pages(place, "new"));
    expect(all(place)).toEqual({ a: "a new", b: "b new", c: "c new", d: "d new" });
  });

  test("what a killed print left is cleared away, what one that is running writes is not", () => {
    const place = folder();
    const host = createHash("sha256").update(hostname()).digest("hex").slice(0, 8);
    const names = {
      // A process number that no system gives.
      dead: `.witnessmark-${host}-4999999-abc.part`,
      running: `.witnessmark-${host}-${process.pid}-abc.part`,
      elsewhere: ".witnessmark-00000000-4999999-abc.part",
      theirs: ".witnessmark-notes.part",
    };
    for (const name of Object.values(names)) writeFileSync(join(place, name), "");
    writeWhole(pages(place, "new"));
    expect(readdirSync(place).filter((name) => name.startsWith("."))).toEqual(
      [names.elsewhere, names.running, names.theirs].sort(),
    );
  });
});

describe("a print that is broken off", () => {
  test.each(["SIGINT", "SIGTERM", "SIGHUP"] as const)(
    "%s leaves no temporary file and no half page",
    async (signal) => {
      const out = folder();
      const print = ["print", "templates/machines/boathouse.yaml", "--out", out, "--replace"];
      await witnessmark(...print);
      const whole = all(out);
      let broken = 0;
      for (let ms = 60; ms < 1000; ms += 90) {
        const child = spawn(process.execPath, ["dist/witnessmark.cjs", ...print], { stdio: "ignore" });
        const timer = setTimeout(() => child.kill(signal), ms);
        const by = await new Promise<string | null>((done) => child.on("exit", (_, name) => done(name)));
        clearTimeout(timer);
        if (by === signal) broken++;
        expect(all(out)).toEqual(whole);
      }
      expect(broken).toBeGreaterThan(0);
    },
  );

  test("many machines: those begun are finished, no more are begun", async () => {
    const [place, out] = [folder(), folder()];
    const files = Array.from({ length: 40 }, (_, i) => join(place, `m${i}.yaml`));
    for (const path of files) writeFileSync(path, readFileSync("templates/machines/boathouse.yaml"));
    const child = spawn(process.execPath, ["dist/witnessmark.cjs", "print", ...files, "--out", out]);
    child.stdout.once("data", () => child.kill("SIGINT"));
    const by = await new Promise<string | null>((done) => child.on("exit", (_, name) => done(name)));
    expect(by).toBe("SIGINT");
    const made = readdirSync(out);
    expect(made.filter((name) => name.startsWith("."))).toEqual([]);
    const counts = new Map<string, number>();
    for (const name of made) {
      const of = name.slice(0, name.indexOf("-"));
      counts.set(of, (counts.get(of) ?? 0) + 1);
    }
    expect(counts.size).toBeLessThan(40);
    expect(new Set(counts.values()).size).toBe(1);
  });
});
