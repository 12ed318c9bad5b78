import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readJob } from "../../src/job/read.js";
import { parseSize, type SizeText } from "../../src/job/sizeText.js";
import type { LengthText } from "../../src/machine/fields.js";
import { inMm } from "../../src/quantity/length.js";

const bare = (value: number): Partial<LengthText> => ({ value, unit: "file" });
const mm = (value: number): Partial<LengthText> => ({ value, unit: "mm" });

/** Its nominal size and deviations in one unit, or what it is not. */
function shown(text: string): string {
  const size = parseSize(text);
  if (size === undefined) return "no size";
  const { nominal, deviations, fit } = size;
  const lengths = [nominal, ...(deviations ? [deviations.upper, deviations.lower] : [])];
  const units = [...new Set(lengths.map(({ unit }) => unit))];
  const figures = lengths.map(({ value }) => String(Number(value.toFixed(9)) + 0));
  return [...figures, ...(fit === undefined ? [] : [fit]), ...units].join(" ");
}

describe("a size as a drawing gives it: nominal, upper and lower deviation, unit", () => {
  test.each([
    // Plain lengths.
    ["12", "12 file"],
    [" 12 ", "12 file"],
    ["12.", "12 file"],
    [".5", "0.5 file"],
    ["12,5", "12.5 file"],
    ["3/8", "0.375 file"],
    ["1-1/2", "1.5 file"],
    ["1 1/2", "1.5 file"],
    ["Ø16", "16 file"],
    ["ø 16 mm", "16 mm"],
    ["2½", "2.5 file"],
    ["⅛", "0.125 file"],
    ["Ø 1¾ in", "44.45 mm"],
    ["Ø12 h7", "12 h7 file"],
    ["½ H7", "0.5 H7 file"],
    // From where to where.
    ["15.98 - 16", "16 0 -0.02 file"],
    ["16 - 15.98", "16 0 -0.02 file"],
    ["15.98 – 16 mm", "16 0 -0.02 mm"],
    ["[15.98, 16]", "16 0 -0.02 file"],
    ["[15,98, 16,00]", "16 0 -0.02 file"],
    // So little behind the size is a deviation.
    ["16 - 0.02", "16 0 -0.02 file"],
    ["12 mm", "12 mm"],
    ["0.5 in", "12.7 mm"],
    ['0.5"', "12.7 mm"],
    ["500 thou", "12.7 mm"],
    ["-12", "-12 file"],
    // Fits.
    ["12 h7", "12 h7 file"],
    ["12h7", "12 h7 file"],
    ["12 H11", "12 H11 file"],
    ["12 JS6", "12 JS6 file"],
    ["12,5 g6", "12.5 g6 file"],
    ["12 mm h7", "12 h7 mm"],
    ["12mm h7", "12 h7 mm"],
    ["1/2 H7", "0.5 H7 file"],
    ["1-1/2 f7", "1.5 f7 file"],
    ["0.5 in H7", "12.7 H7 mm"],
    ["0.5 inch H7", "12.7 H7 mm"],
    ['0.5" H7', "12.7 H7 mm"],
    ["12 z9", "12 z9 file"],
    // Both ways alike.
    ["12 ± 0.02", "12 0.02 -0.02 file"],
    ["12±0.02", "12 0.02 -0.02 file"],
    ["12 ±.02", "12 0.02 -0.02 file"],
    ["12 +/- 0.02", "12 0.02 -0.02 file"],
    ["12 +/-0.02", "12 0.02 -0.02 file"],
    ["12 +- 0.02", "12 0.02 -0.02 file"],
    ["12 + / − 0.02", "12 0.02 -0.02 file"],
    ["12,5 ± 0,02", "12.5 0.02 -0.02 file"],
    ["1/2 ± 1/64", "0.5 0.015625 -0.015625 file"],
    ["1-1/2 ± 0.005", "1.5 0.005 -0.005 file"],
    // Each way its own.
    ["12 +0.01 -0.02", "12 0.01 -0.02 file"],
    ["12 -0.02 +0.01", "12 0.01 -0.02 file"],
    ["12 +0.01 −0.02", "12 0.01 -0.02 file"],
    ["12 +0.01/-0.02", "12 0.01 -0.02 file"],
    ["12 +0.01 / -0.02", "12 0.01 -0.02 file"],
    ["12 + 0.01 - 0.02", "12 0.01 -0.02 file"],
    ["12 +0.03 +0.01", "12 0.03 0.01 file"],
    ["12 -0.01 -0.03", "12 -0.01 -0.03 file"],
    ["12 +0.02", "12 0.02 0 file"],
    ["12 -0.02", "12 0 -0.02 file"],
    ["12 +0.02 0", "12 0.02 0 file"],
    ["12 0 -0.02", "12 0 -0.02 file"],
    ["12 0/-0.02", "12 0 -0.02 file"],
    ["12 +0 -0.02", "12 0 -0.02 file"],
    ["12,5 +0,01 -0,02", "12.5 0.01 -0.02 file"],
    // Inch drawings leave the nought before the point out.
    [".375 +.000 -.001", "0.375 0 -0.001 file"],
    [".375 +0 -.001", "0.375 0 -0.001 file"],
    [".375 +.001 -.000", "0.375 0.001 0 file"],
    [".375 in +.000 -.001", "9.525 0 -0.0254 mm"],
    ["12 +.02 -.01", "12 0.02 -0.01 file"],
    [".5 +.02", "0.5 0.02 0 file"],
    ["1-1/2 +0.001 -0.002", "1.5 0.001 -0.002 file"],
    ["1 1/2 +0.001 -0.002", "1.5 0.001 -0.002 file"],
    ["5/8 +1/64 -0", "0.625 0.015625 0 file"],
    // From one limit to the other, whichever stands first; the larger is the size.
    ["11.98 to 12", "12 0 -0.02 file"],
    ["12 to 11.98", "12 0 -0.02 file"],
    ["11.98 TO 12.00", "12 0 -0.02 file"],
    ["1/2 to 9/16", "0.5625 0 -0.0625 file"],
  ])("%s is %s", (text, expected) => expect(shown(text)).toBe(expected));
});

