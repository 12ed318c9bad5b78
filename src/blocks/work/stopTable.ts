import { dialToRead } from "../../findings/dialToRead.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { dialTurnWords, figureUnit, shownFromTouch } from "../../findings/settingWords.js";
import type { Repeat } from "../../findings/stops.js";
import type { Machine, StopWish } from "../../machine/machine.js";
import { asOnPaper } from "../../machine/written.js";
import { figureWithin, formatFixed, formatUncertain, sizeFigure, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { keyed, keyOf, lowered } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";

/** A stop that can be set: on which wheel, and how. */
export type SetStop = {
  readonly stop: StopWish;
  readonly wheel?: HandwheelFinding | undefined;
  readonly repeat?: Repeat | undefined;
};

/** What nobody measured. */
const UNKNOWN = "?";

/** A column, and its cell for each stop; `shown`: whether any of them has something to tell there. */
type Part = {
  readonly shown?: boolean;
  readonly column: Column;
  readonly cell: (wheel: HandwheelFinding, repeat: Repeat, stop: StopWish) => Cell;
};

/** One row for each stop, and below it once what its signs mean. */
export function stopTable(machine: Machine, stops: readonly SetStop[], width: number): Run[] {
  const { units } = machine;
  const all = stops.flatMap(({ stop, wheel, repeat }) => (wheel && repeat ? [{ stop, wheel, repeat }] : []));
  const some = (test: (one: (typeof all)[number]) => boolean) => all.some(test);
  const given = (mm: number, tolerance?: number) =>
    asOnPaper(machine.written?.get(mm)) ?? `${figureWithin(mm, tolerance, units)} ${unitName(units)}`;
  const bound = (mm: number | undefined): Cell => ({
    text: mm === undefined ? UNKNOWN : formatUncertain(0, fromMm(mm, units)).uncertainty,
  });
  const dials = some(({ wheel }) => dialToRead(wheel) !== undefined);
  const fixed = [...new Set(all.map(({ wheel }) => wheel))].filter((wheel) => dialToRead(wheel)?.fixed);
  const settable = some(({ wheel }) => dialToRead(wheel)?.fixed === false);
  const reads =
    fixed.length === 0 ? "stops.dial reads" : settable ? "stops.dial reads or goes on" : "stops.dial goes on";
  const wanted = some(({ stop }) => stop.tolerance !== undefined);
  // A column that says "?" in every row tells nothing: one sentence below does.
  const alike = some(({ repeat }) => repeat.byStop !== undefined);
  const play = some(({ repeat }) => repeat.lostMotion !== undefined);
  const judged = some(
    ({ stop, wheel, repeat }) => stop.tolerance !== undefined && holding(repeat, wheel).holds !== "unknown",
  );
  const unit = unitName(units);
  const parts: readonly Part[] = [
    {
      column: { heading: [say("stops.stop")], align: "start", key: true },
      cell: (_, __, { name }) => ({ text: name, weight: "bold" }),
    },
    {
      shown: some(({ stop }) => stop.parts !== undefined),
      column: { heading: [say("stops.parts")], align: "end", optional: true },
      cell: (_, __, { parts }) => ({ text: parts === undefined ? "" : formatFixed(parts, 0) }),
    },
    {
      column: { heading: [say("stops.length")], align: "end" },
      cell: (_, { beyondTravel }, { length, tolerance }) => ({
        text: given(length, tolerance),
        ...(beyondTravel && { note: say("stops.beyond"), weight: "bold" }),
      }),
    },
    {
      column: { heading: [say("stops.wheel")], align: "start" },
      cell: ({ handwheel }) => ({ text: handwheel.name }),
    },
    {
      column: { heading: [say("stops.turns")], align: "decimal" },
      cell: (wheel, { setting }) => ({
        text: dialToRead(wheel) ? formatFixed(setting.wholeTurns, 0) : formatFixed(setting.turns, 3),
        size: size.card,
        weight: "bold",
      }),
    },
    {
      shown: dials,
      column: { heading: [say(reads)], align: "decimal" },
      cell: (wheel, { setting }) => {
        const shown = shownFromTouch(wheel, setting);
        if (shown === undefined) return { text: "–" };
        const counts = figureUnit(wheel);
        const note = shown.row === undefined ? counts : say("stops.counts in row", { counts, row: shown.row });
        return { text: shown.added ? `+ ${shown.figure}` : shown.figure, size: size.card, weight: "bold", note };
      },
    },
    {
      shown: alike,
      column: { heading: [say("stops.by stop"), `± ${unit}`], align: "decimal" },
      cell: (_, { byStop }) => bound(byStop),
    },
    {
      shown: alike && some(({ wheel }) => wheel.dial !== undefined),
      column: { heading: [say("stops.by dial"), `± ${unit}`], align: "decimal" },
      cell: (wheel, { byDial }) => (wheel.dial === undefined ? { text: "–" } : bound(byDial)),
    },
    {
      shown: play,
      column: { heading: [say("stops.lost motion"), unit], align: "decimal" },
      cell: (_, { lostMotion }) => ({ text: lostMotion === undefined ? UNKNOWN : sizeFigure(lostMotion, units) }),
    },
    {
      shown: some(({ repeat }) => repeat.lengthDoubt !== undefined),
      column: { heading: [say("stops.first part"), `± ${unit}`], align: "decimal" },
      cell: (_, { lengthDoubt }) => bound(lengthDoubt),
    },
    {
      shown: wanted,
      column: { heading: [say("stops.wanted")], align: "end" },
      cell: (_, __, { tolerance }) => ({ text: tolerance === undefined ? "" : given(tolerance, tolerance) }),
    },
    {
      shown: judged,
      column: { heading: [say("stops.held by")], align: "start" },
      cell: (wheel, repeat, { tolerance }) => (tolerance === undefined ? { text: "" } : holding(repeat, wheel).cell),
    },
  ];
  const shown = parts.filter(({ shown = true }) => shown);
  const rows = all.map(({ stop, wheel, repeat }) => shown.map(({ cell }) => cell(wheel, repeat, stop)));
  const verdicts = new Set(
    all.flatMap(({ stop, wheel, repeat }) => (stop.tolerance === undefined ? [] : holding(repeat, wheel).holds)),
  );
  const unknown = keyOf(say("stops.unknown means"), width);
  const remarks = [
    ...(fixed.length > 0
      ? [
          say("stops.sum means", {
            turns: fixed.map((wheel) => `${wheel.handwheel.name} ${dialTurnWords(wheel) ?? ""}`).join("; "),
          }),
        ]
      : []),
    ...(dials && some(({ wheel }) => dialToRead(wheel) === undefined) ? [say("stops.no dial means")] : []),
    alike ? say("stops.alike means") : say("stops.alike unknown"),
    play ? say("stops.lost motion means") : say("stops.lost motion unknown"),
    ...(some(({ repeat }) => repeat.lengthDoubt !== undefined) ? [say("stops.first part means")] : []),
    ...(some(({ wheel, repeat }) => repeat.lengthDoubt !== undefined && dialToRead(wheel)?.old !== undefined)
      ? [say("turns.old dial on top")]
      : []),
    ...(wanted ? [say("stops.wanted means")] : []),
    ...(judged ? [say("stops.held by means")] : []),
    ...(verdicts.has("stop") ? [say("stops.stop alone means")] : []),
  ];
  // Wanted is from end to end, the ± to either side.
  const off = all.filter(
    ({ stop: { tolerance }, repeat: { lengthDoubt } }) =>
      tolerance !== undefined && lengthDoubt !== undefined && lengthDoubt > tolerance / 2 + 1e-9,
  );
  const warnings = [
    ...(off.length > 0 ? [say("stops.first part off", { stops: off.map(({ stop }) => stop.name).join(", ") })] : []),
    ...(verdicts.has("neither") ? [say("stops.neither means")] : []),
    ...(verdicts.has("unknown") ? [say(judged ? "stops.measure each means" : "stops.measure each")] : []),
    ...(some(({ repeat }) => repeat.beyondTravel) ? [say("stops.beyond means")] : []),
  ];
  const drawn = table(
    shown.map(({ column }) => column),
    rows,
    { width, ruled: true },
  );
  return [
    ...keyed(lowered(drawn, 5), (row) =>
      rows[row % rows.length]?.some(({ text }) => text === UNKNOWN) ? [unknown] : [],
    ),
    ...paragraph(remarks.join(" "), width, { gap: 1.5 }),
    ...warnings.flatMap((words) => paragraph(words, width, { weight: "bold" })),
  ];
}

type Holds = "both" | "stop" | "neither" | "unknown";

/** What holds the tolerance, and its words. */
function holding(
  { dialServes, stopServes }: Repeat,
  { dial }: HandwheelFinding,
): { readonly holds: Holds; readonly cell: Cell } {
  if (dialServes) return { holds: "both", cell: { text: say("stops.both"), weight: "bold" } };
  if (stopServes) return { holds: "stop", cell: { text: say("stops.stop alone"), weight: "bold" } };
  if (stopServes === undefined) {
    const words = dialServes === false && dial !== undefined ? say("stops.not the dial") : say("stops.not measured");
    return { holds: "unknown", cell: { text: words, weight: "bold" } };
  }
  return { holds: "neither", cell: { text: say("stops.neither"), weight: "bold" } };
}
