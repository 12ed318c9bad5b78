import { expect, test } from "vitest";
import { choices, distanceAnswer, speedAnswer } from "../../src/page/work/asked.js";
import { standing } from "../../src/page/work/inHand.js";
import { findingsOf } from "../support/sheets.js";

const drill = findingsOf(
  "name: D\nkind: drill\nunits: in\ndrive: { motor: { speed: 1725 }, stages: [{ name: belt, steps: [{ label: A, driver: 2, driven: 4 }] }] }\n",
);

test("a drill drills and does nothing that a lathe does; drills have names too", () => {
  const { operations, holes } = choices(drill);
  for (const name of ["turning", "facing", "parting", "threading"]) expect(operations).not.toContain(name);
  expect(operations).toEqual(expect.arrayContaining(["drilling", "reaming", "tapping"]));
  expect(holes).toContain("drilling");
  expect(choices(findingsOf("name: L\n")).operations).toEqual(expect.arrayContaining(["turning", "drilling"]));
  const asked = (diameter: string, operation = "drilling") =>
    speedAnswer(drill, { material: "mild steel", operation, diameter }).said[0];
  // 0.159 and 0.257 in, ASME B94.11M from memory.
  expect(asked("no. 21")).toBe(asked("0.159"));
  expect(asked("#21")).toBe(asked("0.159"));
  expect(asked("letter F")).toBe(asked("0.257"));
  expect(asked("no. 99")).toMatch(/^Write a diameter, as 5\/8, or a drill’s name/);
  expect(asked("letter F", "turning")).toMatch(/^Write a diameter, as 5\/8; /);
});

test("a drill is asked for drilling first, and an inch machine answers in feet a minute", () => {
  const { operations } = choices(drill);
  expect(operations[0]).toBe("drilling");
  expect(new Set(operations).size).toBe(operations.length);
  const { working, from } = speedAnswer(drill, { material: "mild steel", operation: "drilling", diameter: "3/8" });
  expect(working[0]).toMatch(/^\d+ to \d+ ft\/min for mild steel/);
  // π × 3/8 in × 863 rpm ÷ 12, the speed by ratio.
  expect(working[1]).toContain("863 rpm: 85 ft/min");
  expect(from).toEqual([{ quantity: "speed", of: "only" }]);
});

test("an answer says how its speed is known, what it may be at most, and what would serve", () => {
  const asked = { material: "mild steel", operation: "drilling", diameter: "3/8" };
  const { said } = speedAnswer(drill, asked);
  expect(said[0]).toMatch(/863 rpm$/);
  expect(said[1]).toMatch(/^by ratio alone, not measured: up to \d+ rpm$/);
  expect(Number(/\d+/.exec(said[1] ?? "")?.[0])).toBeGreaterThan(863);
  const [, from, to] = /^drilling mild steel: (\d+) to (\d+) rpm serves$/.exec(said[2] ?? "") ?? [];
  const { working } = speedAnswer(drill, asked);
  const [, slowest, most] = /^(\d+) to (\d+) ft\/min/.exec(working[0] ?? "") ?? [];
  for (const [rpm, speed] of [
    [from, slowest],
    [to, most],
  ])
    expect((Number(rpm) * Math.PI * 0.375) / 12).toBeCloseTo(Number(speed), -0.5);
  const measured = findingsOf(
    "name: D\nkind: drill\ndrive: { motor: { speed: 1725 }, stages: [{ name: belt, steps: [{ label: A, driver: 50, driven: 100 }, { label: B, driver: 100, driven: 50 }] }], tachometer: [{ position: [A], speed: 840 }] }\n",
  );
  expect(speedAnswer(measured, { ...asked, diameter: "10" }).said).toContain("measured with a tachometer");
  expect(speedAnswer(drill, { ...asked, diameter: "wide" }).said[0]).toContain("a bare number is in inches.");
});

test("a hole larger than the machine drives is refused, as a job is; what is turned is no hole", () => {
  const limited = findingsOf(
    "name: L\nlimits: { drill: 13 }\ndrive: { motor: { speed: 1400 }, reverses: true, stages: [{ name: belt, steps: [{ label: A, driver: 50, driven: 150 }, { label: B, driver: 40, driven: 160 }] }] }\n",
  );
  const said = (diameter: string, operation: string) =>
    speedAnswer(limited, { material: "mild steel", operation, diameter }).said;
  for (const operation of ["drilling", "reaming"])
    expect(said("20", operation)).toEqual(["20 mm is larger than the machine drives, 13 mm at most."]);
  expect(said("13", "drilling")[0]).toMatch(/^Belt on [AB]/);
  expect(said("20", "turning")[0]).toMatch(/^Belt on [AB]/);
});

/** A drill that reverses, with one position, of so many rpm by ratio. */
const reversing = (rpm: number) =>
  findingsOf(
    `name: D\nkind: drill\ndrive: { motor: { speed: 1400 }, reverses: true, stages: [{ name: belt, steps: [{ label: A, driver: ${rpm / 10}, driven: 140 }, { label: B, driver: 80, driven: 140 }] }] }\n`,
  );

test("a tap is told no speed at which a hand does not reverse in time", () => {
  const tapped = (material: string, diameter: string, rpm: number) =>
    speedAnswer(reversing(rpm), { material, operation: "tapping", diameter }).said.join("\n");
  for (const diameter of ["3", "6", "12"]) {
    const said = tapped("mild steel", diameter, 150);
    expect(said).toContain("Belt on A: 150 rpm");
    expect(said).toContain("tapping mild steel: no faster than 180 rpm");
    expect(said).not.toMatch(/\d rpm serves/);
  }
  expect(tapped("mild steel", "3", 400)).toMatch(/reverse a tap in time/);
});

