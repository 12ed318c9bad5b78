import type { Mark } from "../../drawing/drawing.js";
import { group } from "../../drawing/shapes.js";
import type { Zone } from "../../feed/alongTravel.js";
import type { Budget } from "../../feed/budget.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { waveWords, zoneWords } from "../../findings/readingRemarks.js";
import type { Units } from "../../machine/machine.js";
import { isFarFromNominal } from "../../machine/nominalSlip.js";
import { formatDoubted, formatFixed, formatSize, sizeFigure, trimmedSize } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { heading, lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, paragraph, table } from "../shared/table.js";
import { plotDrawing } from "./plot.js";

/** What was measured on each handwheel and how good it is: plots, budget, what the readings say. In the file's unit. */
export const measuredReport = block({ plotHeight: 40 }, ({ handwheels, findings, settings, width }): Run[] =>
  handwheels.flatMap((finding): Run[] => {
    const { handwheel, study } = finding;
    const { units } = findings.machine;
    const feed = finding.feed ?? finding.miscounted;
    if (feed?.fit === undefined || study === undefined || handwheel.feed?.from !== "readings") return [];
    const head = finding.miscounted
      ? `${handwheel.name}: ${finding.study?.jump ? "readings that jump" : "a turn miscounted"}`
      : `${handwheel.name}: ${formatDoubted(feed.perTurn, feed.uncertainty, units, units === "mm" ? 5 : 6)} a turn`;
    return [
      ...heading(head, width, 5),
      ...statements(finding, units).flatMap((words) => paragraph(words, width, { size: size.small, gap: 0.5 })),
      { drawing: plots(finding, units, width, settings.plotHeight), gap: 2 },
      ...(study.budget ? budgetTable(study.budget, units, width) : []),
      ...(study.shape.alongTravel?.real ? zoneTable(study.shape.alongTravel.found, units, width) : []),
    ];
  }),
);

