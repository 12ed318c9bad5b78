import { expect, test } from "vitest";
import { isRefused, planOf } from "../../src/plan/plan.js";
import { jobOf, lathe } from "../support/job.js";

/** A wide turning and a small hole: the belt is moved on the way. */
const steps = ["do: face, depth: 0.5", "do: turn, to: 15, length: 20", "do: drill, diameter: 3, depth: 10"];
const said = (head: string, of = steps) => {
  const plan = planOf(jobOf(of, `bar: { diameter: 16, out: 40, length: 70 }\n${head}`, "mild steel"), lathe());
  expect(isRefused(plan)).toBe(false);
  return plan.steps.map(({ speed, notes }) => ({
    position: speed?.speed?.position.name,
    back: notes.filter((note) => note.includes("move the belt back")),
  }));
};

test("part by part the first step says where the belt goes back to", () => {
  const [first, ...others] = said("parts: 6\nbatch: part");
  const last = others.at(-1);
  expect(last?.position).not.toBe(first?.position);
  expect(first?.back).toEqual([
    `From the second part on first move the belt back to ${first?.position}, plug out: the part before ended at ${last?.position}.`,
  ]);
  expect(others.flatMap(({ back }) => back)).toEqual([]);
});

test("not for one part, nor by operation, nor where the last step leaves it where the first wants it", () => {
  const none = (head: string, of = steps) => expect(said(head, of).flatMap(({ back }) => back)).toEqual([]);
  none("parts: 1");
  none("parts: 6\nbatch: operation");
  none("parts: 6\nbatch: part", steps.slice(0, 2));
});

test("each end of the work has its own first step", () => {
  const told = said("parts: 6\nbatch: part", [
    ...steps,
    "do: turn round, out: 30",
    "do: face, depth: 0.5",
    "do: drill, diameter: 3, depth: 10",
  ]);
  expect(told.filter(({ back }) => back.length > 0)).toHaveLength(2);
});