test("a tap is asked for by its thread's name as by its diameter", () => {
  const tapped = (diameter: string) =>
    speedAnswer(reversing(150), { material: "mild steel", operation: "tapping", diameter }).said;
  expect(tapped("M8")).toEqual(tapped("8"));
  expect(tapped("1/4-20 UNC")).toEqual(tapped("1/4 in"));
  expect(tapped("M8")[0]).toContain("rpm");
  expect(tapped("M1000")[0]).toContain("or a thread’s name, as M8");
});

test("where one speed alone serves it is said once", () => {
  const said = (diameter: string) =>
    speedAnswer(drill, { material: "mild steel", operation: "countersinking", diameter }).said.join("\n");
  expect(said("2500 mm")).toMatch(/: \d+ rpm serves$/m);
  expect(said("8 mm")).toMatch(/: \d+ to \d+ rpm serves$/m);
});

test("a thread that is too large for the slowest position is said to be so", () => {
  const { said } = speedAnswer(reversing(150), {
    material: "stainless steel",
    operation: "tapping",
    diameter: "40",
  });
  expect(said[0]).toMatch(/slowest is too fast\.$/);
  expect(said.join("\n")).not.toContain("reverse a tap in time");
  expect(said[1]).toMatch(/^tapping stainless steel: \d+ to \d+ rpm serves$/);
});

test("a distance between two tenths of a division is said to lie between its lines; one on a line is not", () => {
  const quill = findingsOf(
    "name: D\nkind: drill\nunits: in\nhandwheels: [{ name: Quill, travel: 4, feed: 3.1, dial: { shape: drum, diameter: 3, width: 0.4 } }]\n",
  );
  const said = (distance: string) => distanceAnswer(quill, { wheel: "Quill", distance }).said.join("; ");
  expect(said("1 1/8")).toContain(
    "1.126 in; that is to the nearest tenth of a division: 1.125 in lies between the lines 1.120 and 1.140",
  );
  for (const distance of ["1.12", "1.126"]) expect(said(distance)).not.toContain("between the lines");
});

const mixed = findingsOf(`name: M
units: in
handwheels:
  - { name: Cross, moves: across, travel: 4, feed: 2 mm, dial: { shape: drum, diameter: 2, width: 0.4, divisions: 0.02 mm } }
  - { name: Top, moves: angled, feed: 0.1, dial: { shape: drum, diameter: 2, width: 0.4 } }
`);

test("a dial in millimetres on a machine in inches is asked and answers in millimetres", () => {
  const asked = (wheel: string, distance: string) => distanceAnswer(mixed, { wheel, distance });
  const { said, working, turns } = asked("Cross", "5");
  expect(turns).toBeCloseTo(2.5, 9);
  expect(asked("Cross", "5 mm").turns).toBe(turns);
  expect(said[0]).toBe("2 turns, then the dial reads 1.000 mm");
  expect(working[0]).toBe("5.000 mm ÷ 2.00000 mm a turn = 2.500 turns");
  expect(asked("Cross", "120").said.at(-1)).toBe("beyond its travel of 101.6 mm");
  expect(asked("Cross", "far").said[0]).toBe("Write a distance, as 12.5; a bare number is in millimetres.");
  expect(asked("Top", "0.25").turns).toBeCloseTo(2.5, 9);
  const gone = (wheel: string) => standing(mixed, { wheel, turned: { turns: 2.5, slack: 0 } })?.travel;
  expect(gone("Cross")).toMatch(/^5\.\d* ?.*mm$/);
  expect(gone("Top")).toMatch(/in$/);
});

test("on a dial that the wheel had, it is said which measure was asked, not what a new dial would read", () => {
  const lathe = (rest: string) =>
    findingsOf(
      `name: L\nhandwheels: [{ name: Cross slide, reads: diameter, travel: 60, feed: { perTurn: 2.1, uncertainty: 0.0001 }${rest} }]\n`,
    );
  const asked = (rest: string) => distanceAnswer(lathe(rest), { wheel: "Cross slide", distance: "6" });
  const old = asked(", oldDial: { reads: travel, perTurn: 2 }");
  expect(old.said.join("; ")).toMatch(/^1 turn, then .*0\.857 mm of travel, old dial/);
  expect(old.said.join("; ")).toContain("reading the old dial comes on top; the dial counted from 0");
  expect(old.working).toContain("Asked is what the diameter changes by: twice what the slide moves.");
  expect(old.working.join()).not.toContain("The dial reads");
  const made = asked(", dial: { shape: drum, diameter: 40, width: 9 }");
  expect(made.working).toContain("The dial reads the diameter: twice what the slide moves.");
  expect(made.said.join()).not.toContain("old dial");
});

test("what is tapped by hand asks for no plug where a foot turns the spindle", () => {
  const trodden = findingsOf(
    "name: T\ndrive: { motor: { speed: 100, by: treadle }, stages: [{ name: belt, steps: [{ driver: 100, driven: 50 }] }] }\n",
  );
  const said = (findings: typeof drill) =>
    speedAnswer(findings, { material: "mild steel", operation: "tapping", diameter: "M6" }).said.join(" ");
  expect(said(trodden)).toBe("Turn the spindle by hand, foot off the treadle.");
  expect(said(drill)).toBe("Turn the spindle by hand, plug out.");
});
