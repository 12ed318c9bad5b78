import { expect, test } from "vitest";
import { leftWords } from "../../src/working/left.js";
import { explainStop } from "../../src/working/stops.js";
import { demoFindings } from "../support/sheets.js";

test("an error that would print as nought is told as right, others by their length", () => {
  expect(leftWords(0, "mm")).toBe("right to 0.001 mm");
  expect(leftWords(-0.0004, "mm")).toBe("right to 0.001 mm");
  expect(leftWords(0.0006, "mm")).toBe("which leaves 0.001 mm");
  expect(leftWords(0.001, "in")).toBe("right to 0.0001 in");
  expect(leftWords(-0.0127, "in")).toBe("which leaves −0.0005 in");
});

test("a stop is told no better than its length is known", () => {
  const notes = explainStop(demoFindings()).flatMap(({ explain }) => {
    const { notes = [] } = explain() as { readonly notes?: readonly string[] };
    return [notes];
  });
  const doubted = notes.filter((all) => all.some((note) => note.includes("is in doubt by 0.005")));
  expect(doubted.length).toBeGreaterThan(0);
  for (const all of doubted) {
    expect(all.join()).toContain("known to ± 0.005");
    expect(all.join()).not.toContain("right to");
  }
});
