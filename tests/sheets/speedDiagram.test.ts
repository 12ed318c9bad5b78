import { describe, expect, test } from "vitest";
import { size } from "../../src/blocks/shared/style.js";
import { lineMarks } from "../../src/blocks/speeds/diagramLines.js";
import { chooseSpeed } from "../../src/cutting/choose.js";
import { cuttingSpeed } from "../../src/cutting/cuttingSpeeds.js";
import { metresPerMinuteAt } from "../../src/cutting/rates.js";
import type { Mark } from "../../src/drawing/drawing.js";
import type { Page } from "../../src/drawing/page.js";
import { inLanguage } from "../../src/words/language.js";
import { walk } from "../support/marks.js";
import { measureSheets } from "../support/measureSheets.js";
import { pdfOf } from "../support/pdfOf.js";
import { type LineRead, type PageRead, readPdf } from "../support/readPdf.js";
import { demoFindings, findingsOf, printOf, textsOf } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

/** Reads a scale off the printed page: where its numbers stand, and what they say. */
function scale(numbers: readonly { value: number; at: number }[]) {
  const [first, last] = [numbers[0], numbers.at(-1)];
  if (first === undefined || last === undefined || first === last) throw new Error("no scale");
  const perDecade = (last.at - first.at) / Math.log10(last.value / first.value);
  return { value: (at: number) => first.value * 10 ** ((at - first.at) / perDecade), perDecade: Math.abs(perDecade) };
}

/** The printed lines of the positions: heavy and slanting. */
const slanting = (page: PageRead): LineRead[] =>
  page.lines.filter(
    ({ from, to, stroked, pen }) =>
      stroked && pen > 0.3 && pen < 0.4 && Math.abs(from.x - to.x) > 1 && Math.abs(from.y - to.y) > 1,
  );

describe("the speed diagram, read back from the PDF", async () => {
  const findings = demoFindings();
  const { pages } = await readPdf(await pdfOf(printOf(findings, "speed-diagram")));
  const page = pages[0] as PageRead;
  const box = page.lines.filter(({ from, to }) => from.x === to.x || from.y === to.y);
  // The frame's sides are the only long upright lines of objects.
  const sides = box.filter(
    ({ from, to, pen }) => from.x === to.x && Math.abs(to.y - from.y) > 50 && Math.abs(pen - 0.35) < 0.01,
  );
  const [left, right] = [Math.min, Math.max].map((of) => of(...sides.map(({ from }) => from.x))) as [number, number];
  const bottom = Math.max(...sides.flatMap(({ from, to }) => [from.y, to.y]));
  const within = (x: number) => x > left - 0.01 && x < right + 0.01;
  // Grid lines give the scales.
  const upright = [
    ...new Set(box.filter(({ from, to }) => from.x === to.x && within(from.x)).map(({ from }) => from.x)),
  ].sort((a, b) => a - b);
  const level = [
    ...new Set(
      box
        .filter(({ from, to }) => from.y === to.y && Math.abs(Math.abs(to.x - from.x) - (right - left)) < 0.01)
        .map(({ from }) => from.y),
    ),
  ].sort((a, b) => b - a);

  const near = (list: readonly number[], at: number) =>
    list.reduce((best, one) => (Math.abs(one - at) < Math.abs(best - at) ? one : best));
  const found = page.texts.flatMap(({ text, x, y }) =>
    /^\d+(\.\d+)?$/.test(text) ? [{ value: Number(text), x, y }] : [],
  );
  // The axes' own numbers: below the frame, and left of it; lines bear numbers too.
  const numbers = found.filter(
    ({ x, y }) => (within(x + 1) && y > bottom && y < bottom + 6) || (x < left && y < bottom + 2),
  );
  const lowest = Math.max(...numbers.map(({ y }) => y));
  const across = scale(
    numbers
      .filter(({ y }) => Math.abs(y - lowest) < 0.01)
      .map(({ value, x }) => ({ value, at: near(upright, x + 1) }))
      .sort((a, b) => a.value - b.value),
  );
  const up = scale(
    numbers
      .filter(({ y }) => Math.abs(y - lowest) > 1)
      .map(({ value, y }) => ({ value, at: near(level, y - 1.14) }))
      .sort((a, b) => a.value - b.value),
  );

  test("both scales go by ratio alike over their numbers, as preferred numbers allow", () => {
    for (const { value, y } of numbers.filter(({ y }) => Math.abs(y - lowest) > 1))
      expect(Math.abs(up.value(near(level, y - 1.14)) / value - 1)).toBeLessThan(0.015);
  });

  test("every printed line is the spindle speed of a position, to what an eye reads (1 %), and every position in sight has one", () => {
    const rpms = findings.drive?.speeds.map(({ rpm }) => rpm) ?? [];
    const lines = slanting(page);
    expect(lines.length).toBeGreaterThanOrEqual(4);
    const found = lines.map(({ from, to }) => {
      const [a, b] = [from, to].map(({ x, y }) => (1000 * up.value(y)) / (Math.PI * across.value(x)));
      expect((a as number) / (b as number)).toBeCloseTo(1, 2);
      return a as number;
    });
    for (const rpm of found) expect(Math.min(...rpms.map((one) => Math.abs(one / rpm - 1)))).toBeLessThan(0.01);
    expect(new Set(found.map((rpm) => rpms.findIndex((one) => Math.abs(one / rpm - 1) < 0.01))).size).toBe(
      lines.length,
    );
  });

  test("what the table says for a diameter and a material lies on that position's line, inside the band", () => {
    const { machine, drive } = findings;
    let checked = 0;
    for (const diameter of machine.work.diameters)
      for (const material of machine.work.materials) {
        const band = cuttingSpeed(material, machine.work.tool, "turning", { ...machine.work, diameter });
        const choice = band && chooseSpeed(diameter, band, drive?.speeds ?? [], machine.limits);
        if (choice?.verdict !== "in the band" || choice.rpm === undefined || band === undefined) continue;
        const read = slanting(page).map(({ from, to }) => {
          const share = Math.log(diameter / across.value(from.x)) / Math.log(across.value(to.x) / across.value(from.x));
          return up.value(from.y + share * (to.y - from.y));
        });
        const v = metresPerMinuteAt(choice.rpm, diameter);
        expect(Math.min(...read.map((one) => Math.abs(one / v - 1)))).toBeLessThan(0.01);
        checked++;
      }
    expect(checked).toBeGreaterThan(5);
  });
});

