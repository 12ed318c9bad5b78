import { expect, test } from "vitest";
import { remarks } from "../../src/findings/remarks.js";
import { findingsOf } from "../support/sheets.js";

const turns = Array.from({ length: 15 }, (_, turn) => turn);

/** What is told of the one reading that was written down wrongly, `key`: on the way out or back. */
function told(key: "travel" | "return", slip: (reading: number) => number): string {
  const readings = (from: number, wrong: boolean) =>
    turns.map((turn) => (wrong && turn === 7 ? slip(2 * turn + from) : 2 * turn + from).toFixed(2));
  const found = remarks(
    findingsOf(
      `name: S\nhandwheels: [{ name: Slide, travel: 40, feed: { readings: { gauge: 0.01, turns: [${turns}], travel: [${readings(0, key === "travel")}], return: [${readings(0.15, key === "return")}] } } }]\n`,
    ),
  );
  return found.find(({ code }) => code === "wild-reading")?.what ?? "";
}

test.each(["travel", "return"] as const)("a slip of the pen on the way %s is told in one sentence", (key) => {
  expect(told(key, (reading) => reading + 1)).toMatch(
    /reading lies (1\.0|0\.9)\d* mm above the line of the others \(one figure looks wrong: it is 1 too much\)$/,
  );
  expect(told(key, (reading) => reading + 1)).not.toContain("like");
});
