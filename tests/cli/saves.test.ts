import { getEventListeners } from "node:events";
import { mkdirSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { look, nextSave } from "../../src/cli/saves.js";
import { folder } from "../support/command.js";

const never = () => new AbortController().signal;

test("what is in no folder yet, which no system tells of, is found all the same", async () => {
  const path = join(folder(), "not yet", "slide.csv");
  const saved = nextSave(look([path]), never());
  mkdirSync(join(path, ".."));
  writeFileSync(path, "turns;travel\n");
  expect(await saved).toEqual([path]);
});

test("a save before it is waited for counts, also one of the same length that says it is as old", async () => {
  const path = join(folder(), "lathe.yaml");
  writeFileSync(path, "name: A\n");
  utimesSync(path, 1000, 1000);
  const seen = look([path]);
  writeFileSync(path, "name: B\n");
  utimesSync(path, 1000, 1000);
  expect(await nextSave(seen, never())).toEqual([path]);
});

test("all that are saved together are told together, those that were left alone are not", async () => {
  const where = folder();
  const [a, b, c] = ["a", "b", "c"].map((name) => join(where, name)) as [string, string, string];
  for (const path of [a, b, c]) writeFileSync(path, "1");
  const saved = nextSave(look([a, b, c]), never());
  writeFileSync(c, "22");
  rmSync(a);
  expect(await saved).toEqual([a, c]);
});

test("it can be ended while nothing happens", async () => {
  const ended = new AbortController();
  const saved = nextSave(look([join(folder(), "lathe.yaml")]), ended.signal);
  ended.abort();
  expect(await saved).toEqual([]);
});

test("a year of saves leaves no listener behind", async () => {
  const path = join(folder(), "lathe.yaml");
  const { signal } = new AbortController();
  for (let save = 0; save < 3; save++) {
    writeFileSync(path, "1".repeat(save));
    const saved = nextSave(look([path]), signal);
    writeFileSync(path, "1".repeat(save + 1));
    expect(await saved).toEqual([path]);
  }
  expect(getEventListeners(signal, "abort")).toEqual([]);
});
