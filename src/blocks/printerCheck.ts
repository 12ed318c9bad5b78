import type { Mark, Point } from "../drawing/drawing.js";
import { group, line, text } from "../drawing/shapes.js";
import type { Machine, Printer } from "../machine/machine.js";
import { formatFixed, trimmed } from "../quantity/format.js";
import { block, type Run } from "./block.js";
import { fine, medium, pen, size } from "./style.js";
import { paragraph, table } from "./table.js";

/** Comb lines lie 2.1 mm apart, inward from the end: with the rule's graduation n + f at line 0, line k lies f − 0.1·k past
 *  one, so the line that meets a graduation is the number of tenths. Twice the usual spacing leaves room for the numbers. */
export const combStep = 2.1;
export const combLines = 10;
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
    line(corner.topRight, corner.bottomRight, fine),
    line(corner.bottomLeft, corner.bottomRight, fine),
    comb(corner.topRight, 0, -1, "comb-across"),
    comb(corner.topLeft, -Math.PI / 2, -1, "comb-down"),
    comb(corner.bottomRight, slope, -1, "comb-falling"),
    comb(corner.bottomLeft, Math.PI - slope, 1, "comb-rising"),
    ...cross(at(across / 2, down / 2)),
    text("across", at(across / 2, 3.2), { size: size.small, anchor: "middle", weight: "bold" }),
    text("down", at(3.2, down / 2), { size: size.small, anchor: "middle", weight: "bold", turn: -Math.PI / 2 }),
    ...along("1", corner.topLeft, slope),
    ...along("2", corner.topRight, Math.PI - slope),
  ];
  const words = instructions(findings.machine, { across, down, diagonal }, across - 2 * inset);
  marks.push(...stack(words.above, at(inset, inset)), ...stack(words.below, at(inset, down / 2 + 6)));
  return [{ drawing: { width, height: down, marks: [group(at(left, 0), marks)] } }];
});

const at = (x: number, y: number): Point => ({ x, y });
const wholeTens = (mm: number): number => 10 * Math.floor(mm / 10 + 1e-9);

/** Lines square to a bar that ends at `end` running in the direction `turn`, on its left (1) or right (−1) as one walks
 *  to that end. The comb's own x axis runs on along the bar, so that its lines lie at −k steps. */
function comb(end: Point, turn: number, side: 1 | -1, name: string): Mark {
  const steps = Array.from({ length: combLines }, (_, k) => ({ k, x: -k * combStep }));
  const lines = steps.map(({ k, x }) => line(at(x, 0), at(x, -side * (k % 5 === 0 ? 4 : 3)), hair));
  const drop = size.tiny * 0.36;
  const numbers = steps.map(({ k, x }) =>
    // Upright whichever way the comb runs.
    text(String(k), at(x + drop * Math.sin(turn), -side * 5.4 + drop * Math.cos(turn)), {
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

/** A short stretch of a diagonal at its beginning, and its number. */
const along = (name: string, from: Point, turn: number): Mark[] => [
  group(
    from,
    [
      line(at(0, 0), at(12, 0), hair),
      text(name, at(14, 0), { size: size.small, anchor: "middle", weight: "bold", turn: -turn }),
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

/** What to do, in the upper half of the page, and what to write, in the lower. */
function instructions(machine: Machine, nominal: Nominal, width: number): { above: Run[]; below: Run[] } {
  const { across, down, diagonal } = nominal;
  const unit = machine.units === "mm" ? "" : " mm";
  const name = machine.paper.printer ?? "my printer";
  const steps = [
    "Print this page at 100 %, never “fit to page”, on the paper that the dials will be printed on. This page alone is printed without the correction that the file holds.",
    "Let the sheet lie for some minutes, then tape it flat. Use a steel rule in millimetres and good light, and no worn end: begin at its 10 mm line and take 10 off.",
    "Top side, from left to right. Lay a graduation of the rule on the left corner. Read the whole millimetres at line 0 of the comb; the comb line that meets a graduation says the tenths. Line 0 between 199 and 200, line 3 on a graduation: 199.3.",
    "Left side the same, from the bottom corner up.",
    "Both diagonals, 1 from the top left corner, 2 from the top right. Where the rule is too short, measure to the cross in the middle and on from there, and add the two.",
    `More than 5 % off? Then the page was printed “fit to page”, or the paper in the file (${machine.paper.size}) is not the paper in the printer: print it again.`,
  ];
  const above: Run[] = [
    ...paragraph("How true does this printer print?", width, { size: size.title, weight: "bold" }),
    ...steps.flatMap((words, index) => paragraph(`${index + 1}.  ${words}`, width, { size: size.body, gap: 1.4 })),
  ];
  const blank = "__________";
  const row = (what: string, mm: number, places: number) => [
    { text: what },
    { text: formatFixed(mm, places) },
    { text: blank },
    { text: blank },
    { text: blank },
  ];
  const below: Run[] = [
    ...table(
      [
        { heading: ["side", ""], align: "start", stretch: 0 },
        { heading: ["must measure", "mm"], align: "decimal" },
        { heading: ["measured", "mm"], align: "middle" },
        { heading: ["again", "mm"], align: "middle" },
        { heading: ["again", "mm"], align: "middle" },
      ],
      [
        row("top, across", across, 1),
        row("left, down", down, 1),
        row("diagonal 1", diagonal, 1),
        row("diagonal 2", diagonal, 1),
      ],
      { width, size: size.heading },
    ),
    ...paragraph("Then write into the machine file, the means of what you measured:", width, { gap: 4 }),
    ...entryLines(name, nominal, unit).flatMap((words) =>
      paragraph(words, width, { size: size.body, weight: "bold", gap: 1.2 }),
    ),
    ...paragraph(inTheFile(machine.printers[name], machine.paper.printer), width, { size: size.small, gap: 3 }),
    ...paragraph("Printer: ____________________   Paper: ____________________   Date: ____________", width, {
      size: size.small,
      gap: 5,
    }),
  ];
  return { above, below };
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
  return `In the file now, for ${name}: ${parts.join(", ")} mm. Other pages are printed so that they come out true by these figures.`;
}
