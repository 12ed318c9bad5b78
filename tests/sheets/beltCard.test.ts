import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { diameterFor } from "../../src/cutting/rates.js";
import { compute } from "../../src/findings/compute.js";
import type { Findings } from "../../src/findings/findings.js";
import { bandFor } from "../../src/findings/speedChoice.js";
import type { Cover } from "../../src/machine/machine.js";
import { arrange } from "../../src/sheets/arrange.js";
import { inLanguage } from "../../src/words/language.js";
import { say } from "../../src/words/say.js";
import { anyMachine, sound } from "../support/anyMachine.js";
import { doubled } from "../support/doubled.js";
import { walk } from "../support/marks.js";
import { measureSheets } from "../support/measureSheets.js";
import { pdfOf } from "../support/pdfOf.js";
import { type PageRead, readPdf } from "../support/readPdf.js";
import { seed } from "../support/seed.js";
import { demoFindings, findingsOf, ownTexts, printOf, template, textsOf } from "../support/sheets.js";
import { sixteenOnEnd } from "../support/sixteen.js";

const POINT = 25.4 / 72;
const cover: Cover = { width: 180, height: 120, corner: 8, holes: [{ x: 8, y: 8, diameter: 4.5 }] };
const usual: Cover = { width: 150, height: 110, corner: 4, holes: [] };

function covered(own: Cover, findings = demoFindings()): Findings {
  const { machine } = findings;
  if (machine.drive === undefined) throw new Error("no drive");
  return compute({ ...machine, drive: { ...machine.drive, cover: own } });
}
const read = async (findings: Findings) => (await readPdf(await pdfOf(printOf(findings, "belt-card")))).pages;
const faultsOf = (findings: Findings) =>
  measureSheets(findings, ["belt-card"]).faults.map(({ kind, what }) => `${kind}: ${what}`);

/** Two belts of so many steps each. */
const positions = (lower: readonly string[], upper: readonly string[], more = "") => {
  const steps = (labels: readonly string[]) =>
    labels.map((label, at) => `{ label: "${label}", driver: ${100 - 9 * at}, driven: ${60 + 9 * at} }`);
  return findingsOf(
    `name: B\nlimits: { chuck: 1500 }\ndrive:\n  motor: { speed: 1425 }\n${more}  stages:\n    - { name: low, steps: [${steps(lower)}] }\n    - { name: high, steps: [${steps(upper)}] }\n`,
  );
};
const sixteen = positions(["1", "2", "3", "4"], ["A", "B", "C", "D"]);
const longNames = positions(
  ["inner pulley, next to the motor's own bearing and its screw", "second pulley", "third pulley, the smooth one", "4"],
  ["A", "B", "the pulley that is next to the outermost of the spindle", "D"],
);

