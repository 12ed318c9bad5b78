import { describe, expect, test } from "vitest";
import { dialLegend } from "../../src/blocks/dial/dialWords.js";
import { ofText } from "../../src/findings/ofText.js";
import { remarks } from "../../src/findings/remarks.js";
import { doubtToRead } from "../../src/findings/settings.js";
import { readJob } from "../../src/job/read.js";
import { normal, rounded, seeded } from "../feed/screws.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

const job = readJob(
  "name: Pin\nmaterial: mild steel\nbar: { diameter: 16, out: 45 }\nsteps:\n  - { do: turn, from: 16, to: 10, length: 20, cut: 0.5, finish: 0.1 }\n",
).job;

/** A carriage whose way out was read at these turns, where it truly stands. */
function carriage(
  turns: readonly number[],
  travelAt: (turn: number) => number,
  dial = "",
  { wheel = "travel: 50", told = "" } = {},
) {
  const random = seeded(9);
  const travel = turns.map((turn) => rounded(travelAt(turn) + 0.002 * normal(random), 0.01).toFixed(2));
  const found = findingsOf(`name: L
handwheels:
  - name: Carriage
    ${wheel}
    feed: { readings: { gauge: 0.01, ${told}turns: [${turns.join(", ")}], travel: [${travel.join(", ")}] } }
    dial: { shape: drum, diameter: 38, width: 9${dial} }
stops: [{ name: shoulder, handwheel: Carriage, length: 18 }]
`);
  return { ...found, ...(job && { job }) };
}
const whole = Array.from({ length: 25 }, (_, i) => i);
const quarters = Array.from({ length: 41 }, (_, i) => i / 4);
const wornAt = (turn: number) => 2 * turn - 0.08 * Math.exp(-(((turn - 12) / 5) ** 2));
const wavyAt = (turn: number) => 2 * turn + 0.05 * Math.cos(2 * Math.PI * (turn - 0.3));
const codes = (findings: ReturnType<typeof findingsOf>) => remarks(findings).map(({ code }) => code);

describe("a worn slide", () => {
  const worn = carriage(whole, wornAt, ", divisions: 0.05 mm");
  test.each(["dial", "turns", "stops", "plan"])("says so on the %s sheet, with its bound", (sheet) => {
    expect(textsOf(worn, sheet)).toMatch(/Carriage is worn: .* up to 0\.0[78]\d* mm/);
  });
  test("says so to a student in plain words", () =>
    expect(textsOf(worn, "student")).toMatch(/does not move evenly: it can be out by 0\.0[78] mm/));
  test("holds the bound in the doubt of every distance; an even one does not", () => {
    const [even] = carriage(whole, (turn) => 2 * turn).handwheels;
    const [wheel] = worn.handwheels;
    if (wheel === undefined || even === undefined) throw new Error("no wheel");
    expect(doubtToRead(wheel, 30)).toBeGreaterThan((doubtToRead(even, 30) ?? 1) + 0.06);
  });
});

describe("where on the slide a corrected distance begins", () => {
  const worn = (told: string) => carriage(whole, wornAt, ", divisions: 0.05 mm", { told });
  const line = "the line on slide and ways";
  test.each(["turns", "stops", "plan"])("the %s sheet tells by a rule from turn 0", (sheet) => {
    const told = textsOf(worn(`zeroAt: ${line}, `), sheet);
    if (sheet === "plan") {
      expect(told).toContain(`turn 0 of its readings (${line})`);
      expect(told).toMatch(/elsewhere \d+ \d\.\d+/);
    } else expect(told).toMatch(new RegExp(`Turn 0 of the readings: ${line}\\. .*rule at 0 to \\d+ `));
  });
  test("where the file does not say, nothing is corrected, the sheets say why, and check asks", () => {
    for (const sheet of ["turns", "stops", "plan", "measured-report"])
      expect(textsOf(worn(""), sheet)).toContain("does not say where the slide stood at turn 0");
    for (const sheet of ["turns", "stops", "plan"])
      expect(textsOf(worn(""), sheet)).not.toMatch(/Corrected over the stretch|by the rule|rule at/);
    const asked = (told: string) => remarks(worn(told)).find(({ code }) => code === "uneven-travel")?.remedy;
    expect(asked("")).toContain("zeroAt:");
    expect(asked(`zeroAt: ${line}, `)).not.toContain("zeroAt:");
  });
  test("its words are looked through for letters that the font lacks", () =>
    expect(remarks(worn("zeroAt: 線, ")).find(({ code }) => code === "missing-letter")?.path).toEqual([
      ...["handwheels", 0, "feed", "readings", "zeroAt"],
    ]));
});

