import { describe, expect, test } from "vitest";
import { choiceLines } from "../../src/cli/choiceLines.js";
import { dialToRead, oldDialToRead } from "../../src/findings/dialToRead.js";
import { onDial } from "../../src/findings/onDial.js";
import { oldSettingToRead } from "../../src/findings/settings.js";
import { jobOf } from "../support/job.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

const wheel = (rest: string, units = "mm") =>
  findingsOf(`name: L\nunits: ${units}\nhandwheels: [{ name: Cross slide, ${rest} }]\n`);
const settingOf = (findings: ReturnType<typeof wheel>, distance: number) => {
  const [finding] = findings.handwheels;
  return finding && oldSettingToRead(finding, distance);
};

describe("the old dial says what it reads", () => {
  test("travel, under a new dial that reads the diameter: it is told half of that", () => {
    // 6 mm of diameter are 3 mm of slide: at a true 2.1 mm a turn one turn and 0.9 ÷ 2.1 of what it shows.
    const old = settingOf(wheel("reads: diameter, feed: 2.1 mm, oldDial: { reads: travel, perTurn: 2 }"), 6);
    expect(old).toMatchObject({ wholeTurns: 1, reading: expect.closeTo((0.9 / 2.1) * 2, 3) });
    // 3 ÷ 2.1 turns of it show 2.857 of travel: taken for 5.714 on diameter, when 6 have come off.
    expect(old?.outBy).toBeCloseTo((2 * 3 * 2) / 2.1 - 6, 9);
  });

  test("diameter: what its maker meant is doubled where the file gives that alone", () => {
    const given = "reads: diameter, feed: { perTurn: 2.1, nominal: 2 }, oldDial: { reads: diameter }";
    expect(settingOf(wheel(given), 6)?.reading).toBeCloseTo((0.9 / 2.1) * 4, 3);
  });

  test("it is read in the unit that it is marked in", () => {
    const findings = wheel("feed: 2.54 mm, distances: [5.08], oldDial: { reads: travel, perTurn: 0.125 in }");
    expect(findings.handwheels[0]?.handwheel.oldDial?.unit).toBe("in");
    expect(textsOf(findings, "turns")).toContain("1 turn of the old dial shows 0.1250 in of travel");
    // 5.08 mm are just two turns of 2.54; on the old dial its zero, in inches of travel.
    expect(textsOf(findings, "turns")).toContain("travel it shows in uncorrected, out by mm");
    expect(textsOf(findings, "turns")).toContain(" 5.08 2 0.0000 1.270 ");
    const byScrew = wheel("feed: { perTurn: 2.1, nominal: 12 tpi }, oldDial: { reads: travel }");
    expect(byScrew.handwheels[0]?.handwheel.oldDial?.unit).toBe("in");
  });

  test("where nobody says what it reads, it is not corrected, and the sheet says why", () => {
    const findings = wheel("reads: diameter, feed: { perTurn: 2.1, nominal: 2 }");
    expect(settingOf(findings, 6)).toBeUndefined();
    expect(textsOf(findings, "turns")).toContain("what the old dial reads is not given, so");
  });
});

test.each(["travel", "diameter"])(
  "on one sheet the old dial and the maker's figure are out by the same, in one measure, with one sign: %s",
  (reads) => {
    // Ten turns of a slide that the maker meant to go 1 in, and that goes 0.99875: on diameter 1.9975, which its dial calls 2.
    const turns = textsOf(
      wheel(
        `reads: diameter, travel: 3.4, feed: { perTurn: 0.099875, nominal: 10 tpi }, oldDial: { reads: ${reads} }, distances: [1.9975]`,
        "in",
      ),
      "turns",
    );
    expect(turns).toMatch(/ 1\.9975 10 0\.0000 0\.0025 /);
    expect(turns).toMatch(/ 10 0\.9988 1\.9975 0\.0025 /);
    expect(turns).toContain("Out by: what that dial shows more (−: less) than truly comes off, on diameter.");
  },
);

