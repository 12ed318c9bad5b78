import { describe, expect, test } from "vitest";
import { textWidth } from "../../src/drawing/text.js";
import { toDegrees } from "../../src/quantity/angle.js";
import { pdfOf } from "../support/pdfOf.js";
import { readPdf } from "../support/readPdf.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

const machine = (taper: string, name = "gauge") => findingsOf(`name: L\ntapers: [{ name: "${name}", ${taper} }]\n`);

/** Strokes and texts of the page that bears the gauge, and where its low corner is. */
async function gaugeOf(findings: ReturnType<typeof findingsOf>) {
  const { pages } = await readPdf(await pdfOf(printOf(findings, "tapers")));
  const [page, ...more] = pages.filter(({ texts }) => texts.some(({ text }) => text === "Paper gauges of the swing"));
  if (page === undefined || more.length > 0) throw new Error("no gauge, or two");
  const heading = page.texts.find(({ text }) => text === "Paper gauges of the swing");
  const slanted = page.lines.filter(
    ({ from, to }) => Math.abs(to.x - from.x) > 5 && Math.abs(to.y - from.y) > 0.1 && from.y > (heading?.y ?? 0),
  );
  expect(slanted).toHaveLength(1);
  const [edge] = slanted;
  if (edge === undefined) throw new Error("no edge");
  return { page, edge };
}

describe("the angle gauge, read back from the PDF", () => {
  test.each([
    ["just steep enough", "half: 3 deg", (3 * Math.PI) / 180],
    ["of three sizes", "large: 20, small: 14, length: 25", Math.atan(0.12)],
    ["by feet", "perFoot: 3.5", Math.atan(3.5 / 24)],
    ["steep", "included: 80 deg", (40 * Math.PI) / 180],
    ["steeper", "included: 150 deg", (75 * Math.PI) / 180],
  ])("%s: its long edges differ by just the half angle, to 0.001 mm over its length", async (_, taper, angle) => {
    const { page, edge } = await gaugeOf(machine(taper));
    const run = edge.to.x - edge.from.x;
    const rise = edge.from.y - edge.to.y;
    expect(Math.abs(rise - run * Math.tan(angle))).toBeLessThan(0.001);
    // Long enough to lay a slide along.
    expect(Math.hypot(run, rise)).toBeGreaterThan(30);
    // The other long edge is level: the angle lies between them.
    const level = page.lines.filter(
      ({ from, to }) =>
        Math.abs(from.y - to.y) < 1e-6 && Math.abs(Math.abs(to.x - from.x) - run) < 1e-3 && from.y > edge.from.y,
    );
    expect(level.length).toBeGreaterThan(0);
  });

  test("its cut is a thin line, which is the gauge's edge and is said to be", async () => {
    const { edge } = await gaugeOf(machine("half: 6 deg"));
    expect(edge.pen).toBeCloseTo(0.1, 3);
    expect(textsOf(machine("half: 6 deg"), "tapers")).toContain(
      "Cut on the thin line itself: here the edge is the gauge.",
    );
  });

  test.each([
    ["6 deg", "plug", 1],
    ["6 deg", "a".repeat(60), 0],
    ["79 deg", "plug", 0],
  ])(
    "half %s, name %s: what does not fit inside stands outside the cut, and nothing is lost",
    async (half, name, inside) => {
      const { page, edge } = await gaugeOf(machine(`half: ${half}`, name));
      const bottom = edge.from.y + 10;
      const within = page.texts.filter(({ y }) => y > edge.to.y && y < bottom);
      // Clear of both upright cuts, a little more than the thickness of scissors.
      for (const { x, text, size } of within) {
        expect(x - edge.from.x).toBeGreaterThan(2);
        expect(edge.to.x - x - textWidth(text, size, "regular")).toBeGreaterThan(2);
      }
      expect(within.filter(({ text }) => text.includes(name))).toHaveLength(inside);
      const below = page.texts.filter(({ y }) => y > bottom).map(({ text }) => text);
      expect(below.join("").replaceAll(" ", "")).toContain(inside ? "higher" : `${name}:swing`);
    },
  );

  test("of an angle that scissors cannot show there is none, and the sheet says of which and why", async () => {
    for (const taper of ["half: 2.99 deg", "large: 20, small: 17.5, length: 25", "perFoot: 0.59941"]) {
      const findings = machine(taper);
      const [{ halfAngle = 0 } = {}] = findings.machine.tapers ?? [];
      const { pages } = await readPdf(await pdfOf(printOf(findings, "tapers")));
      expect(pages.flatMap(({ texts }) => texts).some(({ text }) => text.startsWith("Paper gauges"))).toBe(false);
      expect(textsOf(findings, "tapers")).toContain(
        `No paper gauge of gauge (${toDegrees(halfAngle).toFixed(3)}°): under 3° of swing scissors are too coarse.`,
      );
    }
  });
});

describe("which way to swing", () => {
  const words = textsOf(machine("half: 6 deg"), "tapers");
  test.each([
    ["free end small", "top slide: swing anticlockwise"],
    ["chuck end small", "top slide: swing clockwise"],
    ["free end small", "headstock: swing clockwise"],
    ["chuck end small", "headstock: swing anticlockwise"],
  ])("%s: %s", (end, way) => expect(words).toContain(`${end} ${way}`));

  test.each(["A4", "A5", "Letter"])("no label touches another on %s", async (size) => {
    const findings = findingsOf(`name: L\npaper: { size: ${size} }\n`);
    const { pages } = await readPdf(await pdfOf(printOf(findings, "tapers")));
    const labels = (pages[0]?.texts ?? []).filter(({ text }) => /clockwise|end small/.test(text));
    expect(labels).toHaveLength(8);
    for (const [index, one] of labels.entries())
      for (const other of labels.slice(index + 1))
        if (Math.abs(one.y - other.y) < 3) expect(Math.abs(one.x - other.x)).toBeGreaterThan(45);
  });
});

test("a slide that cannot go so far is told in signs, and they are explained", () => {
  const [far, near] = [5, 60].map((travel) =>
    textsOf(
      findingsOf(
        `name: L\nhandwheels: [{ name: Top slide, travel: ${travel}, feed: 2 mm }]\ntapers: [{ name: T, large: 20, small: 17.5, length: 25 }]\n`,
      ),
      "tapers",
    ),
  );
  expect(far).toMatch(/12\.52 2 settings .*2 settings: the slide goes only 5 mm\./);
  expect(near).not.toContain("2 settings");
});

describe("inches per foot", () => {
  const words = textsOf(
    findingsOf(
      "name: L\nunits: in\ntapers:\n  - { name: pipe, perFoot: 3/4 }\n  - { name: steep, perFoot: 3 1/2 }\n  - { name: odd, perFoot: 0.6 }\n",
    ),
    "tapers",
  );
  test("may be given as a fraction, and stand as one beside the decimals where they are exact", () => {
    expect(words).toMatch(/pipe 16\.000 0\.7500 3\/4 /);
    expect(words).toMatch(/steep 3\.429 3\.5000 3 1\/2 /);
  });
  test("others are decimals alone", () => expect(words).toMatch(/odd 20\.000 0\.6000 2\.864/));
  test("what is no number is refused with what would be right", () =>
    expect(() => findingsOf("name: L\ntapers: [{ name: t, perFoot: three }]\n")).toThrow(/0\.75 or 3\/4/));
});
