import { describe, expect, test } from "vitest";
import type { Mark } from "../../src/drawing/drawing.js";
import { arrange } from "../../src/sheets/arrange.js";
import { readTemplate } from "../../src/sheets/readTemplate.js";
import { measureSheets } from "../support/measureSheets.js";
import { pdfOf } from "../support/pdfOf.js";
import { readPdf } from "../support/readPdf.js";
import { findingsOf, printOf, template, textsOf } from "../support/sheets.js";
import { wordsOf } from "../support/words.js";

const cone = (drivers: readonly number[], labels: string) =>
  `[${drivers.map((driver, at) => `{ label: "${labels[at]}", driver: ${driver}, driven: ${drivers.at(-1 - at)} }`).join(", ")}]`;
/** Invented, in the measure of a common cover. */
const drill = (materials = "mild steel, aluminium, brass, acrylic", more = "") =>
  findingsOf(
    `name: School drill, room 4
kind: drill
limits: { spindle: 3000 rpm, drill: 13 }
drive:
  motor: { speed: 1400 rpm }
  cover: { width: 150, height: 110, corner: 6, holes: [[8, 8, 6], [142, 8, 6]] }
  stages:
    - { name: motor belt, steps: ${cone([55, 90], "AB")} }
    - { name: spindle belt, steps: ${cone([110, 82, 55], "123")} }
${more}work: { materials: [${materials}], drills: [2, 2.5, 3, 3.3, 4, 4.2, 5, 6, 6.8, 8, 8.5, 10, 12, 13] }
`,
  );

/** Two belts and a back gear: twelve positions. */
const twelve = findingsOf(
  `name: Barn lathe
limits: { chuck: 1200 rpm }
drive:
  motor: { speed: 1425 rpm }
  cover: { width: 178, height: 122, holes: [[9, 9, 5], [169, 9, 5], [9, 113, 5], [169, 113, 5]] }
  stages:
    - { name: motor belt, steps: ${cone([50, 90], "LH")} }
    - { name: spindle belt, steps: ${cone([100, 80, 60], "123")} }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [25, 65]] }] }
work: { materials: [mild steel, grey cast iron, brass, bronze, aluminium] }
`,
);

const cardsOf = (findings: ReturnType<typeof findingsOf>) => {
  const arranged = arrange(findings, template("belt-card"));
  if ("missing" in arranged) throw new Error(arranged.missing);
  const [, of] = /card 1 of (\d+)/.exec(textsOf(findings, "belt-card")) ?? [];
  return Number(of ?? 1);
};

describe("pulleys take no room from the rows", () => {
  test("of a drill with two belts in a cover with two screws six positions are one card", () => {
    expect(cardsOf(drill())).toBe(1);
    expect(measureSheets(drill(), ["belt-card"]).faults).toEqual([]);
  });

  test("nor does a line of which nothing is said: twelve positions are one card", () => {
    expect(cardsOf(twelve)).toBe(1);
    expect(measureSheets(twelve, ["belt-card"]).faults).toEqual([]);
  });
});