test("positions with long names have signs on the diagram and the tree, and a key", () => {
  const findings = findingsOf(
    `name: L
drive:
  motor: { speed: 1425 }
  stages:
    - { name: low, steps: [{ label: the slow belt of the motor on its small pulley, driver: 60, driven: 120 }, { label: the slow belt of the motor on its large pulley, driver: 90, driven: 90 }] }
    - { name: high, steps: [{ label: the small pulley of the spindle, driver: 60, driven: 120 }, { label: the large pulley of the spindle, driver: 100, driven: 80 }] }
`,
  );
  for (const sheet of ["speed-diagram", "speed-tree"]) {
    const words = textsOf(findings, sheet);
    for (const position of ["1 A", "1 B", "2 A", "2 B"]) expect(words, sheet).toContain(` ${position} `);
    expect(words.replaceAll(" ", "")).toContain("A=thesmallpulleyofthespindle");
    if (sheet === "speed-tree") expect(words).not.toContain("…");
  }
});

test("an inch machine's diameters are fractions", () => {
  const words = textsOf(
    findingsOf(
      "name: I\nunits: in\ndrive: { motor: { speed: 1725 rpm }, stages: [{ name: b, steps: [{ label: A, driver: 2, driven: 4 }, { label: B, driver: 3, driven: 3 }] }] }\nwork: { materials: [brass], diameters: [1/8, 1/4, 1/2, 1] }\n",
    ),
    "speed-diagram",
  );
  expect(words).toContain(" 1/4 ");
  expect(words).not.toMatch(/ 0\.(315|63|125) /);
});

describe("on small paper", () => {
  const small = (materials: string) =>
    findingsOf(`name: M
paper: { size: A5 }
limits: { chuck: 1200 rpm }
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 80, driven: 50 }, { label: B, driver: 50, driven: 80 }] }]
work: { materials: [${materials}] }
`);

  test("names that a bar has no room for stand in full below", () => {
    const long =
      "bronze of the old bearing shells, the castings of the year before last and the turnings of both, melted anew";
    // The list of materials is closed by what encloses it.
    const file = `brass, "${long}"], cuttingSpeeds: [{ material: "${long}", speed: [30 m/min, 40 m/min], source: own trials }`;
    const words = textsOf(small(file), "speed-diagram");
    expect(words).toMatch(/bronze of the old [\w ]*\w…/);
    expect(words.replace(/\s+/g, " ")).toContain(`Names in full: ${long}.`);
    expect(textsOf(small("brass, mild steel"), "speed-diagram")).not.toContain("Names in full");
  });

  test("a name stands in two lines at its bar rather than be cut", () => {
    const words = textsOf(small("mild steel, free-cutting steel, brass"), "speed-diagram");
    expect(words).not.toContain("…");
    expect(words).toMatch(/free-cutting/);
  });

  test("what is beyond a limit has a sign in the list, told once", () => {
    const words = textsOf(small("brass"), "speed-diagram");
    expect(words).toMatch(/2280 A ×/);
    expect(words.match(/× beyond the limit/g)).toHaveLength(1);
  });
});

