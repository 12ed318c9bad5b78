import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readMachine } from "../../src/machine/read.js";

const folder = "tests/machine/bad";

/** Each file carries its verdict beside the fault: `#! line:column code`, one for every problem, and no others. */
test.each(readdirSync(folder))("%s: exactly the problems that it says", (name) => {
  const text = readFileSync(`${folder}/${name}`, "utf8");
  const expected = [...text.matchAll(/#! (\d+:\d+ [\w-]+)/g)].map((match) => match[1]);
  expect(expected.length).toBeGreaterThan(0);
  const { problems } = readMachine(text);
  expect(problems.map(({ line, column, code }) => `${line}:${column} ${code}`).sort()).toEqual(expected.sort());
  for (const { what, remedy } of problems) {
    expect(what.length).toBeGreaterThan(8);
    expect(remedy.length).toBeGreaterThan(4);
    expect(`${what} ${remedy}`).not.toMatch(/undefined|NaN|\[object|invalid_|Expected|received/);
  }
});
