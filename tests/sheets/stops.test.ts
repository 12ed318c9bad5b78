import { describe, expect, test } from "vitest";
import { repeatOf } from "../../src/findings/stops.js";
import { walk } from "../support/marks.js";
import { findingsOf, printOf, textsOf } from "../support/sheets.js";

const text = (stops: string, more = "") => `name: L
${more}
handwheels:
  - name: Carriage
    travel: 40
    feed:
      readings:
        gauge: 0.01
        turns: [0, 1, 2, 3, 4, 5, 0, 1, 2, 3, 4, 5]
        travel: [0.01, 1.99, 4.01, 5.99, 8.01, 9.99, 0.00, 2.00, 4.00, 6.00, 8.00, 10.00]
        return: [0.21, 2.19, 4.21, 6.19, 8.21, 10.19, 0.20, 2.20, 4.20, 6.20, 8.20, 10.20]
    dial: { shape: drum, diameter: 38, width: 9, divisions: 0.02 mm, closure: even }
  - { name: Top slide, travel: 50, feed: 1.5 mm }
stops:
${stops}`;
const sheet = (stops: string) => textsOf(findingsOf(text(stops)), "stops");

describe("the table of stops", () => {
  test("tells turns, the reading, how alike by stop and by dial, and the lost motion", () => {
    const stop = { name: "end", handwheel: "Carriage", length: 18.5 };
    const findings = findingsOf(text("  - { name: end, handwheel: Carriage, length: 18.5, parts: 12 }\n"));
    const wheel = findings.handwheels[0];
    const repeat = wheel && repeatOf(stop, wheel);
    // Nine turns, and what is left of the length by the feed that was measured, to a tenth of a division.
    const reading = Math.round((18.5 - 9 * (wheel?.feed?.perTurn ?? 0)) / 0.002) * 0.002;
    const two = (value = 0) => value.toPrecision(2);
    expect(textsOf(findings, "stops")).toContain(
      ` end 12 18.50 mm Carriage 9 ${reading.toFixed(3)} mm ${two(repeat?.byStop)} ${two(repeat?.byDial)} 0.20 ${two(repeat?.lengthDoubt)} `,
    );
  });

  test("of a wheel without a dial tells turns to a thousandth and no reading", () =>
    expect(sheet("  - { name: end, handwheel: Top slide, length: 10 }\n")).toMatch(
      / end 10\.00 mm Top slide 6\.667 How /,
    ));

  test("a place that nobody measured is “?”, explained below; a column of them gives way to a sentence", () => {
    const slide = "  - { name: a, handwheel: Top slide, length: 10, tolerance: 0.1 }\n";
    const both = sheet(`${slide}  - { name: b, handwheel: Carriage, length: 10, tolerance: 0.1 }\n`);
    expect(both).toMatch(/ a 10\.00 mm Top slide 6\.667 – \? – \? .*0\.10 mm \?/);
    expect(both).toContain("? is not known.");
    expect(both).toContain("–: no dial, the turns say all.");
    expect(both).toContain("Wanted within: from the shortest part to the longest. Held by: which of the two");
    const alone = sheet(slide);
    expect(alone).toMatch(/stop length wheel turns wanted within a 10\.00 mm Top slide 6\.667 0\.10 mm/);
    expect(alone).not.toContain("?");
    expect(alone).not.toContain("held by");
  });

  test("a stop whose first part may be off by more than is wanted is named, and no other", () => {
    const words = sheet(
      "  - { name: rough, handwheel: Carriage, length: 18, tolerance: 2 }\n  - { name: fine, handwheel: Carriage, length: 18, tolerance: 0.01 }\n",
    );
    expect(words).toMatch(/[.:] fine: the first part may be off by more than is wanted\./);
    expect(sheet("  - { name: rough, handwheel: Carriage, length: 18, tolerance: 2 }\n")).not.toContain(
      "more than is wanted",
    );
  });

  test("says once what holds a tolerance, and what to do where nothing does", () => {
    const stops = (...tolerances: number[]) =>
      tolerances.map(
        (tolerance, index) => `  - { name: s${index}, handwheel: Carriage, length: 18, tolerance: ${tolerance} }`,
      );
    const held = sheet(`${stops(0.1, 0.1).join("\n")}\n`);
    expect(held.match(/0\.10 mm stop, dial/g)).toHaveLength(2);
    expect(held).not.toMatch(/Neither:|Measure each part|Stop alone:/);
    const fine = sheet(`${stops(0.02, 0.02).join("\n")}\n`);
    expect(fine.match(/0\.02 mm neither/g)).toHaveLength(2);
    expect(fine.match(/Leave a little, measure each part, finish by hand\./g)).toHaveLength(1);
    const unknown = sheet("  - { name: s, handwheel: Top slide, length: 18, tolerance: 0.5 }\n");
    expect(unknown.match(/Whether the tolerance is held was not measured\. Measure each part\./g)).toHaveLength(1);
  });

  test("marks what lies beyond the travel, and says what to do", () => {
    const far = sheet("  - { name: s, handwheel: Carriage, length: 41 }\n");
    expect(far).toMatch(/41\.00 mm beyond travel .*set the stop in two steps or move the work/);
    expect(sheet("  - { name: s, handwheel: Carriage, length: 39 }\n")).not.toContain("eyond travel");
  });
});

