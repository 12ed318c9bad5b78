import { describe, expect, test } from "vitest";
import { inLanguage } from "../../src/words/language.js";
import { findingsOf, ownTexts, textsOf } from "../support/sheets.js";

/** Twelve positions whose names no cover has room for, eight materials, in inches: the most that a card is asked for. */
const machine = (
  cover = "{ width: 6, height: 4.25, corner: 0.25, holes: [[0.375, 0.375, 0.25], [5.625, 3.875, 0.25]] }",
) =>
  findingsOf(`name: Schoolroom lathe
units: in
limits: { chuck: 1800 rpm, spindle: 2200 rpm }
drive:
  motor: { speed: 1725 rpm, mains: 60 Hz }
  cover: ${cover}
  stages:
    - name: motor to countershaft belt
      steps:
        - { label: upper groove nearest the wall, driver: 2, driven: 6 }
        - { label: lower groove away from the wall, driver: 3, driven: 5 }
    - name: countershaft to spindle belt
      steps:
        - { label: large headstock cone outermost, driver: 2, driven: 4 }
        - { label: middle headstock cone equal pair, driver: 3, driven: 3 }
        - { label: small headstock cone by bearing, driver: 4, driven: 2 }
    - name: back gear
      steps: [{ label: open }, { label: geared, teeth: [[22, 60], [20, 62]] }]
  tachometer:
    - { position: [upper groove nearest the wall, middle headstock cone equal pair, open], speed: 565 rpm }
    - { position: [lower groove away from the wall, large headstock cone outermost, open], speed: 508 rpm }
    - { position: [lower groove away from the wall, small headstock cone by bearing, geared], speed: 236 rpm }
handwheels:
  - { name: Top slide, travel: 2.25, feed: 16 tpi, oldDial: { reads: travel, perTurn: 0.06 in } }
paper: { size: Letter }
work:
  tool: high-speed steel
  materials: [mild steel, free-cutting steel, stainless steel, brass, bronze, aluminium, grey cast iron, acetal]
`);

describe("a card that the belt positions share with others", () => {
  const wall = `title: Wall
needs: feed
margin: 12 mm
card: { width: 7 in, height: 8.4 in }
blocks:
  - positions: { materials: 8, caution: belt }
  - turn tables: { handwheel: Top slide, tables: [whole turns] }
  - drill bars: { coolant: true }
  - cautions: { of: tailstock }
`;

  test("has its pulleys: others stand on the last card alone, and take no room from those before it", () => {
    const words = ownTexts(machine(), wall);
    expect(words.slice(0, words.indexOf("card 2 of"))).toContain("countershaft");
    expect(words).not.toContain("No room for the pulleys");
  });
});

describe("a card in a small cover", () => {
  const cards = (language: "en" | "de") => {
    const words = inLanguage(language, () => textsOf(machine(), "belt-card"));
    const heads = words.split(language === "en" ? "PLUG OUT, then open." : "STECKER ZIEHEN, dann öffnen.");
    return heads.slice(1);
  };

  test.each([
    ["en", "countershaft", "open", "geared"],
    ["de", "Vorgelegewelle", "ausgerückt", "eingerückt"],
  ] as const)("has its pulleys, and a way of the drive on each of two cards (%s)", (language, shaft, open, geared) => {
    const [first = "", second = "", ...more] = cards(language);
    expect(more).toEqual([]);
    expect(first).toContain(shaft);
    // Once for its six rows, beside the gears and where the belt lies as drawn.
    expect(second.split(geared).length).toBeLessThan(5);
    expect(second).not.toContain(open);
    for (const position of ["1 A", "1 B", "1 C", "2 A", "2 B", "2 C"])
      for (const card of [first, second]) expect(card).toContain(position);
  });

  test("says where the pulleys are drawn when none of its cards has room for them", () => {
    const words = textsOf(machine("{ width: 6, height: 4 }"), "belt-card");
    expect(words).not.toContain("countershaft");
    expect(words).toContain("No room for the pulleys: see speed tree.");
  });
});
