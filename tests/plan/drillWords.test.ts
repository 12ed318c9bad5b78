import { expect, test } from "vitest";
import { lathe, planFor } from "../support/job.js";

/** What a hole's step and its notes are called, of a bar that is thick enough. */
function said(diameter: string, { units = "in", machine = lathe() } = {}): string {
  const bar = units === "in" ? "bar: { diameter: 1.5, out: 1 }" : "bar: { diameter: 38, out: 25 }";
  const depth = units === "in" ? "0.4" : "10";
  const { steps } = planFor(
    ["do: centre drill", `do: drill, diameter: ${diameter}, depth: ${depth}`],
    `units: ${units}\n${bar}`,
    machine,
  );
  const step = steps.find(({ stage }) => stage.step.do === "drill");
  return [step?.title, ...(step?.notes ?? [])].join(" | ");
}

test.each([
  { given: "no. 7", words: "no. 7 (0.201 in)" },
  { given: "0.201", words: "no. 7 (0.201 in)" },
  { given: "letter F", words: "letter F (0.257 in)" },
  { given: "0.257", words: "letter F (0.257 in)" },
  { given: "0.203", words: "13/64 in (0.203 in)" },
  { given: "0.203125", words: "13/64 in" },
  { given: "13/64", words: "13/64 in" },
  { given: "5 mm", words: "5 mm" },
  // No drill of that size is sold by a name.
  { given: "0.2075", words: "0.2075 in" },
])("an inch job's drill of $given is found in its box as $words", ({ given, words }) => {
  expect(said(given, { machine: lathe("", { units: "in" }) })).toMatch(
    new RegExp(`^[Dd]rill ${words.replace(/[.()]/g, "\\$&")}, 0.4 in deep`),
  );
});

test.each([
  { given: "5.1", words: "5.1 mm" },
  { given: "no. 7", words: "no. 7 (5.105 mm)" },
  { given: "12.7", words: "12.7 mm" },
])("a metric job's drill of $given as $words", ({ given, words }) => {
  expect(said(given, { units: "mm" })).toMatch(new RegExp(`^[Dd]rill ${words.replace(/[.()]/g, "\\$&")}, 10 mm deep`));
});

test("a large hole's first drills go by name as well, whichever file they are of", () => {
  const inches = lathe("", { units: "in" });
  expect(said("5/8", { machine: inches })).toMatch(
    /One after the other: 7\/32 in, .*13\/32 in, 5\/8 in, each touched off again;/,
  );
  expect(said("16", { units: "mm", machine: inches })).toMatch(/One after the other: 7\/32 in, 13\/32 in, 16 mm/);
  expect(said("5/8")).toMatch(/One after the other: 5\.5 mm, 10\.5 mm, 5\/8 in/);
  expect(said("5/8", { machine: lathe("work: { drills: [no. 3, letter Z, 5/8 in] }", { units: "in" }) })).toMatch(
    /One after the other: no\. 3 \(0\.213 in\), letter Z \(0\.413 in\), 5\/8 in/,
  );
});

test("what an angle brings a taper to is told to a thousandth of a millimetre", () => {
  const { steps } = planFor(["do: turn, to: 14, length: 20", "do: taper, large: 14, half: 15 deg, length: 2"]);
  expect(steps.at(-1)?.title).toMatch(/14 mm to 12\.928 mm in 2 mm/);
});

test("a centre drill in inches is told by the fraction of its tip", () => {
  const { steps } = planFor(
    ["do: centre drill"],
    "units: in\nbar: { diameter: 1.5, out: 1 }",
    lathe("", { units: "in" }),
  );
  expect(steps[0]?.title).toMatch(/^[Cc]entre drill \d+\/\d+ in$/);
});