describe("each way of the drive has its card", () => {
  const inches = (materials: string) =>
    findingsOf(`name: Barn lathe
units: in
limits: { chuck: 1200 rpm }
drive:
  motor: { speed: 1725 rpm }
  cover: { width: 7 in, height: 5 in, holes: [[0.4, 0.4, 0.25], [6.6, 0.4, 0.25], [0.4, 4.6, 0.25], [6.6, 4.6, 0.25]] }
  stages:
    - { name: motor belt, steps: [{ label: L, driver: 2.5, driven: 9.5 }, { label: H, driver: 4, driven: 8 }] }
    - { name: spindle belt, steps: [{ label: "1", driver: 5.5, driven: 3.25 }, { label: "2", driver: 4.375, driven: 4.375 }, { label: "3", driver: 3.25, driven: 5.5 }] }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 52], [18, 54]] }] }
  tachometer: [{ position: [L, "1", open], speed: 745 rpm }, { position: [H, "2", open], speed: 835 rpm }]
work: { materials: [${materials}] }
`);

  test("where the notes of its own rows leave it the room: six and six, not four and eight", () => {
    const findings = inches("mild steel, grey cast iron, brass, bronze, aluminium");
    const print = printOf(findings, "belt-card");
    const cards = print.pages.map((page) => wordsOf({ ...print, pages: [page] }));
    expect(cards).toHaveLength(2);
    for (const { rpm, position } of findings.drive?.speeds ?? [])
      expect(cards.map((words) => new RegExp(`(^|\\s)${rpm.toFixed(0)}(\\s|$)`).test(words))).toEqual(
        position.labels.at(-1) === "open" ? [true, false] : [false, true],
      );
  });

  test("and a size at which two of its ranges meet is told to be that of the row up to it", () => {
    expect(textsOf(inches("mild steel"), "belt-card")).toContain("A size in two rows: the one up to it.");
    const lone = findingsOf(`name: L
drive: { motor: { speed: 900 rpm }, stages: [{ name: b, steps: [{ label: A, driver: 60, driven: 60 }] }] }
work: { materials: [mild steel] }
`);
    expect(textsOf(lone, "belt-card")).not.toContain("two rows");
  });
});

/** A hand-sized cover in inches, screwed where it is said. */
const screwed = (holes: string, more = "") =>
  findingsOf(`name: Shed lathe
units: in
limits: { chuck: 1500 rpm }
drive:
  motor: { speed: 1425 rpm }
  cover: { width: 6, height: 4.5, holes: [${holes}] }
  stages:
    - { name: countershaft, steps: [{ label: 1, driver: 2, driven: 5 }, { label: 2, driver: 3, driven: 4 }] }
    - { name: spindle belt, steps: [{ label: A, driver: 4, driven: 2 }, { label: B, driver: 3, driven: 3 }, { label: C, driver: 2, driven: 4 }] }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [20, 60]] }] }
${more}work: { materials: [mild steel, brass, aluminium, grey cast iron] }
`);
type Line = { y: number; toY: number };
/** Straight marks of groups of that name. */
function linesIn(marks: readonly Mark[], name: string, within = false, top = 0): Line[] {
  return marks.flatMap((mark): Line[] => {
    if (mark.kind === "group") return linesIn(mark.marks, name, within || mark.name === name, top + mark.at.y);
    if (!within || mark.kind !== "path") return [];
    const [from, to] = mark.segments;
    if (from?.to !== "move" || to?.to !== "line") return [];
    return [{ y: top + from.y, toY: top + to.y }];
  });
}
/** What each says from its strip on. */
const wordsOfCards = (findings: ReturnType<typeof findingsOf>) =>
  textsOf(findings, "belt-card").split("PLUG OUT").slice(1);

test("what is drawn is a position of its own card, and which one begins with stands on the card of its row", () => {
  const cards = wordsOfCards(screwed("[0.4, 2.2, 0.25]"));
  expect(cards).toHaveLength(2);
  expect(cards[0]).toContain("Drawn: 1 C open.");
  expect(cards[0]).not.toContain("geared.");
  expect(cards[1]).toContain("Begin with 1 C geared.");
  expect(cards[1]).not.toContain("Drawn");
});

test("a screw costs no card its pulleys that have room beside it; where they have none they have a card", () => {
  for (const holes of ["", "[0.5, 0.5, 0.2]", "[0.4, 2.2, 0.25]", "[5.5, 0.5, 0.2]"]) {
    const findings = screwed(holes);
    const cards = wordsOfCards(findings);
    expect(cards, holes).toHaveLength(2);
    expect(cards[0], holes).toContain("countershaft");
    expect(cards[0], holes).not.toContain("No room");
    expect(measureSheets(findings, ["belt-card"]).faults).toEqual([]);
  }
  const narrow = wordsOfCards(
    findingsOf(`name: N
drive:
  motor: { speed: 1425 rpm }
  cover: { width: 68.6, height: 127 }
  stages:
    - { name: motor belt, steps: ${cone([55, 90], "AB")} }
    - { name: spindle belt, steps: ${cone([110, 82, 55], "123")} }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [25, 65]] }] }
work: { materials: [brass] }
`),
  );
  // Its title keeps the unit.
  expect(narrow[0]).toMatch(/diameters in mm (by speed )?brass/);
  // Closer rows leave the second card to the pulleys.
  expect(narrow[1]).toContain("countershaft");
});

