import { expect, test } from "vitest";
import { isTight, threadsOf } from "../../src/thread/thread.js";
import { explainTappingHole } from "../../src/working/threads.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const machine = findingsOf("name: T\n");
const workingOf = (name: string) => {
  const working = explainTappingHole(machine)
    .find((subject) => subject.name === name)
    ?.explain();
  if (working === undefined || "missing" in working) throw new Error(name);
  return working;
};

test("a published drill that leaves over 80 % is marked, on the sheet and in the working; none other is", () => {
  const all = (["metric coarse", "metric fine", "UNC", "UNF", "BA", "BSW", "BSF"] as const).flatMap(threadsOf);
  const tight = all.filter(isTight);
  expect(tight.length).toBeGreaterThan(3);
  expect(tight.length).toBeLessThan(all.length);
  for (const { publishedEngagement = 0 } of all)
    expect(publishedEngagement > 0.8005).toBe(tight.some((one) => one.publishedEngagement === publishedEngagement));
  const sheet = textsOf(machine, "threads");
  expect(sheet.match(/\btight\b/g)?.length).toBeGreaterThan(0);
  const [first] = tight;
  const words = (workingOf(first?.designation.replace(" × ", "x") ?? "").notes ?? []).join(" ");
  expect(words).toContain("over 80 % is hard on a tap turned by hand");
  // M6 on 5 mm leaves 77 %.
  expect((workingOf("M6").notes ?? []).join(" ")).not.toContain("hard on a tap");
});

test("where two threads share a name each has its own hole: 1/4-20 of 60° and of 55°", () => {
  const [unc, bsw] = ["1/4-20 UNC", "1/4-20 BSW"].map((name) => workingOf(name).result.value as number);
  expect(unc).toBeCloseTo(6.35 - 0.75 * 1.299038 * 1.27, 9);
  expect(bsw).toBeCloseTo(6.35 - 0.75 * 1.280655 * 1.27, 9);
});
