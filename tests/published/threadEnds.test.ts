import { describe, expect, test } from "vitest";
import { pitchOf } from "../../src/quantity/thread.js";
import { threads } from "../../src/thread/data.js";
import { threadEnds } from "../../src/thread/threadEnds.js";

const pitchIn = (name: string): number => threads.find((thread) => thread.name === name)?.pitch ?? Number.NaN;

describe("ends of threads (DIN 76-1, from memory)", () => {
  test.each([
    ["M3", 1.25, 1.1, 3 - 0.8, 2.8],
    ["M4", 1.75, 1.5, 4 - 1.1, 3.8],
    ["M5", 2, 1.7, 5 - 1.3, 4.2],
    ["M6", 2.5, 2.1, 6 - 1.6, 5.1],
    ["M8", 3.2, 2.7, 8 - 2, 6.2],
    ["M10", 3.8, 3.2, 10 - 2.3, 7.3],
    ["M12", 4.3, 3.9, 12 - 2.6, 8.3],
    ["M16", 5, 4.5, 16 - 3, 9.3],
    ["M20", 6.3, 5.6, 20 - 3.6, 11.2],
  ])("%s: run-out %d, undercut %d wide down to %d, a blind hole %d deeper", (name, runOut, width, floor, blind) => {
    const ends = threadEnds(pitchIn(name));
    expect(ends).toMatchObject({ runOut, undercut: width, blind });
    expect(Number(name.slice(1)) - ends.floor).toBeCloseTo(floor, 12);
  });

  // Beyond the table in proportion: within its roundings of a tenth or two.
  test.each([
    ["M24", 7.5, 6.7, 24 - 4.4, 13.1],
    ["M2", 1, 0.8, 2 - 0.7, 2.3],
    ["M1.6", 0.9, 0.7, 1.6 - 0.6, 2.1],
  ])("%s, beyond the rows kept here: near %d, %d, %d, %d", (name, runOut, width, floor, blind) => {
    const ends = threadEnds(pitchIn(name));
    expect(Math.abs(ends.runOut - runOut)).toBeLessThan(0.21);
    expect(Math.abs(ends.undercut - width)).toBeLessThan(0.21);
    expect(Math.abs(Number(name.slice(1)) - ends.floor - floor)).toBeLessThan(0.21);
    expect(Math.abs(ends.blind - blind)).toBeLessThan(0.21);
  });
});

test("of every pitch in the tables, a coarser thread needs no less of anything, and each needs some", () => {
  const pitches = [...new Set(threads.map(({ pitch, tpi }) => pitch ?? pitchOf(tpi ?? Number.NaN)))].sort(
    (a, b) => a - b,
  );
  expect(pitches.length).toBeGreaterThan(30);
  const all = pitches.map(threadEnds);
  for (const [index, ends] of all.entries()) {
    expect(ends.pitch).toBe(pitches[index]);
    const before = all[index - 1];
    for (const key of ["runOut", "undercut", "floor", "blind"] as const) {
      expect(ends[key], `${key} at ${ends.pitch}`).toBeGreaterThan(0);
      if (before !== undefined) expect(ends[key], `${key} at ${ends.pitch}`).toBeGreaterThanOrEqual(before[key]);
    }
    // An undercut must reach below the thread's root to be one: 1.2 p at least.
    expect(ends.floor).toBeGreaterThan(1.2 * ends.pitch);
  }
});

test("between two rows in proportion: 32 to the inch lies just below 0.8 mm", () => {
  const [low, between, high] = [0.7, pitchOf(32), 0.8].map(threadEnds);
  const share = (25.4 / 32 - 0.7) / 0.1;
  for (const key of ["runOut", "undercut", "floor", "blind"] as const)
    expect(between?.[key]).toBeCloseTo((1 - share) * (low?.[key] ?? 0) + share * (high?.[key] ?? 0), 12);
});
