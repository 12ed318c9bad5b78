import fc from "fast-check";
import { expect, test } from "vitest";
import { letterDrills, numberDrills } from "../../src/quantity/drill.js";
import { nearestInchDrill, nextDrill } from "../../src/thread/nextDrill.js";
import {
  dieBlank,
  engagementOf,
  isSold,
  isTight,
  tappingHole,
  threadNamed,
  threadsMeant,
  threadsOf,
  threadsOfSize,
  turnsFor,
} from "../../src/thread/thread.js";
import { threadEnds } from "../../src/thread/threadEnds.js";

/** Every number, letter and fraction drill, mm. */
const inches = [
  ...numberDrills.map((thou) => thou * 0.0254),
  ...letterDrills.map((thou) => thou * 0.0254),
  ...Array.from({ length: 128 }, (_, at) => ((at + 1) / 64) * 25.4),
];

test.each([
  [2.5, 2.5],
  [2.51, 2.55],
  [2.96, 3],
  [3, 3],
  [3.01, 3.1],
  [6.71, 6.8],
  [6.8, 6.8],
  [10.2, 10.2],
])("of metric drills the next to %d mm is %d: twentieths to 3 mm, tenths beyond (DIN 338, memory)", (hole, drill) =>
  expect(nextDrill(hole, "mm")).toEqual({ name: "", diameter: drill }),
);

test("of inch drills the next to 5.1 mm is no. 7, of 0.2505 in letter F, of 12.7 mm half an inch", () => {
  expect(nextDrill(5.1, "in")).toMatchObject({ name: expect.stringMatching(/7$/) });
  expect(nextDrill(5.1, "in")?.diameter).toBeCloseTo(0.201 * 25.4, 9);
  expect(nextDrill(0.2505 * 25.4, "in")).toMatchObject({ name: "F" });
  expect(nextDrill(12.7, "in")).toMatchObject({ name: "1/2" });
});

test("property: no inch drill is smaller and large enough; none is nearer than the nearest", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.4, max: 40, noNaN: true }), (size) => {
      const enough = Math.min(...inches.filter((one) => one >= size - 1e-9));
      expect(nextDrill(size, "in")?.diameter).toBeCloseTo(enough, 9);
      const nearest = Math.min(...inches.map((one) => Math.abs(one - size)));
      expect(Math.abs((nearestInchDrill(size)?.diameter ?? 0) - size)).toBeCloseTo(nearest, 9);
    }),
  );
});

test("how much thread a hole leaves and which hole leaves so much are each other's way back", () => {
  for (const system of ["metric coarse", "UNC", "BA", "BSW", "ME"] as const) {
    const thread = { system, major: 6, pitch: 1 };
    expect(tappingHole(thread, 0)).toBe(6);
    for (const share of [0.5, 0.75, 1]) expect(engagementOf(thread, tappingHole(thread, share))).toBeCloseTo(share, 12);
  }
  // Full thread: ISO 60° 1.299 p on the diameter, Whitworth 1.2807 p, BA 1.2 p.
  const full = (system: "metric coarse" | "BSW" | "BA") => tappingHole({ system, major: 10, pitch: 1 }, 1);
  expect([full("metric coarse"), full("BSW"), full("BA")]).toEqual(
    [8.701, 8.7193, 8.8].map((size) => expect.closeTo(size, 3)),
  );
});

test("a hole is tight from eight tenths of the thread on, by more than its rounding", () => {
  expect([undefined, 0.79, 0.8, 0.8004, 0.8006, 0.9].map((share) => isTight(share))).toEqual([
    false,
    false,
    false,
    false,
    true,
    true,
  ]);
});

test("a die's rod is a tenth of the pitch thinner; turns are depth over pitch", () => {
  expect(dieBlank({ major: 6, pitch: 1 })).toBeCloseTo(5.9, 12);
  expect(dieBlank({ major: 8, pitch: 1.25 })).toBeCloseTo(7.875, 12);
  expect(turnsFor(10, 1.25)).toBe(8);
});