describe("units", () => {
  test.each([
    ["12 ± 0.02 mm", "12 0.02 -0.02 mm"],
    ["12 mm ± 0.02", "12 0.02 -0.02 mm"],
    ["12 mm ± 0.02 mm", "12 0.02 -0.02 mm"],
    ["12mm +0.01 -0.02", "12 0.01 -0.02 mm"],
    ["12 +0.01 -0.02mm", "12 0.01 -0.02 mm"],
    ["12 +0.01mm -0.02mm", "12 0.01 -0.02 mm"],
    ["11.98 to 12 mm", "12 0 -0.02 mm"],
    ["1 ± 0.001 in", "25.4 0.0254 -0.0254 mm"],
    ['1" ± 0.001', "25.4 0.0254 -0.0254 mm"],
    ["1 ± 0.001 inch", "25.4 0.0254 -0.0254 mm"],
    ["1 in ± 1 thou", "25.4 0.0254 -0.0254 mm"],
    ["12 mm ± 10 µm", "12 0.01 -0.01 mm"],
    ["12 mm +10 µm 0", "12 0.01 0 mm"],
    ["12 mm 0 -10 µm", "12 0 -0.01 mm"],
    ["500 thou to 510 thou", "12.954 0 -0.254 mm"],
  ])("%s is %s: one behind any number holds for those without", (text, expected) => expect(shown(text)).toBe(expected));

  test.each(["12 ± 10 µm", "500 thou ± 1", "500 ± 1 thou", "1 in to 1.01 in ± 0.001", "1 in +0.02 mm -0.01"])(
    "%s leaves open what a number is in, and is no size",
    (text) => expect(shown(text)).toBe("no size"),
  );
});

test.each([
  "",
  " ",
  "h7",
  "12 h",
  "12 h 7",
  "12 7",
  "12 h7 h7",
  "12 h123",
  "twelve",
  "12 furlongs",
  "± 0.02",
  "12 ±",
  "12 ± 0.02 ± 0.01",
  "12 ± h7",
  "12 ± -0.02",
  "12 0",
  "12 0.02 -0.02",
  "12 +0.01 -0.02 +0.03",
  "12 + -",
  "12 to",
  "to 12",
  "11 to 12 to 13",
  "12 h7 to 13",
  "12 1/0",
  "1,270 ± 1",
  "NaN",
  "Infinity",
  `12 ± 0.${"0".repeat(60)}1`,
])("%j is no size", (text) => expect(parseSize(text)).toBeUndefined());

test("what is more than a number is kept as it was written, for the plan; a plain number is not", () => {
  for (const text of ["12 h7", "12 +/- 0.02", "11.98 to 12.00"]) expect(parseSize(text)?.text).toBe(text);
  expect(parseSize("12")).toEqual({ nominal: bare(12) });
  expect(parseSize("12 mm")?.text).toBeUndefined();
  expect(parseSize("12 mm")?.nominal).toMatchObject(mm(12));
});

