import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Problem } from "../../src/machine/problem.js";

/** One test a file of the folder. Each file carries its verdict beside the fault: `#! line:column code`, one for every problem,
 *  and there must be no others. */
export function everyBadFile(folder: string, problemsOf: (text: string) => readonly Problem[]): void {
  test.each(readdirSync(folder))("%s: exactly the problems that it says", (name) => {
    const text = readFileSync(`${folder}/${name}`, "utf8");
    const expected = [...text.matchAll(/#! (\d+:\d+ [\w-]+)/g)].map((match) => match[1]);
    expect(expected.length).toBeGreaterThan(0);
    const problems = problemsOf(text);
    expect(problems.map(({ line, column, code }) => `${line}:${column} ${code}`).sort()).toEqual(expected.sort());
    for (const { what, remedy } of problems) {
      expect(what.length).toBeGreaterThan(8);
      expect(remedy.length).toBeGreaterThan(4);
      expect(`${what} ${remedy}`).not.toMatch(/undefined|NaN|\[object|invalid_|Expected|received/);
    }
  });
}
