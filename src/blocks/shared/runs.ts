import type { Drawing } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import { say } from "../../words/say.js";
import type { Run } from "./block.js";
import { paragraph } from "./paragraph.js";
import { size } from "./style.js";

/** Each stays on the page of what follows, the last of them too. */
export const kept = (runs: readonly Run[]): Run[] => runs.map((run) => ({ ...run, keepWithNext: true }));

/** Of what stands before them: no page has them alone. */
export const accompanying = (runs: readonly Run[]): Run[] => runs.map((run) => ({ ...run, accompanies: true }));

/** On one page, whatever follows. */
export const together = (runs: readonly Run[]): Run[] => [...kept(runs.slice(0, -1)), ...runs.slice(-1)];

/** On one page where a page has the room for them all. `height`: of an empty page, mm. */
export function whole(runs: readonly Run[], height: number): Run[] {
  return heightOf(runs) > height ? [...runs] : together(runs);
}

/** One below the other, with the space above each, mm. */
export const heightOf = (runs: readonly Run[]): number =>
  runs.reduce((sum, run) => sum + (run.gap ?? 0) + run.drawing.height, 0);

/** With so much space above the first of them, mm. */
export const lowered = (runs: readonly Run[], gap: number): Run[] =>
  runs.map((run, index) => (index === 0 ? { ...run, gap } : run));

/** Bold words that stay with what they are over. `gap`: space above, mm. */
export const heading = (words: string, width: number, gap: number, em: number = size.card): Run[] =>
  kept(paragraph(words, width, { size: em, weight: "bold", gap }));

/** What a sign means, for the foot of the pages that have it. */
export const keyOf = (words: string, width: number): Drawing => joined(paragraph(words, width), width);

/** Rows with the meanings of their signs. `of`: those of a row. */
export const keyed = (rows: readonly Run[], of: (row: number) => readonly Drawing[]): Run[] =>
  rows.map((run, row) => ({ ...run, keys: of(row) }));

/** A table whose name stands over its rows on each page that they go on to. */
export function titledAgain(runs: readonly Run[], name: string, width: number): Run[] {
  const goesOn = joined(heading(say("page.goes on", { name }), width, 0, size.text), width);
  return runs.map((run) => (run.heading === undefined ? run : { ...run, goesOn }));
}

/** Under the words of its first run: each page that they go on to says so at its head, over what else stands there. */
export function goingOn(runs: readonly Run[], name: string, width: number): Run[] {
  const em = width < SMALL ? size.text : size.card;
  const own = joined(paragraph(say("page.goes on", { name }), width, { size: em, weight: "bold" }), width);
  const goesOn = { ...own, height: own.height + 1 };
  return runs.map((run, index) => {
    if (index === 0) return run;
    return { ...run, goesOn: run.goesOn ? joined([{ drawing: goesOn }, { drawing: run.goesOn }], width) : goesOn };
  });
}

/** A card's width, mm: what goes on there is told small. */
const SMALL = 120;

/** As one drawing that is never broken, without the space above the first of them. */
export function joined(runs: readonly Run[], width: number): Drawing {
  let height = 0;
  const marks = runs.map(({ drawing, gap = 0 }, index) => {
    const y = height + (index === 0 ? 0 : gap);
    height = y + drawing.height;
    return group({ x: 0, y }, drawing.marks);
  });
  return { width, height, marks };
}