describe("what is written comes back", () => {
  // As a drawing prints them: to a ten-thousandth.
  const printed = (most: number) => fc.integer({ min: 1, max: most * 10_000 }).map((parts) => parts / 10_000);
  const unit = fc.constantFrom("", " mm", "mm", " in", '"');
  const expectLimits = (size: SizeText | undefined, written: string, limits: readonly [number, number]) => {
    const scale = /in|"/.test(written) ? 25.4 : 1;
    const { nominal, deviations } = size ?? {};
    if (nominal === undefined || deviations === undefined) throw new Error(`${written} was not read`);
    expect(nominal.value + deviations.lower.value).toBeCloseTo(limits[0] * scale, 9);
    expect(nominal.value + deviations.upper.value).toBeCloseTo(limits[1] * scale, 9);
    expect(nominal.unit).toBe(written.trim() === "" ? "file" : "mm");
  };

  test("n ± t", () => {
    fc.assert(
      fc.property(printed(200), printed(2), unit, unit, (n, t, behind, last) => {
        fc.pre(behind.trim() === last.trim() || behind === "" || last === "");
        expectLimits(parseSize(`${n}${behind} ± ${t}${last}`), behind + last, [n - t, n + t]);
      }),
    );
  });

  test("n +a -b, parted by a space, a stroke or nothing", () => {
    fc.assert(
      fc.property(
        printed(200),
        printed(2),
        printed(2),
        unit,
        fc.constantFrom(" ", "/", " / ", ""),
        (n, a, b, behind, gap) => {
          expectLimits(parseSize(`${n} +${a}${gap}-${b}${behind}`), behind, [n - b, n + a]);
          expectLimits(parseSize(`${n}${behind} -${b}${gap}+${a}`), behind, [n - b, n + a]);
        },
      ),
    );
  });

  test("a to b, in either order", () => {
    fc.assert(
      fc.property(printed(200), printed(200), unit, (a, b, behind) => {
        expectLimits(parseSize(`${a} to ${b}${behind}`), behind, [Math.min(a, b), Math.max(a, b)]);
      }),
    );
  });

  test("whatever is thrown at it, it answers in numbers or not at all", () => {
    const signs = fc.string({ unit: fc.constantFrom(..."0123456789.,/+-±− hHmintoµ\"'"), maxLength: 60 });
    let read = 0;
    fc.assert(
      fc.property(signs, (text) => {
        const size = parseSize(text);
        if (size === undefined) return;
        read++;
        for (const { value } of [size.nominal, ...Object.values(size.deviations ?? {})])
          expect(Number.isFinite(value)).toBe(true);
      }),
      { numRuns: 3000 },
    );
    expect(read).toBeGreaterThan(0);
  });
});