test("two cards of the usual size share a Letter page, edge to edge, and no mark lies on either", () => {
  const stood = (size: string) =>
    findingsOf(`name: Stood
kind: lathe stood on end
paper: { size: ${size} }
drive: { motor: { speed: 1425 rpm }, stages: [{ name: spindle belt, steps: ${cone([100, 75, 50], "ABC")} }] }
`);
  for (const size of ["A4", "Letter"]) {
    const { pages } = printOf(stood(size), "belt-card");
    expect(pages, size).toHaveLength(1);
    const level: number[] = [];
    const upright: { from: number; to: number }[] = [];
    const [marks = []] = pages.map(({ drawing }) => drawing.marks);
    for (const { y, toY } of linesIn(marks, "cut"))
      if (y === toY) level.push(y);
      else upright.push({ from: Math.min(y, toY), to: Math.max(y, toY) });
    const edges = [...new Set(level)].sort((one, other) => one - other);
    const ends = size === "A4" ? [edges.slice(0, 2), edges.slice(2)] : [edges.slice(0, 2), edges.slice(1)];
    for (const [top = 0, bottom = 0] of ends) {
      expect(bottom - top).toBeCloseTo(110, 9);
      for (const { from, to } of upright) expect(to <= top || from >= bottom).toBe(true);
    }
  }
});

test("pulleys that one belt does not fit are told beside the hand that lays it", () => {
  const odd = drill(
    "mild steel",
    "    - { name: counter belt, steps: [{ driver: 80, driven: 80 }, { driver: 60, driven: 70 }] }\n",
  );
  expect(textsOf(odd, "belt-card")).toContain("One belt does not fit all steps: counter belt. Measure again.");
  expect(textsOf(drill(), "belt-card")).not.toContain("does not fit");
});

/** With so many tables that the drilling card goes on to a second page. */
const quill = `handwheels:
  - { name: Quill, reads: travel, travel: 80, feed: { rack: { module: 1.5, teeth: 14 } } }
`;

describe("a caution takes no room where its material is not named", () => {
  const wooden = drill("mild steel, aluminium, brass, acrylic, hard wood", quill);

  test("of a material without figures the card says where its caution stands, and there it does", () => {
    const words = textsOf(wooden, "belt-card");
    expect(words).not.toContain("Wood dust");
    expect(words).toContain("No figures for hard wood; caution on the drilling card.");
    expect(textsOf(wooden, "drilling-card")).toContain("Wood dust harms");
    expect(cardsOf(wooden)).toBe(1);
  });

  test("materials whose cautions leave the rows no room are left out before the card is refused, and said to be elsewhere", () => {
    const hazardous = ["PVC", "magnesium", "titanium", "zirconium", "beryllium copper", "PTFE"];
    const own = hazardous.map(
      (material) => `{ material: ${material}, operation: drilling, speed: [20 m/min, 30 m/min] }`,
    );
    const plain = drill().machine;
    const { machine } = findingsOf(
      `name: Mixed\ndrive: { motor: { speed: 1400 }, stages: [{ name: belt, steps: [{ driver: 50, driven: 90 }] }] }
work: { materials: [mild steel, brass, ${hazardous.join(", ")}], cuttingSpeeds: [${own.join(", ")}] }
`,
    );
    const words = textsOf({ ...drill(), machine: { ...plain, work: machine.work } }, "belt-card");
    expect(words).toContain("mild steel");
    const [card, further] = words.split("Further materials, on the speed diagram with their cautions: ");
    expect(card).not.toContain("PTFE");
    expect(further).toContain("PTFE.");
  });

  test("a page that does not name it stands without its caution, the page that does has it", () => {
    const print = printOf(wooden, "drilling-card");
    const pages = print.pages.map((page) => wordsOf({ ...print, pages: [page] }));
    expect(pages.length).toBeGreaterThan(1);
    for (const words of pages) expect(words.includes("Wood dust harms")).toBe(/hard wood/.test(words));
    expect(textsOf(wooden, "student")).not.toContain("Wood dust");
  });

  test("what the strip says is not said again at the foot", () => {
    const words = textsOf(drill(), "belt-card");
    expect(words.match(/Key out of the chuck/g)).toHaveLength(1);
    expect(words).toContain("Clamp the work.");
  });
});

