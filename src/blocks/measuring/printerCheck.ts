import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Machine, Printer, Units } from "../../machine/machine.js";
import { formatFixed, trimmed, trimmedSize } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { fine, leading, medium, pen, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { formGrid } from "./formGrid.js";

/** A comb of ten lines inward from the end: with the rule's graduation n + f at line 0, a line k lies f − k/10 past one, so that
 *  the line that meets a graduation is the number of tenths. Spaced by more than one graduation, to leave room for the
 *  numbers. All mm. */
type Rule = {
  /** From one graduation to the next: whole millimetres, or fiftieths of an inch. */
  readonly graduation: number;
  readonly combStep: number;
  /** Bars are whole multiples of this. */
  readonly bar: number;
  /** Numbers of the rule stand so many graduations apart. */
  readonly numbered: number;
  readonly places: number;
};
const rules: Readonly<Record<Units, Rule>> = {
  mm: { graduation: 1, combStep: 2.1, bar: 10, numbered: 10, places: 1 },
  in: { graduation: inMm(0.02, "in"), combStep: inMm(0.102, "in"), bar: inMm(1, "in"), numbered: 50, places: 3 },
};
const combLines = 10;
/** Combs and their numbers end before this far from a side. */
const insetOf = ({ combStep }: Rule): number => combLines * combStep + 6;
const hair = pen(0.1);

/** A rectangle whose top and left sides are the bars and whose corners carry the diagonals; one comb at each corner.
 *  `across`, `down`: the most, mm; whole tens, or whole inches. */
export const printerCheck = block({ across: 200, down: 250 }, ({ findings, settings, width, height }): Run[] => {
  const rule = rules[findings.machine.units];
  const inset = insetOf(rule);
  // 200 mm may as well be 8 in where the paper has room.
  const whole = (most: number, room: number) =>
    rule.bar * Math.floor(Math.min(rule.bar * Math.round(most / rule.bar), room) / rule.bar + 1e-9);
  const across = whole(settings.across, width);
  const down = whole(settings.down, height);
  const diagonal = Math.hypot(across, down);
  const slope = Math.atan2(down, across);
  const left = (width - across) / 2;
  const corner = { topLeft: at(0, 0), topRight: at(across, 0), bottomLeft: at(0, down), bottomRight: at(across, down) };
  const marks: Mark[] = [
    group(at(0, 0), [line(corner.topLeft, corner.topRight, medium)], { name: "bar-across" }),
    group(at(0, 0), [line(corner.bottomLeft, corner.topLeft, medium)], { name: "bar-down" }),
    // Short of the corners where they would strike through a comb's numbers.
    line(at(across, 12), corner.bottomRight, fine),
    line(at(12, down), at(across - 12, down), fine),
    comb(rule, corner.topRight, 0, -1, "comb-across"),
    comb(rule, corner.topLeft, -Math.PI / 2, -1, "comb-down", 1.2),
    comb(rule, corner.bottomRight, slope, -1, "comb-falling"),
    comb(rule, corner.bottomLeft, Math.PI - slope, 1, "comb-rising"),
    ...cross(at(across / 2, down / 2)),
    text("across", at(across / 2, 3.2), { size: size.small, anchor: "middle", weight: "bold" }),
    text("down", at(3.2, down / 2), { size: size.small, anchor: "middle", weight: "bold", turn: -Math.PI / 2 }),
    ...along("1", corner.topLeft, slope),
    ...along("2", corner.topRight, Math.PI - slope),
  ];
  const words = instructions(findings.machine, { across, down, diagonal }, across - 2 * inset, down / 2 - 5 - inset);
  marks.push(...stack(words.above, at(inset, inset)), ...stack(words.below, at(inset, down / 2 + 6)));
  return [{ drawing: { width, height: down, marks: [group(at(left, 0), marks)] } }];
});

const at = (x: number, y: number): Point => ({ x, y });

/** Lines square to a bar that ends at `end` running in the direction `turn`, on its left (1) or right (−1) as one walks
 *  to that end. The comb's own x axis runs on along the bar, so that its lines lie at −k steps. `zeroOff`: how far on its
 *  0 stands where the other bar would strike it through. */
function comb({ combStep }: Rule, end: Point, turn: number, side: 1 | -1, name: string, zeroOff = 0): Mark {
  const steps = Array.from({ length: combLines }, (_, k) => ({ k, x: -k * combStep }));
  const lines = steps.map(({ k, x }) => line(at(x, 0), at(x, -side * (k % 5 === 0 ? 4 : 3)), hair));
  const drop = size.tiny * 0.36;
  const numbers = steps.map(({ k, x }) =>
    // Upright whichever way the comb runs.
    text(String(k), at(x + (k === 0 ? zeroOff : 0) + drop * Math.sin(turn), -side * 5.4 + drop * Math.cos(turn)), {
      size: size.tiny,
      anchor: "middle",
      turn: -turn,
    }),
  );
  const base = line(at(-combLines * combStep, 0), at(0, 0), hair);
  return group(end, [base, group(at(0, 0), lines, { name }), ...numbers], { turn });
}

/** Where the diagonals meet, for a rule that does not reach right across. */
const cross = ({ x, y }: Point): Mark[] => [
  group(at(0, 0), [line(at(x - 3, y), at(x + 3, y), hair), line(at(x, y - 3), at(x, y + 3), hair)], {
    name: "centre",
  }),
];

/** A short stretch of a diagonal, past the comb at its beginning, and its number. */
const along = (name: string, from: Point, turn: number): Mark[] => [
  group(
    from,
    [
      line(at(22, 0), at(31, 0), hair),
      text(name, at(33, 0), { size: size.small, anchor: "middle", weight: "bold", turn: -turn }),
    ],
    { turn },
  ),
];

function stack(runs: readonly Run[], from: Point): Mark[] {
  let y = from.y;
  return runs.map(({ drawing, gap }) => {
    y += gap ?? 0;
    const placed = group(at(from.x, y), drawing.marks);
    y += drawing.height;
    return placed;
  });
}

type Nominal = { readonly across: number; readonly down: number; readonly diagonal: number };

/** What to do, in the upper half of the page, and what to write, in the lower. Small paper takes smaller words and no
 *  picture. `room`: height of the upper half, mm. */
function instructions(
  machine: Machine,
  nominal: Nominal,
  width: number,
  room: number,
): { above: readonly Run[]; below: readonly Run[] } {
  const picture = { drawing: readingPicture(nominal.across, machine.units, width), gap: 4 };
  const written = [size.body, size.small, size.tiny].map((em) => steps(machine, nominal, width, em));
  const above = [...written.map((runs) => [...runs, picture]).slice(0, 1), ...written].find(
    (runs) => height(runs) <= room,
  );
  return { above: above ?? written.at(-1) ?? [], below: record(machine, nominal, width) };
}

const height = (runs: readonly Run[]): number =>
  runs.reduce((sum, { drawing, gap }) => sum + drawing.height + (gap ?? 0), 0);

function steps(machine: Machine, { across }: Nominal, width: number, em: number): Run[] {
  const { units } = machine;
  const { graduation, places } = rules[units];
  const said = (mm: number) => formatFixed(fromMm(mm, units), units === "mm" ? 0 : 2);
  const fineSaid = (mm: number) => formatFixed(fromMm(mm, units), places);
  const how =
    units === "mm"
      ? "Use a steel rule in millimetres and good light, and no worn end: begin at its 10 mm line and take 10 off."
      : "Use a steel rule in fiftieths of an inch, or in hundredths by every second line, and good light, and no worn end: begin at its 1 in line and take 1 off. Any other rule serves without the comb; write its unit.";
  const read =
    units === "mm"
      ? "Read the whole millimetres at line 0 of the comb; the comb line that meets a graduation says the tenths."
      : "Read inches and fiftieths (0.02 in) at line 0 of the comb; the comb line that meets a graduation says how many times 0.002 in more.";
  const list = [
    "Print this page at 100 %, never “fit to page”, on the paper that the dials will be printed on. This page alone is printed without the correction that the file holds.",
    `Let the sheet lie for some minutes, then tape it flat. ${how}`,
    `Top side, from left to right. Lay a graduation of the rule on the left corner. ${read} Line 0 between ${said(across - graduation)} and ${said(across)}, line 3 on a graduation: ${fineSaid(across - 0.7 * graduation)}.`,
    "Left side the same, from the bottom corner up.",
    "Both diagonals, 1 from the top left corner, 2 from the top right. Where the rule is too short, measure to the cross in the middle and on from there, and add the two.",
    `More than 5 % off? Then the page was printed “fit to page”, or the paper in the file (${machine.paper.size}) is not the paper in the printer: print it again.`,
  ];
  return [
    ...paragraph("How true does this printer print?", width, { size: size.title, weight: "bold" }),
    ...list.flatMap((words, index) => paragraph(`${index + 1}.  ${words}`, width, { size: em, gap: em / 2 })),
  ];
}

/** A rule on the comb of the top side, three times as large, where the printer has made it seven tenths of a graduation short. */
function readingPicture(across: number, units: Units, width: number): Drawing {
  const { graduation, combStep, numbered } = rules[units];
  const before = Math.ceil((combLines * combStep) / graduation) + 2;
  const [first, last, zero, scale] = [across - before * graduation, across + graduation, across - 0.7 * graduation, 3];
  const edge = 11;
  const left = (width - (last - first) * scale) / 2;
  const x = (mm: number) => left + (mm - first) * scale;
  const marks: Mark[] = [
    line(at(x(first), edge), at(x(last), edge), fine),
    ...Array.from({ length: before + 2 }, (_, index) => Math.round(first / graduation) + index).flatMap(
      (count): Mark[] => {
        const along = x(count * graduation);
        const long = count % 10 === 0 ? 5 : count % 5 === 0 ? 4 : 2.8;
        const number = count % numbered === 0 ? trimmed(fromMm(count * graduation, units), 1) : undefined;
        return [
          line(at(along, edge), at(along, edge - long), fine),
          ...(number === undefined
            ? []
            : [text(number, at(along, edge - 5.8), { size: size.small, anchor: "middle", weight: "bold" as const })]),
        ];
      },
    ),
    ...Array.from({ length: combLines }, (_, k) => k).flatMap((k): Mark[] => [
      line(at(x(zero - combStep * k), edge), at(x(zero - combStep * k), edge + 5), k === 3 ? medium : fine),
      text(String(k), at(x(zero - combStep * k), edge + 8.4), {
        size: k === 3 ? size.heading : size.small,
        anchor: "middle",
        weight: k === 3 ? "bold" : "regular",
      }),
    ]),
    line(at(x(first), edge + 5), at(x(zero), edge + 5), hair),
    text("rule", at(x(first) + 0.8, edge - 6), { size: size.tiny }),
    text("comb", at(x(first) + 0.2, edge + 8.4), { size: size.tiny }),
  ];
  return { width, height: edge + 10, marks };
}

/** Room for the figures, and the lines of the file that they go into. */
function record(machine: Machine, nominal: Nominal, width: number): Run[] {
  const { across, down, diagonal } = nominal;
  const { units } = machine;
  const name = machine.paper.printer ?? "my printer";
  const row = (what: string, mm: number) => [what, formatFixed(fromMm(mm, units), rules[units].places), "", "", ""];
  const columns = [
    { heading: ["side"], share: 1.3 },
    { heading: ["must measure,", units], share: 1.2 },
    { heading: ["measured,", units], share: 1.3 },
    { heading: ["again,", units], share: 1.3 },
    { heading: ["again,", units], share: 1.3 },
  ];
  const rows = [
    row("top, across", across),
    row("left, down", down),
    row("diagonal 1", diagonal),
    row("diagonal 2", diagonal),
  ];
  const blank = "_".repeat(width < 100 ? 9 : 16);
  // One line has to take the longest, blanks and all.
  const lines = entryLines(name, nominal, units);
  const longest = Math.max(...lines.map((words) => textWidth(words, 1, "bold")));
  const em = Math.max(size.tiny, Math.min(size.body, width / (longest + 1)));
  return [
    ...formGrid(columns, rows, width, 7),
    ...paragraph("Then write into the machine file, the means of what you measured:", width, { gap: 4 }),
    ...lines.map((words): Run => {
      const indent = words.startsWith(" ") ? em : 0;
      return {
        drawing: {
          width,
          height: em * leading,
          marks: [text(words.trim(), at(indent, em), { size: em, weight: "bold" })],
        },
        gap: 1.4,
      };
    }),
    ...paragraph(inTheFile(machine.printers[name], machine.paper.printer, units), width, {
      size: size.small,
      gap: 3.5,
    }),
    ...paragraph(`Printer: ${blank}   Paper: ${blank}   Date: ${blank}`, width, {
      size: size.small,
      gap: 5,
    }),
  ];
}

/** The lines of the machine file, with `blank` where a measured figure goes. A bare pair of bars is in mm, so that inches are
 *  said. */
export function entryLines(name: string, { across, down }: Nominal, units: Units, blank = "________"): string[] {
  const of = (mm: number) => trimmedSize(mm, units, 0).replace(/ mm$/, "");
  return [
    "printers:",
    `  ${name}: { across: ${blank} of ${of(across)}, down: ${blank} of ${of(down)}, diagonals: [${blank}, ${blank}] }`,
    `paper: { printer: ${name} }`,
  ];
}

function inTheFile(printer: Printer | undefined, name: string | undefined, units: Units): string {
  const said = (mm: number) => trimmed(fromMm(mm, units), units === "mm" ? 2 : 3);
  if (printer === undefined) return "The file holds no printer's figures yet: its pages are printed as they are.";
  const bar = (what: string, measured: Printer["across"]) =>
    measured === undefined ? [] : [`${what} ${said(measured.measured)} of ${said(measured.nominal)}`];
  const parts = [
    ...bar("across", printer.across),
    ...bar("down", printer.down),
    ...(printer.diagonals ? [`diagonals ${printer.diagonals.map(said).join(" and ")}`] : []),
  ];
  return `In the file now, for ${name}: ${parts.join(", ")} ${units}. Other pages are printed so that they come out true by these figures: across is the short side of the sheet, down its long side, also where a page lies across it.`;
}