describe("in a job", () => {
  const head = "name: Pin\nmaterial: mild steel\nbar: { diameter: 60, out: 40 }\n";
  const reading = (step: string, before = "") => readJob(`${head}${before}steps:\n  - ${step}\n`);
  const codes = (step: string) => reading(step).problems.map(({ code }) => code);
  const sizeOf = (step: string, before = "") => {
    const [read] = reading(step, before).job?.steps ?? [];
    return read !== undefined && "to" in read ? read.to : undefined;
  };

  test.each([
    ["12 h7", 11.991, 11.982, 12],
    ["12 ± 0.02", 12, 11.98, 12.02],
    ["12 +0.03 +0.01", 12.02, 12.01, 12.03],
    ["12 -0.02", 11.99, 11.98, 12],
    ["[11.98, 12.00]", 11.99, 11.98, 12],
    ["[12 mm, 11.98]", 11.99, 11.98, 12],
    ["11.98 to 12.00", 11.99, 11.98, 12],
  ])("to: %s aims at %d, between %d and %d", (to, aim, least, most) => {
    const size = sizeOf(`{ do: turn, to: ${/^\[/.test(to) ? to : `"${to}"`}, length: 10 }`);
    expect(size?.aim).toBeCloseTo(aim, 9);
    expect(size?.least).toBeCloseTo(least, 9);
    expect(size?.most).toBeCloseTo(most, 9);
  });

  test("a plain size has no limits; tolerance: gives them, from end to end", () => {
    expect(sizeOf("{ do: turn, to: 12, length: 10 }")).toEqual({ aim: 12 });
    expect(sizeOf("{ do: turn, to: 12, tolerance: 0.25, length: 10 }")).toEqual({
      aim: 12,
      least: 11.875,
      most: 12.125,
    });
  });

  test("in a file in inches a fit is looked up in mm: 1 h7 is 25.4 h7, −21 µm", () => {
    const size = sizeOf("{ do: turn, to: 1 h7, length: 1 }", "units: in\n");
    expect(size?.most).toBeCloseTo(25.4, 9);
    expect(size?.least).toBeCloseTo(25.4 - 0.021, 9);
    const [bore] = reading("{ do: bore, to: 1/2 +0.001 -0, depth: 1/2 }", "units: in\n").job?.steps ?? [];
    expect(bore).toMatchObject({ do: "bore", to: { words: "1/2 +0.001 -0" } });
    expect(bore !== undefined && "to" in bore ? bore.to.most : 0).toBeCloseTo(inMm(0.501, "in"), 9);
  });

  test("what would be right is shown in the file's unit", () => {
    const remedies = (before: string) =>
      reading("{ do: turn, to: thick, length: 1 }", before).problems.map(({ remedy }) => remedy);
    expect(remedies("")).toEqual([expect.stringMatching(/^write it as 12, 12 h7/)]);
    expect(remedies("units: in\n")).toEqual([expect.stringMatching(/^write it as \.375, .*\.375 \+\.000 -\.001/)]);
  });

  test("a reamer keeps its nominal size, and the hole its limits", () => {
    const [ream] = reading("{ do: ream, diameter: 8 H7, depth: 12 }").job?.steps ?? [];
    expect(ream).toMatchObject({ do: "ream", diameter: 8, wanted: { words: "8 H7", least: 8 } });
    expect(ream !== undefined && "wanted" in ream ? ream.wanted?.most : 0).toBeCloseTo(8.015, 9);
  });

  test.each([
    ['{ do: turn, to: "12 h7", tolerance: 0.1, length: 10 }', ["two-tolerances"]],
    ["{ do: turn, to: [11.98, 12], tolerance: 0.1, length: 10 }", ["two-tolerances"]],
    ["{ do: turn, to: 12 H7, length: 10 }", ["wrong-fit"]],
    ["{ do: groove, at: 5, width: 3, to: 12 H7, blade: 2 }", ["wrong-fit"]],
    ["{ do: bore, to: 12 h7, depth: 10 }", ["wrong-fit"]],
    ["{ do: ream, diameter: 12 h7, depth: 10 }", ["wrong-fit"]],
    ["{ do: turn, to: 12 z9, length: 10 }", ["unknown-fit"]],
    ["{ do: turn, to: 12 k8, length: 10 }", ["unknown-fit"]],
    ["{ do: turn, to: 12 0, length: 10 }", ["bad-value"]],
    ["{ do: turn, to: [12, 12], length: 10 }", ["bad-value"]],
    ["{ do: turn, to: 12 ± 0, length: 10 }", ["bad-value"]],
    // As handbooks print it, in µm: it would come out at 35.5.
    ["{ do: turn, to: 25 +21 0, length: 10 }", ["bad-value"]],
    ["{ do: turn, to: [5, 12], length: 10 }", ["bad-value"]],
    // Meant from one to the other, and read as a deviation of −12.
    ["{ do: turn, to: 11.98 - 12.00, length: 10 }", []],
    ["{ do: turn, to: 12, tolerance: 12, length: 10 }", ["bad-value"]],
    ["{ do: turn, to: 0, length: 10 }", ["bad-value"]],
    ["{ do: turn, to: -3, length: 10 }", ["bad-value"]],
    ["{ do: turn, to: 12 h7, length: 10 }", []],
  ])("%s: %j", (step, expected) => expect(codes(step)).toEqual(expected));
});

test.each([
  ["mm", "12 H99", "12 +0.01 -0.02"],
  ["in", "0.5 H99", "0.5 +0.0005 -0.001"],
])("limits to write out in place of an unknown fit are in the file's unit (%s)", (units, size, example) => {
  const bar = units === "mm" ? 20 : 0.75;
  const { problems } = readJob(
    `name: P\nunits: ${units}\nmaterial: mild steel\nbar: { diameter: ${bar}, out: ${2 * bar} }\nsteps: [{ do: bore, to: ${size}, depth: ${bar / 2} }]\n`,
  );
  expect(problems.map(({ remedy }) => remedy).join()).toContain(`write the limits out: ${example}`);
});
