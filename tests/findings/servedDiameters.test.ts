import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rangesTold } from "../../src/blocks/speeds/rangeWords.js";
import { makesHoles } from "../../src/findings/drills.js";
import type { Findings } from "../../src/findings/findings.js";
import { LEAST, largestDiameter, servedDiameters } from "../../src/findings/servedDiameters.js";
import { speedFor, speedForHole } from "../../src/findings/speedChoice.js";
import { findingsOf } from "../support/sheets.js";

const materials = ["mild steel", "brass", "aluminium", "magnesium", "stainless steel", "hard wood", "grey cast iron"];
const operations = ["turning", "drilling", "parting", "reaming", "knurling"];

const anyFindings = fc
  .record({
    units: fc.constantFrom("mm", "in"),
    motor: fc.constantFrom("1425", "2850", "[300, 3000]", "[100, 1400]"),
    steps: fc.array(fc.tuple(fc.integer({ min: 30, max: 150 }), fc.integer({ min: 30, max: 150 })), {
      minLength: 1,
      maxLength: 6,
    }),
    geared: fc.boolean(),
    chuck: fc.option(fc.integer({ min: 300, max: 3000 })),
    barrel: fc.boolean(),
    firmness: fc.constantFrom("light", "firm"),
  })
  .map(({ units, motor, steps, geared, chuck, barrel, firmness }) =>
    findingsOf(`name: R
units: ${units}
${chuck === null ? "" : `limits: { chuck: ${chuck} rpm }`}
drive:
  motor: { speed: ${motor} }
  stages:
    - { name: belt, steps: [${steps.map(([driver, driven]) => `{ driver: ${driver} mm, driven: ${driven} mm }`)}] }
${geared ? "    - { name: gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [18, 54]] }] }" : ""}
${barrel ? "handwheels: [{ name: Tailstock barrel, feed: 2.5 mm, travel: 40 mm }]" : ""}
work: { firmness: ${firmness} }
`),
  );

const chosen = (material: string, operation: string, diameter: number, findings: Findings) =>
  (makesHoles(operation) ? speedForHole : speedFor)({ material, operation, diameter }, findings);

/** A diameter by its place between the smallest and the largest, each decade as likely. */
const at = (place: number, operation: string, findings: Findings) =>
  LEAST * (largestDiameter(operation, findings) / LEAST) ** place;

const asked = fc.record({
  findings: anyFindings,
  material: fc.constantFrom(...materials),
  operation: fc.constantFrom(...operations),
  places: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 20, maxLength: 20 }),
});

describe("ranges of diameters are the choice of a speed asked the other way round", () => {
  test("a diameter lies in the range of the position that is chosen for it, and of no other", () => {
    let compared = 0;
    fc.assert(
      fc.property(asked, ({ findings, material, operation, places }) => {
        const pieces = servedDiameters(material, operation, findings);
        for (const place of places) {
          const diameter = at(place, operation, findings);
          const choice = chosen(material, operation, diameter, findings);
          if (pieces === undefined) {
            expect(choice).toBeUndefined();
            continue;
          }
          // Just at an end the last digit of a double decides.
          if (pieces.some(({ to }) => Math.abs(diameter / to - 1) < 1e-8)) continue;
          const own = pieces.filter(({ from, to }) => diameter > from && diameter <= to);
          expect(own.map(({ speed }) => speed?.position.name)).toEqual([choice?.speed?.position.name]);
          if (choice?.speed) compared++;
        }
      }),
      { numRuns: 120 },
    );
    expect(compared).toBeGreaterThan(1000);
  });

  test("an end as printed sends no diameter to a position that is too fast for it", () => {
    let compared = 0;
    fc.assert(
      fc.property(asked, ({ findings, material, operation, places }) => {
        const pieces = servedDiameters(material, operation, findings);
        if (pieces === undefined) return;
        const told = rangesTold(pieces, operation, findings);
        const ends = told.flatMap(({ served: { from, to } }) => [from, to]).filter((end) => end > LEAST);
        for (const diameter of [...places.map((place) => at(place, operation, findings)), ...ends])
          for (const { served } of told.filter(({ served: { from, to } }) => diameter >= from && diameter <= to)) {
            if (served.speed === undefined) continue;
            const choice = chosen(material, operation, diameter, findings);
            // A variable motor is turned down as the figures beneath say.
            expect(served.speed.slowestRpm).toBeLessThanOrEqual((choice?.rpm ?? 0) * (1 + 1e-6));
            compared++;
          }
      }),
      { numRuns: 120 },
    );
    expect(compared).toBeGreaterThan(1000);
  });

  test("a range that there is is told, however coarsely its neighbours are", () => {
    let thin = 0;
    const shares = fc.array(fc.double({ min: 0.2, max: 0.98, noNaN: true }), { minLength: 3, maxLength: 9 });
    fc.assert(
      fc.property(shares, fc.constantFrom("mm", "in"), fc.constantFrom("turning", "drilling"), (falls, units, use) => {
        const findings = findingsOf(
          `name: N\nunits: ${units}\ndrive: { motor: { speed: 1425 }, stages: [{ name: b, steps: [${falls.map((_, at) => `{ driver: ${150 - 12 * at} mm, driven: ${60 + 10 * at} mm }`)}] }] }\n`,
        );
        const speeds = [...(findings.drive?.speeds ?? [])].sort((one, other) => other.rpm - one.rpm);
        const most = largestDiameter(use, findings);
        const ends = falls.map((_, at) => most * falls.slice(at + 1).reduce((product, one) => product * one, 1));
        const pieces = ends.flatMap((to, at) => {
          const speed = speeds[at];
          return speed === undefined ? [] : [{ from: ends[at - 1] ?? 0, to, speed }];
        });
        const told = rangesTold(pieces, use, findings);
        for (const [index, { served }] of told.entries())
          if (index > 0) expect(served.from).toBe(told[index - 1]?.served.to);
        for (const { from, to, speed } of pieces) {
          if (to - from < 0.06) continue;
          const words = told.find(({ served }) => served.speed === speed)?.words;
          expect(words, `${from} to ${to}`).toMatch(/\d/);
          if (to - from < 0.5) thin++;
        }
      }),
      { numRuns: 120, seed: 3 },
    );
    expect(thin).toBeGreaterThan(100);
  });

  test("the figures to set of a variable motor are those chosen at the two ends", () => {
    const findings = findingsOf(
      "name: V\nlimits: { chuck: 2000 }\ndrive: { motor: { speed: [300, 3000] }, stages: [{ name: b, steps: [{ driver: 60, driven: 60 }] }] }\n",
    );
    const [first, ...rest] = servedDiameters("mild steel", "turning", findings) ?? [];
    // At 300 rpm, as slow as it goes, larger work is too fast.
    expect(rest.map(({ speed }) => speed)).toEqual([undefined]);
    expect(first?.rpm?.end).toBeCloseTo(chosen("mild steel", "turning", first?.to ?? 0, findings)?.rpm ?? 0, 6);
    expect(first?.rpm?.at).toBeCloseTo(2000 / ((first?.speed?.highestRpm ?? 0) / (first?.speed?.rpm ?? 1)), 6);
  });
});
