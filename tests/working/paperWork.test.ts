import { expect, test } from "vitest";
import { explainStop } from "../../src/working/stops.js";
import { explainTaper } from "../../src/working/tapers.js";
import { explainTappingHole } from "../../src/working/threads.js";
import { explainTurns } from "../../src/working/turns.js";
import type { Subject, Working } from "../../src/working/working.js";
import { demoFindings, findingsOf } from "../support/sheets.js";

function workingOf(subjects: readonly Subject[], name: string): Working {
  const answer = subjects.find((subject) => subject.name === name)?.explain();
  if (answer === undefined || "missing" in answer) throw new Error(`${name}: ${answer?.missing ?? "no such subject"}`);
  return answer;
}
const demo = demoFindings();

test("a taper by two diameters: .750 to .500 in 2 in swivels 3.576° (penturners.org 98673, exact value computed)", () => {
  const findings = findingsOf("name: L\nunits: in\ntapers: [{ name: plug, large: 0.75, small: 0.5, length: 2 }]\n");
  const { result, inputs } = workingOf(explainTaper(findings), "plug");
  expect(result.value).toBeCloseTo(3.57633, 5);
  expect(inputs.map(({ source }) => source.from)).toEqual(["stated", "stated", "stated"]);
});

test("a tapping hole says where its sizes come from, and that memory is memory", () => {
  const quarter = workingOf(explainTappingHole(demo), "1/4-20 UNC");
  // 1/4-20 at 75 %: 0.20129 in, by the formula read in a table of technical formulas (scribd 327450604).
  expect(Number(quarter.result.value) / 25.4).toBeCloseTo(0.20129, 4);
  expect(quarter.inputs[0]?.source.from).toBe("looked up");
  expect(workingOf(explainTappingHole(demo), "9/32-40").inputs[0]?.source.from).toBe("assumed");
});

test("a tapping hole names no drill of millimetres to an inch shop, but where the thread is metric", () => {
  const inches = findingsOf("name: L\nunits: in\n");
  const noted = (machine: typeof inches) =>
    explainTappingHole(machine).flatMap(({ name, explain }) => {
      const notes = (explain() as { notes?: readonly string[] }).notes?.join(" ") ?? "";
      return notes.includes("the published drill") ? [{ name, notes }] : [];
    });
  expect(noted(inches).length).toBeGreaterThan(5);
  expect(noted(inches).length).toBeLessThan(noted(demo).length);
  for (const { name, notes } of noted(inches))
    if (!/^M\d/.test(name)) expect(notes).toMatch(/published drill, [^(,]+ \([^)]+\), leaves/);
});

test("a stop: turns × feed is the length again", () => {
  const { result, inputs } = workingOf(explainStop(demo), "deck pin shoulder");
  const [length, perTurn] = inputs.map(({ value }) => Number(value));
  expect(Number(result.value) * (perTurn ?? 0)).toBeCloseTo(length ?? Number.NaN, 9);
});

test("a stop: how alike parts come says from what, and what is not in it", () => {
  const again = findingsOf(
    "name: L\nhandwheels: [{ name: Bed, feed: { readings: { gauge: 0.01, turns: [0, 2, 4, 6, 0, 2, 4, 6], travel: [0, 4, 8.01, 12, 0.01, 4, 8, 12.01] } }, dial: { shape: drum, diameter: 40, width: 9 } }]\nstops: [{ name: end, handwheel: Bed, length: 5 }]\n",
  );
  const notes = workingOf(explainStop(again), "end").notes?.join(" ");
  expect(notes).toMatch(/alike to ± 0\.\d+ mm against the stop \(by the same places read again\)/);
  expect(notes).toContain("what a touch of the tool or of the stop adds is not in it");
});

test("a stop on a handwheel without a feed says what is missing", () => {
  const findings = findingsOf(
    "name: L\nhandwheels: [{ name: Bed }]\nstops: [{ name: end, handwheel: Bed, length: 5 }]\n",
  );
  expect(explainStop(findings)[0]?.explain()).toEqual({ missing: "the feed of the bed is not given" });
});

test("turns for a distance: 10 TPI goes 1 in in ten turns, and an old dial is told what to read", () => {
  const findings = findingsOf(
    "name: L\nunits: in\nhandwheels: [{ name: Slide, feed: { perTurn: 0.1, nominal: 0.125 }, oldDial: { reads: travel }, distances: [1, 1/4, 0.15] }]\n",
  );
  expect(workingOf(explainTurns(findings), "Slide, 1 in").result.value).toBeCloseTo(10, 9);
  const quarter = workingOf(explainTurns(findings), "Slide, 1/4 in");
  const once = workingOf(explainTurns(findings), "Slide, 0.15 in");
  expect(once.notes?.join(" ")).toContain("on the old dial: 1 whole turn, then");
  expect(quarter.result.value).toBeCloseTo(2.5, 9);
  expect(quarter.notes).toContain("on the old dial: 2 whole turns, then its reading of 0.0625 in");
});
