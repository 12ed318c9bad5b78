import { dialSet } from "../blocks/dial/dialCutOuts.js";
import { barsIn, usualBars } from "../blocks/measuring/printerCheck.js";
import type { DialFinding } from "../dial/finding.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import type { Machine, Units } from "../machine/machine.js";
import { type Measure, measureOfAll, measureOfPiece, measuresOf, verdictOn } from "../paper/measuredPiece.js";
import { paperSize } from "../paper/paperSize.js";
import { mendedBar } from "../paper/printerCorrection.js";
import { formatFixed, formatLength, formatSize, trimmed } from "../quantity/format.js";
import { inMm, inWords, MM_PER_INCH, parseLength } from "../quantity/length.js";
import { roomOn } from "../sheets/arrange.js";
import { builtIn } from "../sheets/builtIn.generated.js";
import { Unanswered } from "./unanswered.js";
import { wheelNamed } from "./wheelNamed.js";

/** Beyond this a page was scaled, or the length is in another unit. */
const MOST_OFF = 0.05;

export type Measured = {
  readonly handwheel: string;
  /** What the caliper says; a bare number is in the file's unit. */
  readonly measured: string;
  /** Which of the dial's lengths it is, where there are several. */
  readonly by?: string | undefined;
};

/** A side of a printer's entry, and the bar that it is to say, as "199.5 of 200". */
export type MendedSide = { readonly side: "across" | "down"; readonly bar: string };

/** What is to be put into the file: one side where the length lay level on the dials sheet, the other where it lay upright. `unnamed`: the
 *  paper names no printer yet. */
export type Mend = {
  readonly printer: string;
  readonly unnamed: boolean;
  readonly level: MendedSide;
  readonly upright: MendedSide;
};

/** Whether a printed dial, as a caliper finds it, is good enough, what it would cost, and what would mend it. @throws Unanswered */
export function verified(
  findings: Findings,
  { handwheel: name, measured: measuredText, by }: Measured,
): { readonly good: boolean; readonly lines: readonly string[]; readonly mend?: Mend } {
  const { machine, handwheels } = findings;
  const named = wheelNamed(
    name,
    handwheels.map(({ handwheel }) => handwheel.name),
  );
  const finding = handwheels.find(({ handwheel }) => handwheel.name === named) as HandwheelFinding;
  const { units } = machine;
  const measured = parseLength(measuredText, units);
  if (measured === undefined || !(measured > 0))
    throw new Unanswered(
      `"${measuredText}" is not a length; write what the caliper says, as 119.7 mm or 4.713 in; a bare number is in ${inWords[units]}, the file's unit`,
      "question",
    );
  const page = dialsPage(findings);
  const measure = chosenMeasure(finding, by, measured, { machine, room: page?.body });
  const verdict = verdictOn(measure, measured);
  const { off, good } = verdict;
  const lines = [
    ...(measure.others === undefined ? [] : [`Taken for ${measure.what.replace(/,.*/, "")}; ${measure.others}.`]),
    `${finding.handwheel.name}: ${measure.what} must measure ${said(measure.wanted, units)}, the caliper says ${said(measured, units)}: ${offWords(measure, off, units)}.`,
    good
      ? `Good enough: within ${said(measure.slack, units)}.`
      : `Not good enough: it may be off by ${said(measure.slack, units)} at most.`,
  ];
  if (Math.abs(verdict.ratio - 1) > MOST_OFF)
    return { good: false, lines: [...lines, scaledWords(measuredText, measure, units)] };
  const judged = [...lines, costWords(finding, measure, verdict.turns, units)];
  if (good) return { good, lines: judged };
  return measure.by === "arc"
    ? { good, lines: [...judged, BENT] }
    : { good, lines: judged, mend: mendOf(verdict.ratio, findings, page?.across) };
}

const said = (mm: number, units: Units): string => formatSize(mm, units);

/** What no caliper can tell apart is as it should be. */
function offWords({ by }: Measure, off: number, units: Units): string {
  const much = said(Math.abs(off), units);
  if (!/[1-9]/.test(much)) return "as it should be";
  const [more, less] = by === "ring" ? ["large", "small"] : ["long", "short"];
  return `${much} too ${off > 0 ? more : less}`;
}

/** `others`: what else it might have been. */
type Chosen = Measure & { readonly others?: string };

/** The length that was measured: of a dial that the paper takes in pieces the nearest of theirs, or their sum. */
function chosenMeasure(
  finding: HandwheelFinding,
  by: string | undefined,
  measured: number,
  { machine, room }: { readonly machine: Machine; readonly room: Room | undefined },
): Chosen {
  const { handwheel, dial } = finding;
  const { units } = machine;
  const measures = dial === undefined ? [] : measuresOf(dial, units);
  const [first, ...others] = measures;
  if (first === undefined)
    throw new Unanswered(`"${handwheel.name}" has no dial: give it a feed and a dial with its sizes`);
  const parts = dial === undefined ? [] : partsOf(finding, dial, machine, room);
  if (dial !== undefined && parts.length > 1 && by !== "chord") {
    // Stuck together a ring of pieces is one that a caliper spans.
    const spanned = measures.filter((measure) => measure.by === "ring");
    const might = [...parts, measureOfAll(dial, parts.length, units), ...spanned];
    const meant = might.filter((measure) => measure.by === by);
    const all = meant.length > 0 ? meant : might;
    const taken = nearest(all, measured);
    const others = all
      .filter((one) => one !== taken)
      .map(({ what, wanted }) => `${what.replace(/,.*/, "")} measures ${said(wanted, units)}`);
    return { ...taken, others: others.join(", ") };
  }
  const asked = measures.find((measure) => measure.by === by);
  if (asked !== undefined) return asked;
  if (by === undefined && others.length === 0) return first;
  const ways = measures.map((measure) => `--by ${measure.by} (${measure.what}: ${said(measure.wanted, units)})`);
  throw new Unanswered(`say what was measured of "${handwheel.name}": ${ways.join(" or ")}`, "question");
}

