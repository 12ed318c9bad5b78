import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type SourceRange, weigh } from "../../src/cutting/agreement.js";
import { cuttingSpeed } from "../../src/cutting/cuttingSpeeds.js";
import { hazardOf } from "../../src/cutting/hazards.js";
import { knownMaterials } from "../../src/cutting/materials.js";
import { operations } from "../../src/cutting/operations.js";
import { tools } from "../../src/cutting/published/source.js";
import { rpmFor } from "../../src/cutting/rates.js";

const hss = "high-speed steel";
const feet = (value: number) => value * 0.3048;
const middle = (slowest: number, fastest: number) => Math.sqrt(slowest * fastest);

const row = (source: string, more: object = {}) => ({
  ...{ material: "m", tool: "t", operation: "turning", from: 1, to: 1, unit: "m/min", where: "w", source },
  ...{ confidence: "read", ...more },
});
const range = (source: string, slowest: number, fastest: number, more: object = {}): SourceRange =>
  ({ source, slowest, fastest, rows: [row(source, more)] }) as SourceRange;

/** Every cut that the data know a speed for, on a light machine and on a firm one. */
const everyCut = knownMaterials().flatMap((material) =>
  tools.flatMap((tool) =>
    operations.flatMap(({ name, cautious }) => {
      const [light, firm] = (["light", "firm"] as const).map((firmness) =>
        cuttingSpeed(material, tool, name, { diameter: 20, firmness }),
      );
      return light && firm ? [{ cut: `${name} ${material}, ${tool}`, cautious, light, firm }] : [];
    }),
  ),
);

describe("which source is gone by", () => {
  test.each([
    ["names its tool", { toolUnnamed: true }, {}],
    ["prints the figure for this very material", { figureFor: "another" }, {}],
    ["tells roughing from finishing", {}, { namesCut: true }],
  ])("the one that %s, wherever it stands", (_, far, near) => {
    expect(weigh([range("far", 20, 30, far), range("near", 10, 20, near)], false)?.nearest.source).toBe("near");
    expect(weigh([range("near", 10, 20, near), range("far", 20, 30, far)], false)?.nearest.source).toBe("near");
  });

  test("of equals the first; a range before a single figure; where the tool is at risk the most cautious", () => {
    const [first, second] = [range("first", 20, 40), range("second", 15, 30)];
    expect(weigh([first, second], false)?.nearest).toBe(first);
    expect(weigh([first, second], true)?.nearest).toBe(second);
    expect(weigh([range("one figure", 25, 25), second], false)?.nearest).toBe(second);
    expect(weigh([], false)).toBeUndefined();
  });

  test("property: every source either agrees or stands apart, twice or half of the nearest, never both", () => {
    const speed = fc.tuple(fc.double({ min: 1, max: 300, noNaN: true }), fc.double({ min: 1, max: 6, noNaN: true }));
    fc.assert(
      fc.property(fc.array(speed, { minLength: 1, maxLength: 6 }), fc.boolean(), (list, cautious) => {
        const ranges = list.map(([slowest, times], index) => range(String(index), slowest, slowest * times));
        const found = weigh(ranges, cautious);
        if (found === undefined) throw new Error("one source at least");
        expect([...found.agreeing, ...found.apart].map(({ source }) => source).sort()).toEqual(
          ranges.map(({ source }) => source).sort(),
        );
        expect(found.agreeing).toContain(found.nearest);
        const by = ({ slowest, fastest }: SourceRange) =>
          middle(slowest, fastest) / middle(found.nearest.slowest, found.nearest.fastest);
        for (const one of found.agreeing) expect(Math.abs(Math.log2(by(one)))).toBeLessThan(1);
        for (const one of found.apart) expect(Math.abs(Math.log2(by(one)))).toBeGreaterThanOrEqual(1);
      }),
    );
  });
});

