import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Findings } from "../../src/findings/findings.js";
import { usesOf } from "../../src/findings/uses.js";
import { type Exercise, exercises } from "../../src/student/exercises.js";
import { markNumber, markPosition, markSetting, type Turned, turnedBy } from "../../src/student/marking.js";
import { demoFindings, findingsOf } from "../support/sheets.js";

const machines: Readonly<Record<string, Findings>> = {
  "the demo": demoFindings(),
  "an inch lathe": findingsOf(
    "name: I\nunits: in\nhandwheels:\n  - { name: Cross slide, reads: diameter, feed: 10 tpi, dial: { shape: drum, diameter: 1.5, width: 0.4, divisions: 0.001 in, closure: even } }\n  - { name: Saddle, feed: 0.71, dial: { shape: drum, diameter: 2, width: 0.4 } }\n",
  ),
  "marks that begin again each turn": findingsOf(
    "name: T\nhandwheels: [{ name: Cross slide, feed: 2.117, dial: { shape: drum, diameter: 40, width: 9, divisions: 0.05 mm, closure: true } }]\n",
  ),
  "no dial": findingsOf("name: N\nhandwheels: [{ name: Cross slide, feed: 1.5 }, { name: Saddle, feed: 13 }]\n"),
  "a drill whose quill goes less than a turn": findingsOf(
    "name: D\nkind: drill\nhandwheels:\n  - name: Quill\n    travel: 60\n    feed: { readings: { gauge: 0.5, turns: [0, 1/8, 1/4, 3/8, 1/2, 5/8], travel: [0, 10, 20.5, 31, 41, 51.5], return: [0.5, 10.5, 21, 31.5, 41.5, 52] } }\n    dial: { shape: drum, diameter: 58, width: 12, divisions: 1 }\n",
  ),
  "a lathe stood on end": findingsOf(
    readFileSync("templates/machines/boathouse.yaml", "utf8").replace(/^kind: .*$/m, "kind: lathe stood on end"),
  ),
};
const revised = (findings: Findings, revision: number): Findings => ({
  ...findings,
  machine: { ...findings.machine, revision: String(revision) },
});
const all = (findings: Findings): Exercise[] =>
  Array.from({ length: 30 }, (_, revision) => revised(findings, revision)).flatMap((one) =>
    usesOf(one.machine).flatMap((use) => exercises(one, use)),
  );
const number = (words: string): number => Number(/\d+(?:\.\d+)?/.exec(words)?.[0]);

/** The number that an answer prints, in the unit that is marked. */
function printed({ answer, wanted }: Exercise, inches: boolean): number {
  if (wanted?.by !== "number") return Number.NaN;
  if (wanted.of === "length") return number(answer.split(": ").at(-1) ?? "") * (inches ? 25.4 : 1);
  const [, turns = "0"] = /(\d+) turns?\b/.exec(answer) ?? [];
  const [, eighths] = /(\d+) eighths?/.exec(answer) ?? [];
  if (eighths !== undefined || answer.includes("too")) return Number(turns) + Number(eighths ?? 0) / 8;
  return number(answer);
}

