import { describe, expect, test } from "vitest";
import { cuttingSpeed } from "../../src/cutting/cuttingSpeeds.js";
import { cuttingSpeeds, publishedFeeds } from "../../src/cutting/data.js";
import { feedPerRevolution } from "../../src/cutting/feeds.js";
import { hazardOf } from "../../src/cutting/hazards.js";
import { findMaterial, knownMaterials } from "../../src/cutting/materials.js";
import { operations } from "../../src/cutting/operations.js";
import { operationFactors, toolFactors } from "../../src/cutting/published/factors.js";
import { knownSources } from "../../src/cutting/sources.js";

const hss = "high-speed steel";
const feet = (value: number) => value * 0.3048;

describe("the data", () => {
  test("every row names a known source, a place in it, and a range", () => {
    for (const row of cuttingSpeeds) {
      expect(knownSources()).toContain(row.source);
      expect(row.where).not.toBe("");
      expect(row.from).toBeGreaterThan(0);
      expect(row.to).toBeGreaterThanOrEqual(row.from);
    }
    const others = [
      ...publishedFeeds,
      ...Object.values(operationFactors).flatMap(({ rows }) => rows),
      ...Object.values(toolFactors).flatMap(({ turning, drilling }) => [...turning, ...drilling]),
    ];
    for (const { source, where, from, to } of others) {
      expect(knownSources()).toContain(source);
      expect(where).not.toBe("");
      expect(to).toBeGreaterThanOrEqual(from);
    }
  });

  test("every material of a row is known, and every known one has a figure for turning and for drilling", () => {
    for (const { material } of cuttingSpeeds) expect(findMaterial(material)).toBe(material);
    for (const material of knownMaterials()) {
      const tool = material === "wrought iron" ? "carbon steel" : hss;
      expect(cuttingSpeed(material, tool, "turning", { diameter: 20 }), material).toBeDefined();
      if (material !== "hard wood") expect(cuttingSpeed(material, tool, "drilling"), material).toBeDefined();
    }
  });

  test("every operation has a figure in mild steel with high-speed steel, and turning and drilling with every tool", () => {
    for (const { name } of operations)
      expect(cuttingSpeed("mild steel", hss, name, { diameter: 20 }), name).toBeDefined();
    for (const tool of Object.keys(toolFactors))
      for (const operation of ["turning", "drilling"])
        expect(cuttingSpeed("mild steel", tool, operation), `${tool} ${operation}`).toBeDefined();
  });

  test("magnesium carries its fire caution and its ceiling", () => {
    expect(hazardOf("magnesium")?.caution).toMatch(/never water/);
    expect(cuttingSpeed("magnesium", "carbide", "turning", { firmness: "firm" })?.most).toBeCloseTo(feet(700), 9);
  });

  test("names of the trade lead to the data", () => {
    expect(findMaterial("Gunmetal")).toBe("bronze");
    expect(findMaterial("PVC")).toBe("rigid PVC");
    expect(findMaterial("unobtainium")).toBeUndefined();
  });
});

describe("the range", () => {
  test("spans the sources that agree: cast iron, 40 ft/min (Jones 1914) to 30 m/min (teaching sheet)", () => {
    const found = cuttingSpeed("grey cast iron", hss, "turning");
    expect(found).toMatchObject({ slowest: expect.closeTo(feet(40), 9), fastest: 30, confidence: "read" });
    expect(found?.sources).toEqual(["JONES1914", "TUT17"]);
  });

  test("carbon steel drills at half of high-speed steel (NAVY14345)", () => {
    const full = cuttingSpeed("brass", hss, "drilling");
    expect(cuttingSpeed("brass", "carbon steel", "drilling")).toMatchObject({
      slowest: (full?.slowest ?? 0) / 2,
      fastest: (full?.fastest ?? 0) / 2,
      factors: [{ what: "carbon steel", from: 0.5, to: 0.5 }],
    });
  });

  test("reaming at half of drilling (TM 1-420, par. 37)", () => {
    const drilling = cuttingSpeed("mild steel", hss, "drilling");
    expect(cuttingSpeed("mild steel", hss, "reaming")?.fastest).toBeCloseTo((drilling?.fastest ?? 0) / 2, 9);
  });

  test("where the tool is at risk the most cautious source rules: brass is tapped at no more than 65 ft/min", () => {
    const found = cuttingSpeed("brass", hss, "tapping", { firmness: "firm" });
    expect(found?.fastest).toBeCloseTo(feet(200), 9);
    expect(found?.most).toBeCloseTo(feet(65), 9);
  });

  test("memory counts only where nothing was read", () => {
    expect(cuttingSpeed("stainless steel", hss, "turning")?.confidence).toBe("read");
    expect(cuttingSpeed("copper", hss, "turning")?.confidence).toBe("memory");
  });

  test("a factor of the file's is stated, and own rows stand as they are", () => {
    const own = [{ material: "mild steel", slowest: 10, fastest: 20, source: "own trials" }];
    const found = cuttingSpeed("brass", hss, "turning", { derating: 0.8, cuttingSpeeds: own });
    expect(found?.factors).toContainEqual(expect.objectContaining({ what: "derating", from: 0.8 }));
    expect(found?.fastest).toBeCloseTo(120 * 0.8, 9);
    expect(cuttingSpeed("Mild steel", hss, "turning", { derating: 0.8, cuttingSpeeds: own })).toMatchObject({
      slowest: 10,
      fastest: 20,
      sources: ["own trials"],
    });
  });

  test("knurling and wood go by spindle speed", () => {
    expect(cuttingSpeed("brass", hss, "knurling", { diameter: 20 })?.rpm).toEqual({ slowest: 60, most: 70 });
    expect(cuttingSpeed("hard wood", hss, "turning", { diameter: 50 })?.rpm).toEqual({
      slowest: expect.closeTo(2400, 9),
      most: expect.closeTo(2700, 9),
    });
    expect(cuttingSpeed("hard wood", hss, "turning", { diameter: 120 })).toBeUndefined();
  });
});

describe("feed per revolution", () => {
  test("drills by diameter (NAVY14345, drill section)", () => {
    expect(feedPerRevolution("mild steel", "drilling", 25.4 / 8)?.to).toBeCloseTo(0.002 * 25.4, 9);
    expect(feedPerRevolution("mild steel", "drilling", 6)).toMatchObject({ from: 0.002 * 25.4, to: 0.004 * 25.4 });
    expect(feedPerRevolution("mild steel", "drilling", 30)?.from).toBeCloseTo(0.015 * 25.4, 9);
  });

  test("finishing brass at 0.003 to 0.010 in (teaching-lab sheet)", () => {
    expect(feedPerRevolution("brass", "finishing")).toMatchObject({ from: 0.003 * 25.4, to: 0.01 * 25.4 });
  });
});
