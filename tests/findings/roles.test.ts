import { expect, test } from "vitest";
import { crossSlide, drillingWheel, isAcross, wheelFor, wheelNamed, wheelToLearnOn } from "../../src/findings/roles.js";
import { findingsOf } from "../support/sheets.js";

const wheels = (...lines: readonly string[]) =>
  findingsOf(`name: L\nhandwheels:\n${lines.map((line) => `  - { ${line} }\n`).join("")}`).handwheels;
const name = (wheel: ReturnType<typeof crossSlide>) => wheel?.handwheel.name;

test("a wheel is known by its name, across also by what its dial reads; without a feed it has no role", () => {
  const list = wheels("name: Cross slide", "name: Facing, reads: diameter, feed: 2 mm", "name: Saddle, feed: 40 mm");
  expect(crossSlide(list)).toBeUndefined();
  expect(name(wheelFor("across", list))).toBe("Facing");
  expect(name(wheelFor("along", list))).toBe("Saddle");
  expect(list.map(isAcross)).toEqual([true, true, false]);
});

test("without a carriage the top slide measures lengths; without one across one learns on the first with a feed", () => {
  const list = wheels("name: Spare", "name: Quill, feed: 40 mm", "name: Top slide, feed: 1.5 mm");
  expect(name(wheelFor("along", list))).toBe("Top slide");
  expect(name(wheelToLearnOn(list, "turning"))).toBe("Quill");
  expect(name(drillingWheel(list))).toBe("Quill");
  expect(name(wheelNamed("Spare", list))).toBe("Spare");
  expect(wheelNamed(undefined, list)).toBeUndefined();
});

test("the usual names of another language give the same roles", () => {
  const list = wheels("name: Planschlitten, feed: 2 mm", "name: Oberschlitten, feed: 1 mm", "name: Pinole, feed: 3 mm");
  expect(name(crossSlide(list))).toBe("Planschlitten");
  expect(name(wheelFor("swivelled", list))).toBe("Oberschlitten");
  expect(name(drillingWheel(list))).toBe("Pinole");
  expect(list.map(isAcross)).toEqual([true, false, false]);
});

test("what a wheel moves comes from the file, whatever the wheels are called", () => {
  const list = wheels(
    "name: Cross slide, moves: along, feed: 1 mm",
    "name: Tailstock barrel, moves: across, feed: 2 mm",
    "name: Carriage, moves: quill, feed: 3 mm",
    "name: Left, moves: angled, feed: 4 mm",
  );
  expect(name(crossSlide(list))).toBe("Tailstock barrel");
  expect(name(wheelFor("across", list))).toBe("Tailstock barrel");
  expect(name(wheelFor("along", list))).toBe("Cross slide");
  expect(name(wheelFor("swivelled", list))).toBe("Left");
  expect(name(drillingWheel(list))).toBe("Carriage");
  expect(name(wheelToLearnOn(list, "turning"))).toBe("Tailstock barrel");
  expect(name(wheelToLearnOn(list, "drilling"))).toBe("Carriage");
  expect(list.map(isAcross)).toEqual([false, true, false, false]);
});

test("a wheel that says what it moves has no other role by its name or by reading diameter", () => {
  const list = wheels("name: Cross slide, moves: barrel, reads: diameter, feed: 2 mm");
  expect(crossSlide(list)).toBeUndefined();
  expect(wheelFor("across", list)).toBeUndefined();
  expect(list.map(isAcross)).toEqual([false]);
});

test("where one says it no other is guessed, though the one had no feed yet", () => {
  const list = wheels(
    "name: Front, moves: across",
    "name: Cross slide, feed: 2 mm",
    "name: X, reads: diameter, feed: 1",
  );
  expect(crossSlide(list)).toBeUndefined();
  expect(wheelFor("across", list)).toBeUndefined();
  expect(name(wheelFor("across", list.slice(1)))).toBe("Cross slide");
});

test("a barrel or a quill feeds the drill: one that is said before one that is named so, else the first", () => {
  const quill = "name: Quill, feed: 40 mm";
  const barrel = "name: Tailstock, feed: 2 mm";
  expect(name(drillingWheel(wheels(quill, barrel)))).toBe("Quill");
  expect(name(drillingWheel(wheels(barrel, quill)))).toBe("Tailstock");
  expect(name(drillingWheel(wheels(barrel, "name: Lever, moves: quill, feed: 40 mm")))).toBe("Lever");
  expect(name(drillingWheel(wheels("name: Tailstock, moves: barrel", quill)))).toBe("Quill");
});

test("of wheels that read diameter one named for another slide comes last", () => {
  const top = "name: Top slide, reads: diameter, feed: 1 mm";
  expect(name(wheelFor("across", wheels(top)))).toBe("Top slide");
  expect(name(wheelFor("across", wheels(top, "name: Facing, reads: diameter, feed: 2 mm")))).toBe("Facing");
});
