import { expect, test } from "vitest";
import { drillSizes } from "../../src/cutting/drillSizes.js";

test("each system rises, and holds as many drills as it has", () => {
  for (const [system, count] of [
    ["metric", 200],
    ["fraction", 128],
    ["number", 80],
    ["letter", 26],
  ] as const) {
    const sizes = drillSizes(system, 0, 1000);
    expect(sizes, system).toHaveLength(count);
    for (const [index, { diameter }] of sizes.entries())
      expect(diameter, system).toBeGreaterThan(sizes[index - 1]?.diameter ?? 0);
  }
});

test("letter drills follow the number drills without a gap, and E is a quarter inch (memory, ASME B94.11M)", () => {
  const largest = drillSizes("number", 0, 100).at(-1);
  const [smallest] = drillSizes("letter", 0, 100);
  expect(largest?.name).toBe("no. 1");
  expect((smallest?.diameter ?? 0) - (largest?.diameter ?? 0)).toBeLessThan(0.2);
  expect(drillSizes("letter", 6.34, 6.36)).toEqual([{ name: "E", diameter: expect.closeTo(6.35, 9) }]);
  expect(drillSizes("fraction", 12.6, 12.8)).toEqual([{ name: "1/2", diameter: expect.closeTo(12.7, 9) }]);
  expect(drillSizes("fraction", 26.9, 27.1)[0]?.name).toBe("1-1/16");
});
