import { expect } from "vitest";
import { planFor, type Row, saidOf, verdicts } from "../../support/job.js";

/** The plan of a row's job finds what the row says, and nothing else. */
export function judged({ steps, head, on, found = [], says }: Row): void {
  const plan = planFor(steps, head, on);
  expect(verdicts(plan)).toEqual(found);
  if (says === undefined) return;
  const [, code] = /: (\S+)/.exec(found[0] ?? "") ?? [];
  expect(saidOf(plan, code ?? "")).toMatch(says);
}
