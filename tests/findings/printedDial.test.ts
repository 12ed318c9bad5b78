import { expect, test } from "vitest";
import { dialChange, dialFacts } from "../../src/findings/printedDial.js";
import { findingsOf } from "../support/sheets.js";

const wheel = (feed: string, dial: string, more = "travel: 60, reads: diameter") => {
  const [found] = findingsOf(
    `name: L\nhandwheels: [{ name: Slide, ${more}, feed: ${feed}, dial: { shape: drum, diameter: 50, width: 12, ${dial} } }]\n`,
  ).handwheels;
  if (found === undefined) throw new Error("no wheel");
  return found;
};
const change = (was: string, is: string, dial: string, more?: string) => {
  const facts = dialFacts(wheel(was, dial, more));
  if (facts === undefined) throw new Error("no dial");
  return dialChange(facts, wheel(is, dial, more), "mm");
};

test("what was in doubt when it was printed is no excuse today: a true dial that is out by 0.39 mm goes", () => {
  const found = change(
    "{ perTurn: 2.01, uncertainty: 0.008 }",
    "{ perTurn: 2.0165, uncertainty: 0.0002 }",
    "divisions: 0.1 mm, closure: true",
  );
  expect(found).toMatchObject({ replace: true });
  // 60 mm of slide are 120 on diameter, at 4.02 read for each 4.033 gone.
  expect(found?.why).toContain("0.387 mm too little over 120.00 mm on the dial");
});

test("within what is in doubt today, and a tenth of a division, it may stay, and it is told by how much it is out", () => {
  const found = change(
    "{ perTurn: 2.01, uncertainty: 0.001 }",
    "{ perTurn: 2.0101, uncertainty: 0.001 }",
    "divisions: 0.1 mm, closure: true",
  );
  expect(found).toMatchObject({ replace: false });
  expect(found?.why).toMatch(/0\.006 mm too little over 120\.00 mm on the dial, within what is in doubt: it may stay/);
});

test("equal divisions are the same whatever the feed: a new print would bring nothing", () => {
  const found = change(
    "{ perTurn: 2, uncertainty: 0.0001 }",
    "{ perTurn: 2.003, uncertainty: 0.0001 }",
    "divisions: 0.05 mm, closure: even",
  );
  expect(found).toMatchObject({ replace: false });
  expect(found?.why).toContain("a new one with these divisions would too");
});

test("rows and the way the numbers grow are told as one says them", () => {
  const feed = "{ perTurn: 2.1225, uncertainty: 0.0001 }";
  const facts = dialFacts(wheel(feed, "divisions: 0.03 mm, closure: rows"));
  expect(facts?.marks).toMatch(/, rows in \d rows; growing clockwise/);
  const found = facts && dialChange(facts, wheel(feed, "divisions: 0.05 mm, closure: even"), "mm");
  expect(found?.why).toMatch(/^it is divided \d+ × 0\.03 mm, in \d rows, numbers growing clockwise; it should be/);
});

test("nothing is said where nothing changed, and a vernier, a second scale or the sense of turning is a change", () => {
  const feed = "{ perTurn: 2, uncertainty: 0.001 }";
  expect(change(feed, feed, "divisions: 0.05 mm")).toBeUndefined();
  for (const other of ["vernier: 10", "second: 0.001 in", "increases: anticlockwise"]) {
    const facts = dialFacts(wheel(feed, "divisions: 0.05 mm"));
    expect(facts && dialChange(facts, wheel(feed, `divisions: 0.05 mm, ${other}`), "mm")?.replace, other).toBe(true);
  }
});

test("a last mark that is left out beside the zero, or was counted and not drawn, makes no other dial", () => {
  const dial = "divisions: 0.05, closure: true";
  const more = "travel: 60, reads: travel";
  // 0.004 mm beyond 50 divisions are 0.25 mm of paper; 0.02 are a mark of its own.
  const now = wheel("{ perTurn: 2.50396, uncertainty: 0.0005 }", dial, more);
  const facts = dialFacts(now);
  expect(facts?.marks).toMatch(/^50 × 0\.05 mm, true/);
  if (facts === undefined) throw new Error("no dial");
  const before = { ...facts, marks: facts.marks.replace("50 ×", "51 ×") };
  expect(dialChange(before, now, "mm")).toBeUndefined();
  const off = change("{ perTurn: 2.50396, uncertainty: 0.01 }", "{ perTurn: 2.52, uncertainty: 0.01 }", dial, more);
  expect(off?.why).not.toContain("it is divided");
  // Another division is another dial all the same.
  expect(dialChange({ ...facts, marks: facts.marks.replace("0.05", "0.02") }, now, "mm")).toMatchObject({
    replace: true,
  });
});
