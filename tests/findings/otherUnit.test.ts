import { expect, test } from "vitest";
import { remarks } from "../../src/findings/remarks.js";
import { findingsOf, printOf } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

const file = (units: string, dial: string, feed = "1.5 mm") =>
  findingsOf(
    `name: L\nunits: ${units}\nhandwheels: [{ name: Top slide, travel: 50 mm, feed: ${feed}, dial: { shape: drum, diameter: 45 mm, width: 9 mm, ${dial} } }]\n`,
  );
const told = (findings: ReturnType<typeof findingsOf>) =>
  remarks(findings).filter(({ code }) => code === "dial-in-other-unit");

test("a dial that came out in the other unit is told of, with what makes one in the file's", () => {
  const [remark] = told(file("in", "closure: even"));
  expect(remark?.what).toContain(
    'the dial of "Top slide" counts in millimetres, 0.01 mm a division, while the file counts in inches',
  );
  const remedy = /divisions: (\S+ in), closure: (\w+)/.exec(remark?.remedy ?? "");
  // What the remedy says is a dial in inches, and nothing more is said.
  const mended = file("in", `divisions: ${remedy?.[1]}, closure: ${remedy?.[2]}`);
  expect(mended.handwheels[0]?.dial?.chosen.unit).toBe("in");
  expect(told(mended)).toEqual([]);
  expect(wordsOf(printOf(file("in", "closure: even"), "dial"))).toContain("Reads in millimetres");
});

test("nothing is said where it was asked for, or counts as the file does", () => {
  expect(told(file("in", "divisions: 0.01 mm"))).toEqual([]);
  expect(told(file("mm", "closure: even"))).toEqual([]);
  expect(wordsOf(printOf(file("mm", "closure: even"), "dial"))).not.toContain("eads in millimetres");
});
