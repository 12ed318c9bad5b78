import { expect, test } from "vitest";
import { choiceLines } from "../../src/cli/choiceLines.js";
import { findingsOf } from "../support/sheets.js";

test("a maker's feed that is out by less than the last place is right to it, neither too much nor too little", () => {
  const words = choiceLines(
    findingsOf(
      "name: L\nhandwheels: [{ name: Cross slide, reads: travel, travel: 50, feed: { perTurn: 2.00001, nominal: 2 mm, uncertainty: 0.001 } }]\n",
    ),
  ).join(" ");
  expect(words).toContain("reads right to 0.0001 mm each turn");
  expect(words).not.toContain("0.0000");
});
