import fc from "fast-check";
import { expect, test } from "vitest";
import { exercises } from "../../src/student/exercises.js";
import { markNumber, markSetting, turnedBy } from "../../src/student/marking.js";
import { findingsOf } from "../support/sheets.js";

const anyDrill = fc
  .record({
    perTurn: fc.double({ min: 1, max: 120, noNaN: true }),
    travel: fc.double({ min: 8, max: 150, noNaN: true }),
    lost: fc.double({ min: 0.05, max: 0.8, noNaN: true }),
    diameter: fc.integer({ min: 30, max: 90 }),
    revision: fc.integer({ min: 0, max: 30 }),
  })
  .map(({ perTurn, travel, lost, diameter, revision }) => {
    const turns = [0, 1, 2, 3, 4, 5].map((part) => (part * travel) / perTurn / 5);
    const out = turns.map((turn) => (turn * perTurn).toFixed(3));
    const back = turns.map((turn) => (turn * perTurn + lost * Math.min(1, perTurn / 8)).toFixed(3));
    const readings = `{ gauge: 0.01, turns: [${turns.map((turn) => turn.toFixed(5)).join(", ")}], travel: [${out.join(", ")}], return: [${back.join(", ")}] }`;
    const text = `name: D\nrevision: ${revision}\nkind: drill\nhandwheels:\n  - name: Quill\n    travel: ${travel.toFixed(2)}\n    feed: { readings: ${readings} }\n    dial: { shape: drum, diameter: ${diameter}, width: 14 }\n`;
    return { findings: findingsOf(text), text };
  });

test("a drill's exercises ask for nothing beyond its travel, and who turns straight back is wrong", () =>
  fc.assert(
    fc.property(anyDrill, ({ findings, text }) => {
      const [wheel] = findings.handwheels;
      const perTurn = wheel?.feed?.perTurn ?? Number.NaN;
      const travel = wheel?.handwheel.travel ?? Number.NaN;
      const farthest = travel / perTurn + 1e-6;
      const lost = wheel?.feed?.lostMotion?.turn ?? 0;
      expect(lost, text).toBeGreaterThan(0);
      const all = exercises(findings, "drilling");
      for (const { wanted, question, lines } of all) {
        if (wanted?.by === "turning") {
          expect(wanted.turns, question).toBeLessThanOrEqual(farthest);
          expect(wanted.from, question).toBeLessThanOrEqual(farthest);
          expect(markSetting(wanted, { turns: wanted.turns, slack: 0 }).right).toBe(true);
          expect(markSetting(wanted, { turns: wanted.turns + wanted.division, slack: 0 }).right).toBe(false);
          if (wanted.from === 0) continue;
          // It is a line of the dial, and turned back to straight away the slide has not followed.
          const rows = wheel?.dial?.rows.flat() ?? [];
          const angle = (wanted.turns % 1) * 2 * Math.PI;
          const off = rows.map((mark) => Math.abs(Math.sin((mark.angle - angle) / 2)));
          expect(Math.min(...off), question).toBeLessThan(1e-6);
          const straight = turnedBy({ turns: wanted.from, slack: 0 }, wanted.turns - wanted.from, lost);
          expect(markSetting(wanted, straight).right, text).toBe(false);
          const past = turnedBy(straight, -0.5, lost);
          expect(markSetting(wanted, turnedBy(past, 0.5, lost)).right).toBe(true);
        } else if (wanted?.by === "number" && wanted.of === "length") {
          expect(wanted.value, question).toBeLessThanOrEqual(travel + 1e-6);
          expect(markNumber(wanted, wanted.value).right).toBe(true);
          const { worth = 0 } = wanted.step ?? {};
          expect(markNumber(wanted, wanted.value + worth).right).toBe(false);
        } else if (wanted?.by === "number" && wanted.step?.of === "eighth")
          expect(wanted.value, question).toBeLessThanOrEqual(farthest);
        if (lines !== undefined) expect(lines).toBeGreaterThan(0);
      }
    }),
    { numRuns: 60 },
  ));
