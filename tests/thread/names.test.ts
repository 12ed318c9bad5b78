import { expect, test } from "vitest";
import { threadNamed, threadsMeant, threadsOf } from "../../src/thread/thread.js";

test.each([
  ["M8x1", "M8x1.0"],
  ["M8 × 1", "M8x1.0"],
  ["m10 x 1.0", "M10x1.0"],
  ["10-24 UNC", "#10-24"],
  ["No. 10-24", "#10-24"],
  ["10-24", "#10-24"],
  ["2 ba", "2BA"],
  ["M6", "M6"],
])('"%s" is meant for %s', (text, designation) => {
  expect(threadsMeant(text)).toEqual([designation]);
});

test("1/4 BSF leaves no doubt, 1/4-20 does", () => {
  const [bsf] = threadsMeant("1/4 BSF");
  expect(bsf).toMatch(/^1\/4-26/);
  expect(threadsMeant("1/4-20").length).toBe(2);
});

test("every thread is found by the name that the sheets print", () => {
  for (const system of ["metric coarse", "metric fine", "UNC", "UNF", "BA", "BSW", "BSF", "ME"] as const)
    for (const { designation, major } of threadsOf(system))
      expect(threadNamed(designation)?.major, designation).toBe(major);
});
