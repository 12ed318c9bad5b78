import { expect, test } from "vitest";
import { jobOf, lathe } from "../support/job.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const holes = ["do: centre drill", "do: drill, diameter: 5, depth: 10", "do: tap, thread: M6, depth: 6"];
const planOn = (kind: string, head: string, steps = holes) =>
  textsOf({ ...lathe(`kind: ${kind}`), job: jobOf(steps, head) }, "plan");

const lathes = /tailstock's chuck|tool post|centre height|with the slides at both ends|gibs/;
const drills = /Clamp the part.*held square by the drill's chuck/s;

test("a lathe stood on end drills what is clamped: its plan speaks of no tailstock, post or slide", () => {
  const words = planOn("lathe stood on end", "");
  expect(words).toMatch(drills);
  expect(words).toMatch(/Table and column clamped/);
  expect(words).not.toMatch(lathes);
});

test("a bar on the same machine is turned, and a lathe that lies holds what has no bar as ever", () => {
  const turned = planOn("lathe stood on end", "bar: { diameter: 16, out: 40 }", ["do: face, depth: 1", ...holes]);
  const lying = planOn("lathe", "");
  for (const words of [turned, lying]) {
    expect(words).toMatch(/held square by the tailstock's chuck/);
    expect(words).not.toMatch(drills);
  }
});

test("the edge of a hole is broken by a countersink in what is clamped, to a width that one can measure", () => {
  const steps = [...holes.slice(0, 2), "do: chamfer, size: 0.8, side: bore", holes[2] ?? ""];
  for (const kind of ["drill", "lathe stood on end"]) {
    const words = planOn(kind, "", steps).replace(/\s+/g, " ");
    expect(words).toMatch(/Countersink, 90°/);
    expect(words).toMatch(/until its mouth is 6\.6 mm wide/);
    // From the centre hole's mouth of 5.3 mm, which is left over the drill's 5 mm.
    expect(words).toMatch(/go on to, 2 0\.65/);
    expect(words).not.toMatch(lathes);
  }
  expect(() => jobOf(["do: drill, diameter: 5, depth: 10", "do: chamfer, size: 0.8"], "")).toThrow(/no-bar/);
});

test("a tap's lead goes in beyond its full thread: turns, barrel and the mark on the tap hold it", () => {
  // M6: 1 mm a turn, 6 mm of thread and two threads of lead.
  const words = planOn("drill", "").replace(/\s+/g, " ");
  expect(words).toMatch(/8 turns from the first bite for 6 mm of full thread and the 2 mm of its lead/);
  expect(words).toMatch(/Mark the last one 8 mm from its tip/);
});

test("where a quill is all that moves, holes in a bar are drilled on the table too: nothing else could come to them", () => {
  const quill = (steps: string[]) =>
    textsOf(
      {
        ...findingsOf(
          "name: Q\nkind: lathe stood on end\nhandwheels: [{ name: Feed wheel, moves: quill, travel: 70, feed: 75.4 mm }]\n",
        ),
        job: jobOf(steps, "bar: { diameter: 60, out: 30 }"),
      },
      "plan",
    );
  const words = quill([...holes.slice(0, 2), "do: chamfer, size: 0.8, side: bore", ...holes.slice(2)]);
  expect(words).toMatch(drills);
  expect(words).toContain("never hold it in the hand");
  expect(words).not.toMatch(lathes);
  // What is turned is not: a chuck carries it.
  expect(quill(["do: face, depth: 1", ...holes])).not.toContain("never hold it in the hand");
});

test("one strip bears the cautions of a machine that stands both ways: the key is told of once", () => {
  const strips = (kind: string) => planOn(kind, "").match(/[^.]*[Kk]ey out of the chuck\.(?: Safety glasses on\.)?/g);
  expect(strips("lathe stood on end")).toEqual([
    expect.stringMatching(/Clamp the work, key out of the chuck\. Safety glasses on\.$/),
  ]);
  expect(strips("lathe")).toEqual([expect.stringMatching(/Key out of the chuck\. Safety glasses on\.$/)]);
  expect(planOn("drill", "")).toContain("Clamp the work. Key out of the chuck.");
});