/** Between the corner marks, from those that lie in one line. */
function edges(page: PageRead) {
  const marks = page.lines.filter(({ pen }) => pen < 0.11);
  const long = ({ from, to }: (typeof marks)[number]) => Math.abs(Math.hypot(to.x - from.x, to.y - from.y) - 4) < 0.01;
  const xs = marks.filter((one) => long(one) && one.from.x === one.to.x).map(({ from }) => from.x);
  const ys = marks.filter((one) => long(one) && one.from.y === one.to.y).map(({ from }) => from.y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

describe("the card fits its cover", () => {
  test("it has the size of the cover, and no print where the screw sits", async () => {
    for (const page of await read(covered(cover))) {
      const { left, right, top, bottom } = edges(page);
      expect(right - left).toBeCloseTo(cover.width, 2);
      expect(bottom - top).toBeCloseTo(cover.height, 2);
      for (const { x, y } of page.texts.filter((one) => one.y > top && one.y < bottom))
        expect(Math.hypot(x - left - 8, y - top - 8)).toBeGreaterThan(4.5 / 2);
    }
  });

  test.each([
    [
      "in two corners",
      [
        { x: 8, y: 8, diameter: 5 },
        { x: 142, y: 102, diameter: 5 },
      ],
    ],
    ["in the middle", [{ x: 75, y: 55, diameter: 12 }]],
    ["at the middle of each edge", [10, 140].map((x) => ({ x, y: 55, diameter: 6 }))],
  ])("no letter, line or belt touches screws %s", (_, holes) => {
    const findings = covered({ ...usual, holes });
    const { drawing } = printOf(findings, "belt-card").pages[0] ?? {};
    expect(drawing).toBeDefined();
    expect(faultsOf(findings)).toEqual([]);
  });

  test("whose it is, how old, and the limits stand inside the cut", async () => {
    const [page] = await read(covered(usual));
    if (page === undefined) throw new Error("no page");
    const { top, bottom } = edges(page);
    const within = page.texts.filter(({ y }) => y > top && y < bottom).map(({ text }) => text);
    for (const words of ["Boathouse bench lathe", "revision 3", "chuck 2000"])
      expect(
        within.some((text) => text.includes(words)),
        words,
      ).toBe(true);
  });

  test("a screw in the middle of its lower edge leaves a card its machine, age and limits", async () => {
    const [page] = await read(covered({ ...usual, holes: [{ x: 75, y: 102, diameter: 7 }] }));
    const words = (page?.texts ?? []).map(({ text }) => text);
    for (const whole of [/^Boathouse bench lathe$/, /^revision 3 · measured [\d-]{10}$/, /chuck.*2000/])
      expect(
        words.some((text) => whole.test(text)),
        String(whole),
      ).toBe(true);
  });

  test("six positions and five materials are one card of 150 × 110 mm, with or without screws", () => {
    for (const findings of [
      covered(usual),
      covered({
        ...usual,
        holes: [
          { x: 8, y: 8, diameter: 5 },
          { x: 142, y: 102, diameter: 5 },
        ],
      }),
      demoFindings(),
    ]) {
      const words = textsOf(findings, "belt-card");
      expect(words).not.toContain("card 1 of");
      for (const material of ["mild", "free-", "brass", "aluminium", "grey"]) expect(words).toContain(material);
    }
  });

  test("six positions and five materials of an inch machine are one card, too", () => {
    const inch = findingsOf(
      `name: I
units: in
limits: { chuck: 2000 rpm }
drive:
  motor: { speed: 1725 rpm }
  cover: { width: 150 mm, height: 110 mm, corner: 5 mm, holes: [[8 mm, 8 mm, 5 mm], [142 mm, 102 mm, 5 mm]] }
  stages:
    - { name: motor belt, steps: [{ driver: 2, driven: 6 }] }
    - { name: spindle belt, steps: [{ label: A, driver: 4, driven: 2 }, { label: B, driver: 3, driven: 3 }, { label: C, driver: 2, driven: 4 }] }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [20, 50]] }] }
work:
  materials: [mild steel, free-cutting steel, brass, aluminium, grey cast iron]
  diameters: [1/8, 1/4, 1/2, 1, 1.5]
`,
    );
    const words = textsOf(inch, "belt-card");
    expect(words).not.toContain("card 1 of");
    for (const material of ["mild", "free-", "brass", "aluminium", "grey"]) expect(words).toContain(material);
    expect(faultsOf(inch)).toEqual([]);
  });

  test("a lathe stood on end with sixteen positions: two cards at most for each use", () => {
    const both = sixteenOnEnd({
      drive: "  cover: { width: 150, height: 110, corner: 5, holes: [[8, 8, 5], [142, 102, 5]] }\n",
      rest: "work: { materials: [mild steel, free-cutting steel, brass, aluminium, grey cast iron, stainless steel, bronze] }\n",
    });
    const words = textsOf(both, "belt-card");
    expect(words).not.toContain("card 5 of");
    for (const material of ["stainless", "bronze"]) expect(words).toContain(material);
    // Positions of nearly one speed share a row.
    expect(words).toMatch(/\/ either: nearly the same speed\.|Nearly the same speed, so either: [^.]+\./);
    for (const { position } of both.drive?.speeds ?? []) expect(words).toContain(position.name);
    expect(faultsOf(both)).toEqual([]);
  });

  test.each([
    ["short", sixteen],
    ["long", longNames],
  ])("sixteen of %s names are two at most, with every material", (_, findings) => {
    const own = covered(usual, findings);
    const words = textsOf(own, "belt-card");
    expect(words).not.toContain("card 3 of");
    expect(words).not.toContain("Further materials");
    const told = [...words.matchAll(/ (\d+) ~/g)].map(([, rpm]) => Number(rpm));
    for (const { rpm } of own.drive?.speeds ?? [])
      expect(Math.min(...told.map((one) => Math.abs(Math.log(one / rpm))))).toBeLessThan(Math.log(1.06) + 0.5 / rpm);
    expect(faultsOf(own)).toEqual([]);
  });

  test("no two positions read the same, however long their names", () => {
    const upright = positions(
      ["the slow belt of the motor, small pulley", "the slow belt of the motor, large pulley"],
      ["the spindle belt, small pulley", "the spindle belt, large pulley"],
    );
    for (const findings of [longNames, upright]) {
      const words = textsOf(covered(usual, findings), "belt-card");
      expect(words.slice(0, words.indexOf("Begin with"))).not.toContain("…");
      const rows = [...words.matchAll(/ (\d [A-D](?: \/ \d [A-D])*) \d+ ~/g)].flatMap(
        ([, row]) => row?.split(" / ") ?? [],
      );
      expect(rows).toHaveLength(findings.drive?.speeds.length ?? 0);
      expect(new Set(rows).size).toBe(rows.length);
      // What each sign stands for is told in full.
      for (const { label } of findings.machine.drive?.stages.flatMap(({ steps }) => steps) ?? [])
        expect(words).toContain(label);
    }
  });

  test("without a cover thirty positions are one card, as high as the page lets it be", () => {
    const thirty = positions(["1", "2", "3", "4", "5"], ["A", "B", "C", "D", "E", "F"]);
    expect(textsOf(thirty, "belt-card")).not.toContain("card 1 of");
    expect(faultsOf(thirty)).toEqual([]);
  });

  test("a cover in which no row has room is refused with what to do", () => {
    expect(arrange(covered({ ...usual, width: 90, height: 60 }), template("belt-card"))).toEqual({
      missing: expect.stringMatching(
        /too small for a single row.*; name fewer materials .*, or give it more room: drive: cover:/,
      ),
    });
  });

  test("where long names of its steps take the room, shorter ones are the first remedy", () => {
    const long = (step: string) => `${step}, as it is written on the pulley of this old lathe in the shed`;
    const named = (steps: string) =>
      [...steps]
        .map((one, at) => `{ label: "${long(one)}", driver: ${100 - 8 * at}, driven: ${60 + 8 * at} }`)
        .join(", ");
    const findings = findingsOf(
      `name: L\ndrive:\n  motor: { speed: 1425 }\n  cover: { width: 120, height: 80 }\n  stages: [{ name: motor belt, steps: [${named("123")}] }, { name: spindle belt, steps: [${named("ABCDE")}] }]\n`,
    );
    expect(arrange(findings, template("belt-card"))).toEqual({
      missing: expect.stringMatching(/; give the steps short labels, .*; or name fewer materials/),
    });
  });

  test("on machines at random nothing lies over anything, and nothing is lost but for want of room", () => {
    let cards = 0;
    fc.assert(
      fc.property(anyMachine, (made) => {
        const findings = sound(made);
        if (findings?.machine.drive === undefined) return;
        const { faults, pages, refused } = measureSheets(findings, ["belt-card"]);
        expect(faults).toEqual([]);
        cards += pages;
        for (const { sheet, why } of refused)
          if (sheet === "belt-card")
            expect(why).toMatch(/too small for a single row|(mm|in) across|does not fit on|more than 6/);
      }),
      { numRuns: Number(process.env.RUNS ?? 40), seed },
    );
    expect(cards).toBeGreaterThan(20);
  });
});

describe("what it says", () => {
  const findings = covered(usual);
  const texts = async () => ((await read(findings))[0] as PageRead).texts;

  test("position and speed in 20 pt, ranges, letters on the steps and the caution in 13, the caution first", async () => {
    const all = await texts();
    const sizes = (words: string) => all.filter(({ text }) => text === words).map(({ size }) => size / POINT);
    for (const rpm of ["702", "462", "304", "78", "51", "34"]) expect(sizes(rpm)).toEqual([expect.closeTo(20, 2)]);
    // Twice as a position, twice on the pulleys.
    for (const step of ["A", "B", "C"])
      expect(
        sizes(step)
          .sort((a, b) => a - b)
          .map((size) => Math.round(size)),
      ).toEqual([13, 13, 20, 20]);
    const ranges = all.filter(({ text }) => /^(to \d+|\d+–\d+|\d+\+|all)$/.test(text));
    expect(ranges.length).toBeGreaterThan(10);
    for (const { size } of ranges) expect(size / POINT).toBeCloseTo(13, 2);
    const caution = all.find(({ text }) => text.startsWith("PLUG OUT"));
    expect((caution?.size ?? 0) / POINT).toBeCloseTo(13, 2);
    expect(caution?.y).toBeLessThan(Math.min(...ranges.map(({ y }) => y)));
  });

  test("fast at the top, each way of the drive apart", async () => {
    const all = await texts();
    const y = (words: string) => all.find(({ text }) => text === words)?.y ?? Number.NaN;
    const order = ["702", "462", "304", "78", "51", "34"].map(y);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(textsOf(findings, "belt-card")).toMatch(/open.*geared/);
  });

  test("ranges end where the cutting speed is reached, rounded to the safe side, by a formula of its own", () => {
    const words = textsOf(findings, "belt-card");
    const speeds = [...(findings.drive?.speeds ?? [])].reverse();
    for (const material of findings.machine.work.materials) {
      const band = bandFor({ material, operation: "turning", diameter: 20 }, findings);
      const end = Math.floor(diameterFor(band?.most ?? 0, speeds[0]?.rpm ?? 0));
      const next = Math.floor(diameterFor(band?.most ?? 0, speeds[1]?.rpm ?? 0));
      expect(words).toContain(` to ${end} `);
      expect(words).toContain(` ${end}–${next} `);
    }
  });

  test("every cone, its shafts named, and the back gear; the belt where one begins", () => {
    const words = textsOf(findings, "belt-card");
    for (const part of ["spindle", "countershaft", "back gear"]) expect(words).toContain(part);
    expect(words).toContain("Begin with C geared, as drawn.");
    const two = textsOf(sixteen, "belt-card");
    for (const shaft of ["spindle", "countershaft", "motor"]) expect(two).toContain(shaft);
  });

  test("long labels have signs, on the steps and in the rows", () => {
    const words = textsOf(longNames, "belt-card");
    expect(words).toContain("C = the pulley that is next to the outermost of the spindle");
    expect(words).toMatch(/A A B B C C D D spindle .* 1 1 2 2 3 3 4 4/);
  });

  test("what signs stand for is told in 13 pt where the card has room for it, smaller where it would cost a card", () => {
    const keyed = (findings: Findings): number[] => {
      const sizes: number[] = [];
      for (const { drawing } of printOf(findings, "belt-card").pages)
        walk(drawing.marks, (mark) => {
          if (mark.kind === "text" && / = /.test(mark.text)) sizes.push(mark.size / POINT);
        });
      return sizes;
    };
    const roomy = keyed(covered({ width: 170, height: 225, corner: 4, holes: [] }, longNames));
    const tight = keyed(covered({ width: 130, height: 110, corner: 4, holes: [] }, longNames));
    expect(new Set(roomy.map(Math.round))).toEqual(new Set([13]));
    expect(new Set(tight.map(Math.round))).toEqual(new Set([9]));
  });

  test("by ratio a raised sign, explained once and only where it is used", () => {
    expect(textsOf(findings, "belt-card").match(/~ by ratio, not measured/g)).toHaveLength(1);
    const measured = demoFindings().machine;
    const all = findingsOf(
      "name: M\ndrive:\n  motor: { speed: 1400 }\n  stages: [{ name: b, steps: [{ driver: 50, driven: 100 }, { driver: 70, driven: 70 }] }]\n  tachometer: [{ position: A, speed: 690 }, { position: B, speed: 1380 }]\n",
    );
    expect(measured.drive).toBeDefined();
    expect(textsOf(all, "belt-card")).not.toContain("~");
  });

  test("beyond a limit a bar stands where the diameters would, and no diameter does", () => {
    const held = findingsOf(
      readFileSync("templates/machines/boathouse.yaml", "utf8").replace("chuck: 2000", "chuck: 500"),
    );
    const words = textsOf(held, "belt-card");
    expect(words).toContain("beyond the limit, do not use");
    // With A open forbidden B open is the fastest: its ranges begin at nothing.
    const band = bandFor({ material: "brass", operation: "turning", diameter: 20 }, held);
    expect(words).toContain(` to ${Math.floor(diameterFor(band?.most ?? 0, 462))} `);
    expect(words).not.toContain(` to ${Math.floor(diameterFor(band?.most ?? 0, 702))} `);
  });

  test("a limit's warning stands whole on a card however narrow, or the card is refused", () => {
    let warned = 0;
    for (const width of [127, 112, 104, 96, 92, 88, 84, 80])
      for (const language of ["en", "de", doubled] as const)
        inLanguage(language, () => {
          const arranged = arrange(covered({ ...usual, width, height: 180 }, sixteen), template("belt-card"));
          if ("missing" in arranged) {
            expect(arranged.missing).toMatch(/cover/);
            return;
          }
          const words = textsOf(covered({ ...usual, width, height: 180 }, sixteen), "belt-card");
          expect(words).toContain(say("belt card.do not use"));
          warned++;
        });
    expect(warned).toBeGreaterThan(8);
  });

  test("a motor with many speeds: no higher than the limit, and what to set for a diameter", () => {
    const variable = findingsOf(
      "name: V\nlimits: { chuck: 2000 }\ndrive: { motor: { speed: [300, 3000] }, stages: [{ name: b, steps: [{ driver: 60, driven: 60 }, { driver: 40, driven: 80 }] }] }\n",
    );
    const words = textsOf(variable, "belt-card");
    expect(words).toContain("max: turn the motor no higher, for the limit.");
    expect(words).toContain("Small figures: rpm to set");
    expect(words).not.toContain("300–3000");
    for (const [, fastest = ""] of words.matchAll(/ \d+–(\d{4}) /g)) expect(Number(fastest)).toBeLessThanOrEqual(2000);
  });

  test("where its numbers come from stands on the speed diagram, not in the cover", () => {
    expect(textsOf(findings, "belt-card")).not.toContain("Cutting speeds from");
    expect(textsOf(findings, "speed-diagram")).toContain("Cutting speeds from");
  });

  test("fewer materials by a template, in the file's order, and other work", () => {
    const own = (settings: string) =>
      ownTexts(
        findings,
        `title: Mine\nneeds: drive\ncard: { width: 150, height: 110 }\nblocks: [positions: ${settings}]\n`,
      );
    expect(own("{ materials: 2 }")).toMatch(/mild steel.*free-cutting/);
    const [card, further] = own("{ materials: 2 }").split("Further materials, on the speed diagram: ");
    expect(card).not.toContain("brass");
    expect(further).toMatch(/^brass, aluminium, grey cast iron\./);
    expect(own("{ operation: parting }")).toContain("parting: diameters in mm by speed");
    // How large work was looked at stands in no file.
    expect(own("{ operation: parting }")).not.toContain("(up to 1");
    expect(own("{ caution: none }")).not.toContain("PLUG OUT");
  });

  test("German, and words twice as long", () => {
    for (const language of ["de", doubled] as const) {
      const faults = inLanguage(language, () => faultsOf(covered(usual)));
      // The foot of the page is not the card's; what is filled into doubled words stands there twice.
      expect(faults.filter((fault) => !/maker's manual|^unit twice/.test(fault))).toEqual([]);
    }
    expect(inLanguage("de", () => textsOf(covered(usual), "belt-card"))).toContain("gerechnet, nicht gemessen");
  });
});

test("where the slowest position ends below the largest diameter the card says why no row is for larger work, else nothing", () => {
  const card = (driven: number) =>
    textsOf(
      findingsOf(
        `name: L\ndrive: { motor: { speed: 1425 }, stages: [{ name: belt, steps: [{ label: A, driver: 100, driven: 100 }, { label: B, driver: 50, driven: ${driven} }] }] }\nwork: { materials: [mild steel] }\n`,
      ),
      "belt-card",
    );
  // 356 rpm: mild steel of 100 mm wants some 90.
  expect(card(200)).toContain("Larger than listed: too fast here.");
  expect(card(1000)).not.toContain("Larger than listed");
});
