import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { usesOf } from "../../src/findings/uses.js";
import { toNextLine } from "../../src/page/app/dial/inHand.js";
import { answersWith } from "../../src/page/work/answers.js";
import type { Files, Given } from "../../src/page/work/protocol.js";
import { exercises } from "../../src/student/exercises.js";
import { demoFindings, textsOf } from "../support/sheets.js";

const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");
const files = (text: string): Files => ({ machine: { name: "l.yaml", text }, jobs: [], readings: [], sheets: [] });
const ask = answersWith({
  fonts: () => {
    throw new Error("no fonts are needed");
  },
  deflate: (bytes) => bytes,
});

describe("exercises in the page", () => {
  test("are those of the student's sheet, word for word and in its order, and hold nothing of the answers", async () => {
    const seen = await ask("exercises", files(demo), {});
    const findings = demoFindings();
    const on = usesOf(findings.machine).flatMap((use) => exercises(findings, use));
    expect(seen.map(({ question }) => question)).toEqual(on.map(({ question }) => question));
    expect(Object.keys(seen[0] ?? {}).sort()).toEqual(["by", "from", "question", "unit", "use", "wheel"]);
    const sheet = textsOf(findings, "student").replaceAll(/\s+/g, " ");
    for (const { question } of seen.slice(0, 3)) expect(sheet).toContain(question.split(/[.?]/)[0]);
  });

  test("are in the language of the sheet", async () => {
    const [first] = await ask("exercises", files(`language: de\n${demo.replace(/^language:.*\n/m, "")}`), {});
    expect(first?.question).toMatch(/^Du /);
  });

  test("there are none where the file has nothing to ask about, or something to mend", async () => {
    expect(await ask("exercises", files("name: [1"), {})).toEqual([]);
    expect(await ask("mark", files("name: [1"), { at: 0, given: { words: "1" } })).toMatchObject({ right: false });
  });

  test("a wrong answer is told by how much", async () => {
    const seen = await ask("exercises", files(demo), {});
    const mark = async (at: number, given: Given) => {
      const { right, said } = await ask("mark", files(demo), { at, given });
      return `${right === undefined ? "?" : right ? "+" : "-"} ${said}`;
    };
    const about = (words: string) => seen.findIndex(({ question }) => question.includes(words));
    const findings = demoFindings();
    const [use] = usesOf(findings.machine);
    const wanted = (at: number) => exercises(findings, use)[at]?.wanted;

    const arrow = about("turn to the arrow");
    const line = 0.05;
    const lines = wanted(arrow);
    if (lines?.by !== "number") throw new Error("no number");
    expect(await mark(arrow, { words: (lines.value + line).toFixed(3) })).toBe("- 0.05 mm too much: 1 line too many.");
    expect(await mark(arrow, { words: `${lines.value.toFixed(2).replace(".", ",")} mm` })).toBe("+ Right.");
    expect(await mark(arrow, { words: "two" })).toBe("? Write a length, as 2.5.");
    expect(await mark(arrow, { words: "" })).toBe("? Write a length, as 2.5.");

    const set = about("You want");
    const place = wanted(set);
    if (place?.by !== "turning") throw new Error("nothing to turn");
    const turned = (turns: number, slack = 0) => mark(set, { turned: { turns: place.turns + turns, slack } });
    expect(await turned(0)).toBe("+ Right.");
    expect(await turned(place.division)).toBe("- 1 line too far.");
    expect(await turned(-2.5 * place.division)).toBe("- 2.5 lines short.");
    expect(await turned(1)).toBe("- 1 turn too many.");
    expect(await turned(2 - place.division)).toBe("- 2 turns too many, and 1 line short.");
    expect(await turned(0, 0.02)).toMatch(/^- The line is right, but you came back to it, and the slide waits/);

    const belt = about("Where does the belt go");
    const { positions = [] } = seen[belt] ?? {};
    const position = wanted(belt);
    if (position?.by !== "position") throw new Error("no position");
    const right = position.positions.findIndex(({ name }) => position.right.includes(name));
    expect(await mark(belt, { words: positions[right] ?? "" })).toBe("+ Right.");
    expect(await mark(belt, { words: positions[right + 1] ?? "" })).toBe("- 1 position too slow.");
    expect(await mark(belt, { words: positions.at(-1) ?? "" })).toBe("- There is a place for the belt.");
    expect(await mark(belt, { words: "" })).toBe("? Choose a position.");

    const thread = about("thread");
    const { value = 0 } = wanted(thread) as { value?: number };
    expect(await mark(thread, { words: (value + 1).toFixed(2) })).toBe("- 1 turn too many.");
    expect(await mark(thread, { words: "0" })).toMatch(/^- [\d.]+ turns too few\.$/);
  });

  test("one that begins too far on says which line was meant, and takes no going back to it", async () => {
    const seen = await ask("exercises", files(demo), {});
    const at = seen.findIndex(({ question }) => question.includes("too far"));
    expect(seen[at]?.stands).toMatch(/^The right line was [\d.]+ mm, row 2, after 1 turn\.$/);
    const back = await ask("mark", files(demo), { at, given: { turned: { turns: 1, slack: 0.01 } } });
    expect(back.right).toBe(false);
    const on = await ask("mark", files(demo), { at, given: { turned: { turns: 1, slack: 0 } } });
    expect(on.right).toBe(true);
  });
});

