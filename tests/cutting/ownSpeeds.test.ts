import { expect, test } from "vitest";
import { remarks } from "../../src/findings/remarks.js";
import { bandFor } from "../../src/findings/speedChoice.js";
import { findingsOf } from "../support/sheets.js";

/** The band for brass of a file whose own row gives this speed. */
const band = (units: string, speed: string) =>
  bandFor(
    { operation: "turning", material: "brass", diameter: 10 },
    findingsOf(
      `name: L\nunits: ${units}\nwork: { materials: [brass], cuttingSpeeds: [{ material: brass, speed: ${speed} }] }\n`,
    ),
  );

test.each([
  ["in", "[90, 120]", 27.432, "brass, 90 to 120 ft/min"],
  ["mm", "[90, 120]", 90, "brass, 90 to 120 m/min"],
  ["in", "[25 m/min, 35 m/min]", 25, "brass, 25 to 35 m/min"],
  ["in", "[25, 35 m/min]", 25, "brass, 25 to 35 m/min"],
  ["mm", "[100 ft/min, 35 m/min]", 30.48, "brass, 100 ft/min to 35 m/min"],
])(
  "in a file in %s the speeds %s begin at %f m/min, and paper says how they were read",
  (units, speed, least, words) => {
    const found = band(units, speed);
    expect(found?.slowest).toBeCloseTo(least, 9);
    expect(found?.sources).toEqual([`the machine file (${words})`]);
  },
);

test.each(["magnesium", "magnesium AZ31"])(
  "a row of one's own does not bring %s above 700 ft/min, and is questioned (USAF T.O. 1-1A-9, ch. 4, safety practices; read)",
  (material) => {
    const found = (speed: string) =>
      findingsOf(
        `name: L\nwork: { materials: [${material}], cuttingSpeeds: [{ material: ${material}, speed: ${speed} }] }\n`,
      );
    const wild = found("[200, 900]");
    expect(bandFor({ operation: "turning", material, diameter: 10 }, wild)).toMatchObject({
      slowest: 200,
      fastest: expect.closeTo(213.36, 9),
      most: expect.closeTo(213.36, 9),
    });
    expect(remarks(wild)).toMatchObject([{ severity: "warning", code: "may-burn" }]);
    expect(remarks(found("[150, 213]"))).toEqual([]);
  },
);