test("a row says whence it is, what pitch its threads to the inch are, and what its drill leaves", () => {
  const m6 = threadNamed("M6");
  expect(m6).toMatchObject({ system: "metric coarse", major: 6, pitch: 1, publishedDrill: 5, fromMemory: false });
  expect(m6?.sources).toEqual(["cad-data", "trainee-handbook"]);
  expect(m6?.publishedEngagement).toBeCloseTo(1 / 1.299038, 9);
  expect(m6 && "drillName" in m6).toBe(false);
  const numbered = threadsOf("UNC").find(({ name }) => name === "#1-64");
  expect(numbered).toMatchObject({ drillName: "No. 53", pitch: 25.4 / 64 });
  expect(threadsOf("UNF").find(({ name }) => name === "#0-80")).toMatchObject({ drillName: "3/64" });
  expect(threadNamed("M8 × 1")).toMatchObject({ name: "M8 × 1", designation: "M8 × 1" });
  expect(threadNamed("M66")).toBeUndefined();
});

test("a drill of millimetres is in an inch shop's box for metric threads alone", () => {
  const sold = (name: string, units: "mm" | "in") => {
    const thread = threadNamed(name);
    if (thread === undefined) throw new Error(name);
    return isSold(thread, units);
  };
  expect([sold("M6", "mm"), sold("M6", "in"), sold("M8x1", "in")]).toEqual([true, true, true]);
  const [ba] = threadsOf("BA").filter(({ drillName }) => drillName === undefined);
  expect(ba && [isSold(ba, "mm"), isSold(ba, "in")]).toEqual([true, false]);
  const [named] = threadsOf("UNC").filter(({ drillName }) => drillName !== undefined);
  expect(named && isSold(named, "in")).toBe(true);
});

test.each([
  ["M8x1,0", ["M8x1.0"]],
  ["#10-24", ["#10-24"]],
  ["no 10-24", ["#10-24"]],
  ["M8", ["M8"]],
  ["M 8", ["M8"]],
  ["1/4-20 UNC", ["1/4-20 UNC"]],
  ["nothing", []],
  ["", []],
])("%j means %j", (text, meant) => expect(threadsMeant(text)).toEqual(meant));

test("threads of a size are all of its pitches and of no other size", () => {
  expect(threadsOfSize("M8x3")).toEqual(["M8", "M8x0.75", "M8x1.0"]);
  expect(threadsOfSize("m8")).toEqual(["M8", "M8x0.75", "M8x1.0"]);
  expect(threadsOfSize("M1")).toEqual(["M1"]);
});

test("ends of a thread finer than any row are never less than none", () => {
  expect(Object.values(threadEnds(0.01)).every((size) => size >= 0)).toBe(true);
  expect(threadEnds(1.002)).toEqual({ ...threadEnds(1), pitch: 1.002 });
  expect(threadEnds(1.006).runOut).toBeGreaterThan(threadEnds(1).runOut);
});

test.each([
  ["M2.50", ["M2.5"]],
  ["M8x1.00", ["M8x1.0"]],
  ["M8x1.00 metric fine", ["M8x1.0"]],
  ["M#8", []],
])("noughts behind a point and a sign for number where none belongs: %j means %j", (text, meant) =>
  expect(threadsMeant(text)).toEqual(meant),
);

test("a row says so where its size was not seen in print, and only then: those that name no other source", () => {
  const all = (["metric coarse", "metric fine", "UNC", "UNF", "BSW", "BSF", "ME", "BA"] as const).flatMap(threadsOf);
  const remembered = all.filter(({ fromMemory }) => fromMemory);
  expect(remembered.length).toBeGreaterThan(0);
  expect(all.filter(({ sources }) => sources.includes("memory"))).toEqual(remembered);
});