describe("a wheel in hand", () => {
  test("turned back, its slide stands still until the lost motion is through", async () => {
    const { dial } = await ask("dial", files(demo), { wheel: "Cross slide" });
    const lost = dial?.lost.turns ?? Number.NaN;
    expect(dial?.lost.supposed).toBe(false);
    expect(lost).toBeCloseTo(demoFindings().handwheels[0]?.feed?.lostMotion?.turn ?? Number.NaN, 12);
    const travel = async (turns: number, slack: number) =>
      (await ask("standing", files(demo), { wheel: "Cross slide", turned: { turns, slack } }))?.travel;
    expect(await travel(1, 0)).not.toBe(await travel(1 - lost, 0));
    expect(await travel(1 - lost, lost)).toBe(await travel(1, 0));
  });

  test("a little before its zero it shows what it shows at the end of a round", async () => {
    const at = (turns: number) => ask("standing", files(demo), { wheel: "Cross slide", turned: { turns, slack: 0 } });
    const [before, after] = [await at(-0.1), await at(1.9)];
    expect(before?.figure).toBe(after?.figure);
    expect(before?.row).toBe(2);
    expect(before?.travel).toMatch(/^[-−]0\.2/);
  });

  test("one whose lost motion nobody measured supposes some", async () => {
    const text = "name: L\nhandwheels: [{ name: S, feed: 2, dial: { shape: drum, diameter: 38, width: 9 } }]\n";
    expect((await ask("dial", files(text), { wheel: "S" })).dial?.lost).toEqual({ turns: 0.1, supposed: true });
  });

  test.each([
    // A line is a hundredth of a turn.
    [0, 1, 0.01, 1, 0.01],
    [0.014, 1, 0.01, 1, 0.006],
    [0.014, 1, 0.01, -1, -0.004],
    [0.02, 1, 0.01, -1, -0.01],
    [3, 1, 0.01, -1, -0.01],
    [0.9999999, 1, 0.01, 1, 0.01],
    // Marks that begin again after 3.4 divisions, the last of them short.
    [0.9, 1, 1 / 3.4, 1, 0.1],
    [1, 1, 1 / 3.4, 1, 1 / 3.4],
    [1, 1, 1 / 3.4, -1, -0.4 / 3.4],
    // Two rows of 5 divisions together.
    [0.8, 2, 0.4, 1, 0.4],
    [2, 2, 0.4, -1, -0.4],
  ] as const)("at %d turns, marks again after %d, %d to a line: the next one %#", (turns, round, division, way, by) =>
    expect(toNextLine(turns, { round, division }, way)).toBeCloseTo(by, 5),
  );
});
