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
  ["in", "[90, 120]", 27.432, "brass, 90–120 ft/min"],
  ["mm", "[90, 120]", 90, "brass, 90–120 m/min"],
  ["in", "[25 m/min, 35 m/min]", 25, "brass, 25–35 m/min"],
  ["in", "[25, 35 m/min]", 25, "brass, 25–35 m/min"],
  ["mm", "[100 ft/min, 35 m/min]", 30.48, "brass, 100 ft/min – 35 m/min"],
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
    // In the unit of the file's reader alone.
    const inches = findingsOf(
      `name: L\nunits: in\nwork: { materials: [${material}], cuttingSpeeds: [{ material: ${material}, speed: [600, 1000] }] }\n`,
    );
    expect(remarks(inches)).toMatchObject([
      { code: "may-burn", what: expect.stringMatching(/up to 1000 ft\/min, and above 700 ft\/min/) },
    ]);
    expect(remarks(found("[150, 213]"))).toEqual([]);
  },
);

test.each([
  ["mm", "[80, 120]", '80 to 120 m/min for "mild steel" is 2.9 times what is published, 25 to 45 m/min'],
  ["in", "[24, 36]", '24 to 36 ft/min for "mild steel" is 0.3 times'],
  ["mm", "[20, 60]", undefined],
  ["in", "[80, 150]", undefined],
])("in a file in %s own speeds of %s beside the published ones: %s", (units, speed, words) => {
  const found = remarks(
    findingsOf(
      `name: L\nunits: ${units}\nwork: { materials: [mild steel], cuttingSpeeds: [{ material: mild steel, speed: ${speed} }] }\n`,
    ),
  ).filter(({ code }) => code === "unlikely-speed");
  if (words === undefined) expect(found).toEqual([]);
  else expect(found[0]?.what).toContain(words);
});