test("a dial made for the maker's feed is wrong by twice as much on diameter, wherever that is told", () => {
  const rows = (reads: string) => textsOf(wheel(`reads: ${reads}, feed: { perTurn: 2.1, nominal: 2 }`), "turns");
  // One turn: 2.1 mm of slide, 4.2 on diameter, where the maker meant 4.
  expect(rows("diameter")).toContain("whole turns travel mm diameter mm maker's out by mm 1 2.100 4.200 −0.200 ");
  expect(rows("travel")).toContain("whole turns travel mm travel in maker's out by mm 1 2.100 0.0827 −0.100 ");
  const said = (reads: string) =>
    choiceLines(wheel(`reads: ${reads}, feed: { perTurn: 2.1, nominal: 2 }`)).filter((line) =>
      line.includes("nominal 2"),
    );
  expect(said("diameter").join()).toContain("0.2000 mm too little on diameter each turn");
  expect(said("travel").join()).toContain("0.1000 mm too little each turn");
});

describe("a wheel for which no dial is made is read by the dial that it had", () => {
  const findings = (old: string, doubt = "") =>
    findingsOf(`
name: L
units: mm
limits: { chuck: 2000 rpm }
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 40 mm, driven: 120 mm }, { label: B, driver: 80 mm, driven: 80 mm }] }]
handwheels:
  - { name: Cross slide, reads: diameter, travel: 60, feed: { perTurn: 2.1, nominal: 2${doubt} }${old} }
  - { name: Carriage, travel: 120, feed: 18 }
stops: [{ name: Shoulder, handwheel: Cross slide, length: 6 }]
`);
  const old = ", oldDial: { reads: travel }";
  const planWords = (rest: string, doubt = "", to = "15"): string => {
    const job = jobOf([`do: turn, to: ${to}, length: 10`], "bar: { diameter: 16, out: 40 }");
    return wordsOf(printOf({ ...findings(rest, doubt), job }, "plan")).replace(/\s+/g, " ");
  };

  test("a new dial goes before it; with neither, turns are all there is", () => {
    const read = (rest: string) => {
      const [wheel] = findings(rest).handwheels;
      return wheel && dialToRead(wheel);
    };
    const made = read(`${old}, dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02, closure: even }`);
    expect(made).toMatchObject({ chosen: { divisionValue: 0.02 }, fixed: false });
    expect(made?.old).toBeUndefined();
    expect(read(old)).toMatchObject({ old: "travel", fixed: true });
    const settable = ", oldDial: { reads: travel, fixed: false }";
    expect(read(settable)).toMatchObject({ old: "travel", fixed: false });
    // Of one beside a new dial that could not be made too: what is said of the old one is of the old one.
    const [beside] = findings(
      `${settable}, dial: { shape: drum, diameter: 40, width: 9, fixed: true }`,
      ", uncertainty: 0.1",
    ).handwheels;
    expect(beside && oldDialToRead(beside)).toMatchObject({ old: "travel", fixed: false });
    expect(beside && dialToRead(beside)).toBeUndefined();
    expect(planWords(settable)).not.toMatch(/S1 [+−] /);
    expect(read("")).toBeUndefined();
  });

  test("stops: whole turns and its reading, in its own measure", () => {
    // 6 mm of diameter are 3 mm of slide: at a true 2.1 one turn and 0.9, of which it shows 2 ÷ 2.1.
    const words = wordsOf(printOf(findings(old), "stops"));
    expect(words).toMatch(/Cross slide 1 \+ 0\.857 mm of travel, old dial/);
    expect(words).not.toContain("no dial");
    // Where it stood at the touch nobody knows, and whether it can be set to 0 nobody said.
    expect(words.replace(/\s/g, "")).toContain("Writedownwhatthedialreads.Donotturnback");
    expect(words.replace(/\s/g, "")).toContain("thentothesum:whatyouwrotedownandthefigure.");
    expect(words).toContain("take a turn off: Cross slide 2.000 mm of travel, old dial.");
    expect(words).not.toMatch(/Mark the|Dial to 0|then the dial reads/);
    expect(wordsOf(printOf(findings(""), "stops"))).toMatch(/Cross slide 1\.429/);
  });

  test("stops: what is done at the touch is said for every wheel that has one", () => {
    const both = (dial: string) => {
      const { handwheels, machine, ...rest } = findings(`${old}${dial}`);
      const stops = handwheels.map(({ handwheel }) => ({ name: "S", handwheel: handwheel.name, length: 6 }));
      return wordsOf(printOf({ ...rest, handwheels, machine: { ...machine, stops } }, "stops")).replace(/\s/g, "");
    };
    const made = (fixed: boolean) =>
      `, dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02, closure: even, fixed: ${fixed} }`;
    expect(both("")).toContain("Writedownwhatthedialreads.Withoutadial,markthewheel.");
    expect(both(made(false))).toContain("Dialto0.Withoutadial,markthewheel.");
    expect(both(made(true))).toContain("Writedownwhatthedialreads.Withoutadial,markthewheel.");
    expect(both(made(true))).toContain("thenthedialgoesonby");
  });

  test("stops on a worn slide: the rule's places are in the sheet's unit, what the dial shows in its own", () => {
    const turns = Array.from({ length: 21 }, (_, turn) => turn);
    const travel = turns.map((turn) => (3 * turn + 0.12 * Math.exp(-(((turn - 10) / 4) ** 2))).toFixed(3));
    const worn = (dial: string) =>
      textsOf(
        findingsOf(
          `name: L\nhandwheels:\n  - name: Carriage\n    travel: 60\n    feed: { readings: { gauge: 0.001, zeroAt: a line, turns: [${turns}], travel: [${travel}] } }${dial}\nstops: [{ name: S, handwheel: Carriage, length: 18 }]\n`,
        ),
        "stops",
      ).replace(/^.*Corrected over/, "");
    const byOld = worn("\n    oldDial: { reads: travel, perTurn: 0.125 in }");
    expect(byOld).toMatch(/rule at 0 to \d+ mm rule at \d+ to \d+ mm/);
    expect(byOld).not.toMatch(/rule at \d+ to \d+ in/);
    expect(byOld).toMatch(
      /goes on by beyond them from what it read at the touch, in of travel, old dial; .* \(0\.1250 in of travel/,
    );
    expect(worn("")).toContain("Figures: turns of the wheel.");
    expect(worn("\n    dial: { shape: drum, diameter: 40, width: 9, divisions: 0.05 }")).toContain(
      "Figures: turns + what the dial then reads, mm.",
    );
  });

  test("no ± is told beside its readings without a word that reading it comes on top", () => {
    const onTop = "Reading the old dial comes on top of the ±";
    const known = ", uncertainty: 0.001";
    const made = ", dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02, closure: even }";
    for (const sheet of ["stops", "turns"]) {
      expect(textsOf(findings(old, known), sheet)).toContain(onTop);
      // No ± at all, and one that holds the reading.
      expect(textsOf(findings(old), sheet)).not.toContain(onTop);
      expect(textsOf(findings(`${old}${made}`, known), sheet)).not.toContain(onTop);
      expect(textsOf(findings("", known), sheet)).not.toContain(onTop);
    }
    expect(planWords(old, known)).toContain("What reading it adds comes on top of every ±.");
  });

  test("a plan speaks of a dial printed for this machine only where one is", () => {
    const made = ", dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02, closure: even }";
    const stuckOn = "the one printed for this machine and stuck on";
    expect(planWords(made)).toContain(stuckOn);
    expect(planWords(old)).not.toContain(stuckOn);
    expect(planWords(old)).toContain("Turns: whole ones from the zero.");
    expect(planWords("")).not.toMatch(/stuck on|whole ones/);
    expect(planWords("")).toContain("A count in feeding is one second");
  });

  test("a plan: sums that can be written out, whether it can be set to 0 or not", () => {
    const words = planWords(old);
    // 1 mm off the diameter is 0.5 of slide: on the old dial 0.476.
    expect(words).toMatch(/S1 \+ 0\.476 =/);
    expect(words).toContain("Cross slide, mm of travel, old dial");
    expect(words).toMatch(/One whole turn is: Cross slide 2\.000 mm of travel, old dial/);
    // A diameter's difference is half of that in slide, and that half shows as 1 ÷ 2.1 of it.
    expect(words).toContain("Go on by that ÷ 2.1");
    // The carriage alone is counted in turns.
    expect(words).toMatch(/no dial/);
    expect(words).toContain("Where it says old dial:");
  });

  test("where a new dial was asked for and is not made, its feed being in doubt: turns, whatever the old one shows", () => {
    const wish = ", dial: { shape: drum, diameter: 40, width: 9, fixed: true }";
    expect(findings(wish, ", uncertainty: 0.05").handwheels[0]?.doubtful).toBeDefined();
    expect(planWords(wish, ", uncertainty: 0.05")).not.toContain("S1");
    expect(planWords(`${old}${wish}`, ", uncertainty: 0.05")).not.toMatch(/S1|old dial/);
    const stops = wordsOf(printOf(findings(`${old}${wish}`, ", uncertainty: 0.05"), "stops"));
    expect(stops).toMatch(/Cross slide 1\.429/);
    expect(stops).not.toContain("old dial");
    // Known well enough, the new one is made and read.
    expect(planWords(`${old}${wish}`, ", uncertainty: 0.0001")).toMatch(/S1 \+ 1\.0/);
  });

  test("a close size is not said to have no dial to go by, but one of which nobody says how finely it is read", () => {
    expect(planWords(old, ", uncertainty: 0.001", "12 h7")).toContain("what reading the old dial adds is not known");
    expect(planWords(old, ", uncertainty: 0.001", "12 h7")).not.toContain("no dial to go by");
    expect(planWords("", ", uncertainty: 0.001", "12 h7")).toContain("no dial to go by");
  });

  test("a slide locked for facing is zeroed as its dial can be: set, written down, or marked", () => {
    const locked = (rest: string) => {
      const lathe = findingsOf(
        `name: L\nhandwheels:\n  - { name: Cross slide, feed: 2 }\n  - { name: Carriage, travel: 120, feed: 18${rest} }\n  - { name: Top slide, travel: 50, feed: 1.5 }\n`,
      );
      const job = jobOf(["do: face, depth: 0.5, cut: 0.3", "do: turn, to: 14, length: 10"]);
      return textsOf({ ...lathe, job }, "plan");
    };
    const dial = ", dial: { shape: drum, diameter: 40, width: 9, divisions: 0.1, closure: even";
    expect(locked("")).toContain("Carriage, locked where it stands: mark where its handwheel stands");
    expect(locked(`${dial} }`)).toContain("Carriage, locked where it stands: set its dial to 0");
    expect(locked(`${dial}, fixed: true }`)).toContain("Carriage, locked where it stands: write down what its dial");
  });

  test("onDial works out what the old dial goes on by", () => {
    const [wheel] = findings(old).handwheels;
    const told = wheel && onDial(wheel, "diameter", "mm");
    const [sign, by] = (told?.times ?? "").split(" ");
    const gone = sign === "×" ? 6 * Number(by) : 6 / Number(by);
    expect(gone).toBeCloseTo(2 + 0.857, 2);
  });

  test.each([
    [
      ", oldDial: { reads: travel, perTurn: 1.5 }",
      "20 + 0.024 mm of travel, old dial",
      /goes on by beyond them, from what it read where the slope begins; .* \(1\.500 mm of travel, old dial\)/,
    ],
    [
      ", dial: { shape: drum, diameter: 40, width: 9, divisions: 0.02, closure: even }",
      "20 + 0.024 mm",
      /set to 0 where the slope begins/,
    ],
  ])("tapers: what the top slide's dial reads at the end of the slope, and from where%s", (dial, told, from) => {
    const top = (rest: string) =>
      wordsOf(
        printOf(
          findingsOf(
            `name: L\nhandwheels: [{ name: Top slide, travel: 50, feed: 1.5${rest} }]\ntapers: [{ name: Nose, large: 20, small: 18, length: 30.007 }]\n`,
          ),
          "tapers",
        ),
      );
    expect(top(dial)).toContain(told);
    expect(top(dial)).toMatch(from);
    expect(top("")).not.toMatch(/20 \+ |slope begins/);
  });
});
