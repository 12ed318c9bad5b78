import { expect, test } from "vitest";
import { gearPairs } from "../../../src/blocks/shared/gearPairs.js";
import type { Step } from "../../../src/machine/machine.js";
import { outline, walk } from "../../support/marks.js";
import { findingsOf } from "../../support/sheets.js";

const { machine } = findingsOf(
  "name: L\ndrive: { motor: { speed: 1400 rpm }, stages: [{ name: back gear, steps: [{ label: open }, { label: geared, teeth: [[18, 54], [20, 52]] }] }] }\n",
);
const stage = machine.drive?.stages[0];
if (stage === undefined) throw new Error("no stage");
const [open, geared] = stage.steps;

/** What is free between the two wheels of each pair, mm, and the words of the picture. */
function seen(chosen: Step | undefined) {
  const wheels = new Map<number, [number, number][]>();
  const words: string[] = [];
  for (const mark of gearPairs(stage as NonNullable<typeof stage>, chosen, { width: 30, height: 40 })?.marks ?? [])
    walk([mark], (one, toPage) => {
      if (one.kind === "text") words.push(one.text);
      else if (one.fill !== undefined) {
        const points = outline(one).map(toPage);
        const ys = points.map(({ y }) => y);
        const x = Math.min(...points.map((point) => point.x));
        wheels.set(x, [...(wheels.get(x) ?? []), [Math.min(...ys), Math.max(...ys)]]);
      }
    });
  const gaps = [...wheels.values()].map((pair) => {
    const [above, below] = pair.sort(([one], [other]) => one - other);
    return (below?.[0] ?? Number.NaN) - (above?.[1] ?? Number.NaN);
  });
  return { gaps, words };
}

test("gears mesh where they are chosen, and stand clear of each other where the way past them is, under its name", () => {
  const meshed = seen(geared);
  expect(meshed.gaps).toHaveLength(2);
  for (const gap of meshed.gaps) expect(gap).toBeCloseTo(0, 6);
  expect(meshed.words).toContain("geared");
  const apart = seen(open);
  for (const gap of apart.gaps) expect(gap).toBeGreaterThan(1);
  expect(apart.words).toContain("open");
  expect(apart.words).not.toContain("geared");
});
