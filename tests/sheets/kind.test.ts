import { describe, expect, test } from "vitest";
import { byHandOnly, drillsOf } from "../../src/findings/drills.js";
import { remarks } from "../../src/findings/remarks.js";
import { readJob } from "../../src/job/read.js";
import { planOf } from "../../src/plan/plan.js";
import { arrange } from "../../src/sheets/arrange.js";
import { exercises } from "../../src/student/exercises.js";
import { explainCuttingSpeed } from "../../src/working/cuttingSpeed.js";
import { file, folder, witnessmark } from "../support/command.js";
import { findingsOf, ownTexts, sheetNames, template, textsOf } from "../support/sheets.js";

const kinds = ["lathe", "drill", "lathe stood on end"] as const;
type Kind = (typeof kinds)[number];

/** A machine that could be any of them: only its kind says what it is. */
const machineText = (kind: Kind, more = "", drive = "") => `name: Bench machine
kind: ${kind}
limits: { chuck: 2000 rpm${more} }
drive:
  motor: { speed: 1425 rpm }
${drive}  stages: [{ name: belt, steps: [{ label: A, driver: 40, driven: 120 }, { label: B, driver: 80, driven: 80 }] }]
handwheels:
  - { name: Cross slide, reads: diameter, travel: 60, feed: 2 mm, dial: { shape: drum, diameter: 38, width: 9 } }
  - { name: Quill, travel: 50, feed: 40 mm, dial: { shape: drum, diameter: 60, width: 9 } }
stops: [{ name: blind hole, handwheel: Quill, length: 12, parts: 10 }]
tapers: [{ name: plug, large: 12, small: 10, length: 20 }]
`;
/** The same where one position is slow enough for a tap. */
const slowMachine = (kind: Kind, drive: string) =>
  findingsOf(machineText(kind, "", drive).replace("driven: 120", "driven: 400"));
const machine = (kind: Kind, more?: string, drive?: string) => findingsOf(machineText(kind, more, drive));
/** A card of one's own with the drills that the file names. */
const barsOf = (findings: ReturnType<typeof findingsOf>): string =>
  ownTexts(findings, "title: Mine\nneeds: drive\nblocks: [drill bars]\n");
const made = (kind: Kind): string[] =>
  sheetNames().filter((sheet) => !("missing" in arrange(machine(kind), template(sheet))));

const turning =
  /\bturning\b|\bturn diameters|diameter of the work|\bturn the work\b|How thick|thick\.|long bar|spindle's bore|spindle stop|shoulder|groove|rod to turn/i;