test("the steps are drawn once for all stops, and speak of the dial only where there is one", () => {
  const many = (wheels: readonly string[]) =>
    sheet(wheels.map((wheel, index) => `  - { name: s${index}, handwheel: ${wheel}, length: 10 }\n`).join(""));
  const words = (wheels: readonly string[]) => many(wheels).replace(/A gauge block.*/, "");
  for (const wheels of [["Carriage"], ["Carriage", "Carriage", "Carriage"]]) {
    expect(
      words(wheels)
        .replaceAll(" ", "")
        .match(/Donotturnbackpastit/g),
    ).toHaveLength(1);
    expect(words(wheels).replaceAll(" ", "")).toContain("Dialto0.Donotturnback");
    expect(words(wheels)).not.toMatch(/[Mm]ark the wheel/);
  }
  expect(words(["Top slide"]).replaceAll(" ", "")).toContain("Markthewheelthere.");
  expect(words(["Top slide", "Carriage"]).replaceAll(" ", "")).toContain("Dialto0.Withoutadial,markthewheel.");
});

test("without stops the sheet says where the turns stand", () => {
  const found = findingsOf("name: L\nhandwheels: [{ name: Carriage, feed: 2 mm }]\n");
  expect(textsOf(found, "stops")).toContain(
    "No stops in the file: take the turns from the sheet of turns and distances.",
  );
});

test("gauge blocks are told for the wheels that have stops, for all where none has", () => {
  const blocks = (findings: ReturnType<typeof findingsOf>) =>
    /A gauge block(.*?)Repeat parts/.exec(textsOf(findings, "stops"))?.[1] ?? "";
  const one = blocks(findingsOf(text("  - { name: s, handwheel: Top slide, length: 18 }\n")));
  expect(one).toContain("Top slide");
  expect(one).not.toContain("Carriage");
  // 12 mm at 1.5 mm a turn.
  expect(one).toContain("12.0 8.000");
  const unstopped = findingsOf(text("").replace("stops:\n", ""));
  const all = blocks(unstopped);
  expect(all).toMatch(/Carriage .*Top slide/);
  const left = 5 - 2 * (unstopped.handwheels[0]?.feed?.perTurn ?? 0);
  expect(all).toContain(`5.0 2 + ${(Math.round(left / 0.002) * 0.002).toFixed(3)} 3.333`);
});

test("a drill's picture is another than a lathe's, and names no tool or carriage", () => {
  const of = (kind: string) =>
    printOf(findingsOf(`name: L\nkind: ${kind}\nhandwheels: [{ name: Quill, feed: 40 mm }]\n`), "stops").pages[0]
      ?.drawing;
  const outlines = (kind: string) => {
    const found = new Set<string>();
    walk(of(kind)?.marks ?? [], (mark) => mark.kind === "path" && found.add(JSON.stringify(mark.segments)));
    return found;
  };
  const [drill, lathe] = [outlines("drill"), outlines("lathe")];
  expect([...drill].filter((one) => !lathe.has(one)).length).toBeGreaterThan(20);
});

test("the stop of a quill is set in words of a drill on whatever machine, and one of a slide never is", () => {
  const words = (wheel: string) =>
    textsOf(
      findingsOf(
        `name: E\nkind: lathe stood on end\nhandwheels: [{ name: Feed wheel, ${wheel}, travel: 70, feed: 75.4 mm }]\nstops: [{ name: hole, handwheel: Feed wheel, length: 22 }]\n`,
      ),
      "stops",
    );
  expect(words("moves: quill")).toContain("Bring the stop up without moving the drill.");
  expect(words("moves: along")).toContain("Bring the stop up to the slide without moving it.");
});