type Room = { readonly width: number; readonly height: number };

/** Of the sheet that has the dials. */
const dialsPage = (findings: Findings) => {
  const template = builtIn.find(({ name }) => name === "dial");
  return template && roomOn(findings, template);
};

function partsOf(finding: HandwheelFinding, dial: DialFinding, machine: Machine, room: Room | undefined): Measure[] {
  const pieces = (room && dialSet(finding, machine, room)?.pieces) ?? [];
  return pieces.length < 2 ? [] : pieces.map((piece) => measureOfPiece(dial, piece, machine.units));
}

const nearest = (measures: readonly Measure[], measured: number): Measure =>
  measures.reduce((best, one) =>
    Math.abs(Math.log(measured / one.wanted)) < Math.abs(Math.log(measured / best.wanted)) ? one : best,
  );

/** A bare number in the wrong unit is the likeliest slip; then a page printed to fit. */
function scaledWords(measuredText: string, { wanted }: Measure, units: Units): string {
  const other: Units = units === "mm" ? "in" : "mm";
  const bare = Number(measuredText.replace(",", "."));
  if (Math.abs(inMm(bare, other) / wanted - 1) <= MOST_OFF)
    return `A bare number is in ${inWords[units]}, the file's unit: write ${measuredText} ${other} if that is what was meant.`;
  return 'More than 5 % off: the page was most likely printed "fit to page", or the length is in another unit. Print at 100 % first.';
}

function costWords({ reading, dial }: HandwheelFinding, { by }: Measure, turns: number, units: Units): string {
  const perTurn = formatLength(turns * (reading?.perTurn ?? 0), units, units === "mm" ? 4 : 5);
  const divisions = formatFixed(turns * (dial?.chosen.divisionsPerTurn ?? 0), 2);
  return by === "ring"
    ? `A ring that is as much too large or too small all round divides its turn as evenly: measure it square to this, too. Off in this direction alone, two readings could be out against each other by up to ${perTurn}, ${divisions} of a division.`
    : `Stuck on as it is, a reading just before the zero comes round would be out by ${perTurn}, ${divisions} of a division. It does not add up over the travel: each turn begins at the zero line again.`;
}

/** Along a bent edge both sides of the sheet mix. */
const BENT =
  "To mend it, print the printer-check page and put its figures into the file: along a bent edge no single one can be told.";

/** The bars of the printer check as this paper has room for them: no figure is asked for of one that it does not have. */
function barsOfCheck(findings: Findings) {
  const { machine } = findings;
  const template = builtIn.find(({ name }) => name === "printer-check");
  const body = template && roomOn(findings, template)?.body;
  const { width } = paperSize(machine.paper.size, "portrait");
  return body && barsIn(machine, usualBars, body, { top: body.top, width });
}

/** The bar that corrects what lies level on the dials sheet, and the one for what lies upright. */
function mendOf(ratio: number, findings: Findings, across = true): Mend {
  const { paper, printers, units } = findings.machine;
  const bars = barsOfCheck(findings);
  const name = paper.printer ?? "my printer";
  const printer = printers[name];
  const barOf = (side: "across" | "down") => {
    const bar = mendedBar(printer, side, ratio, units, bars?.[side]);
    // In inches, unless the file gives this bar in millimetres, whose diagonals then are too.
    const halves = (2 * bar.nominal) / MM_PER_INCH;
    if (units === "in" && Math.abs(halves - Math.round(halves)) < 1e-6)
      return `${formatFixed(bar.measured / MM_PER_INCH, 3)} of ${trimmed(bar.nominal / MM_PER_INCH, 3)} in`;
    return `${formatFixed(bar.measured, 2)} of ${trimmed(bar.nominal, 3)}${units === "in" ? " mm" : ""}`;
  };
  const [level, upright] = across ? (["down", "across"] as const) : (["across", "down"] as const);
  return {
    printer: name,
    unnamed: paper.printer === undefined,
    level: { side: level, bar: barOf(level) },
    upright: { side: upright, bar: barOf(upright) },
  };
}

/** How it is put into the file, for who writes it there. */
export function mendWords({ printer, unnamed, level, upright }: Mend): string {
  const key = /^[\w ]+$/.test(printer) ? printer : JSON.stringify(printer);
  const use = unnamed ? ` and  paper: { printer: ${key} }` : "";
  return `To mend it, print again with  printers: { ${key}: { ${level.side}: ${level.bar} } }${use}; keep the other bars of that entry as they are. That is for a length that lay level on the dials sheet, which is ${level.side} its sheet of paper; if it lay the other way, ${upright.side}: ${upright.bar} instead.`;
}
