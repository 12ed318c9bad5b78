import { expect, test } from "vitest";
import { choiceLines } from "../../src/cli/choiceLines.js";
import { remarks } from "../../src/findings/remarks.js";
import { quantities } from "../../src/working/registry.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const turns = Array.from({ length: 13 }, (_, turn) => turn);
const slide = (back: (turn: number) => number) =>
  findingsOf(
    `name: M\nhandwheels: [{ name: Slide, travel: 30, feed: { readings: { gauge: 0.01, turns: [${turns}], travel: [${turns.map((turn) => (2 * turn).toFixed(2))}], return: [${turns.map((turn) => back(turn).toFixed(2))}] } }, dial: { shape: drum, diameter: 40, width: 9, closure: even } }]\n`,
  );

/** All that is said of its lost motion: messages, command line, explain, sheets. */
function said(findings: ReturnType<typeof slide>): string[] {
  const lost = quantities["lost motion"].subjects(findings)[0]?.explain();
  return [
    remarks(findings)
      .map(({ what, remedy }) => `${what}; ${remedy}`)
      .join("\n"),
    choiceLines(findings).join("\n"),
    lost && "missing" in lost ? lost.missing : "told",
    textsOf(findings, "turns"),
  ];
}

test("a turn miscounted on the way back is that everywhere: no lost motion, and no readings that contradict each other", () => {
  const told = said(slide((turn) => 2 * turn + 0.15 + (turn < 6 ? 2 : 0)));
  const [message = "", ...others] = told;
  expect(message).toMatch(/until then no lost motion is told/);
  expect(told.join()).not.toMatch(/told from all|contradict|not measured: readings need/);
  for (const words of others)
    expect(words).toMatch(/lost motion (is )?not known: a turn was miscounted on the way back/);
  expect(told.join()).not.toContain("it was not measured");
});

test("readings on the way back that do not fit the others say so", () => {
  const [, choices = "", explained, sheet = ""] = said(slide((turn) => 2 * turn + 0.15 + (turn === 4 ? 0.2 : 0)));
  expect(choices).toContain("lost motion not known: a reading on the way back does not fit the others");
  expect(sheet).toContain("lost motion not known: a reading on the way back does not fit the others");
  expect(explained).toContain("do not fit the others");
});