test("where there is no room to say every speed, those lines are left out and told", () => {
  const steps = (driver: number, labels: string) =>
    [...labels]
      .map((label, at) => `{ label: "${label}", driver: ${driver + 7 * at}, driven: ${100 - 6 * at} }`)
      .join(", ");
  const many = findingsOf(`name: M
drive:
  motor: { speed: 1400 rpm }
  stages:
    - { name: low, steps: [${steps(40, "12345678")}] }
    - { name: high, steps: [${steps(51, "ABCDE")}] }
work: { materials: [mild steel, free-cutting steel, brass, aluminium, grey cast iron, stainless steel, bronze, copper, tool steel, acrylic, nylon, zinc alloy], diameters: [5, 10, 20, 40] }
paper: { size: A5 }
`);
  const print = printOf(many, "speed-diagram");
  const words = wordsOf(print);
  const [, told = ""] = /Lines left out for want of room: ([\d, ]+) rpm\./.exec(words) ?? [];
  const left = told.split(", ").filter((one) => one !== "");
  expect(left.length).toBeGreaterThan(0);
  const lines = JSON.stringify(print.pages).match(/"name":"position"/g)?.length ?? 0;
  expect(lines).toBeGreaterThan(5);
  // Every line that is drawn says its speed: those in sight are the labelled and the left out.
  const said = (speed: string) => words.split(" ").filter((word) => word === speed).length;
  const labelled = (many.drive?.speeds ?? []).filter(({ rpm }) => said(rpm.toFixed(0)) > 1).length;
  expect(labelled).toBeGreaterThanOrEqual(lines);
  expect(measureSheets(many, ["speed-diagram"]).faults.filter(({ kind }) => kind !== "page nearly empty")).toEqual([]);
});

describe("of more lines than can say their speeds", () => {
  const frame = { left: 0, right: 100, top: 0, bottom: 100 };
  const plain = (value: number) => 10 * value;
  /** All leave the frame at its side, where so many numbers have room below one another. */
  const drawn = (count: number, keep?: number) => {
    const lines = Array.from({ length: count }, (_, at) => ({
      name: "",
      rpm: 100 + at,
      held: false,
      turnedDown: false,
    }));
    const scales = { across: [1, 10] as [number, number], up: [0.001, 1e6] as [number, number], share: 1 };
    const { marks, left } = lineMarks(lines, plain, (value) => 100 - value / 1000, { ...scales, keep }, frame);
    return { left, ways: marks.filter((mark) => mark.kind === "group").length };
  };
  const room = Math.floor(97.5 / (size.text * 1.15) + 1);

  test("as many are drawn as there is room for, the slowest and the fastest among them", () => {
    expect(drawn(room).left).toEqual([]);
    const { left, ways } = drawn(room + 1);
    expect(ways).toBe(room);
    expect(left).toHaveLength(1);
    for (const count of [room + 1, room + 5, 2 * room, 3 * room + 1]) {
      const { left, ways } = drawn(count);
      expect(ways).toBe(room);
      expect(left).toHaveLength(count - room);
      expect(left).not.toContain("100");
      expect(left).not.toContain(String(99 + count));
    }
  });

  test("and the one of the example", () => {
    const { left } = drawn(2 * room);
    for (const speed of left) {
      const kept = drawn(2 * room, Number(speed));
      expect(kept.left).not.toContain(speed);
      expect(kept.ways).toBe(room);
      expect(kept.left).not.toContain("100");
    }
  });
});

test("a speed whose line is out of sight is told", () => {
  const words = textsOf(demoFindings(), "speed-diagram");
  expect(words).toMatch(/Without a line[^:]*: 34, 51 rpm/);
});

