import { describe, expect, test } from "vitest";
import { withSigns } from "../../src/blocks/shared/stepSigns.js";
import { planOf } from "../../src/plan/plan.js";
import { jobOf } from "../support/job.js";
import { findingsOf, textsOf } from "../support/sheets.js";

const machine = (slow: string, wall: string) => ({
  ...findingsOf(`name: L
limits: { chuck: 1800 rpm }
drive:
  motor: { speed: 1725 rpm }
  stages:
    - { name: motor belt, steps: [{ label: F, driver: 80, driven: 130 }, { label: ${slow}, driver: 50, driven: 160 }] }
    - { name: spindle belt, steps: [{ label: ${wall}, driver: 130, driven: 70 }, { label: M, driver: 100, driven: 100 }, { label: L, driver: 50, driven: 150 }] }
handwheels:
  - { name: Cross slide, reads: diameter, travel: 60, feed: 2, dial: { shape: drum, diameter: 40, width: 9 } }
  - { name: Tailstock barrel, travel: 60, feed: 2.5 }
work: { materials: [mild steel], drills: [3, 6] }
`),
  job: jobOf(
    ["do: face, depth: 0.5", "do: turn, to: 14, length: 30", "do: centre drill", "do: drill, diameter: 3, depth: 9"],
    undefined,
    "mild steel",
  ),
});

const said = (findings: ReturnType<typeof machine>, sheet: string) => textsOf(findings, sheet).replace(/\s+/g, " ");

describe("positions with long names", () => {
  const long = machine("Slow motor groove", "Nearest the headstock wall");
  const signed = withSigns(long);

  test.each(["plan", "hand-feed", "drilling-card"])(
    "are called on the %s as on the belt card, what the signs stand for once",
    (sheet) => {
      const words = said(long, sheet);
      expect(words.split("Nearest the headstock wall")).toHaveLength(2);
      expect(words.split("Slow motor groove")).toHaveLength(2);
      for (const one of signed?.key.split(" · ") ?? []) {
        expect(words).toContain(one);
        expect(said(long, "belt-card")).toContain(one);
      }
    },
  );

  test("are those of the belt card at every step", () => {
    const words = said(long, "plan");
    const names = planOf(long.job, signed?.findings ?? long).steps.map(({ speed }) => speed?.speed?.position.name);
    expect(new Set(names).size).toBeGreaterThan(1);
    for (const name of names) expect(words).toContain(name);
  });

  test("short ones have their names everywhere", () => {
    const short = machine("S", "W");
    for (const sheet of ["plan", "hand-feed", "drilling-card"])
      expect(said(short, sheet)).not.toMatch(/[A-Z0-9] = [A-Z]/);
  });

  test("those of a few letters have them on the card too, however little room it has", () => {
    const cone = (labels: readonly string[]) =>
      labels.map((label, at) => `{ label: ${label}, driver: ${55 + 23 * at}, driven: ${124 - 23 * at} }`).join(", ");
    const inner = findingsOf(`name: N
kind: drill
drive:
  motor: { speed: 1400 rpm }
  cover: { width: 150, height: 110 }
  stages:
    - { name: motor belt, steps: [${cone(["inner", "outer"])}] }
    - { name: spindle belt, steps: [${cone(["rear", "second", "third", "front"])}] }
work: { materials: [mild steel, free-cutting steel, grey cast iron, tool steel, brass, bronze], drills: [3, 6, 13] }
`);
    const [card, drilling] = ["belt-card", "drilling-card"].map((sheet) => textsOf(inner, sheet).replace(/\s+/g, " "));
    for (const name of ["inner rear", "outer rear", "inner second"]) {
      expect(card).toContain(name);
      expect(drilling).toContain(name);
    }
    expect(card).not.toContain(" = rear");
  });
});
