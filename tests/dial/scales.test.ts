import fc from "fast-check";
import { expect, test } from "vitest";
import { angleMarks, smallEnd } from "../../src/dial/angleScale.js";
import { closings } from "../../src/dial/closing.js";
import { linearDivision, linearMarks, turnsDivision } from "../../src/dial/linearScale.js";
import { startReadings } from "../../src/dial/reading.js";
import { dialGears, lowestTerms } from "../../src/dial/reductionGears.js";
import { readVernier, vernier, vernierMarks } from "../../src/dial/vernier.js";
import { outline, walk } from "../support/marks.js";
import { findingsOf, printOf } from "../support/sheets.js";

test("property: the vernier mark that reads a part is the one that meets a main mark", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 25 }),
      fc.double({ min: 0.5, max: 3, noNaN: true }),
      fc.integer({ min: 0, max: 5000 }),
      (parts, spacing, counts) => {
        const scale = vernier(1, spacing, parts);
        const reading = counts / parts;
        const { mark, main, read } = readVernier(scale, 1, reading);
        expect(read).toBeCloseTo(reading, 9);
        expect(main).toBeCloseTo(Math.floor(reading + 1e-9), 9);
        const off = vernierMarks(scale, 1)
          .slice(0, parts)
          .map(({ angle }) => Math.abs(reading + angle - Math.round(reading + angle)));
        expect(off.indexOf(Math.min(...off))).toBe(mark);
        expect(off[mark]).toBeLessThan(1e-9);
      },
    ),
    { numRuns: 100 },
  );
});

test("sixteenths of an inch: 17 marks in an inch, long ones at the inch, middling at quarters", () => {
  const marks = linearMarks(linearDivision(25.4 / 16, "in"), 25.4);
  expect(marks).toHaveLength(17);
  expect(marks.filter(({ rank }) => rank === 1).map(({ label }) => label)).toEqual(["0", "1"]);
  expect(marks[4]).toMatchObject({ rank: 2 });
  expect(marks[16]?.angle).toBeCloseTo(25.4, 12);
});

test.each([0.1, 0.05, 0.02])("divisions of %f in are numbered in inches", (inches) => {
  const division = linearDivision(inches * 25.4, "in");
  const marks = linearMarks(division, 2 * 25.4);
  const numbered = marks.filter(({ label }) => label !== undefined);
  expect(numbered.map(({ label, angle }) => Number(label) - angle / 25.4)).toEqual(
    numbered.map(() => expect.closeTo(0, 9)),
  );
  expect(numbered.map(({ label }) => label)).toEqual(expect.arrayContaining(["0", "1", "2"]));
  expect(marks).toHaveLength(Math.round(2 / inches) + 1);
});

test("a file's own unit numbers its scales, also where a decimal inch is a round number of hundredths of a millimetre", () => {
  const read = (units: string, divisions: string) =>
    findingsOf(`name: L\nunits: ${units}\nscales: [{ name: S, length: 6 in, divisions: ${divisions} }]\n`).machine
      .scales?.[0];
  expect(read("in", "0.1")).toMatchObject({ divisions: expect.closeTo(2.54, 9), unit: "in" });
  expect(read("mm", "0.1 in")).toMatchObject({ unit: "in" });
  expect(read("mm", "1/16 in")).toMatchObject({ unit: "in" });
  expect(read("in", "1 mm")).toMatchObject({ divisions: 1, unit: "mm" });
});

test("a scale in turns of a 1.5875 mm wheel bears whole turns and stands where the turns do", () => {
  const marks = linearMarks(turnsDivision(1.5875, 4), 20);
  expect(marks.at(-1)?.angle).toBeCloseTo(1.5875 * 12.5, 12);
  for (const { label, angle } of marks) if (label !== undefined) expect(Number(label) * 1.5875).toBeCloseTo(angle, 9);
});

test("property: marks of a straight scale grow by one step and stay on it", () => {
  const steps = fc.constantFrom(
    ...([0.5, 1, 2, 2.54] as const).map((step) => [step, "mm"] as const),
    ...([25.4 / 16, 25.4 / 32, 2.54, 0.508] as const).map((step) => [step, "in"] as const),
  );
  fc.assert(
    fc.property(steps, fc.double({ min: 5, max: 300, noNaN: true }), ([step, unit], length) => {
      const marks = linearMarks(linearDivision(step, unit), length);
      marks.forEach(({ angle }, i) => {
        if (Math.abs(angle - i * step) > 1e-9) throw new Error("mark stands off");
      });
      expect(marks.at(-1)?.angle).toBeLessThanOrEqual(length + 1e-6);
      expect(length - (marks.at(-1)?.angle ?? 0)).toBeLessThan(step + 1e-9);
    }),
    { numRuns: 50 },
  );
});

