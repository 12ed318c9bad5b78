import { expect, test } from "vitest";
import { readCsv } from "../../src/machine/csv.js";
import { readMachine } from "../../src/machine/read.js";
import { readingsSoFar } from "../../src/page/work/readingsSoFar.js";

const wanted = [0, 0.125, 0.25, 0.375, 1.125];
const travel = wanted.map((turn) => turn * 80);

/** A quill read in eighths, by whichever habit: the file, the CSV and the page understand the same. */
test.each([
  [["0", "0.125", "0.25", "0.375", "1.125"]],
  [["0", "0,125", "0,25", "0,375", "1,125"]],
  [["0", "1/8", "1/4", "3/8", "1 1/8"]],
])("turns as %j", (turns) => {
  const list = turns.map((words) => JSON.stringify(words)).join(", ");
  const { machine, problems } = readMachine(
    `name: D\nhandwheels: [{ name: Quill, feed: { readings: { turns: [${list}], travel: [${travel}] } } }]\n`,
  );
  expect(problems).toEqual([]);
  expect(machine?.handwheels[0]?.feed).toMatchObject({ turns: wanted, travel });
  const csv = readCsv(["turns;travel", ...turns.map((turn, row) => `${turn};${travel[row]}`)].join("\n"), "r.csv");
  expect(csv.problems).toEqual([]);
  expect(csv.readings?.turns).toEqual(wanted);
  const rows = turns.map((turn, row) => ({ turns: turn, travel: String(travel[row]), back: "" }));
  const so = readingsSoFar({ units: "mm", gauge: "", gaugeError: "", temperature: "", rows });
  expect(so.places.map(({ turn }) => turn)).toEqual(wanted);
});

test("a fraction of a length in a CSV's cell keeps its unit", () =>
  expect(readCsv("turns,travel\n0,0\n1/2,1/16 in\n", "r.csv").readings).toEqual({
    turns: [0, 0.5],
    travel: [
      { value: 0, unit: "file" },
      { value: 25.4 / 16, unit: "mm" },
    ],
  }));
