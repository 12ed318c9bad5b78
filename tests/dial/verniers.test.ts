import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dialVernier, readVernier, vernier, vernierMarks, vernierWithin } from "../../src/dial/vernier.js";

describe("the marks of a vernier", () => {
  test("10 parts over 9 divisions of 0.02 mm: tenths of them, numbered 0, 5 and 10", () => {
    const marks = vernierMarks(vernier(0.02, 2, 10), 0.1);
    expect(marks.map(({ angle }) => angle)).toEqual(Array.from({ length: 11 }, (_, k) => expect.closeTo(k * 0.09, 12)));
    expect(marks.map(({ value }) => value)).toEqual(
      Array.from({ length: 11 }, (_, k) => expect.closeTo(k * 0.002, 12)),
    );
    expect(marks.map(({ label }) => label ?? "").join("|")).toBe("0|||||5|||||10");
    expect(marks.map(({ rank }) => rank).join("")).toBe("13333133331");
  });

  test("25 parts: fifths stand out, and only the ends bear numbers; 4 parts and 7 have no fifths", () => {
    const marks = vernierMarks(vernier(1, 2, 25), 1);
    expect(marks.map(({ rank }) => rank).join("")).toBe("13333233332333323333233331");
    expect(marks.flatMap(({ label }) => label ?? [])).toEqual(["0", "25"]);
    expect(marks.every((mark) => "label" in mark === (mark.rank === 1))).toBe(true);
    const ranks = (parts: number) =>
      vernierMarks(vernier(1, 2, parts), 1)
        .map(({ rank }) => rank)
        .join("");
    expect([ranks(4), ranks(7)]).toEqual(["13131", "13333331"]);
  });

  test("property: each stands one least count short of a whole division further than the mark before", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 50 }),
        fc.constantFrom(1, 2),
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        fc.double({ min: 0.005, max: 1, noNaN: true }),
        (parts, spacing, pitch, division) => {
          const own = vernier(division, spacing, parts);
          for (const { angle, value } of vernierMarks(own, pitch)) {
            // What a mark lies short of a main mark is the share of a division that it reads.
            const short = (angle / pitch + value / division) % 1;
            expect(Math.min(short, 1 - short)).toBeLessThan(1e-9);
          }
        },
      ),
    );
  });
});

test("marks 1.4 mm apart are far enough for the direct form, closer ones take every second", () => {
  expect(vernier(1, 1.4, 10)).toMatchObject({ extended: false, spans: 9 });
  expect(vernier(1, 1.39, 10)).toMatchObject({ extended: true, spans: 19 });
});

test("a vernier takes no more room than there is: extended, else direct, else none", () => {
  // 19 divisions of 1 mm, or 9 of them.
  expect(vernierWithin(1, 1, 10, 19)?.extended).toBe(true);
  expect(vernierWithin(1, 1, 10, 18.9)?.extended).toBe(false);
  expect(vernierWithin(1, 1, 10, 8.9)).toBeUndefined();
  // Half of a circle, and never more than 100 mm.
  expect(dialVernier(1, 2, 10, 36)?.spans).toBe(9);
  expect(dialVernier(1, 2, 10, 35.9)).toBeUndefined();
  expect(dialVernier(1, 10.1, 10, 1000)?.spans).toBe(9);
  expect(dialVernier(1, 11.2, 10, 1000)).toBeUndefined();
});

test("property: main reading and mark make the reading, whatever a division is worth", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(0.01, 0.02, 0.0254, 0.5, 2),
      fc.constantFrom(4, 5, 10, 25),
      fc.integer({ min: 0, max: 3000 }),
      (division, parts, counts) => {
        const { main, mark, read } = readVernier(vernier(division, 2, parts), division, (counts * division) / parts);
        expect([main, mark]).toEqual([expect.closeTo(Math.floor(counts / parts) * division, 9), counts % parts]);
        expect(read).toBeCloseTo((counts * division) / parts, 9);
      },
    ),
  );
});
