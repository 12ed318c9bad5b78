import type { Machine, Printer, Units } from "../../machine/machine.js";
import { formatFixed, trimmed, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { size } from "../shared/style.js";
import { blanks } from "./blanks.js";
import { fileLength } from "./fileText.js";
import { formGrid } from "./formGrid.js";
import { numbered } from "./numbered.js";
import { readingPicture } from "./printerMarks.js";
import { rules } from "./printerRule.js";

export type Nominal = { readonly across: number; readonly down: number; readonly diagonal: number };

/** What to do, in the upper half, and what of it stands in the lower: fullest first. Small paper does without heading, then without the
 *  picture, and then the last steps go on below. */
export function printerSteps(
  machine: Machine,
  { across }: Nominal,
  width: number,
): { readonly above: readonly Run[]; readonly rest: (width: number) => readonly Run[] }[] {
  const { units, paper } = machine;
  const { graduation, places } = rules[units];
  const figure = (mm: number, digits: number) => formatFixed(fromMm(mm, units), digits);
  const steps = [
    say("printer check.step print"),
    say(units === "mm" ? "printer check.step rule" : "printer check.step inch rule"),
    say(units === "mm" ? "printer check.step top" : "printer check.step inch top", {
      least: figure(across - graduation, units === "mm" ? 0 : 2),
      most: figure(across, units === "mm" ? 0 : 2),
      reading: figure(across - 0.7 * graduation, places),
    }),
    say("printer check.step left"),
    say("printer check.step diagonals"),
    say("printer check.step wrong", { paper: paper.size }),
  ];
  const list = (count: number): Run => ({ drawing: numbered(steps.slice(0, count), width), gap: 2 });
  const picture: Run = { drawing: readingPicture(across, units, width), gap: 3 };
  const title = paragraph(say("printer check.question"), width, { size: size.card, weight: "bold" });
  const whole = [[...title, list(steps.length), picture], [list(steps.length), picture], [list(steps.length)]];
  const parted = [steps.length - 1, steps.length - 2, steps.length - 3].map((count) => ({
    above: [list(count)],
    rest: (width: number): Run[] => [{ drawing: numbered(steps.slice(count), width, 1, count) }],
  }));
  return [...whole.map((above) => ({ above, rest: () => [] })), ...parted];
}

/** Room for the figures and the lines of the file that they go into, fullest first. */
export function printerRecord(machine: Machine, nominal: Nominal, width: number): Run[][] {
  const { across, down, diagonal } = nominal;
  const { units } = machine;
  const unit = unitName(units);
  const name = machine.paper.printer ?? OWN_NAME;
  const row = (what: string, mm: number) => [
    what,
    `${formatFixed(fromMm(mm, units), rules[units].places)} ${unit}`,
    "",
    "",
    "",
  ];
  const column = (heading: string, share: number) => ({ heading: [heading], share });
  const again = column(say("printer check.again"), 1.3);
  const columns = [
    column(say("printer check.side"), 1.3),
    column(say("printer check.must measure"), 1.5),
    column(say("printer check.measured"), 1.3),
    again,
  ];
  const rows = [
    row(say("printer check.across"), across),
    row(say("printer check.down"), down),
    row(say("printer check.diagonal", { number: 1 }), diagonal),
    row(say("printer check.diagonal", { number: 2 }), diagonal),
  ];
  // Once more where there is room to.
  const grid = (high: number) =>
    width > 120
      ? formGrid([...columns, again], rows, Math.min(width, 150), high)
      : formGrid(columns, rows, width, high);
  const entry = [
    ...paragraph(say("printer check.then write"), width, { gap: 2.5 }),
    ...entryLines(name, nominal, units).flatMap((words) => {
      const indent = words.startsWith(" ") ? size.text : 0;
      return paragraph(words.trim(), width - indent, { weight: "bold", gap: 0.5 }).map(
        (run): Run => ({
          ...run,
          drawing: {
            ...run.drawing,
            marks: [{ kind: "group", at: { x: indent, y: 0 }, marks: run.drawing.marks }],
          },
        }),
      );
    }),
  ];
  const held = paragraph(inTheFile(machine.printers[name], machine.paper.printer, units), width, { gap: 2 });
  const lines = blanks(
    [
      { before: say("printer check.printer") },
      { before: say("printer check.paper") },
      { before: say("printer check.date") },
    ],
    width,
    1.5,
  );
  return [
    [...grid(8), ...entry, ...held, ...lines],
    [...grid(6), ...entry, ...held, ...lines],
    [...grid(5), ...entry, ...lines],
    [...grid(4.6), ...entry],
  ];
}

/** What a printer is called that has no name yet: a word of the file. */
const OWN_NAME = "my printer";

/** The lines of the machine file, with `blank` where a measured figure goes. A bare pair of bars is in mm, so that inches are
 *  said. */
export function entryLines(name: string, { across, down }: Nominal, units: Units, blank = "________"): string[] {
  return [
    "printers:",
    `  ${name}: { across: ${blank} of ${fileLength(across, units)}, down: ${blank} of ${fileLength(down, units)}, diagonals: [${blank}, ${blank}] }`,
    `paper: { printer: ${name} }`,
  ];
}

function inTheFile(printer: Printer | undefined, name: string | undefined, units: Units): string {
  if (printer === undefined || name === undefined) return say("printer check.none held");
  const said = (mm: number) => trimmed(fromMm(mm, units), units === "mm" ? 2 : 3);
  const bar = (words: "printer check.held across" | "printer check.held down", one: Printer["across"]) =>
    one === undefined ? [] : [say(words, { measured: said(one.measured), nominal: said(one.nominal) })];
  const figures = [
    ...bar("printer check.held across", printer.across),
    ...bar("printer check.held down", printer.down),
    ...(printer.diagonals
      ? [say("printer check.held diagonals", { first: said(printer.diagonals[0]), second: said(printer.diagonals[1]) })]
      : []),
  ].join(", ");
  return say("printer check.held", { printer: name, figures: `${figures} ${unitName(units)}` });
}
