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