function statements(finding: HandwheelFinding, units: Units): string[] {
  const size = (mm: number, mmPlaces: number) => formatSize(mm, units, mmPlaces);
  const { handwheel, study } = finding;
  const feed = finding.feed ?? finding.miscounted;
  if (feed?.fit === undefined || study === undefined) return [];
  const { fit, lostMotion, nominal } = feed;
  const { factor } = finding.reading ?? { factor: 1 };
  const out = Math.abs((nominal ?? feed.perTurn) - feed.perTurn) * factor;
  const onDiameter = factor === 2 ? " on diameter" : "";
  const { alongTravel, oncePerTurn } = study.shape;
  const { positioning } = study;
  const chance = (value: number) => (value < 0.001 ? "less than 1 in 1000" : `${formatFixed(value * 100, 1)} in 100`);
  return [
    `${fit.readings} readings${fit.runs > 1 ? ` in ${fit.runs} runs at ${fit.places} places` : ""}${fit.withWave ? ", line and once-per-turn wave fitted together" : ""}; scatter ${fit.runs > 1 ? "of one run " : ""}about the line ${size(fit.residualDeviation, 4)}, ${fit.degreesOfFreedom} degrees of freedom. ± is the half-width at 95 %.`,
    lostMotion
      ? `Lost motion ${lostMotion.uncertainty === undefined ? size(lostMotion.travel, 3) : `${sizeFigure(lostMotion.travel, units, 3)} ± ${size(lostMotion.uncertainty, 3)}`}, ${formatFixed(lostMotion.turn, 3)} of a turn.`
      : study.back && !study.back.contradiction
        ? "Lost motion not known: readings on the way back are doubtful; take them again."
        : study.back?.contradiction
          ? `Lost motion not known: the return readings contradict the way out by ${size(study.back.contradiction.travel, 3)}, ${formatFixed(study.back.contradiction.turn, 2)} of a turn.`
          : "Lost motion not measured: no readings on the way back.",
    ...study.otherZeros.map(
      ({ run, off }) =>
        `Run ${run} stands ${size(Math.abs(off), 3)} ${off > 0 ? "above" : "below"} the others: its gauge had another zero; the line gives each run its own, but how alike a place comes again over all runs is not told by ISO 230-2's formulas.`,
    ),
    ...(study.back?.wild.length || study.back?.miscounted
      ? ["Doubtful readings on the way back stand in the lost motion: take them again."]
      : []),
    ...(nominal === undefined
      ? []
      : [
          `The maker meant ${size(nominal, 4)}: a dial made for that is out by ${size(out, 4)}${onDiameter} a turn${handwheel.travel === undefined ? "" : `, ${size((out * handwheel.travel) / feed.perTurn, 3)}${onDiameter} over the travel of ${trimmedSize(handwheel.travel, units, 1)}`}.${isFarFromNominal(feed.perTurn, nominal) ? " Screws are rarely so far out: one of the two looks like a slip; measure again." : ""}`,
        ]),
    ...(alongTravel === undefined
      ? ["Too few readings to tell whether the travel is worn."]
      : [
          alongTravel.real
            ? `Uneven along the travel: ${zoneWords(alongTravel.found, units)} (by chance: ${chance(alongTravel.chance)}).`
            : `No bend along the travel that is more than chance (${chance(alongTravel.chance)}).`,
        ]),
    ...(oncePerTurn === undefined
      ? ["No readings within the turn: a once-per-turn error cannot show."]
      : [
          oncePerTurn.real
            ? `Once per turn it leads and lags by ${waveWords(oncePerTurn.found, units)}.`
            : `No once-per-turn error that is more than chance (${chance(oncePerTurn.chance)}).`,
        ]),
    ...(fit.repeat
      ? [
          `A place comes again with a standard deviation of ${size(fit.repeat.deviation, 4)} (${fit.repeat.degreesOfFreedom} degrees of freedom). More runs of the same places make the feed no better known.`,
        ]
      : ["How alike a place comes again was not measured: one run."]),
    ...(positioning
      ? [
          `By ISO 230-2's formulas, ${positioning.runs} runs${positioning.runs < 5 ? " (the standard asks for 5)" : ""}: accuracy both ways ${size(positioning.accuracy, 3)}, repeatability ${size(positioning.repeatability, 3)}, reversal value ${size(positioning.reversal, 3)}.`,
        ]
      : []),
    ...study.wild.map(
      ({ index, off, like }) =>
        `Reading ${index + 1} lies ${size(off, 3)} off the others${like ? `, like ${like}` : ""}; it still stands in the fit.`,
    ),
    ...(study.wild.length > 10
      ? [`And ${study.wild.length - 10} more readings off the others; check lists them.`]
      : []),
    ...(study.miscounted
      ? [
          `From reading ${study.miscounted.index + 1} on a turn seems miscounted: nothing else is told of this feed until that is mended.`,
        ]
      : []),
  ];
}

/** Residuals of the way out, and lost motion at each turn, side by side. */
function plots(finding: HandwheelFinding, units: Units, width: number, height: number) {
  const { handwheel, study } = finding;
  const feed = finding.feed ?? finding.miscounted;
  if (feed?.fit === undefined || handwheel.feed?.from !== "readings") return { width, height: 0, marks: [] };
  const { turns, travel, back } = handwheel.feed;
  const wild = new Set(study?.wild.map(({ index }) => index));
  const half = (width - 4) / 2;
  const sense = Math.sign(feed.fit.slope) || 1;
  const residuals = plotDrawing(
    {
      title: "Readings less the line",
      across: "turns of the handwheel",
      up: units,
      points: turns.map((x, index) => ({
        x,
        y: fromMm(sense * (feed.fit?.residuals[index] ?? 0), units),
        marked: wild.has(index),
      })),
    },
    half,
    height,
  );
  const marks: Mark[] = [group({ x: 0, y: 0 }, residuals.marks, { name: "residuals" })];
  if (back !== undefined) {
    const points = back.map((reading, index) => ({
      x: turns[index] ?? 0,
      y: fromMm(sense * (reading - (travel[index] ?? 0)), units),
    }));
    const level = feed.lostMotion && fromMm(feed.lostMotion.travel, units);
    const lost = plotDrawing(
      {
        title: "Lost motion, return less out",
        across: "turns of the handwheel",
        up: units,
        points,
        ...(level !== undefined && { level }),
      },
      half,
      height,
    );
    marks.push(group({ x: half + 4, y: 0 }, lost.marks, { name: "lost-motion" }));
  }
  return { width, height, marks };
}