test("on small paper the diagram, its list and what is told below share a page", () => {
  const { machine, ...rest } = demoFindings();
  const pages = printOf(
    { ...rest, machine: { ...machine, paper: { ...machine.paper, size: "A5" } } },
    "speed-diagram",
  ).pages;
  expect(pages).toHaveLength(1);
});

test("no page bears the caution of a material that the diagram does not name, nor leaves its room free", () => {
  const drill = (materials: string) =>
    printOf(
      findingsOf(`name: Bench drill
kind: drill
paper: { size: A5 }
drive:
  motor: { speed: 1400 rpm }
  stages:
    - { name: motor belt, steps: [${[50, 65, 80, 95].map((driver, at) => `{ label: "${at + 1}", driver: ${driver}, driven: ${160 - driver} }`).join(", ")}] }
    - { name: spindle belt, steps: [${[50, 70, 90, 110].map((driver, at) => `{ label: ${"ABCD"[at]}, driver: ${driver}, driven: ${160 - driver} }`).join(", ")}] }
work: { materials: [${materials}] }
`),
      "speed-diagram",
    );
  const plain = "mild steel, brass, aluminium, grey cast iron, acrylic";
  const wooden = drill(`${plain}, hard wood`);
  const told = /No figures for hard wood; caution on the drilling card\./;
  expect(wordsOf(wooden)).toMatch(told);
  expect(wordsOf(wooden).replace(told, "")).not.toMatch(/wood/i);
  expect(wooden.pages).toHaveLength(drill(plain).pages.length);
});

describe("a material without a bar", () => {
  const turning = (materials: string) =>
    textsOf(
      findingsOf(`name: L
drive:
  motor: { speed: 1400 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 50, driven: 150 }, { label: B, driver: 90, driven: 110 }] }]
work: { materials: [${materials}], diameters: [6, 10, 25] }
`),
      "speed-diagram",
    ).replace(/\s+/g, " ");

  test("whose figures go by rpm is told with them, where the belt goes for it, and its caution", () => {
    const said = turning("mild steel, hard wood");
    expect(said).toMatch(
      /Without a bar, as the figures go by rpm or by size: hard wood \(\d+–\d+ rpm\): ø to 76 mm B at 1145 rpm, ø 76\+ mm too fast here\./,
    );
    expect(said).toContain("Wood dust");
    expect(inLanguage("de", () => turning("mild steel, hard wood"))).toMatch(
      /Ohne Balken, weil nach Drehzahl oder Größe angegeben: Hartholz \(\d+–\d+ U\/min\): ø bis 76 mm B mit 1145 U\/min, ø ab 76 mm hier zu schnell\./,
    );
  });

  test("is not looked for where all have one", () => {
    expect(turning("mild steel, brass")).not.toMatch(/Without a bar|No figures/);
  });
});

describe("32 speeds and 20 materials", () => {
  const materials =
    "mild steel, free-cutting steel, grey cast iron, tool steel, brass, bronze, stainless steel, aluminium, plastics, acetal, acrylic, rigid PVC, polystyrene, free-cutting stainless steel, nylon, zinc alloy, medium-carbon steel, high-carbon steel, alloy steel, copper";
  const stage = (name: string, labels: string, driver: number) =>
    `{ name: ${name}, steps: [${[...labels].map((label, at) => `{ label: "${label}", driver: ${driver + 13 * at}, driven: ${120 - 11 * at} }`).join(", ")}] }`;
  const many = findingsOf(`name: M
drive:
  motor: { speed: 1425 rpm }
  stages: [${stage("motor belt", "1234", 60)}, ${stage("spindle belt", "ABCD", 55)}, { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [20, 50]] }] }]
work: { materials: [${materials}], diameters: [3, 6, 10, 16, 25, 40] }
`);
  const print = printOf(many, "speed-diagram");
  const { pages } = print;
  const wordsOn = (page: Page) => wordsOf({ ...print, pages: [page] });
  const bars = (marks: readonly Mark[]): number =>
    marks.reduce((sum, mark) => {
      if (mark.kind === "group") return sum + bars(mark.marks);
      return sum + (mark.kind === "path" && mark.fill === "white" ? 1 : 0);
    }, 0);

  test("are on diagrams with few bars each, on which every material is once", () => {
    expect(pages.length).toBeGreaterThan(1);
    const each = pages.map(({ drawing }) => bars(drawing.marks));
    expect(Math.max(...each)).toBeLessThanOrEqual(8);
    const words = pages.map((page) => wordsOn(page)).join(" ");
    for (const material of materials.split(", ")) expect(words).toContain(material);
    expect(words).not.toContain("…");
  });

  test("and no speed is said to be left out that is there", () => {
    for (const page of pages) {
      const words = wordsOn(page);
      const [, told = ""] = /Lines left out for want of room: ([\d, ]+) rpm\./.exec(words) ?? [];
      // In the list, and where it is told.
      for (const speed of told.split(", ").filter((one) => one !== ""))
        expect(
          words
            .replace(/[,.]/g, "")
            .split(" ")
            .filter((word) => word === speed),
          speed,
        ).toHaveLength(2);
    }
  });
});