test("swung anticlockwise, the top slide makes the free end small, the headstock the chuck end (tool on the operator's side)", () => {
  expect(smallEnd("top slide", "anticlockwise")).toBe("free end");
  expect(smallEnd("top slide", "clockwise")).toBe("chuck end");
  expect(smallEnd("headstock", "anticlockwise")).toBe("chuck end");
  expect(smallEnd("headstock", "clockwise")).toBe("free end");
});

test("half degrees either way of zero, numbered without a sign", () => {
  const marks = angleMarks({ from: -20, to: 30, step: 0.5 }, 60);
  expect(marks).toHaveLength(101);
  expect(marks[0]).toMatchObject({ label: "20", rank: 1 });
  expect(marks.find(({ value }) => value === 0)).toMatchObject({ label: "0", rank: 1, angle: 0 });
  expect(marks.at(-1)?.angle).toBeCloseTo(Math.PI / 6, 12);
});

test("few turns that close: 4.225 mm on 0.05 mm meets zero after 2 turns; π mm on 0.1 mm ever nearer after 2, 5 and 12", () => {
  expect(closings(4.225, 0.05).at(-1)).toEqual({ turns: 2, divisions: 169, error: 0 });
  const pi = closings(Math.PI, 0.1);
  expect(pi.map(({ turns }) => turns)).toEqual([1, 2, 5, 12]);
  for (const [i, cycle] of pi.entries())
    if (i > 0) expect(Math.abs(cycle.error)).toBeLessThan(Math.abs(pi[i - 1]?.error ?? 0));
});

test("property: no smaller number of turns comes nearer", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 25, noNaN: true }), fc.constantFrom(0.05, 0.1, 0.0254), (turn, value) => {
      const off = (turns: number) => Math.abs(Math.round((turns * turn) / value) * value - turns * turn);
      for (const cycle of closings(turn, value).slice(1))
        for (let turns = 1; turns < cycle.turns; turns++)
          expect(off(turns)).toBeGreaterThanOrEqual(Math.abs(cycle.error) - 1e-9);
    }),
    { numRuns: 40 },
  );
});

test("gears for a rack of 19.28 mm a turn: the pair and its error agree", () => {
  const gears = dialGears(19.28, [20, 24, 25, 27, 28, 30, 36, 40, 48, 50, 54, 56], "mm");
  expect(gears.length).toBeGreaterThan(0);
  for (const { driver, driven, perDialTurn, error } of gears)
    expect(perDialTurn - error).toBeCloseTo((19.28 * driven) / driver, 9);
  // 27 : 28 would make 19.994 mm of a dial turn.
  expect(gears).toContainEqual(expect.objectContaining({ driver: 27, driven: 28, perDialTurn: 20 }));
  expect(lowestTerms(54, 56)).toBe("27 : 28");
  expect(dialGears(19.28, [40], "mm")).toEqual([]);
});

test("start readings are whole turns of the feed", () => {
  expect(startReadings(19.28, 60)).toEqual([0, 19.28, 38.56, 57.84]);
});

test.each([2, 4, 8, 16, 32, 64])(
  "a scale of 1/%s in ranks its marks as a steel rule does: inch, half, quarter and on, each shorter by as much",
  (inch) => {
    const marks = linearMarks(linearDivision(25.4 / inch, "in"), 2 * 25.4);
    expect(marks).toHaveLength(2 * inch + 1);
    const parts = Array.from({ length: Math.log2(inch) + 1 }, (_, halvings) => {
      const own = marks.filter(({ angle }) => {
        const sixtyFourths = Math.round((angle / 25.4) * 64);
        const every = 64 / 2 ** halvings;
        return sixtyFourths % every === 0 && (halvings === 0 || sixtyFourths % (2 * every) !== 0);
      });
      expect(new Set(own.map(({ part }) => part)).size).toBe(1);
      return own[0]?.part ?? 0;
    });
    expect(parts[0]).toBe(1);
    const steps = parts.slice(1).map((part, at) => (parts[at] ?? 0) - part);
    for (const step of steps) {
      expect(step).toBeGreaterThan(0.1);
      expect(step).toBeCloseTo(steps[0] ?? 0, 9);
    }
    expect(marks.filter(({ label }) => label !== undefined).map(({ label }) => label)).toEqual(["0", "1", "2"]);
  },
);

test("on paper the marks of a scale in sixteenths have five lengths, one in millimetres numbered by fives two", () => {
  const lengths = (units: string, division: string, long: number) => {
    const found = findingsOf(
      `name: T\nunits: ${units}\nscales: [{ name: Barrel, length: ${long}, width: 8 mm, divisions: ${division} }]\n`,
    );
    const all = new Set<string>();
    for (const { drawing } of printOf(found, "scales").pages)
      walk(drawing.marks, (mark, toPage, names) => {
        if (!names.includes("graduations")) return;
        const [one, other] = outline(mark).map(toPage);
        all.add(Math.abs((one?.y ?? 0) - (other?.y ?? 0)).toFixed(2));
      });
    return all.size;
  };
  expect(lengths("in", "1/16 in", 3)).toBe(5);
  expect(lengths("mm", "1 mm", 80)).toBe(2);
});