describe("a wavy slide", () => {
  test("says so, and counts it at half turns, not at whole ones", () => {
    const wavy = carriage(quarters, wavyAt, ", divisions: 0.2 mm");
    expect(textsOf(wavy, "turns")).toMatch(/leads and lags once a turn by up to 0\.1/);
    const [wheel] = wavy.handwheels;
    if (wheel === undefined) throw new Error("no wheel");
    const perTurn = wheel.feed?.perTurn ?? 0;
    expect((doubtToRead(wheel, 2.5 * perTurn) ?? 0) - (doubtToRead(wheel, 2 * perTurn) ?? 0)).toBeGreaterThan(0.09);
  });
  test("built into the dial, only its doubt is left, and line and wave are fitted together", () => {
    const [wheel] = carriage(quarters, wavyAt, ", divisions: 0.2 mm, oncePerTurn: true").handwheels;
    expect(wheel?.feed?.fit?.withWave).toBe(true);
    expect(wheel?.feed?.measured?.uneven?.sway).toBeLessThan(0.01);
  });
});

describe("a turn miscounted", () => {
  const found = carriage(whole, (turn) => 2 * (turn + (turn > 9 ? 1 : 0)), ", divisions: 0.05 mm, closure: even", {
    wheel: "travel: 50",
  });
  test("leaves no feed, no dial even where one is forced, and no turns to set by", () => {
    const [wheel] = found.handwheels;
    expect(wheel?.feed).toBeUndefined();
    expect(wheel?.dial).toBeUndefined();
    expect(codes(found)).toContain("miscounted");
    expect(() => printOf(found, "dial")).toThrow(/check says why/);
    expect(() => printOf(found, "turns")).toThrow(/miscounted/);
    expect(() => printOf(found, "stops")).toThrow(/miscounted/);
    // Beside another handwheel the stops sheet is printed, and says so at the stop.
    const other = { ...found, handwheels: [...found.handwheels, ...carriage(whole, (turn) => 2 * turn).handwheels] };
    expect(textsOf(other, "stops")).toContain("A turn was miscounted");
    expect(textsOf(found, "measured-report")).toContain("nothing else is said of this feed");
  });
});

describe("a doubt larger than a division", () => {
  const few = [0, 1, 2, 3, 4, 5];
  const line = (turn: number) => 1.995 * turn + (turn === 3 ? 0.02 : 0);
  test("makes no dial that nobody asked for", () => {
    const found = carriage(few, line);
    expect(found.handwheels[0]?.dial).toBeUndefined();
    expect(codes(found)).toContain("doubtful-dial");
  });
  test("a wild reading is told before the dial that is not made for it, and nothing is to be forced meanwhile", () => {
    // The dial stands before the readings in the file.
    const travel = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((turn) => (turn === 4 ? 8.6 : 1.995 * turn).toFixed(2));
    const { problems } = ofText(
      `name: L\nhandwheels:\n  - name: Slide\n    dial: { shape: drum, diameter: 40, width: 10 }\n    travel: 80\n    feed: { readings: { gauge: 0.01, turns: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9], travel: [${travel}] } }\n`,
      { files: new Map(), problems: [] },
    );
    const told = problems.filter(({ code }) => ["wild-reading", "doubtful-dial"].includes(code));
    expect(told.map(({ code }) => code)).toEqual(["wild-reading", "doubtful-dial"]);
    for (const { path } of told) expect(path).toEqual(["handwheels", 0, "feed", "readings", "travel", 4]);
    expect(told[1]?.remedy).toMatch(/^take first the reading again/);
    expect(told[1]?.remedy).not.toContain("force");
  });

  test.each([", divisions: 0.02 mm", ", closure: even"])(
    "is carried by the legend of a dial forced with %s",
    (force) => {
      const found = carriage(few, line, force);
      const [wheel] = found.handwheels;
      if (wheel?.dial === undefined) throw new Error("no dial");
      expect(dialLegend(wheel, wheel.dial, found.machine)).toMatch(/may be off by 0\.\d+ mm over 50 mm/);
    },
  );
  test("an error is told over the travel that was measured where the rest is several times longer", () => {
    const [wheel] = carriage(few, line, ", closure: even").handwheels;
    expect(wheel?.dial?.chosen).toMatchObject({ measuredOnly: true });
    expect(wheel?.dial?.chosen.overTravel).toBeCloseTo(5 * (wheel?.feed?.perTurn ?? 0), 9);
    expect(carriage(whole, (turn) => 2 * turn).handwheels[0]?.dial?.chosen.overTravel).toBe(50);
  });
});