test("a position is called alike on every sheet: belts first, then what is shifted", () => {
  const switched = findingsOf(`name: S
drive:
  motor: { speeds: [700, 1400] }
  stages:
    - { name: belt, steps: ${cone([55, 90], "AB")} }
work: { materials: [mild steel] }
`);
  expect(switched.drive?.speeds.map(({ position }) => position.name).sort()).toEqual([
    "A 1400",
    "A 700",
    "B 1400",
    "B 700",
  ]);
  expect(textsOf(switched, "speed-diagram")).toContain("B 1400");
});

test("no print within a hole's radius of a screw's hole, which its head covers", async () => {
  const { pages } = await readPdf(await pdfOf(printOf(drill(), "belt-card")));
  const [page] = pages;
  const strip = page?.texts.find(({ text }) => text.startsWith("PLUG OUT"));
  const corners = page?.lines.filter(({ pen, from, to }) => pen < 0.11 && from.y === to.y && from.y > 20) ?? [];
  const top = Math.min(...corners.map(({ from }) => from.y));
  expect((strip?.y ?? 0) - top).toBeGreaterThan(8 + 6 + 4.5);
});

/** Four steps, two and a back gear, in the common cover. */
const sixteenGeared = (paper: string) =>
  findingsOf(`name: Mill lathe
paper: { size: ${paper} }
limits: { chuck: 1500 rpm }
drive:
  motor: { speed: 1425 rpm }
  cover: { width: 150, height: 110, corner: 4 }
  stages:
    - { name: motor belt, steps: ${cone([50, 64, 78, 92], "ABCD")} }
    - { name: spindle belt, steps: ${cone([50, 64], "12")} }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [25, 65]] }] }
work: { materials: [mild steel, grey cast iron, brass, aluminium] }
`);

test("no card has half the rows of another: eight and eight of sixteen", () => {
  const findings = sixteenGeared("A5");
  const rpms = new Set((findings.drive?.speeds ?? []).map(({ rpm }) => rpm.toFixed(0)));
  const print = printOf(findings, "belt-card");
  // A card on each page; the pulleys may have one of their own.
  const rows = print.pages.map(
    (page) =>
      wordsOf({ ...print, pages: [page] })
        .split(/\s+/)
        .filter((word) => rpms.has(word)).length,
  );
  expect(rows.filter((count) => count > 0)).toEqual([8, 8]);
});

describe("a card too wide for its page and too high for one that lies across lies turned on it", () => {
  test("at its true size, with nothing over anything else", async () => {
    const { pages } = await readPdf(await pdfOf(printOf(sixteenGeared("A5"), "belt-card")));
    for (const { lines, texts } of pages) {
      const corners = lines.filter(
        ({ pen, from, to }) => pen < 0.11 && Math.abs(Math.hypot(to.x - from.x, to.y - from.y) - 4) < 0.01,
      );
      const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
      expect(span(corners.flatMap(({ from, to }) => (from.x === to.x ? [from.x] : [])))).toBeCloseTo(110, 2);
      expect(span(corners.flatMap(({ from, to }) => (from.y === to.y ? [from.y] : [])))).toBeCloseTo(150, 2);
      expect(texts.some(({ text }) => text.startsWith("PLUG OUT"))).toBe(true);
    }
    expect(measureSheets(sixteenGeared("A5"), ["belt-card"]).faults).toEqual([]);
  });
});