describe("what is aimed at", () => {
  test.each([
    // Material, operation, most on a light machine, on a firm one, what it goes by, what stands apart.
    ["mild steel", "turning", 35, 45, "TUT17", ["JONES1914"]],
    ["grey cast iron", "turning", 26, 30, "TUT17", []],
    ["aluminium", "turning", 105, 150, "TUT17", []],
    ["brass", "turning", 82.5, 120, "TUT17", []],
    ["stainless steel", "turning", feet(30), feet(40), "TO1-1A-9", []],
    ["stainless steel", "finish turning", feet(65), feet(80), "TO1-1A-9", []],
    ["mild steel", "drilling", feet(95), feet(110), "NAVY14345", []],
    ["stainless steel", "drilling", feet(35), feet(40), "NAVY14345", []],
    ["bronze", "tapping", feet(13), feet(16), "CLARKSON", ["LAVALLEE"]],
  ])("%s, %s: at most %f m/min on a light machine, %f on a firm one, as %s prints it", (...cut) => {
    const [material, operation, light, firm, nearest, apart] = cut;
    const found = cuttingSpeed(material, hss, operation);
    expect(found?.most).toBeCloseTo(light, 9);
    expect(found?.nearest).toBe(nearest);
    expect(found?.apart.map(({ source }) => source)).toEqual(apart);
    expect(cuttingSpeed(material, hss, operation, { firmness: "firm" })?.most).toBeCloseTo(firm, 9);
  });

  test("mild steel: the teaching sheet's 25 to 45 m/min, and 45 to 65 ft/min of 1914 beside it, not in it", () => {
    const found = cuttingSpeed("mild steel", hss, "turning");
    expect(found).toMatchObject({ slowest: 25, fastest: 45, confidence: "read", sources: ["TUT17"] });
    expect(found?.apart).toMatchObject([
      { slowest: expect.closeTo(feet(45), 9), fastest: expect.closeTo(feet(65), 9) },
    ]);
  });

  test("stainless steel is roughed at 20 to 40 ft/min, not at the 50 to 80 of finishing (T.O. 1-1A-9, table 2-8)", () => {
    expect(cuttingSpeed("stainless steel", hss, "turning")?.fastest).toBeLessThan(feet(60));
    for (const operation of ["facing", "boring", "parting"])
      expect(cuttingSpeed("stainless steel", hss, operation)?.most, operation).toBeLessThanOrEqual(feet(30) + 1e-9);
  });

  test("in every cut a light machine stays in the lower half of the source gone by, and a firm one within its range", () => {
    expect(everyCut.length).toBeGreaterThan(300);
    for (const { cut, light, firm } of everyCut) {
      expect(light.most, cut).toBeLessThanOrEqual(firm.most * (1 + 1e-12));
      expect(light.most, cut).toBeGreaterThanOrEqual(light.slowest * (1 - 1e-12));
      expect(firm.most, cut).toBeLessThanOrEqual(firm.fastest * (1 + 1e-12));
      expect(light.nearest, cut).toBe(firm.nearest);
    }
  });

  test("where the tool is at risk no source is exceeded, those apart neither", () => {
    const risky = everyCut.filter(({ cautious }) => cautious);
    expect(risky.some(({ firm }) => firm.apart.length > 0)).toBe(true);
    for (const { cut, firm } of risky)
      for (const { fastest } of firm.apart) expect(firm.most, cut).toBeLessThanOrEqual(fastest);
  });

  test("a range is used up to its middle where one source gives it alone", () => {
    for (const { cut, light, firm } of everyCut) {
      if (new Set(firm.rows.map(({ source }) => source)).size !== 1 || hazardOf(firm.material)?.fastest) continue;
      expect(light.most, cut).toBeCloseTo((firm.slowest + firm.fastest) / 2, 6);
    }
  });

  test("no tool, operation or factor takes a material beyond the speed above which its chips catch fire", () => {
    const fires = everyCut.filter(({ light }) => hazardOf(light.material)?.fastest !== undefined);
    expect(fires.length).toBeGreaterThan(10);
    for (const { cut, light, firm } of fires)
      for (const band of [light, firm])
        for (const speed of [band.slowest, band.most, band.fastest])
          expect(speed, cut).toBeLessThanOrEqual(feet(700) + 1e-9);
    expect(cuttingSpeed("magnesium", "carbide", "drilling", { firmness: "firm" })?.most).toBeLessThanOrEqual(feet(700));
  });

  test("a spindle speed stands for just the cutting speed that is aimed at, whatever the tool, the operation and the factor", () => {
    const wood = tools.flatMap((tool) =>
      operations.flatMap(({ name }) =>
        [20, 40, 75].flatMap((diameter) =>
          [1, 0.5].flatMap((derating) => {
            const band = cuttingSpeed("hard wood", tool, name, { diameter, derating });
            return band?.rpm
              ? [{ cut: `${name}, ${tool}, ${diameter} mm, × ${derating}`, band, rpm: band.rpm, diameter }]
              : [];
          }),
        ),
      ),
    );
    expect(wood.length).toBeGreaterThan(20);
    for (const { cut, band, rpm, diameter } of wood) {
      expect(rpm.most, cut).toBeCloseTo(rpmFor(band.most, diameter), 6);
      expect(rpm.slowest, cut).toBeCloseTo(rpmFor(band.slowest, diameter), 6);
      expect(rpm.most, cut).toBeLessThanOrEqual(3000);
    }
  });

  test("the file's factor goes on every published speed, knurling too", () => {
    for (const { light } of everyCut) {
      const { material, tool, operation } = light;
      const half = cuttingSpeed(material, tool, operation, { diameter: 20, derating: 0.5 });
      const limit = hazardOf(material)?.fastest ?? Number.POSITIVE_INFINITY;
      if (light.fastest < limit) expect(half?.most, `${operation} ${material}`).toBeCloseTo(light.most / 2, 9);
    }
  });
});
