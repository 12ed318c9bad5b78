import { expect, test } from "vitest";
import { cuttingSpeed } from "../../src/cutting/cuttingSpeeds.js";
import { hazardOf } from "../../src/cutting/hazards.js";
import { coolant, findMaterial, knownMaterials } from "../../src/cutting/materials.js";
import { hazards } from "../../src/cutting/published/hazards.js";
import { knownSources } from "../../src/cutting/sources.js";

test("magnesium: below 700 ft/min, dry, no fine feed, dull tool or dwell; chips swept dry; sand or a metal-fire extinguisher, never water or foam (USAF T.O. 1-1A-9, ch. 4, safety practices; read)", () => {
  const found = hazardOf("magnesium");
  expect(found).toMatchObject({ source: "TO1-1A-9", confidence: "read", burnsWhenFine: true });
  for (const word of [/700 ft\/min/, /dry/, /no fine feed/, /sharp tools/i, /no dwell/, /sand/, /never water.* foam/])
    expect(found?.caution).toMatch(word);
  expect(coolant("magnesium")?.words).toMatch(/dry; never water/);
  for (const tool of ["high-speed steel", "carbide"])
    expect(cuttingSpeed("magnesium", tool, "turning")?.most).toBeLessThanOrEqual(700 * 0.3048 + 1e-9);
});

test.each([
  ["AZ31 magnesium alloy", "Magnesium"],
  ["AZ91D", "Magnesium"],
  ["AZ 31", "Magnesium"],
  ["MgAl3Zn1", "Magnesium"],
  ["magnésium", "Magnesium"],
  ["Ti grade 2", "Titanium"],
  ["Ti6Al4V", "Titanium"],
  ["Zr 702", "Zirconium"],
  ["BeCu", "Beryllium"],
  ["CuBe2", "Beryllium"],
  ["Be-Cu rod", "Beryllium"],
  ["CuBe", "Beryllium"],
  ["AlBe62", "Beryllium"],
  ["polytetrafluoroethylene", "Fluoroplastics"],
  ["rosewood", "Wood"],
  ["Ti-6Al-4V", "Titanium"],
  ["zirconium 702", "Zirconium"],
  ["Beryllium copper", "Beryllium"],
  ["C17200", "Beryllium"],
  ["PVDF", "Fluoroplastics"],
  ["rigid PVC", "PVC"],
  ["hardwood", "Wood"],
  ["yew", "Wood"],
])("%s is known by its name, in the data or not: %s", (name, material) =>
  expect(hazardOf(name)?.material).toBe(material),
);

test.each([
  ["magnezium", "Magnesium"],
  ["magnesuim AZ", "Magnesium"],
  ["titanum bar", "Titanium"],
  ["zirkonium", "Zirconium"],
  ["berylium copper", "Beryllium"],
])("%s resembles one, so it is taken for it: %s", (name, material) => expect(hazardOf(name)?.material).toBe(material));

test("of the materials with a cutting speed only these burn or poison", () =>
  expect(knownMaterials().filter((name) => hazardOf(name) !== undefined)).toEqual([
    "rigid PVC",
    "magnesium",
    "PTFE",
    "hard wood",
  ]));

test.each([
  "mild steel",
  "brass",
  "aluminium",
  "Wood's metal",
  "Wood’s metal",
  "manganese bronze",
  "zinc alloy",
  "ZA27",
  "EN8",
  "tin bronze",
  "chromium steel",
  "silver steel",
  "CuSn8",
  "aluminium bronze",
  "C45",
  "brass, may be leaded",
  "brass cube",
])("%s is none of them", (name) => expect(hazardOf(name)).toBeUndefined());

test("every caution names where it is from, and says honestly what was not read", () => {
  for (const { source, where, confidence } of hazards) {
    expect(knownSources()).toContain(source);
    expect(where).not.toBe("");
    expect(confidence).toBe(source === "TO1-1A-9" ? "read" : "memory");
  }
});

test("alloys of what burns resolve to their metal", () => {
  expect(findMaterial("Magnesium alloy")).toBe("magnesium");
  expect(findMaterial("titanium alloys")).toBe("titanium");
  expect(findMaterial("BeCu")).toBe("beryllium copper");
});
