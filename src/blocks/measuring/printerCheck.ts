import type { Drawing, Mark, Point } from "../../drawing/drawing.js";
import { group, line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { Machine, Printer } from "../../machine/machine.js";
import { formatFixed, trimmed } from "../../quantity/format.js";
import { block, type Run } from "../shared/block.js";
import { fine, leading, medium, pen, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { formGrid } from "./formGrid.js";

/** Comb lines lie 2.1 mm apart, inward from the end: with the rule's graduation n + f at line 0, line k lies f − 0.1·k past
 *  one, so the line that meets a graduation is the number of tenths. Twice the usual spacing leaves room for the numbers. */
const combStep = 2.1;
const combLines = 10;
/** Combs and their numbers end before this far from a side. */
const inset = 27;
const hair = pen(0.1);

/** A rectangle whose top and left sides are the bars and whose corners carry the diagonals; one comb at each corner.
 *  `across`, `down`: the most, mm; whole tens. */
export const printerCheck = block({ across: 200, down: 250 }, ({ findings, settings, width, height }): Run[] => {
  const across = wholeTens(Math.min(settings.across, width));
  const down = wholeTens(Math.min(settings.down, height));
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
    comb(corner.topRight, 0, -1, "comb-across"),
    comb(corner.topLeft, -Math.PI / 2, -1, "comb-down", 1.2),
    comb(corner.bottomRight, slope, -1, "comb-falling"),
    comb(corner.bottomLeft, Math.PI - slope, 1, "comb-rising"),
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
const wholeTens = (mm: number): number => 10 * Math.floor(mm / 10 + 1e-9);

/** Lines square to a bar that ends at `end` running in the direction `turn`, on its left (1) or right (−1) as one walks
 *  to that end. The comb's own x axis runs on along the bar, so that its lines lie at −k steps. `zeroOff`: how far on its
 *  0 stands where the other bar would strike it through. */
function comb(end: Point, turn: number, side: 1 | -1, name: string, zeroOff = 0): Mark {
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
  const picture = { drawing: readingPicture(nominal.across, width), gap: 4 };
  const written = [size.body, size.small, size.tiny].map((em) => steps(machine, nominal, width, em));
  const above = [...written.map((runs) => [...runs, picture]).slice(0, 1), ...written].find(
    (runs) => height(runs) <= room,
  );
  return { above: above ?? written.at(-1) ?? [], below: record(machine, nominal, width) };
}

const height = (runs: readonly Run[]): number =>
  runs.reduce((sum, { drawing, gap }) => sum + drawing.height + (gap ?? 0), 0);

function steps(machine: Machine, { across }: Nominal, width: number, em: number): Run[] {
  const list = [
    "Print this page at 100 %, never “fit to page”, on the paper that the dials will be printed on. This page alone is printed without the correction that the file holds.",
    "Let the sheet lie for some minutes, then tape it flat. Use a steel rule in millimetres and good light, and no worn end: begin at its 10 mm line and take 10 off.",
    `Top side, from left to right. Lay a graduation of the rule on the left corner. Read the whole millimetres at line 0 of the comb; the comb line that meets a graduation says the tenths. Line 0 between ${across - 1} and ${across}, line 3 on a graduation: ${across - 0.7}.`,
    "Left side the same, from the bottom corner up.",
    "Both diagonals, 1 from the top left corner, 2 from the top right. Where the rule is too short, measure to the cross in the middle and on from there, and add the two.",
    `More than 5 % off? Then the page was printed “fit to page”, or the paper in the file (${machine.paper.size}) is not the paper in the printer: print it again.`,
  ];
  return [
    ...paragraph("How true does this printer print?", width, { size: size.title, weight: "bold" }),
    ...list.flatMap((words, index) => paragraph(`${index + 1}.  ${words}`, width, { size: em, gap: em / 2 })),
  ];
}

/** A rule on the comb of the top side, three times as large, where the printer has made it 0.7 mm short. */
function readingPicture(across: number, width: number): Drawing {
  const [first, last, zero, scale] = [across - 23, across + 1, across - 0.7, 3];
  const edge = 11;
  const left = (width - (last - first) * scale) / 2;
  const x = (mm: number) => left + (mm - first) * scale;
  const marks: Mark[] = [
    line(at(x(first), edge), at(x(last), edge), fine),
    ...Array.from({ length: last - first + 1 }, (_, index) => first + index).flatMap((mm): Mark[] => [
      line(at(x(mm), edge), at(x(mm), edge - (mm % 10 === 0 ? 5 : mm % 5 === 0 ? 4 : 2.8)), fine),
      ...(mm % 10 === 0
        ? [text(String(mm), at(x(mm), edge - 5.8), { size: size.small, anchor: "middle", weight: "bold" as const })]
        : []),
    ]),
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
  const unit = machine.units === "mm" ? "" : " mm";
  const name = machine.paper.printer ?? "my printer";
  const row = (what: string, mm: number) => [what, formatFixed(mm, 1), "", "", ""];
  const columns = [
    { heading: ["side"], share: 1.3 },
    { heading: ["must measure,", "mm"], share: 1.2 },
    { heading: ["measured,", "mm"], share: 1.3 },
    { heading: ["again,", "mm"], share: 1.3 },
    { heading: ["again,", "mm"], share: 1.3 },
  ];
  const rows = [
    row("top, across", across),
    row("left, down", down),
    row("diagonal 1", diagonal),
    row("diagonal 2", diagonal),
  ];
  const blank = "_".repeat(width < 100 ? 9 : 16);
  // One line has to take the longest, blanks and all.
  const lines = entryLines(name, nominal, unit);
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
    ...paragraph(inTheFile(machine.printers[name], machine.paper.printer), width, { size: size.small, gap: 3.5 }),
    ...paragraph(`Printer: ${blank}   Paper: ${blank}   Date: ${blank}`, width, {
      size: size.small,
      gap: 5,
    }),
  ];
}

/** The lines of the machine file, with `blank` where a measured figure goes. `unit`: said where the file is in inches. */
export function entryLines(name: string, { across, down }: Nominal, unit: string, blank = "________"): string[] {
  return [
    "printers:",
    `  ${name}: { across: ${blank} of ${across}, down: ${blank} of ${down}, diagonals: [${blank}${unit}, ${blank}${unit}] }`,
    `paper: { printer: ${name} }`,
  ];
}

function inTheFile(printer: Printer | undefined, name: string | undefined): string {
  if (printer === undefined) return "The file holds no printer's figures yet: its pages are printed as they are.";
  const bar = (what: string, measured: Printer["across"]) =>
    measured === undefined ? [] : [`${what} ${trimmed(measured.measured, 2)} of ${trimmed(measured.nominal, 2)}`];
  const parts = [
    ...bar("across", printer.across),
    ...bar("down", printer.down),
    ...(printer.diagonals ? [`diagonals ${printer.diagonals.map((mm) => trimmed(mm, 2)).join(" and ")}`] : []),
  ];
  return `In the file now, for ${name}: ${parts.join(", ")} mm. Other pages are printed so that they come out true by these figures: across is the short side of the sheet, down its long side, also where a page lies across it.`;
}