test("of belts all are called by signs, or none: what is a sign itself stays", () => {
  const named = (labels: readonly string[]) =>
    textsOf(
      findingsOf(`name: D
drive:
  motor: { speed: 1400 rpm }
  stages:
    - { name: motor belt, steps: [{ label: "${labels[0]}", driver: 50, driven: 90 }, { label: "${labels[1]}", driver: 90, driven: 50 }] }
    - { name: spindle belt, steps: ${cone([110, 82, 55], "123")} }
`),
      "belt-card",
    );
  const signed = named(["fast", "the outermost of the motor"]);
  expect(signed).toMatch(/\w = fast/);
  expect(signed).toMatch(/\w = the outermost of the motor/);
  expect(signed).not.toMatch(/\d = /);
  expect(named(["fast", "slow"])).not.toMatch(/ = /);
});

describe("positions of nearly the same speed share a row", () => {
  const four = (labels: string) => cone([112, 96, 76, 55], labels);
  /** Invented: of sixteen positions of a drill several come within a step of R40 of another. */
  const sixteen = findingsOf(`name: School drill, room 4
kind: drill
limits: { chuck: 3000 rpm }
drive:
  motor: { speed: 1400 rpm }
  cover: { width: 210, height: 110, holes: [[8, 8, 5], [202, 8, 5]] }
  stages:
    - { name: motor belt, steps: ${four("1234")} }
    - { name: spindle belt, steps: ${four("ABCD")} }
work: { materials: [mild steel, aluminium, brass, acrylic], drills: [2, 3, 4, 5, 6, 8, 10, 13] }
`);
  const cards = printOf(sixteen, "belt-card").pages.map((page) =>
    wordsOf({ ...printOf(sixteen, "belt-card"), pages: [page] }),
  );
  const words = textsOf(sixteen, "belt-card");

  test("each is named once, beside the one whose number stands there", () => {
    const cardOfAll = words.split("PLUG OUT")[1] ?? "";
    const rows = [...cardOfAll.matchAll(/ (\d [A-D](?: \/ \d [A-D])*) (\d\d+)/g)];
    const named = rows.flatMap(([, names = "", rpm]) => names.split(" / ").map((name) => ({ name, rpm: Number(rpm) })));
    const speeds = sixteen.drive?.speeds ?? [];
    expect(named.map(({ name }) => name).sort()).toEqual(speeds.map(({ position }) => position.name).sort());
    expect(rows.length).toBeLessThan(speeds.length);
    for (const { name, rpm } of named) {
      const own = speeds.find(({ position }) => position.name === name)?.rpm ?? 0;
      expect(Math.abs(Math.log(own / rpm))).toBeLessThan(Math.log(1.06) + 0.5 / rpm);
    }
  });

  test("and the drilling card names for a hole the position that the belt card does", () => {
    const kept = [...words.matchAll(/ (\d [A-D])(?: \/ \d [A-D])* \d+/g)].map(([, name]) => name);
    const bars = textsOf(sixteen, "drilling-card");
    const onBars = bars.slice(0, bars.indexOf("Nearly the same speed"));
    for (const [, name] of onBars.matchAll(/ (\d [A-D])(?= )/g)) expect(kept).toContain(name);
    expect(onBars).toMatch(/ \d [A-D] /);
  });

  test("what one begins with is said where its row is, and the pulleys say for what they are drawn", () => {
    const [first] = sixteen.drive?.speeds ?? [];
    const name = first?.position.name ?? "";
    for (const card of words.split("PLUG OUT").slice(1)) {
      const row = new RegExp(` ${name}(?: /| \\d)`).test(card);
      expect(new RegExp(`Begin with ${name}`).test(card)).toBe(row);
      expect(card.includes("as drawn")).toBe(row && card.includes("countershaft"));
    }
    expect(words).toContain(`Begin with ${name}`);
    expect(cards.length).toBeGreaterThan(0);
  });
});