describe("readings at whole turns only", () => {
  const found = carriage(whole, (turn) => 1.9871 * turn, ", closure: true");
  test("claim nothing of what happens within the turn", () => {
    for (const sheet of ["dial", "turns"]) {
      // Told as what was done, not as an order to read the dial so.
      expect(textsOf(found, sheet)).toContain("The readings were taken at whole turns only: an error within the turn");
      expect(textsOf(found, sheet)).not.toContain("no error within a turn");
    }
  });
  test("leave a short distance the doubt of its ends: scatter and reading, never ± 0", () => {
    const [wheel] = found.handwheels;
    if (wheel?.dial === undefined) throw new Error("no dial");
    expect(doubtToRead(wheel, 0.05)).toBeGreaterThan(Math.SQRT2 * (wheel.dial.divisionWorth / 10));
    expect(doubtToRead(wheel, 0.05)).toBeGreaterThan(0.005);
  });
});

test("a doubt too small for the places shown is told as one of the last, never as nought", () => {
  const found = findingsOf(
    "name: L\nhandwheels: [{ name: C, feed: { perTurn: 2, uncertainty: 0.0001 }, distances: [0.05] }]\n",
  );
  const rows = textsOf(found, "turns");
  expect(rows).toMatch(/Your distances travel mm turns ± mm 0\.05 0\.025 0\.001 /);
});

test.each(["mm", "in"])("readings exactly on a line without a gauge print every sheet, in %s", (units) => {
  for (const turns of [whole, quarters, [...whole, ...whole]]) {
    const travel = turns.map((turn) => turn / 8).join(", ");
    const found = findingsOf(`name: L
units: ${units}
handwheels:
  - name: Carriage
    feed: { readings: { turns: [${turns.join(", ")}], travel: [${travel}], return: [${travel}] } }
    dial: { shape: drum, wrap: ${units === "mm" ? 120 : 5}, width: ${units === "mm" ? 9 : 0.4}, oncePerTurn: true }
stops: [{ name: end, handwheel: Carriage, length: 1, tolerance: 0.1 }]
`);
    for (const sheet of ["dial", "turns", "stops", "student", "measured-report", "measuring-form", "dial-choices"])
      expect(textsOf({ ...found, ...(job && { job }) }, sheet)).not.toMatch(/NaN|Infinity|undefined/);
  }
});

describe("a screw whose errors follow a curve that no bend of few terms is", () => {
  // As read on a screw that is stretched in its middle.
  const places = Array.from({ length: 13 }, (_, i) => i * 3);
  const read = [0, 5.99, 11.98, 17.96, 23.95, 29.97, 35.99, 42.01, 48, 53.98, 59.97, 65.96, 71.94];
  const curved = carriage(places, (turn) => read[turn / 3] ?? Number.NaN, ", divisions: 0.05 mm", {
    wheel: "travel: 72",
  });
  test("is one", () => {
    const [wheel] = curved.handwheels;
    expect(wheel?.feed?.measured?.uneven).toBeUndefined();
    expect(wheel?.study?.pattern?.real).toBe(true);
  });
  test.each(["dial", "turns", "stops", "plan"])(
    "is told on the %s sheet, with how far its readings lie off",
    (sheet) => {
      expect(textsOf(curved, sheet)).toMatch(/Carriage strays along a curve: .* up to 0\.0\d+ mm/);
    },
  );
  test("is told to a student in plain words", () => {
    expect(textsOf(curved, "student")).toMatch(/does not move evenly: it can be out by 0\.0\d mm/);
  });
  test("is not told of an even one", () => {
    const even = carriage(places, (turn) => 2 * turn, ", divisions: 0.05 mm");
    expect(textsOf(even, "turns")).not.toContain("curve");
  });
});
