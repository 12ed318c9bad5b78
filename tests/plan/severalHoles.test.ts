import { describe, expect, test } from "vitest";
import { handlingMinutes } from "../../src/plan/minutes.js";
import type { Plan } from "../../src/plan/plan.js";
import { jobOf, lathe, planFor, saidOf, verdicts } from "../support/job.js";
import { textsOf } from "../support/sheets.js";

const drill = lathe("kind: drill");
const plan = (...steps: string[]) => planFor(steps, "", drill);
const titles = ({ steps }: Plan) => steps.map(({ title }) => title);

describe("holes beside each other in one plate", () => {
  test("each step says in how many it is done, by name, and as many as before where it says none", () => {
    const named = plan(
      "do: centre drill, hole: A, holes: 6",
      "do: centre drill, hole: B",
      "do: drill, diameter: 5, depth: 16, hole: A",
      "do: tap, thread: M6, depth: 8, hole: A, holes: 4",
      "do: drill, diameter: 6.5, depth: 16, hole: B",
    );
    expect(titles(named)).toEqual([
      expect.stringMatching(/, in 6 holes “A”$/),
      expect.stringMatching(/, in hole “B”$/),
      expect.stringMatching(/, in 6 holes “A”$/),
      expect.stringMatching(/, in 4 of the 6 holes “A”$/),
      expect.stringMatching(/, in hole “B”$/),
    ]);
    expect(verdicts(named)).toEqual([]);
  });

  test("by name a drill after a tap goes on in the hole that was tapped, which it spoils; without names it begins another", () => {
    const steps = (hole: string) => [
      `do: drill, diameter: 5, depth: 16${hole}`,
      `do: tap, thread: M6, depth: 8${hole}`,
      `do: drill, diameter: 9, depth: 16${hole}`,
    ];
    expect(verdicts(plan(...steps(", hole: A")))).toEqual(["refused: spoils-a-thread at 3"]);
    const unnamed = plan(...steps(""));
    expect(verdicts(unnamed)).toEqual([]);
    expect(titles(unnamed).map((title) => title.includes("another hole"))).toEqual([false, false, true]);
  });

  test("no drill begins another hole because the centre hole's mouth, or a broken edge, is as wide", () => {
    const edged = plan(
      "do: centre drill, diameter: 2.5",
      "do: drill, diameter: 5, depth: 16",
      "do: chamfer, size: 1, side: bore",
      "do: drill, diameter: 6, depth: 16",
    );
    expect(titles(edged).filter((title) => title.includes("another"))).toEqual([]);
  });

  test("more cannot be tapped than were drilled, whatever was centred", () => {
    const more = plan(
      "do: centre drill, holes: 8",
      "do: drill, diameter: 5, depth: 16, holes: 6",
      "do: tap, thread: M6, depth: 8, holes: 7",
    );
    expect(verdicts(more)).toEqual(["refused: more-holes at 3"]);
    expect(saidOf(more, "more-holes")).toMatch(/done in 7 holes, and so far there are 6/);
    expect(titles(more)[1]).toMatch(/in 6 of the 8 holes$/);
  });

  test("the hands: one drill put in, and a minute for each next hole; cutting once in each; no belt is moved more often", () => {
    const [one, six] = ["", ", holes: 6"].map((holes) => plan(`do: drill, diameter: 5, depth: 16${holes}`));
    expect(one?.steps.map(handlingMinutes)).toEqual([1]);
    expect(six?.steps.map(handlingMinutes)).toEqual([6]);
    expect(six?.minutes.part.cutting).toBeCloseTo(6 * (one?.minutes.part.cutting ?? Number.NaN), 9);
    // M6, 8 mm: 8 turns in each.
    const [, tapped] = plan("do: drill, diameter: 5, depth: 16, holes: 6", "do: tap, thread: M6, depth: 8").steps;
    expect(tapped && handlingMinutes(tapped)).toBeCloseTo(1 + 5 + 6 * 0.8, 9);
    expect(six?.minutes.part.beltChanges).toBe(0);
  });

  test("a centre drill is chosen by its own hole, whatever is done in another before that is drilled", () => {
    const { steps } = jobOf(
      [
        "do: centre drill, hole: A",
        "do: centre drill, hole: B",
        "do: drill, diameter: 3, depth: 16, hole: B",
        "do: drill, diameter: 5.3, depth: 16, hole: A",
      ],
      "",
    );
    // Mouths of form A, from memory: 1.25 · 2.12 is 2.65 mm wide, 2.5 · 2.12 is 5.3.
    expect(steps.slice(0, 2)).toMatchObject([{ pilot: 2.5 }, { pilot: 1.25 }]);
  });

  test("paper draws each hole under its name, and tells that one zero serves for all", () => {
    const steps = [
      "do: drill, diameter: 5, depth: 16, hole: A, holes: 6",
      "do: drill, diameter: 8, depth: 16, hole: B",
    ];
    const words = textsOf({ ...drill, job: jobOf(steps, "") }, "plan").replace(/\s+/g, " ");
    expect(words).toMatch(/6 holes “A”.*Hole “B”.*Before the first chip/);
    expect(words).toContain("each tool in all of them before the next");
    expect(words).toContain("The zero of the first serves for all");
    expect(words).toContain("Each next hole of several: 1 more.");
  });
});