test("six positions beside their pulleys, below a screw's hole, are in 20 pt, and heads in 13 where there are few", async () => {
  const six = (materials: string) =>
    findingsOf(`name: Unit six
units: in
limits: { chuck: 1500 rpm, spindle: 2500 rpm }
drive:
  motor: { speed: 500 rpm }
  cover: { width: 150 mm, height: 110 mm, corner: 5 mm, holes: [[8 mm, 8 mm, 5 mm]] }
  stages:
    - { name: belt, steps: [{ label: A, driver: 7, driven: 4 }, { label: B, driver: 6, driven: 5 }, { label: C, driver: 5, driven: 6 }] }
    - { name: back gear, steps: [{ label: open }, { label: geared, teeth: [[20, 60], [24, 56]] }] }
work: { materials: [${materials}], diameters: [1/8, 1/2, 1, 3], derating: 0.8 }
`);
  const sizes = async (materials: string, pattern: RegExp) => {
    const { pages } = await readPdf(await pdfOf(printOf(six(materials), "belt-card")));
    expect(pages).toHaveLength(1);
    return pages.flatMap(({ texts }) =>
      texts.filter(({ text }) => pattern.test(text)).map(({ size }) => size / (25.4 / 72)),
    );
  };
  const rpms = new RegExp(`^(${(six("brass").drive?.speeds ?? []).map(({ rpm }) => rpm.toFixed(0)).join("|")})$`);
  const four = await sizes("mild steel, brass, aluminium, grey cast iron", rpms);
  expect(four).toHaveLength(6);
  for (const size of four) expect(size).toBeCloseTo(20, 3);
  for (const size of await sizes("brass", /^(belt|rpm|brass)$/)) expect(size).toBeCloseTo(13, 3);
});

describe("whose card it is", () => {
  const named = (name: string, size: string) =>
    findingsOf(`name: ${name}
limits: { chuck: 1500 rpm }
drive:
  motor: { speed: 1425 rpm }
  cover: { width: 150, height: 110, corner: 6 }
  stages: [{ name: belt, steps: ${cone([50, 75, 90], "ABC")} }]
paper: { size: ${size} }
work: { materials: [mild steel] }
`);

  test("a long name is smaller, then in two lines, in the card and in the page's foot: its number is not lost", () => {
    for (const [name, size] of [
      ["School drill no. 4, Metalwork room", "A5"],
      ["The Evening Institute's Large Turning Bay Lathe Number Seventeen, by the door", "Letter"],
    ] as const) {
      const findings = named(name, size);
      const words = textsOf(findings, "belt-card");
      // In the page's foot and in the card.
      expect(words.split(name)).toHaveLength(3);
      expect(measureSheets(findings, ["belt-card"]).faults).toEqual([]);
    }
  });

  test("rounded corners are drawn where they are cut", () => {
    const arcs = printOf(named("B", "A4"), "belt-card").pages.flatMap(({ drawing }) =>
      [...JSON.stringify(drawing).matchAll(/"to":"arc","centre":\{"x":([\d.]+),"y":([\d.]+)\},"radius":6,/g)].map(
        ([, x, y]) => ({ x: Number(x), y: Number(y) }),
      ),
    );
    // Six in from the cuts of a card of 150 by 110.
    expect(new Set(arcs.map(({ x }) => x.toFixed(3))).size).toBe(2);
    expect(Math.max(...arcs.map(({ x }) => x)) - Math.min(...arcs.map(({ x }) => x))).toBeCloseTo(138, 6);
    expect(Math.max(...arcs.map(({ y }) => y)) - Math.min(...arcs.map(({ y }) => y))).toBeCloseTo(98, 6);
  });

  test("a card so small that a book of them would hold its rows is refused with what to do", () => {
    const { template: own } = readTemplate(
      "title: T\ncard: { width: 60 mm, height: 40 mm }\nblocks:\n  - turn tables: { tables: [distances, whole turns] }\n",
      "own",
    );
    const lathe = findingsOf("name: L\nhandwheels: [{ name: Barrel, travel: 100, feed: 2.5 mm }]\n");
    expect(own && arrange(lathe, own)).toEqual({
      missing: expect.stringMatching(/^it would take \d+ cards; give them more room/),
    });
  });
});

