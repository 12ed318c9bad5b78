import type { Drawing, Mark } from "../../drawing/drawing.js";
import { circle, group, line, rectangle, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import { say } from "../../words/say.js";
import { shortened } from "../shared/shortened.js";
import { objectLine, rowLine, size } from "../shared/style.js";
import {
  type BeltRow,
  type BeltTable,
  barClear,
  barMargin,
  barOf,
  barStep,
  cornerTitle,
  headed,
  headingHeight,
  headingLines,
  headingStep,
  heightsOf,
  keyWidth,
  middleOf,
  placed,
  rightOf,
  rpmEndOf,
  type Span,
  sameBar,
  signEm,
  signGap,
  titleStep,
  waysOf,
} from "./beltMeasure.js";
import { type Name, nameMarks } from "./beltNames.js";

/** From the words of a tall bar to the same again, mm. */
const apartWords = 16;

/** Rows of `from` up to `to` with their heading. `height`: room for it; rows are set apart as it allows. */
export function drawnTable(
  table: BeltTable,
  shown: readonly number[],
  [from, to]: readonly [number, number],
  width: number,
  height: number,
): Drawing {
  const places = placed(table, shown, width);
  const right = rightOf(table, shown, width);
  const head = headingHeight(table, shown, width);
  const all = heightsOf(table, shown, width);
  const heights = all.slice(from, to);
  const least = heights.reduce((sum, own) => sum + own, 0);
  const more = Math.max(0, (height - head - least) / heights.length);
  const marks: Mark[] = [
    ...headingMarks(table, shown, places, head),
    line({ x: 0, y: head - 0.4 }, { x: right, y: head - 0.4 }, objectLine),
  ];
  let y = head;
  // Where the bar over the rows before began.
  let barred = head;
  const bars = keyWidth(table) + signGap;
  const tops: number[] = [];
  for (let index = from; index < to; index++) {
    const own = all[index] ?? table.density.least;
    const tall = Math.max(own, Math.min(table.density.most, own + more));
    const next = table.rows[index + 1];
    tops.push(y);
    marks.push(group({ x: 0, y }, rowMarks(table, index, shown, places, tall)));
    y += tall;
    const { forbidden } = table.rows[index] as BeltRow;
    const within = index + 1 < to && sameBar(table, index);
    if (forbidden !== undefined && !within) {
      marks.push(group({ x: 0, y: barred }, forbiddenMarks(forbidden, bars, right, y - barred)));
    }
    if (!within) barred = y;
    const ends = index + 1 < to && next !== undefined && next.way !== table.rows[index]?.way;
    // Through no word that stands upright.
    const start = ends || index + 1 === to ? 0 : table.wayWidth;
    marks.push(line({ x: start, y }, { x: within ? bars - signGap : right, y }, ends ? objectLine : rowLine));
  }
  if (table.wayWidth > 0)
    for (const { way, from: first, to: last } of waysOf(table, [from, to])) {
      const middle = ((tops[first - from] ?? head) + (tops[last - from] ?? y)) / 2;
      marks.push(
        text(way, { x: size.card * 0.85, y: middle }, { size: size.card, anchor: "middle", turn: -Math.PI / 2 }),
      );
    }
  return { width: right, height: y + 0.2, marks };
}

function headingMarks(table: BeltTable, shown: readonly number[], places: readonly Span[], head: number): Mark[] {
  const em = table.density.head;
  const step = headingStep(table);
  const bold = { size: em, weight: "bold" } as const;
  const last = head - 1.2 - 0.25 * em;
  const [first, end] = [places[0], places.at(-1)];
  const lines = headingLines(table, shown, places);
  const corner = shown.length > 0 ? cornerTitle(table, lines) : undefined;
  return [
    text(say("belt card.belt"), { x: 0, y: last }, bold),
    text(say("belt card.rpm"), { x: rpmEndOf(table), y: last }, { ...bold, anchor: "end" }),
    ...(corner ?? []).map((words, at) =>
      text(words, { x: 0, y: last - step * (lines - 1) + at * titleStep }, { size: size.text }),
    ),
    ...(corner === undefined && first && end
      ? [
          text(
            titleIn(table, end.right),
            { x: titleEnd(titleIn(table, end.right), first.left, end.right), y: last - lines * step },
            { size: size.text, anchor: "end" },
          ),
        ]
      : []),
    ...shown.flatMap((index, at) => {
      const span = places[at] as Span;
      const words = headed(table, index, span);
      return words.map((one, line) =>
        text(one, { x: middleOf(span), y: last - (words.length - 1 - line) * step }, { ...bold, anchor: "middle" }),
      );
    }),
  ];
}

/** What stands in brackets at its end gives way before a number in it is cut in two; of the rest the unit stays longest. */
function titleIn({ title, shortTitle }: BeltTable, room: number): string {
  const ways = [title, title.replace(/ \([^()]*\)$/, ""), shortTitle];
  return (
    ways.find((words) => textWidth(words, size.text, "regular") <= room) ??
    shortened(shortTitle, room, size.text, "regular")
  );
}

/** Begins over the first material, or ends over the last where it is longer than they are wide. */
const titleEnd = (title: string, left: number, right: number): number =>
  Math.min(right, left + textWidth(title, size.text, "regular"));

function rowMarks(
  table: BeltTable,
  index: number,
  shown: readonly number[],
  places: readonly Span[],
  height: number,
): Mark[] {
  const row = table.rows[index] as BeltRow;
  const { em } = table.density;
  const base = height / 2 + em * 0.34;
  const rpmEnd = rpmEndOf(table);
  const marks: Mark[] = [
    group({ x: table.wayWidth, y: 0 }, nameMarks(table.names[index] as Name, height, row.forbidden === undefined)),
  ];
  if (row.rpm === undefined)
    marks.push(circle({ x: rpmEnd - 2, y: height / 2 }, Math.min(1.7, em * 0.3), { pen: objectLine }));
  else
    marks.push(
      text(row.rpm, { x: rpmEnd, y: base }, { size: em, weight: row.forbidden ? "regular" : "bold", anchor: "end" }),
    );
  if (row.sign !== "") {
    const own = signEm(row.sign, table.density);
    // Raised, but not into the line above.
    const y = Math.max(base - em * 0.32, 0.5 + own * 0.78);
    marks.push(text(row.sign, { x: rpmEnd + 0.5, y }, { size: own, weight: "bold" }));
  }
  if (row.forbidden !== undefined) return marks;
  for (const [at, column] of shown.entries()) {
    const cell = table.columns[column]?.cells[index];
    if (cell === undefined || cell.words === "") continue;
    const x = middleOf(places[at] as Span);
    const y = height / 2 + size.card * 0.36 - (cell.set === undefined ? 0 : size.text * 0.55);
    marks.push(text(cell.words, { x, y }, { size: size.card, anchor: "middle" }));
    if (cell.set !== undefined)
      marks.push(text(cell.set, { x, y: y + size.text * 1.15 }, { size: size.text, anchor: "middle" }));
  }
  return marks;
}

/** A bar where the diameters would stand, over all rows that it speaks of: the hand finds nothing to choose. */
function forbiddenMarks(words: string, left: number, right: number, height: number): Mark[] {
  const { lines, em, height: tall } = barOf(words, right - left, height - 2 * barClear);
  const [top, all] = [barClear, height - 2 * barClear];
  // Over many rows the words stand several times.
  const times = Math.max(1, Math.floor(all / Math.max(tall, apartWords)));
  const said = Array.from({ length: times }, (_, at) => top + (all * (at + 0.5)) / times - tall / 2);
  return [
    rectangle({ x: left, y: top }, right - left, all, { fill: "black" }),
    ...said.flatMap((first) =>
      lines.map((one, at) =>
        text(
          one,
          { x: (left + right) / 2, y: first + barMargin + em * (barStep * at + 0.9) },
          { size: em, weight: "bold", anchor: "middle", ink: "white" },
        ),
      ),
    ),
  ];
}
