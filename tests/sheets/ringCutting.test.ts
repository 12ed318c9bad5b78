import { expect, test } from "vitest";
import { findingsOf, textsOf } from "../support/sheets.js";

const cut = (perTurn: number, divisions: string) =>
  textsOf(
    findingsOf(
      `name: R\nhandwheels: [{ name: Slide, travel: 50, feed: ${perTurn}, dial: { shape: drum, diameter: 60, width: 12, closure: true, divisions: ${divisions} } }]`,
    ),
    "ring-cutting",
  );

test("who cuts true marks is told of the last gap, and not where all are alike", () => {
  expect(cut(2.13, "0.05 mm")).toContain("The last division, back to zero, is 0.0300 mm instead of 0.05 mm.");
  expect(cut(2.1, "0.05 mm")).not.toContain("The last division");
});

test("what a stamped figure stands for is told, in whole units or in parts of them", () => {
  for (const [perTurn, divisions] of [
    [2.1, "0.05 mm"],
    [2, "0.01 mm"],
    [25.4, "0.01 in"],
  ] as const) {
    const words = cut(perTurn, divisions);
    const [, figure = "", value = ""] = /A stamped ([\d.]+) stands for ([\d.]+) (mm|in)\./.exec(words) ?? [];
    // The first number after zero; its place in the table tells how many divisions it is from there.
    const [, mark = ""] =
      new RegExp(`(?:^|\\s)(\\d+) \\d+° \\d\\d′ \\d\\d″ [\\d.]+ ${figure.replace(".", "\\.")}(?= \\d+ \\d+°)`).exec(
        words,
      ) ?? [];
    expect(Number(value)).toBeCloseTo(Number(mark) * Number.parseFloat(divisions), 6);
  }
});