test("millimetres have their nought before the point, inches none, as drawings have them", () => {
  const thin = (units: string) =>
    textsOf(
      findingsOf(`name: T
units: ${units}
drive:
  motor: { speed: 1425 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 150 mm, driven: 40 mm }, { label: B, driver: 90 mm, driven: 90 mm }] }]
work: { materials: [tool steel], diameters: [1 mm, 3 mm, 10 mm] }
`),
      "belt-card",
    );
  expect(thin("mm")).toMatch(/ to 0\.\d/);
  expect(thin("mm")).not.toMatch(/(to |–)\.\d/);
  expect(thin("in")).toMatch(/ to \.\d/);
});

describe("materials for which the cards have no room", () => {
  const shared =
    "mild steel, tool steel, brass, bronze, stainless steel, aluminium, acrylic, nylon, copper, medium-carbon steel";
  const names = shared.split(", ");
  const cards = (file: string, [width, height] = [150, 110]) =>
    textsOf(
      findingsOf(`name: Twelve
kind: drill
drive:
  motor: { speed: 1400 rpm }
  cover: { width: ${width}, height: ${height} }
  stages:
    - { name: motor belt, steps: ${cone([50, 80, 110], "ABC")} }
    - { name: spindle belt, steps: ${cone([55, 78, 102, 125], "1234")} }
work: { materials: [${file}], drills: [3, 5, 8, 13] }
`),
      "belt-card",
    ).replace(/\s+/g, " ");

  test("are named on one of them, or at least counted", () => {
    const words = cards(shared);
    const told = [...words.matchAll(/Further materials, on the speed diagram: ([^.]*)\./g)].map(([, some]) => some);
    expect(told).toHaveLength(1);
    const left = told[0]?.split(", ") ?? [];
    expect(left.length).toBeGreaterThan(0);
    const [columns = ""] = words.split("Further materials");
    for (const name of names) expect(left.includes(name)).toBe(!columns.includes(name));
  });

  test("stand on the card that has more room for them", () => {
    const twelveOf = findingsOf(`name: Twelve
kind: drill
limits: { spindle: 4000 rpm, drill: 13, chuck: 4000 rpm }
drive:
  motor: { speed: 1400 rpm }
  cover: { width: 150, height: 110, corner: 6, holes: [[8, 8, 6], [142, 8, 6]] }
  stages:
    - { name: motor belt, steps: ${cone([50, 80, 110], "ABC")} }
    - { name: spindle belt, steps: ${cone([55, 78, 102, 125], "1234")} }
work: { materials: [mild steel, free-cutting steel, grey cast iron, tool steel, brass, bronze, stainless steel, aluminium, plastics, acetal], drills: [2, 3, 5, 8, 13] }
`);
    const words = textsOf(twelveOf, "belt-card");
    const [first = "", second = ""] = words.split("card 2 of 2");
    expect(first).not.toContain("Further materials");
    expect(second).toContain("Further materials, on the speed");
  });

  test("are not spoken of where there is room for all", () => {
    expect(cards("mild steel, brass")).not.toMatch(/Further materials|more material/);
  });
});

test("a card that is too narrow for its key is refused in the unit of the machine's file", () => {
  const narrow = (units: string) => {
    const { template: own } = readTemplate(
      "title: T\ncard: { width: 45 mm, height: 80 mm }\nblocks: [positions]\n",
      "own",
    );
    if (own === undefined) throw new Error("no template");
    return arrange(
      findingsOf(`name: N
units: ${units}
drive:
  motor: { speed: 1400 rpm }
  stages: [{ name: belt, steps: [{ label: A, driver: 50 mm, driven: 90 mm }] }]
work: { materials: [mild steel] }
`),
      own,
    );
  };
  expect(narrow("mm")).toEqual({ missing: expect.stringMatching(/needs? \d+ mm across and ha(s|ve) \d+ mm;/) });
  expect(narrow("in")).toEqual({ missing: expect.stringMatching(/needs? \d\.\d+ in across and ha(s|ve) \d\.\d+ in;/) });
});
