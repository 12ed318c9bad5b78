import { describe, expect, test } from "vitest";
import { findingsOf, ownTexts } from "../support/sheets.js";

/** Twelve positions whose names no cover has room for, eight materials, in inches: the most that a card is asked for. */
const machine = (more = "") =>
  findingsOf(`name: Schoolroom lathe
units: in
limits: { chuck: 1800 rpm, spindle: 2200 rpm }
drive:
  motor: { speed: 1725 rpm, mains: 60 Hz }
  cover: { width: 6, height: 4.25, corner: 0.25, holes: [[0.375, 0.375, 0.25], [5.625, 3.875, 0.25]] }
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
${more}`);

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
    expect(words).not.toContain("picture of the pulleys");
  });
});