describe.each(Object.entries(machines))("exercises of %s", (_, findings) => {
  const list = all(findings);
  const inches = findings.machine.units === "in";

  test("are there", () => expect(list.length).toBeGreaterThan(30));

  test("what is printed as the answer is right, and a step beside it wrong by that step", () => {
    for (const exercise of list) {
      const { wanted, answer } = exercise;
      if (wanted?.by !== "number") continue;
      expect(markNumber(wanted, printed(exercise, inches)).right, answer).toBe(true);
      const { step } = wanted;
      if (step === undefined) continue;
      for (const steps of [1, -1, 3])
        expect(markNumber(wanted, wanted.value + steps * step.worth), answer).toMatchObject({ right: false, steps });
    }
  });

  test("a wheel turned to what the answer says is right; a line beside it is not, and a turn beside it is a turn off", () => {
    for (const { wanted, answer } of list) {
      if (wanted?.by !== "turning") continue;
      const wheel = findings.handwheels.find(({ handwheel }) => handwheel.name === wanted.wheel);
      const dial = wheel?.dial;
      if (dial === undefined || wheel?.reading === undefined) throw new Error("no dial");
      const [, turns = "0"] = /(\d+) turns?, then/.exec(answer) ?? [];
      const [, figure] = /says ([\d.]+)/.exec(answer) ?? [];
      if (figure !== undefined) {
        // The dial's own numbers, row by row, as lines; lines as turns.
        const { divisionValue, rows, divisionsPerTurn, closure } = dial.chosen;
        const lines = (Number(figure) * (dial.labelWorth ?? (dial.chosen.unit === "in" ? 25.4 : 1))) / divisionValue;
        const perTurn = closure === "true" ? wheel.reading.perTurn / divisionValue : divisionsPerTurn;
        const shown =
          rows > 1 ? Math.floor(Number(turns) / rows) * rows + lines / perTurn : Number(turns) + lines / perTurn;
        expect(markSetting(wanted, { turns: shown, slack: 0 }), answer).toMatchObject({ right: true });
      }
      const at = (turns: number, slack = 0) => markSetting(wanted, { turns: wanted.turns + turns, slack });
      expect(at(0).right).toBe(true);
      expect(at(1)).toEqual({ right: false, turnsOff: 1, linesOff: 0, turnedBack: false });
      expect(at(wanted.division).linesOff).toBeCloseTo(1, 6);
      expect(at(-3 * wanted.division).linesOff).toBeCloseTo(-3, 6);
      expect(at(0, wanted.division)).toEqual({ right: false, turnsOff: 0, linesOff: 0, turnedBack: true });
      expect(at(wanted.division * 0.49).right).toBe(true);
    }
  });

  test("a line too far where one begins is that many lines", () => {
    for (const { wanted, question } of list)
      if (wanted?.by === "turning" && wanted.from > 0)
        expect(markSetting(wanted, { turns: wanted.from, slack: 0 }).linesOff).toBeCloseTo(number(question), 6);
  });

  test("the position that is printed is right, and others are told by how many places", () => {
    for (const { wanted, answer } of list) {
      if (wanted?.by !== "position") continue;
      const { positions, right } = wanted;
      if (right.length === 0) {
        expect(answer).toMatch(/^Nowhere/);
        expect(markPosition(wanted, undefined)).toEqual({ right: true });
        expect(markPosition(wanted, positions[0]?.name)).toEqual({ right: false });
        continue;
      }
      const name = answer.replace(/, [\d ]+ rpm$/, "");
      expect(right).toContain(name);
      expect(markPosition(wanted, undefined)).toEqual({ right: false });
      for (const [at, one] of positions.entries()) {
        const { right: well, places } = markPosition(wanted, one.name);
        expect(well).toBe(right.includes(one.name));
        if (!well)
          expect(Math.sign(places ?? 0)).toBe(at < positions.findIndex((other) => other.name === name) ? 1 : -1);
      }
    }
  });
});

describe("a wheel turned back", () => {
  test("the slide stays until the lost motion is through, and follows again on the way on as soon as that is taken up", () => {
    const moves = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { maxLength: 40 });
    fc.assert(
      fc.property(moves, fc.double({ min: 0, max: 0.4, noNaN: true }), (list, lost) => {
        let turned: Turned = { turns: 2, slack: 0 };
        // The nut of a screw with play: it lies between the two flanks, and stays where neither pushes it.
        let nut = 2;
        for (const more of list) {
          turned = turnedBy(turned, more, lost);
          nut = Math.min(Math.max(nut, turned.turns), turned.turns + lost);
          expect(turned.turns).toBeGreaterThanOrEqual(-1);
          expect(turned.turns + turned.slack).toBeCloseTo(nut, 6);
        }
      }),
    );
  });

  test("without lost motion it follows at once", () =>
    expect(turnedBy({ turns: 1, slack: 0 }, -0.5, 0)).toEqual({ turns: 0.5, slack: 0 }));
});
