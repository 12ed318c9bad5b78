import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { usesOf } from "../../src/findings/uses.js";
import { toNextLine } from "../../src/page/app/dial/inHand.js";
import { answersWith } from "../../src/page/work/answers.js";
import { nowhere } from "../../src/page/work/practice.js";
import type { Files, Given } from "../../src/page/work/protocol.js";
import { type Exercise, exercises } from "../../src/student/exercises.js";
import { type Turned, turnedBy } from "../../src/student/marking.js";
import { readTurns } from "../../src/student/readTurns.js";
import { anyMachine, sound } from "../support/anyMachine.js";
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

  test("a length is answered in the unit of the dial that is turned, whatever that of the file", async () => {
    const inches = files(
      "name: L\nunits: in\nhandwheels: [{ name: Cross slide, travel: 4, feed: 0.1, dial: { shape: drum, diameter: 2, width: 3/8, divisions: 0.02 mm } }]\n",
    );
    const seen = await ask("exercises", inches, {});
    const at = seen.findIndex(({ question }) => question.includes("What is that in mm?"));
    expect(seen[at]?.unit).toBe("mm");
    const answer = /([\d.]+) mm/.exec(await ask("solve", inches, { at }))?.[1] ?? "";
    expect(await ask("mark", inches, { at, given: { words: answer } })).toMatchObject({ right: true });
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
    // Nobody reads how many lines that would be.
    expect(await mark(arrow, { words: "999" })).toMatch(/^- Far too much: [^\d]*$/);
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

  test("what is far too much goes by the unit that is asked for", async () => {
    const inches = files(
      "name: L\nunits: in\nhandwheels: [{ name: Cross slide, travel: 4, feed: 0.1, dial: { shape: drum, diameter: 2, width: 3/8, divisions: 0.001 } }]\n",
    );
    const seen = await ask("exercises", inches, {});
    const at = seen.findIndex(({ question }) => question.includes("turn to the arrow"));
    expect(seen[at]?.unit).toBe("in");
    expect((await ask("mark", inches, { at, given: { words: "6" } })).said).toMatch(/\d in too much/);
    expect((await ask("mark", inches, { at, given: { words: "106" } })).said).toMatch(/^Far too much/);
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

/** What a student does who has the sheet's own answer before him. */
async function asAnswered({ answer, wanted }: Exercise, machine: Files): Promise<Given> {
  if (wanted === undefined) throw new Error("it is not marked");
  if (wanted.by === "number") return { words: answer };
  if (wanted.by === "position") {
    const names = wanted.positions.map(({ name }) => name);
    return { words: names.find((name) => answer.startsWith(`${name}, `) && answer.endsWith("rpm")) ?? nowhere() };
  }
  const { dial } = await ask("dial", machine, { wheel: wanted.wheel });
  if (dial === undefined) throw new Error("nothing to turn");
  const on = (turned: Turned, way: 1 | -1) => turnedBy(turned, toNextLine(turned.turns, dial, way), dial.lost.turns);
  if (wanted.from > 0) {
    // Back past the line that was meant until the lost motion is through, then on to it.
    let turned: Turned = { turns: wanted.from, slack: 0 };
    while (turned.turns > wanted.turns - 0.5) turned = on(turned, -1);
    while (turned.turns < wanted.turns - 1e-6) turned = on(turned, 1);
    return { turned };
  }
  // So many whole turns, then on, line by line, to the one whose figure lies nearest to the answer's.
  const said =
    /^(?:No whole turn: |(\d+) turns?, then )(?:the dial|row (\d+)) says ([\d.]+)(?:; the nearest line is [\d.]+)?$/.exec(
      answer,
    );
  if (said === null) throw new Error(`not read: ${answer}`);
  const [, whole = "0", row, figure] = said;
  let nearest: { readonly turned: Turned; readonly off: number } | undefined;
  let turned: Turned = { turns: Number(whole), slack: 0 };
  while (turned.turns < Number(whole) + 1 - 1e-6) {
    const shown = await ask("standing", machine, { wheel: wanted.wheel, turned });
    const off = Math.abs(Number(shown?.figure) - Number(figure));
    if ((row === undefined || shown?.row === Number(row)) && off < (nearest?.off ?? Number.POSITIVE_INFINITY))
      nearest = { turned, off };
    turned = on(turned, 1);
  }
  if (nearest === undefined) throw new Error(`no line for ${answer}`);
  return { turned: nearest.turned };
}

describe("what the sheet answers is right in the page", () => {
  test("on whatever machine", () =>
    fc.assert(
      fc.asyncProperty(anyMachine, async (made) => {
        const findings = sound(made);
        if (findings === undefined) throw new Error("the file is refused");
        const machine = files(made.text);
        const all = usesOf(findings.machine).flatMap((use) => exercises(findings, use));
        for (const [at, exercise] of all.entries()) {
          if (exercise.wanted === undefined) continue;
          const given = await asAnswered(exercise, machine);
          const { right, said } = await ask("mark", machine, { at, given });
          expect([right, said, exercise.question]).toEqual([true, "Right.", exercise.question]);
        }
      }),
      { numRuns: 60 },
    ));

  test("in German too", async () => {
    // Eighths are asked where there is no dial.
    const text = `language: de\nkind: drill\n${demo.replace(/^(language|kind):.*\n|^ +dial:.*\n/gm, "")}`;
    const seen = await ask("exercises", files(text), {});
    const at = seen.findIndex(({ question }) => question.includes("in Achteln"));
    const answer = await ask("solve", files(text), { at });
    expect(answer).toMatch(/Umdrehung|Achtel/);
    const mark = async (words: string) => (await ask("mark", files(text), { at, given: { words } })).said;
    expect(await mark(answer)).toBe("Richtig.");
    expect(await mark("90 Umdrehungen")).toMatch(/^\d+ Achtel zu viel\.$/);
    expect(await mark("viel")).toMatch(/^Schreib Umdrehungen, wie 2,5/);
    expect(await mark("1")).toBe("1 Umdrehungen oder 1 Achtel? Schreib es dazu.");
    expect(seen[at]?.unit).toBe("Umdrehungen, Achtel");
    const belt = seen.findIndex(({ by }) => by === "position");
    expect(seen[belt]?.positions?.at(-1)).toBe("nirgends: fragen");
    const dialled = await ask("exercises", files(`language: de\n${demo.replace(/^language:.*\n/gm, "")}`), {});
    const tooFar = dialled.find(({ stands }) => stands !== undefined);
    expect(tooFar?.stands).toMatch(/^Der richtige Teilstrich war [\d,]+ mm, .*nach \d+ Umdrehung(en)?\.$/);
  });

  test("a whole number alone is asked whether it counts turns or eighths", async () => {
    const text = `kind: drill\n${demo.replace(/^kind:.*\n|^ +dial:.*\n/gm, "")}`;
    const seen = await ask("exercises", files(text), {});
    const at = seen.findIndex(({ question }) => question.includes("in eighths"));
    expect(seen[at]?.unit).toBe("turns, eighths");
    const mark = (words: string) => ask("mark", files(text), { at, given: { words } });
    expect(await mark("1")).toEqual({ said: "1 turns, or 1 eighths? Write which." });
    expect((await mark(await ask("solve", files(text), { at }))).right).toBe(true);
    expect((await mark("40 turns")).right).toBe(false);
  });

  test.each([
    ["2 turns and 5 eighths: 0.1 mm too deep", 2.625],
    ["5 eighths", 0.625],
    ["2,625", 2.625],
    ["2,625 Umdrehungen", 2.625],
    ["1 turn", 1],
    ["2 5/8", 2.625],
    ["2 5/8 turns", 2.625],
    ["2,5", 2.5],
    ["2 Umdrehungen und 1 Achtel", 2.125],
    ["2 turns 5 eighths", 2.625],
    ["2 turns 5/8", 2.625],
    ["2 turns and a bit", undefined],
    ["2 mm", undefined],
    ["", undefined],
  ])("turns written as “%s”", (words, turns) => expect(readTurns(words)).toBe(turns));
});

describe("a wheel in hand", () => {
  test("without a dial it says what it lacks, or why none is made, as its file is told", async () => {
    const drum = "dial: { shape: drum, diameter: 38, width: 9 }";
    const why = async (wheel: string) =>
      (await ask("dial", files(`name: L\nhandwheels: [{ name: S, ${wheel} }]\n`), { wheel: "S" })).why;
    expect(await why(drum)).toMatch(/^S has no feed yet/);
    expect(await why("feed: 2")).toMatch(/^S has no dial yet/);
    const scattered = `feed: { readings: { gauge: 0.01, turns: [0, 1, 2, 3, 4], travel: [0, 2.3, 3.8, 6.2, 7.7] } }`;
    expect(await why(`${scattered}, ${drum}`)).toMatch(/^no dial is made for "S": its feed is in doubt by .*; measure/);
    expect(await why(`feed: 2, ${drum}`)).toBeUndefined();
  });

  test("beyond its travel that is said at once, and its dial has no row that is never reached", async () => {
    const text = `name: D\nkind: drill\nhandwheels: [{ name: Quill, travel: 60, feed: 82.5, dial: { shape: drum, diameter: 58, width: 12, divisions: 1 } }]\n`;
    const at = async (turns: number) =>
      (await ask("standing", files(text), { wheel: "Quill", turned: { turns, slack: 0 } }))?.beyond;
    expect(await at(60 / 82.5)).toBeUndefined();
    expect(await at(61 / 82.5)).toBe("beyond its travel of 60 mm");
    expect((await ask("dial", files(text), { wheel: "Quill" })).dial?.rows.length).toBe(1);
  });

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
