import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { overview } from "../../src/cli/overview.js";
import { chooseSpeed } from "../../src/cutting/choose.js";
import type { Findings } from "../../src/findings/findings.js";
import { bandFor } from "../../src/findings/speedChoice.js";
import { speedDoubt } from "../../src/findings/speedDoubt.js";
import { walk } from "../support/marks.js";
import { demoFindings, findingsOf, printOf } from "../support/sheets.js";

const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");
const { job } = demoFindings();
const changed = (change: (text: string) => string): Findings => ({ ...findingsOf(change(demo)), ...(job && { job }) });
const mistyped = changed((text) => text.replace("speed: 462 rpm", "speed: 4620 rpm"));
const twice = changed((text) =>
  text.replace("702 rpm", "1404 rpm").replace("462 rpm", "924 rpm").replace("speed: 78 rpm", "speed: 156 rpm"),
);
const unmeasured = (chuck: number) =>
  changed((text) => text.replace(/ {2}tachometer:\n(?: {4}- .*\n)+/, "").replace(/chuck: \d+/, `chuck: ${chuck}`));

/** All that is written on a sheet, line by line as set. */
function written(findings: Findings, sheet: string): string[] {
  const found: string[] = [];
  for (const { drawing } of printOf(findings, sheet).pages)
    walk(drawing.marks, (mark) => {
      if (mark.kind === "text") found.push(mark.text);
    });
  return found;
}

const sheets = ["belt-card", "student", "plan", "drilling-card", "hand-feed", "speed-tree", "speed-diagram"];

test.each(sheets)(
  "%s bears the line of a doubtful reading, as check does; of a sound file nothing of the kind",
  (sheet) => {
    const said = written(mistyped, sheet).join(" ");
    for (const line of speedDoubt(mistyped)) expect(said).toContain(line);
    expect(said).toContain("Reading of B open (4620 rpm) doubtful");
    expect(overview(mistyped).join("\n")).toContain("Reading of B open (4620 rpm) doubtful");
    expect(written(demoFindings(), sheet).join(" ")).not.toContain("doubtful");
  },
);

test.each(sheets)("%s prints no speed as known where every reading contradicts the file", (sheet) => {
  const said = written(twice, sheet);
  expect(said.join(" ")).toContain("the motor or a pulley is not what the file says");
  const byRatio = twice.drive?.speeds.map(({ rpm }) => rpm.toFixed(0)) ?? [];
  const positions = twice.drive?.speeds.map(({ position }) => position.name) ?? [];
  for (const rpm of byRatio)
    for (const name of positions)
      for (const words of [rpm, `${rpm} rpm`, `${name}  ${rpm}`]) {
        // The scales of tree and diagram have numbers of their own.
        if (!["speed-tree", "speed-diagram"].includes(sheet) || words !== rpm)
          expect(said.filter((one) => one === words)).toEqual([]);
      }
});

test("a position whose doubtful reading is beyond the chuck's limit is not chosen", () => {
  const cut = { operation: "turning", material: "aluminium", diameter: 10 };
  const band = bandFor(cut, mistyped);
  const without = mistyped.drive?.speeds.filter(({ position }) => position.name !== "A open") ?? [];
  if (band === undefined) throw new Error("no band");
  expect(chooseSpeed(10, band, without, { chuckRpm: 2000 })).toMatchObject({
    speed: { position: { name: "C open" } },
    verdict: "held by a limit",
  });
  expect(chooseSpeed(10, band, without, {}).speed?.position.name).toBe("B open");
});

test.each(["belt-card", "student", "plan"])(
  "%s says to measure a speed by ratio alone close below a limit",
  (sheet) => {
    // By ratio 722 rpm; unloaded 722 × 1500 / 1425 = 760.
    const words = "Near the limit and not measured: A open. Measure first.";
    expect(written(unmeasured(790), sheet).join(" ")).toContain(words);
    expect(written(unmeasured(810), sheet).join(" ")).not.toContain("Near the limit");
  },
);

test("by ratio alone a position is held against the limit at the speed of the unloaded motor", () => {
  expect(overview(unmeasured(750)).join("\n")).toMatch(/A open +722 rpm .*may reach 760, do not use/);
  expect(overview(unmeasured(770)).join("\n")).not.toContain("do not use");
});

test("a doubted position, and one to be measured first, is marked wherever it is chosen", () => {
  // Grey cast iron of 16 mm is turned at B open by the sound file.
  expect(written(mistyped, "belt-card").join(" ")).toContain("may reach 4620, do not use");
  // With a clutch: reaming, at half the speed of drilling, is done at B open.
  const contradicts = changed((text) =>
    text
      .replace("speed: 462 rpm }", "speed: 462 rpm }\n    - { position: [B, open], speed: 440 rpm }")
      .replace("  belt: round", "  clutch: true\n  belt: round"),
  );
  const card = written(contradicts, "belt-card");
  expect(card[card.indexOf("462") + 1]).toBe("?");
  expect(card.join(" ")).toContain("? reading doubtful: measure again.");
  const near = written(unmeasured(790), "belt-card");
  expect(near[near.indexOf("722") + 1]).toBe("!");
  expect(near.join(" ")).toContain("! measure first: near the limit.");
  expect(written(unmeasured(790), "student").join(" ")).toContain("722 rpm, measure first");
  expect(written(contradicts, "student").join(" ")).not.toMatch(/\d {2}B open, 462 rpm/);
  expect(written(contradicts, "drilling-card").join(" ")).toMatch(/\bB open 462 \? /);
  expect(written(contradicts, "drilling-card").join(" ")).toContain("? measure again");
  const tree = written(contradicts, "speed-tree");
  expect(tree[tree.indexOf("462") + 1]).toBe("!");
  expect(tree.join(" ")).toContain("! measure before you trust it");
  const atA = changed((text) =>
    text.replace("speed: 702 rpm }", "speed: 702 rpm }\n    - { position: [A, open], speed: 660 rpm }"),
  );
  expect(written(atA, "plan")).toContain("reading doubtful");
  expect(written(unmeasured(790), "plan")).toContain("measure first");
});

test("where no speed is known the student is shown no slowest position, and a table has no rows of nothing", () => {
  expect(written(twice, "student").join(" ")).not.toContain("slowest:");
  expect(written(twice, "drilling-card").filter((one) => one === "none")).toEqual([]);
});
