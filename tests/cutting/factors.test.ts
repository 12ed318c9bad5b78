import { describe, expect, test } from "vitest";
import { cuttingSpeed } from "../../src/cutting/cuttingSpeeds.js";
import { leastFeed } from "../../src/cutting/feeds.js";
import { knownTools } from "../../src/cutting/tools.js";

const hss = "high-speed steel";

describe("of several published factors the safe side, said with where it is from", () => {
  test("parting: all of the turning speed is printed (TM 1-420, par. 32d), half to two thirds is common practice and rules", () => {
    expect(cuttingSpeed("mild steel", hss, "parting")?.factors).toEqual([
      { what: "parting", from: 0.5, to: 0.67, source: "COMMON", confidence: "memory" },
    ]);
  });

  test("turning with carbide: 3 to 6 times was read (TUT17), 2 to 3 times is from memory (TC 9-524, ch. 7) and rules", () => {
    const found = cuttingSpeed("cast bronze", "carbide", "turning") ?? cuttingSpeed("tool steel", "carbide", "turning");
    expect(found?.factors).toEqual([{ what: "carbide", from: 2, to: 3, source: "TC9-524", confidence: "memory" }]);
    expect(found?.confidence).toBe("memory");
  });

  test("what was read alone is told as read: a carbon steel drill at half (NAVY14345)", () => {
    expect(cuttingSpeed("brass", "carbon steel", "drilling")?.factors).toEqual([
      { what: "carbon steel", from: 0.5, to: 0.5, source: "NAVY14345", confidence: "read" },
    ]);
  });

  test("a tap is not turned faster for being of carbide", () => {
    expect(cuttingSpeed("mild steel", "carbide", "tapping")).toBeUndefined();
    expect(cuttingSpeed("mild steel", hss, "tapping")).toBeDefined();
  });
});

test("a least feed is known for what burns when fine, and for nothing else", () => {
  expect(leastFeed("magnesium")?.from).toBeGreaterThan(0);
  expect(leastFeed("brass")).toBeUndefined();
  expect(leastFeed("what nobody knows")).toBeUndefined();
});

test("the tools that have figures are told by name", () => {
  expect(knownTools()).toEqual(expect.arrayContaining([hss, "carbon steel", "carbide"]));
});