function budgetTable(
  { contributions, combined, coverageFactor, expanded, degreesOfFreedom }: Budget,
  units: Units,
  width: number,
): Run[] {
  // Thousandths of a millimetre, or millionths of an inch.
  const [small, parts] = units === "mm" ? ["µm", 1e3] : ["0.000001 in", 1e6];
  const micro = (mm: number) => formatFixed(fromMm(mm, units) * parts, units === "mm" ? 3 : 1);
  const columns: Column[] = [
    { heading: ["doubt of the feed"], align: "start" },
    { heading: ["standard", `${small} a turn`], align: "decimal" },
    { heading: ["kind"], align: "middle", stretch: 0.3 },
    { heading: ["degrees of", "freedom"], align: "decimal" },
    { heading: ["how"], align: "start", stretch: 2 },
  ];
  const rows = contributions.map(({ name, standard, kind, degreesOfFreedom, counts, how }): Cell[] => [
    { text: counts ? name : `(${name})` },
    { text: micro(standard) },
    { text: kind },
    { text: Number.isFinite(degreesOfFreedom) ? formatFixed(degreesOfFreedom, 0) : "known" },
    { text: how },
  ]);
  const sum: Cell[] = [
    { text: "together", weight: "bold" },
    { text: micro(combined), weight: "bold" },
    { text: "" },
    { text: Number.isFinite(degreesOfFreedom) ? formatFixed(degreesOfFreedom, 0) : "known" },
    {
      text: `× ${formatFixed(coverageFactor, 3)} = ± ${micro(expanded)} ${small === "µm" ? "µm" : `× ${small}`} a turn at 95 %`,
    },
  ];
  return lowered(table(columns, [...rows, sum], { width, size: size.tiny }), 2);
}

/** What to add to the dial's word in each stretch. */
function zoneTable(zones: readonly Zone[], units: Units, width: number): Run[] {
  const columns: Column[] = [
    { heading: ["from turn"], align: "decimal" },
    { heading: ["to turn"], align: "decimal" },
    { heading: [`${units} a turn here`], align: "decimal" },
    { heading: ["±"], align: "decimal" },
    { heading: ["ahead of the mean", `at the end, ${units}`], align: "decimal" },
    { heading: ["±"], align: "decimal" },
  ];
  const rows = zones.map((zone): Cell[] => [
    { text: formatFixed(zone.fromTurn, 2), weight: "bold" },
    { text: formatFixed(zone.toTurn, 2), weight: "bold" },
    { text: sizeFigure(zone.perTurn, units, 4) },
    { text: sizeFigure(zone.uncertainty, units, 4) },
    { text: sizeFigure(zone.aheadAtEnd, units, 4) },
    { text: sizeFigure(zone.aheadUncertainty, units, 4) },
  ]);
  return lowered(table(columns, rows, { width, size: size.small }), 2);
}

/** What the sheet is, and what it is not. */
export const measuredFooting = block({}, ({ findings, width }): Run[] => {
  const { measured } = findings.machine;
  return [
    ...paragraph(
      `Measured ${measured ?? "on a day that the file does not give"}. Measured by: ____________________   Gauge: ____________________   Temperature: ________`,
      width,
      { size: size.small, gap: 5 },
    ),
    ...paragraph(
      "A record of measurements made on the machine by its owner, worked out by the Guide to the Expression of Uncertainty in Measurement. It proves nothing to others; measure again after any repair or adjustment.",
      width,
      { size: size.tiny, gap: 1.5 },
    ),
  ];
});
