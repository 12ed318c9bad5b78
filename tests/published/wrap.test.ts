import { expect, test } from "vitest";
import { wrapLength } from "../../src/dial/strip.js";

test("iron hoop, outside 16.5 in, 0.875 in thick: 4 ft 1 in round its middle (engineers' pocket book, p. 55)", () => {
  const inches = wrapLength({ diameter: 16.5 - 2 * 0.875, adhesive: 0, paper: 0.875 });
  expect(inches).toBeCloseTo(Math.PI * 15.625, 12);
  expect(Math.round(inches)).toBe(4 * 12 + 1);
});

test("a circle of 7 in is 21.9912 in round (Longfield, Sheet Metal Drafting, girth of a cylinder)", () => {
  expect(wrapLength({ diameter: 7, adhesive: 0, paper: 0 })).toBeCloseTo(21.9912, 3);
});

test("a strip outside a ring needs the length at mid-thickness: inside diameter + t is outside diameter − t (rule of Cyclopedia of Drawing, 1906; sizes ours)", () => {
  const inside = 48;
  const thickness = 0.5;
  const length = wrapLength({ diameter: inside, adhesive: 0, paper: thickness });
  expect(length).toBeCloseTo(Math.PI * (inside + 2 * thickness - thickness), 2);
  expect(length - Math.PI * inside).toBeCloseTo(Math.PI * thickness, 4);
});

test("paper of 0.1 mm on a drum of 40 mm: 125.664 becomes 125.978 mm, a quarter of a division in 100 (computed)", () => {
  const bare = wrapLength({ diameter: 40, adhesive: 0, paper: 0 });
  const papered = wrapLength({ diameter: 40, adhesive: 0, paper: 0.1 });
  expect(bare).toBeCloseTo(125.664, 3);
  expect(papered).toBeCloseTo(125.978, 3);
  expect((100 * (papered - bare)) / bare).toBeCloseTo(0.25, 6);
});