test("the drawn example goes up in round dots, which are no dashes of a pen", () => {
  const dots: { readonly x: number; readonly y: number }[] = [];
  walk(printOf(demoFindings(), "speed-diagram").pages[0]?.drawing.marks ?? [], (mark, toPage, names) => {
    if (mark.kind !== "path" || !names.includes("example")) return;
    expect(mark.pen).toBeUndefined();
    const [arc] = mark.segments;
    if (arc?.to === "arc") dots.push(toPage(arc.centre));
  });
  expect(dots.length).toBeGreaterThan(5);
  expect(new Set(dots.map(({ x }) => x.toFixed(6))).size).toBe(1);
});

describe("the list of thirty speeds below a diagram", () => {
  const steps = (labels: string, low: number, step: number) =>
    [...labels]
      .map((label, at) => {
        const [driver, driven] = [low + step * at, low + step * (labels.length - 1 - at)];
        return `{ label: "${label}", driver: ${driver}, driven: ${driven} }`;
      })
      .join(", ");
  const thirty = (paper: string) =>
    printOf(
      findingsOf(`name: Thirty
paper: { size: ${paper} }
limits: { chuck: 4000 rpm, spindle: 4000 rpm }
drive:
  motor: { speed: 1400 rpm }
  stages:
    - { name: motor belt, steps: [${steps("ABCDE", 50, 15)}] }
    - { name: spindle belt, steps: [${steps("123456", 55, 14)}] }
work: { materials: [mild steel, free-cutting steel, grey cast iron, tool steel, brass, bronze, stainless steel, aluminium], diameters: [3, 6, 10, 16, 25, 40] }
`),
      "speed-diagram",
    );

  test("leaves what is said below it a place on the same page of A4", () => {
    expect(thirty("A4").pages).toHaveLength(1);
  });

  test("is not torn on A5", () => {
    const { pages, ...rest } = thirty("A5");
    const [first, ...others] = pages.map((page) => wordsOf({ ...rest, pages: [page] }));
    for (const belt of ["A 1", "C 4", "E 6"]) expect(`${first} `).toContain(` ${belt} `);
    expect(others.join(" ")).not.toMatch(/rpm belt/);
  });
});

test("what is said of two diagrams on low paper has one page, not a nearly empty one after the first", () => {
  const cone = (labels: string, low: number, step: number) =>
    [...labels]
      .map(
        (label, at) =>
          `{ label: "${label}", driver: ${low + step * at}, driven: ${low + step * (labels.length - 1 - at)} }`,
      )
      .join(", ");
  const twelve = findingsOf(`name: Twelve
kind: drill
paper: { size: A5 }
limits: { spindle: 4000 rpm, chuck: 4000 rpm }
drive:
  motor: { speed: 1400 rpm }
  stages:
    - { name: motor belt, steps: [${cone("ABC", 50, 30)}] }
    - { name: spindle belt, steps: [${cone("1234", 55, 23)}] }
work:
  materials: [mild steel, free-cutting steel, grey cast iron, tool steel, brass, bronze, stainless steel, aluminium, plastics, acetal, acrylic, rigid PVC, polystyrene, free-cutting stainless steel, nylon, zinc alloy, medium-carbon steel, high-carbon steel, alloy steel, copper]
  drills: [2, 2.5, 3, 3.3, 4, 4.2, 5, 6, 6.8, 8, 8.5, 10, 12, 13]
`);
  const { pages, ...rest } = printOf(twelve, "speed-diagram");
  expect(pages).toHaveLength(3);
  expect(measureSheets(twelve, ["speed-diagram"]).faults).toEqual([]);
  const last = wordsOf({ ...rest, pages: pages.slice(-1) });
  expect(last.match(/The dots show one way/g)).toHaveLength(2);
  expect(last.match(/Go straight up/g)).toHaveLength(1);
  expect(last).toContain("× beyond the limit");
});
