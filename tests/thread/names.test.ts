import { expect, test } from "vitest";
import { threadOnPaper } from "../../src/thread/onPaper.js";
import { threadNamed, threadsMeant, threadsOf, threadsOfSize } from "../../src/thread/thread.js";
import { inLanguage } from "../../src/words/language.js";

test.each([
  ["M8x1", "M8x1.0"],
  ["M8 × 1", "M8x1.0"],
  ["m10 x 1.0", "M10x1.0"],
  ["10-24 UNC", "#10-24"],
  ["No. 10-24", "#10-24"],
  ["10-24", "#10-24"],
  ["2 ba", "2BA"],
  ["M2,5", "M2.5"],
  ["M6", "M6"],
])('"%s" is meant for %s', (text, designation) => {
  expect(threadsMeant(text)).toEqual([designation]);
});

test.each([
  ["M10x1.5", "M10"],
  ["M10 x 1,5", "M10"],
  ["M8 × 1.25", "M8"],
  ["M6x1", "M6"],
  ["M6x1.0", "M6"],
  ["M2.5x0.45", "M2.5"],
])('"%s" is the coarse thread, its pitch written out', (text, designation) => {
  expect(threadsMeant(text)).toEqual([designation]);
});

test("every coarse thread is meant by its size with its pitch, and by no fine one's", () => {
  for (const { designation, pitch } of threadsOf("metric coarse"))
    expect(threadsMeant(`${designation}x${pitch}`)).toEqual([designation]);
  for (const { designation } of threadsOf("metric fine")) expect(threadsMeant(designation).length).toBe(1);
});

test("what is held of a size is found by a name whose pitch is wrong", () => {
  expect(threadsOfSize("M10 x 1.4")).toEqual(["M10", "M10x0.75", "M10x1.0", "M10x1.25"]);
  expect(threadsOfSize("M66")).toEqual([]);
});

test("1/4 BSF leaves no doubt, 1/4-20 does", () => {
  const [bsf] = threadsMeant("1/4 BSF");
  expect(bsf).toMatch(/^1\/4-26/);
  expect(threadsMeant("1/4-20").length).toBe(2);
});

test("a thread is called on paper as a drawing calls it, in German with a comma", () => {
  const names = ["M2.5", "M8x1.0", "M5x0.5", "1/4-20 UNC"];
  expect(names.map(threadOnPaper)).toEqual(["M2.5", "M8 × 1", "M5 × 0.5", "1/4-20 UNC"]);
  inLanguage("de", () => expect(names.map(threadOnPaper)).toEqual(["M2,5", "M8 × 1", "M5 × 0,5", "1/4-20 UNC"]));
});

test("every thread is found by the name that the sheets print", () => {
  for (const system of ["metric coarse", "metric fine", "UNC", "UNF", "BA", "BSW", "BSF", "ME"] as const)
    for (const { designation, major } of threadsOf(system))
      for (const language of ["en", "de"] as const)
        inLanguage(language, () => expect(threadNamed(threadOnPaper(designation))?.major, designation).toBe(major));
});
