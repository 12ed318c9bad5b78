import { settingsByPlace } from "../../findings/byPlace.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { notCorrectedWords, zeroWords } from "../../findings/travelWords.js";
import type { Machine } from "../../machine/machine.js";
import { figureWithin, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept } from "../shared/runs.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { MOST_COLUMNS, onTheRule } from "./onTheRule.js";
import type { SetStop } from "./stopTable.js";
import { showDoubt } from "./turnFigures.js";
import { behindTheTurns, turnsAndReading } from "./turnsAndReading.js";

/** On a slide that was found worn or wavy: what to turn for each stop, by the stretch on which the movement begins. Nothing where the travel is even. */
export function correctedTables(stops: readonly SetStop[], machine: Machine, width: number): Run[] {
  const wheels = [...new Set(stops.flatMap(({ wheel }) => wheel ?? []))];
  return wheels.flatMap((wheel) =>
    ofWheel(
      wheel,
      stops.filter((one) => one.wheel === wheel),
      machine,
      width,
    ),
  );
}

function ofWheel(wheel: HandwheelFinding, stops: readonly SetStop[], { units }: Machine, width: number): Run[] {
  const factor = wheel.reading?.factor ?? 1;
  const corrected = settingsByPlace(
    wheel,
    stops.map(({ stop }) => stop.length / factor),
    { units, most: MOST_COLUMNS },
  );
  if (corrected === undefined)
    return [notCorrectedWords(wheel) ?? []].flat().flatMap((words) => paragraph(words, width, { gap: 2 }));
  const columns: Column[] = [
    { heading: [say("stops.stop")], align: "start", key: true },
    { heading: [say("stops.length"), unitName(units)], align: "decimal" },
    ...corrected.stretches.map(
      (stretch): Column => ({
        // The rule's own unit: the figures below may count another, which the words above tell.
        heading: [say("stops.begun"), onTheRule(stretch, units), unitName(units)],
        align: "middle",
      }),
    ),
    { heading: ["±", unitName(units)], align: "decimal" },
  ];
  const rows = stops.flatMap(({ stop }): Cell[][] => {
    const one = corrected.placed.find(({ travel }) => travel === stop.length / factor);
    if (one === undefined) return [];
    return [
      [
        { text: stop.name, weight: "bold" },
        { text: figureWithin(stop.length, stop.tolerance, units) },
        ...one.settings.map((setting): Cell => ({ text: setting ? turnsAndReading(wheel, setting) : "–" })),
        { text: showDoubt(one.within * factor, units) },
      ],
    ];
  });
  const words = [say("stops.by the rule"), ...behindTheTurns(wheel), zeroWords(wheel)];
  return [
    ...heading(say("stops.corrected", { wheel: wheel.handwheel.name }), width, 5),
    ...kept(paragraph(words.join(" "), width)),
    ...table(columns, rows, { width }),
  ];
}
