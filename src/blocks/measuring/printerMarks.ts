import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Units } from "../../machine/machine.js";
import { trimmed } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { axisLine, objectLine, rowLine, size } from "../shared/style.js";
import { way } from "./heads.js";
import { combLines, type Rule, rules } from "./printerRule.js";

const at = (x: number, y: number): Point => ({ x, y });
/** From a bar to the middle of its numbers. */
const NUMBERS = 5.4;

export type Bars = {
  readonly across: number;
  readonly down: number;
  /** The fourth side, which is not measured, is drawn where nothing else stands. */
  readonly bottom: boolean;
};

/** A rectangle whose top and left sides are the bars and whose corners carry the diagonals; one comb at each corner. Its top left
 *  corner is the origin. */
export function printerMarks(rule: Rule, { across, down, bottom }: Bars): Mark[] {
  const slope = Math.atan2(down, across);
  const corner = { topLeft: at(0, 0), topRight: at(across, 0), bottomLeft: at(0, down), bottomRight: at(across, down) };
  return [
    group(at(0, 0), [line(corner.topLeft, corner.topRight, rowLine)], { name: "bar-across" }),
    group(at(0, 0), [line(corner.bottomLeft, corner.topLeft, rowLine)], { name: "bar-down" }),
    // Short of the corners where they would strike through a comb's numbers.
    line(at(across, 12), corner.bottomRight, axisLine),
    ...(bottom ? [line(at(12, down), at(across - 12, down), axisLine)] : []),
    comb(rule, corner.topRight, 0, -1, "comb-across", true),
    comb(rule, corner.topLeft, -Math.PI / 2, -1, "comb-down", true),
    comb(rule, corner.bottomRight, slope, -1, "comb-falling"),
    comb(rule, corner.bottomLeft, Math.PI - slope, 1, "comb-rising"),
    ...cross(at(across / 2, down / 2)),
    ...named(say("printer check.across"), at(across / 2, 3.6), 0),
    ...named(say("printer check.down"), at(3.6, down / 2), -Math.PI / 2),
    diagonal("1", corner.topLeft, slope),
    diagonal("2", corner.topRight, Math.PI - slope),
  ];
}

/** Which bar it is, and which way it is measured. */
function named(words: string, place: Point, turn: number): Mark[] {
  const half = textWidth(words, size.text, "bold") / 2;
  return [
    group(
      place,
      [
        text(words, at(0, size.text * 0.36), { size: size.text, anchor: "middle", weight: "bold" }),
        ...way(at(half + 2, 0), at(half + 11, 0), objectLine),
      ],
      { turn },
    ),
  ];
}

/** Lines square to a bar that ends at `end` running in the direction `turn`, on its left (1) or right (−1) as one walks
 *  to that end. The comb's own x axis runs on along the bar, so that its lines lie at −k steps. `cornered`: its 0 stands a
 *  row further in, where the other bar and the paper's edge leave it room. */
function comb(rule: Rule, end: Point, turn: number, side: 1 | -1, name: string, cornered = false): Mark {
  const steps = Array.from({ length: combLines }, (_, k) => ({ k, x: -k * rule.combStep }));
  const lines = steps.map(({ k, x }) => line(at(x, 0), at(x, -side * (k % 5 === 0 ? 4 : 3)), axisLine));
  const drop = size.source * 0.36;
  const numbers = steps.map(({ k, x }) => {
    const zero = cornered && k === 0;
    // Those of a diagonal lie a little up it, so that they keep clear of the foot of the page.
    const [along, out] = zero
      ? [-1.5, NUMBERS + 2.7]
      : cornered
        ? [x, NUMBERS]
        : [x - 0.75, k % 5 === 0 ? NUMBERS : NUMBERS - 1];
    // Upright whichever way the comb runs.
    return text(String(k), at(along + drop * Math.sin(turn), -side * out + drop * Math.cos(turn)), {
      size: size.source,
      anchor: "middle",
      turn: -turn,
    });
  });
  const base = line(at(-combLines * rule.combStep, 0), at(0, 0), axisLine);
  return group(end, [base, group(at(0, 0), lines, { name }), ...numbers], { turn });
}

/** Where the diagonals meet, for a rule that does not reach right across. */
const cross = ({ x, y }: Point): Mark[] => [
  group(at(0, 0), [line(at(x - 3, y), at(x + 3, y), axisLine), line(at(x, y - 3), at(x, y + 3), axisLine)], {
    name: "centre",
  }),
];

/** A short stretch of a diagonal, below the head of the page, which way it is measured, and its number. */
const diagonal = (name: string, from: Point, turn: number): Mark =>
  group(
    from,
    [
      ...way(at(20, 0), at(26, 0), axisLine, 2),
      text(name, at(28.4, 0), { size: size.text, anchor: "middle", weight: "bold", turn: -turn }),
    ],
    { turn },
  );

/** A rule on the comb of the top side, three times as large, where the printer has made it seven tenths of a graduation short. */
export function readingPicture(across: number, units: Units, width: number): Drawing {
  const { graduation, combStep, numbered } = rules[units];
  const before = Math.ceil((combLines * combStep) / graduation) + 2;
  const [first, last, zero, scale] = [across - before * graduation, across + graduation, across - 0.7 * graduation, 3];
  const edge = 9.5;
  const [rule, comb] = [say("printer check.rule"), say("printer check.comb")];
  const words = Math.max(...[rule, comb].map((name) => textWidth(name, size.source, "regular"))) + 2;
  const left = Math.max(words, (width - (last - first) * scale) / 2);
  const x = (mm: number) => left + (mm - first) * scale;
  const marks: Mark[] = [
    line(at(x(first), edge), at(x(last), edge), rowLine),
    ...Array.from({ length: before + 2 }, (_, index) => Math.round(first / graduation) + index).flatMap(
      (count): Mark[] => {
        const along = x(count * graduation);
        const long = count % 10 === 0 ? 5 : count % 5 === 0 ? 4 : 2.8;
        const number = count % numbered === 0 ? trimmed(fromMm(count * graduation, units), 1) : undefined;
        return [
          line(at(along, edge), at(along, edge - long), rowLine),
          ...(number === undefined
            ? []
            : [text(number, at(along, edge - 5.8), { size: size.text, anchor: "middle", weight: "bold" as const })]),
        ];
      },
    ),
    ...Array.from({ length: combLines }, (_, k) => k).flatMap((k): Mark[] => {
      const place = x(zero - combStep * k);
      const met = k === 3;
      return [
        line(at(place, edge), at(place, edge + 5), met ? objectLine : rowLine),
        text(String(k), at(place, met ? edge + 9.6 : edge + 8.4), {
          size: met ? size.card : size.text,
          anchor: "middle",
          weight: met ? "bold" : "regular",
        }),
      ];
    }),
    line(at(x(zero - combStep * (combLines - 1)), edge + 5), at(x(zero), edge + 5), axisLine),
    text(rule, at(left - 2, edge - 1), { size: size.source, anchor: "end" }),
    text(comb, at(left - 2, edge + 4), { size: size.source, anchor: "end" }),
  ];
  return { width, height: edge + 10.2, marks };
}
