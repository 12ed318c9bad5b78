import { expect, test } from "vitest";
import { dialFinding } from "../../src/dial/dialFinding.js";
import type { DialWish } from "../../src/machine/machine.js";
import { drum, handwheel, paper } from "./dials.js";

const feed = { perTurn: 2.54, from: "stated" as const };

test("no wish, no feed, a feed of zero or a drum of unknown size: no dial", () => {
  expect(dialFinding({ name: "Quill", reads: "travel" }, feed, paper, "mm")).toBeUndefined();
  expect(dialFinding(handwheel(drum(40)), undefined, paper, "mm")).toBeUndefined();
  expect(dialFinding(handwheel(drum(40)), { ...feed, perTurn: 0 }, paper, "mm")).toBeUndefined();
  const sizeless: DialWish = { shape: "drum", width: 9, increases: "clockwise" };
  expect(dialFinding(handwheel(sizeless), feed, paper, "mm")).toBeUndefined();
});

test("a drum's dial has its strip, its marks and the sense of its numbers", () => {
  const dial = dialFinding(handwheel(drum(44, { increases: "anticlockwise" })), feed, paper, "mm");
  expect(dial).toMatchObject({ shape: "drum", forced: false, increases: "anticlockwise", labelUnit: "mm" });
  expect(dial?.stripLength).toBeCloseTo(Math.PI * 44.17, 9);
  expect(dial?.chosen).toBe(dial?.choices[0]);
  expect(dial?.rows.map((row) => row.length)).toEqual([127]);
  expect(dial?.chosen.spacing).toBeCloseTo((Math.PI * 44.17) / 127, 9);
  const angles = dial?.rows[0]?.map((mark) => mark.angle) ?? [];
  expect(angles).toEqual([...angles].sort((a, b) => a - b));
});

test("a measured wrap beats the diameter", () => {
  const dial = dialFinding(handwheel(drum(44, { wrap: 140 } as Partial<DialWish>)), feed, paper, "mm");
  expect(dial?.stripLength).toBe(140);
  expect(dial?.chosen.spacing).toBeCloseTo(140 / 127, 9);
});

test("a dial that reads diameter divides twice the feed", () => {
  const dial = dialFinding(handwheel(drum(44, { divisions: 0.0508 }), "diameter"), feed, paper, "in");
  expect(dial).toMatchObject({ forced: true });
  expect(dial?.chosen).toMatchObject({ closure: "even", divisions: 100, divisionLabel: "0.002 in" });
});

test("face and bevel are read on their larger circle and have no strip", () => {
  const face: DialWish = { shape: "face", outside: 70, inside: 52, increases: "clockwise" };
  const bevel: DialWish = { shape: "bevel", diameter: 44, smallDiameter: 36, width: 8, increases: "clockwise" };
  for (const [wish, diameter] of [
    [face, 70],
    [bevel, 44],
  ] as const) {
    const dial = dialFinding(handwheel(wish), feed, paper, "mm");
    expect(dial?.stripLength).toBeUndefined();
    const { spacing, divisions, rows } = dial?.chosen ?? { spacing: 0, divisions: 0, rows: 0 };
    expect((spacing * divisions) / rows).toBeCloseTo(Math.PI * diameter, 9);
  }
});

test("errors are told over the travel that the file states, or what was measured where that is less than half of it", () => {
  const measured = { from: 5, to: 15, position: 0.001, withinTurn: true, shape: {} };
  const over = (travel: number, known = true) =>
    dialFinding(
      { ...handwheel(drum(40)), travel },
      { perTurn: 2, from: "readings", ...(known && { measured }) },
      paper,
      "mm",
    )?.chosen;
  // Ten turns of 2 mm were read.
  expect(over(41)).toMatchObject({ overTravel: 20, measuredOnly: true });
  expect(over(41, false)?.overTravel).toBe(41);
  for (const travel of [5, 30, 40]) {
    expect(over(travel)?.overTravel).toBe(travel);
    expect(over(travel)).not.toHaveProperty("measuredOnly");
  }
  expect(dialFinding(handwheel(drum(40)), { perTurn: 2, from: "stated" }, paper, "mm")?.chosen.overTravel).toBe(25);
});
