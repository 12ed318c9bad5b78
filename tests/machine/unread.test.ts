import { expect, test } from "vitest";
import { problemsOf } from "../support/problems.js";
import { findingsOf } from "../support/sheets.js";

const file = (lists: string) =>
  `name: L\nhandwheels:\n  - name: S\n    feed: { readings: { gauge: 0.01, ${lists} } }\n`;
const told = (lists: string) =>
  problemsOf(file(lists)).map(({ severity, what, remedy }) => `${severity}: ${what}; ${remedy}`);
const turns = "turns: [0, 1, 2, 3, 4, 5]";

test.each(["[0.1, 2.1]", '["", 2.1, "", "", 8.1, ""]', "[null, 2.1, null, 4.1]"])(
  "a way back that is half read keeps the feed, and one sentence says what waits: %s",
  (back) => {
    const lists = `${turns}, travel: [0, 2, 4, 6, 8, 10.01], return: ${back}`;
    expect(told(lists)).toEqual([
      "warning: the way back is read at 2 of 6 places; read it at the others too; until then no sheet tells a lost motion",
    ]);
    const { feed } = findingsOf(file(lists)).handwheels[0] ?? {};
    expect(feed?.perTurn).toBeCloseTo(2, 2);
    expect(feed?.lostMotion).toBeUndefined();
  },
);

test("a place left empty on the way out is no reading, and the way back is whole without it", () => {
  const lists = `${turns}, travel: [0, 2, "", 6, 8, 10.01], return: [0.1, 2.1, "", 6.1, 8.1, 10.1]`;
  expect(told(lists)).toEqual([]);
  const { feed } = findingsOf(file(lists)).handwheels[0] ?? {};
  expect(feed?.fit?.degreesOfFreedom).toBe(3);
  expect(feed?.lostMotion?.pairs).toBe(5);
});

test("what is told of a reading behind an empty place stands at that reading", () => {
  const lists = `turns: [0, 1, 2, 3, 4, 5, 6, 7], travel: [0, "", 4, 6, 8.6, 10, 12, 14]`;
  const [wild] = problemsOf(file(lists));
  expect(wild?.code).toBe("wild-reading");
  expect(wild?.column).toBe((file(lists).split("\n")[3]?.indexOf("8.6") as number) + 1);
});
