import { expect, test } from "vitest";
import { rowsTooLow } from "../../src/dial/bandRoom.js";
import { dialFinding } from "../../src/dial/dialFinding.js";
import type { DialWish } from "../../src/machine/machine.js";
import { drum, handwheel, paper } from "./dials.js";

const INCH = 25.4;
const dialOf = (perTurn: number, wish: DialWish, units: "mm" | "in" = "in") =>
  dialFinding(handwheel(wish), { perTurn, from: "stated" }, paper, units);

test("rows alone take the file's unit, and more than one of them", () => {
  const dial = dialOf(0.1024 * INCH, drum(31.75, { closure: "rows" }));
  expect(dial?.chosen).toMatchObject({ closure: "rows", unit: "in", rows: 2 });
});

test("where one row closes as well it is called what it is: even", () => {
  const dial = dialOf(0.1 * INCH, drum(31.75, { closure: "rows", divisions: 0.001 * INCH }));
  expect(dial?.chosen).toMatchObject({ closure: "even", rows: 1, divisions: 100 });
});

test("five rows on a low band are told of, with the width that would do, and that width does", () => {
  const wish = { closure: "rows", divisions: 0.001 * INCH } as const;
  const low = dialOf(0.0512 * INCH, drum(90, { ...wish, width: 14 }));
  expect(low?.chosen.rows).toBe(5);
  const told = low && rowsTooLow(low);
  expect(told).toMatchObject({ rows: 5, fit: 4 });
  const wide = dialOf(0.0512 * INCH, drum(90, { ...wish, width: told?.least ?? 0 }));
  expect(wide && rowsTooLow(wide)).toBeUndefined();
});

test("rows that are too low are never offered, nor taken where only rows are asked for", () => {
  for (const width of [4, 6, 9, 14]) {
    const dial = dialOf(0.0512 * INCH, drum(90, { closure: "rows", width }));
    expect(dial && rowsTooLow(dial)).toBeUndefined();
    for (const choice of dialOf(0.0512 * INCH, drum(90, { width }))?.choices ?? [])
      expect(choice.rows === 1 || width / choice.rows > 2.5).toBe(true);
  }
});

test("rows that only its height forbids are told of where a dial begins again, and with the width that is told they are offered", () => {
  const wide = (width: number) => dialOf(INCH / 12, drum(44.45, { width }));
  const low = wide(8.9)?.rowsWithoutRoom;
  expect(low?.choice).toMatchObject({ closure: "rows", rows: 3, divisions: 250, errorPerTurn: 0 });
  const enough = wide(low?.width ?? 0);
  expect(enough?.rowsWithoutRoom?.width).toBeUndefined();
  const asked = dialOf(INCH / 12, drum(44.45, { width: low?.width ?? 0, closure: "rows", divisions: 0.001 * INCH }));
  expect(asked?.chosen.rows).toBe(3);
  expect(asked && rowsTooLow(asked)).toBeUndefined();
  // Nothing to tell where the dial never begins again.
  expect(dialOf(0.1 * INCH, drum(31.75, { width: 4 }))?.rowsWithoutRoom).toBeUndefined();
});