describe("a drill is not a lathe", () => {
  test("no sheet that a drill prints speaks of turning, of the work's diameter or of a bar", () => {
    const sheets = made("drill").filter((sheet) => !["measuring-form", "printer-check"].includes(sheet));
    expect(sheets).toContain("belt-card");
    expect(sheets).toContain("student");
    for (const sheet of sheets) expect(textsOf(machine("drill"), sheet), sheet).not.toMatch(turning);
  });

  test("a lathe's do", () => {
    for (const sheet of ["belt-card", "student", "stops", "speed-diagram"])
      expect(textsOf(machine("lathe"), sheet), sheet).toMatch(turning);
  });

  test("sheets for turning alone are not made of it, and say why", () => {
    for (const sheet of ["hand-feed", "tapers"])
      expect(arrange(machine("drill"), template(sheet))).toEqual({
        missing: "it is for turning, and the file says kind: drill",
      });
    expect(made("lathe")).toEqual(expect.arrayContaining(["hand-feed", "tapers"]));
  });

  test("what its wheel moves is called a quill or a drill, never a slide or a barrel", () => {
    const quillAlone = findingsOf(
      machineText("drill")
        .replace(/ {2}- \{ name: Cross.*\n/, "")
        .replace("feed: 40 mm", "feed: 75 mm"),
    );
    for (const sheet of ["measuring-form", "student", "stops"]) {
      const words = textsOf(quillAlone, sheet);
      expect(words, sheet).not.toMatch(/\bslides?\b|\bbarrel\b|slide and ways|lock the others/i);
      expect(words, sheet).toMatch(/quill|drill/i);
    }
    const yetNone = textsOf(findingsOf("name: D\nkind: drill\n"), "measuring-form");
    expect(yetNone).toMatch(/quill/i);
    expect(yetNone).not.toMatch(/\bslides?\b/i);
    // Where the travel holds no whole turn none is asked for, and the marks of the parts are told how to be made.
    const form = textsOf(quillAlone, "measuring-form").replace(/\s+/g, " ");
    expect(form).not.toContain("whole turn");
    expect(form).toContain("fold it in 16");
  });

  test("its cautions stand where the hand is: clamp the work", () => {
    for (const sheet of ["belt-card", "drilling-card", "stops"])
      expect(textsOf(machine("drill"), sheet), sheet).toContain("Clamp the work");
    expect(textsOf(machine("drill"), "student")).toContain("Never hold the work in your hand.");
    expect(textsOf(machine("lathe"), "student")).not.toContain("Never hold the work");
  });

  test("a lathe stood on end gets both, each under its own head", () => {
    const both = machine("lathe stood on end");
    expect(made("lathe stood on end")).toEqual(expect.arrayContaining(made("lathe")));
    for (const sheet of ["student", "speed-diagram"]) {
      const words = textsOf(both, sheet);
      expect(words.indexOf("As a lathe"), sheet).toBeGreaterThanOrEqual(0);
      expect(words.indexOf("Stood on end, as a drill"), sheet).toBeGreaterThan(words.indexOf("As a lathe"));
    }
    expect(textsOf(both, "belt-card")).toMatch(/turning: diameters in mm by speed.*drills in mm by speed/);
  });

  test("a drill without a wheel still has a student's sheet", () => {
    const bare = findingsOf(machineText("drill").split("handwheels:")[0] ?? "");
    expect(textsOf(bare, "student")).toContain("Ask how far one turn goes.");
  });
});

describe("depths by eighths of a turn", () => {
  test("up to the quill's travel and no further: 40 mm a turn, 50 mm of travel", () => {
    const words = textsOf(machine("drill"), "drilling-card");
    const [, table = ""] = /Depth by turns of the quill(.*?)Feeding the drill/.exec(words) ?? [];
    for (const depth of ["5.00", "35.00", "40.00", "45.00", "50.00"]) expect(table).toContain(depth);
    expect(table).not.toContain("55.00");
  });

  test("a student's depth comes within a sixteenth of a turn, and what is left is told", () => {
    for (let revision = 1; revision <= 40; revision++) {
      const findings = findingsOf(`revision: ${revision}\n${machineText("drill")}`);
      const asked = exercises(findings, "drilling").find(({ question }) => question.startsWith("A hole"));
      const [, depth = "", , turns = "", eighths = "", off = "0", sense = ""] =
        /A hole is to be ([\d.]+) mm deep(.*)\|(?:(\d+) turns?(?: and |(?=$|:)))?(?:(\d) eighths?)?(?:: ([\d.]+) mm too (deep|little))?$/.exec(
          `${asked?.question}|${asked?.answer}`,
        ) ?? [];
      expect(asked?.answer).not.toMatch(/\b0 (turns|eighths)|\b1 eighths/);
      const gone = (Number(turns) + Number(eighths) / 8) * 40;
      expect(Math.abs(gone - Number(depth))).toBeLessThanOrEqual(2.5);
      expect(gone - Number(depth)).toBeCloseTo(Number(off) * (sense === "deep" ? 1 : -1), 1);
    }
  });
});

describe("drills", () => {
  test("the tables go by drills, the file's or usual ones, none larger than the machine drives", () => {
    expect(drillsOf(machine("drill", ", drill: 8").machine)).toEqual([2, 4, 6, 8]);
    const own = findingsOf(`${machineText("drill")}work: { drills: [2.5, 6.8, 14] }\n`);
    expect(drillsOf(own.machine)).toEqual([2.5, 6.8, 14]);
    expect(barsOf(own)).toMatch(/ 2\.5 6\.8 14 /);
    const held = textsOf(machine("drill", ", drill: 6"), "drilling-card");
    expect(held).toContain(" 6 ");
    expect(held).not.toMatch(/ 6\.5 | 12\.5 /);
  });

  test("of an inch machine they are fractions, as they are stamped", () => {
    const inch = findingsOf(
      `${(machineText("drill").split("handwheels:")[0] ?? "").replace("kind:", "units: in\nkind:").replace("40, driven: 120", "2, driven: 6").replaceAll("80", "4")}`,
    );
    expect(barsOf(inch)).toMatch(/1\/16.*1\/8.*3\/16/);
    expect(textsOf(inch, "belt-card")).toMatch(/ to \d+\/\d+ .*\d\/\d+–\d+\/\d+ /);
    expect(textsOf(inch, "drilling-card")).toMatch(/17\/64 0\.2656/);
  });
});

test("a limit that leaves no drill is questioned, and no sheet stops for it", () => {
  for (const [limit, work] of [
    [", drill: 13", "work: { drills: [16, 20] }\n"],
    [", drill: 1.5", ""],
  ] as const) {
    const text = `${machineText("drill", limit)}${work}`;
    const findings = findingsOf(text);
    expect(remarks(findings).map(({ code }) => code)).toContain(work === "" ? "unlikely-limit" : "beyond-limit");
    for (const sheet of sheetNames()) expect(() => arrange(findings, template(sheet)), sheet).not.toThrow();
    expect(barsOf(findings)).toMatch(work === "" ? / 1 1\.5 .* B 1425 / : /None of the drills/);
    expect(textsOf(findings, "belt-card")).toContain(work === "" ? "(up to 1.5)" : "(up to 13)");
  }
});

describe("reaming and tapping by power", () => {
  test.each([
    ["nothing said", "", true],
    ["reverses: false", "  reverses: false\n", true],
    ["reverses: true", "  reverses: true\n", false],
    ["clutch: true", "  clutch: true\n", false],
  ])("%s: by hand, plug out, or a table", (_, drive, byHand) => {
    const findings = slowMachine("lathe", drive);
    expect(byHandOnly("tapping", findings.machine)).toBe(byHand);
    for (const word of ["tap", "ream", "die"]) expect(byHandOnly(word, findings.machine), word).toBe(byHand);
    expect(byHandOnly("drilling", findings.machine)).toBe(false);
    const words = textsOf(findings, "drilling-card");
    expect(words.includes("Turn the spindle by hand, plug out")).toBe(byHand);
    expect(/Tapping, high-speed steel: .* by thread/.test(words)).toBe(!byHand);
    expect(/Reaming, high-speed steel: .* by diameter/.test(words)).toBe(!byHand);
    const tapping = explainCuttingSpeed(findings).find(({ name }) => name.endsWith("tapping"));
    expect("missing" in (tapping?.explain() ?? {})).toBe(byHand);
    const { job } = readJob(
      "name: H\nmaterial: brass\nsteps: [{ do: drill, diameter: 5.8, depth: 10 }, { do: ream, diameter: 6, depth: 10 }]\n",
    );
    if (job === undefined) throw new Error("no job");
    const [drill, ream] = planOf(job, findings).steps;
    expect([drill?.byHand, ream?.byHand]).toEqual([false, byHand]);
    expect(ream?.speed === undefined).toBe(byHand);
  });
});

describe("a job on a drill", () => {
  test("needs no bar; what a drill cannot do is refused with its place, all at once", async () => {
    const place = file(machineText("drill"));
    const holes = file(
      "name: H\nmaterial: brass\nsteps:\n  - { do: drill, diameter: 3.3, depth: 10 }\n  - { do: tap, thread: M4, depth: 6 }\n",
      "holes.yaml",
    );
    const pin = file(
      "name: P\nmaterial: brass\nbar: { diameter: 10, out: 30 }\nsteps:\n  - { do: face, depth: 1 }\n  - { do: drill, diameter: 3, depth: 5 }\n  - { do: part, length: 10, blade: 2 }\n",
      "pin.yaml",
    );
    const out = folder();
    expect((await witnessmark("print", place, "--sheet", "plan", "--job", holes, "--out", out)).code).toBe(0);
    const { code, err } = await witnessmark("print", place, "--sheet", "plan", "--job", pin, "--out", out);
    expect(code).toBe(1);
    expect(err).toContain('pin.yaml:5:5: a drill cannot "face"');
    expect(err).toContain('pin.yaml:7:5: a drill cannot "part"');
    expect(err).not.toContain('cannot "drill"');
  });

  test("a job in millimetres on an inch machine keeps its sizes, with the machine's beside them", () => {
    const { job } = readJob("name: H\nunits: mm\nmaterial: brass\nsteps: [{ do: drill, diameter: 5, depth: 20 }]\n");
    if (job === undefined) throw new Error("no job");
    const [step] = planOf(job, findingsOf("name: L\nunits: in\n")).steps;
    expect(step?.title).toBe("drill 5 mm (0.1969 in), 20 mm (0.7874 in) deep");
  });
});

describe("what a hand or a machine cannot do", () => {
  const steps = (text: string) => {
    const { job, problems } = readJob(text);
    if (job === undefined) throw new Error(JSON.stringify(problems));
    return job;
  };
  test("a drill larger than the machine drives is said before the first chip", () => {
    const job = steps("name: H\nmaterial: brass\nsteps: [{ do: drill, diameter: 16, depth: 10 }]\n");
    const said = (limit: string) =>
      planOf(job, machine("drill", limit))
        .findings.map(({ what }) => what)
        .join(" ");
    expect(said(", drill: 13")).toContain("16 mm is larger than the machine drives, 13 mm at most");
    expect(said(", drill: 16")).not.toContain("larger than the machine drives");
  });

  test("magnesium is reamed no faster than a hand keeps the least feed, and its drilling table is that of its feeds", () => {
    const fast = (wheel: string) =>
      findingsOf(
        `name: M\nkind: lathe stood on end\ndrive:\n  motor: { speed: 1425 rpm }\n  clutch: true\n  stages: [{ name: belt, steps: [{ label: A, driver: 30, driven: 150 }, { label: B, driver: 60, driven: 120 }, { label: C, driver: 120, driven: 60 }] }]\nhandwheels: [{ name: Tailstock barrel, travel: 50, feed: ${wheel} }]\nwork: { materials: [magnesium], drills: [6, 10] }\n`,
      );
    const job = steps(
      "name: H\nmaterial: magnesium\nsteps: [{ do: drill, diameter: 5.8, depth: 10 }, { do: ream, diameter: 6, depth: 10 }]\n",
    );
    for (const { speed, published } of planOf(job, fast("2.5 mm")).steps)
      expect((speed?.rpm ?? 0) * (published?.from ?? Number.NaN)).toBeLessThanOrEqual(2.5 * 120);
    const words = textsOf(fast("2.5 mm"), "drilling-card");
    const chosen = [...words.matchAll(/\b([ABC]) (\d{2,})\b/g)].map(([, , rpm]) => Number(rpm));
    expect(chosen.length).toBeGreaterThan(1);
    const fed = planOf(job, fast("2.5 mm")).steps[0]?.speed?.rpm ?? 0;
    expect(Math.max(...chosen)).toBeLessThanOrEqual(Math.max(fed, 1425 / 2) + 1);
    expect(words).toContain("by hand");
  });

  test("a student is never asked to turn beyond the travel", () => {
    for (let revision = 1; revision <= 20; revision++) {
      const findings = findingsOf(`revision: ${revision}\n${machineText("drill")}`);
      const asked = exercises(findings, "drilling").find(({ question }) => /turns?\. How far/.test(question));
      expect(Number.parseFloat(asked?.answer ?? "")).toBeLessThanOrEqual(50);
    }
  });

  test("taps are told by their threads", () => {
    const words = textsOf(slowMachine("drill", "  reverses: true\n"), "drilling-card");
    expect(words).toMatch(/M3 .*M4 .*M6 .*M8 .*M10/);
    expect(words).toContain("reverse, or let the clutch slip, before the bottom of the hole");
  });
});

test("a tap goes by power no faster than a hand reverses it, and by hand where there is no such position", () => {
  const reversing = "  reverses: true\n";
  const asked = (findings: ReturnType<typeof findingsOf>) => {
    const words = textsOf(findings, "drilling-card").split("Tapping,")[1] ?? "";
    return [...words.matchAll(/\b[AB] (\d{2,4}) ~/g)].map(([, rpm]) => Number(rpm));
  };
  // 1425 × 40 / 400 = 142.5 rpm: a thread of nine turns lasts nearly four seconds.
  const slow = asked(slowMachine("drill", reversing));
  expect(slow.length).toBeGreaterThan(0);
  for (const rpm of slow) expect((60 * 9) / rpm).toBeGreaterThanOrEqual(3);
  // 475 and 1425 rpm, though published tapping speeds bear the first up to M10.
  const fast = textsOf(machine("drill", "", reversing), "drilling-card");
  expect(fast).not.toContain("Tapping,");
  expect(fast).toContain("plug out: tapping. No position is slow enough");
  // 176 rpm by its ratio may truly be more than a hand reverses: it serves no thread, whatever the size.
  const near = findingsOf(machineText("drill", "", reversing).replace("driven: 120", "driven: 324"));
  const position = near.drive?.speeds[0];
  expect(position?.rpm).toBeLessThan(180);
  expect(position?.highestRpm).toBeGreaterThan(180);
  expect(textsOf(near, "drilling-card")).not.toContain("Tapping,");
  // What the file's owner found by trial rules.
  const own =
    "work: { materials: [brass], cuttingSpeeds: [{ material: brass, operation: tapping, speed: [10, 12] }] }\n";
  const trusted = findingsOf(`${machineText("drill", "", reversing)}${own}`);
  expect(asked(trusted)).toEqual([475]);
  expect(textsOf(trusted, "drilling-card")).not.toContain("180 rpm");
  expect(textsOf(slowMachine("drill", reversing), "drilling-card")).toContain("at no more than 180 rpm");
});

test("a student's sheet of a machine without drive and feed would hold nothing of it", () => {
  const bare = findingsOf("name: B\nhandwheels: [{ name: Cross slide }]\n");
  expect(arrange(bare, template("student"))).toHaveProperty("missing");
});
