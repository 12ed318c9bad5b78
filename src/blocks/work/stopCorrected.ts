import type { HandwheelFinding } from "../../findings/findings.js";
import { correctedSetting } from "../../findings/settings.js";
import { fromZero, startsOver, zeroWords } from "../../findings/travelWords.js";
import type { Machine } from "../../machine/machine.js";
import { figureWithin, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept } from "../shared/runs.js";
import { type Cell, type Column, table } from "../shared/table.js";
import type { SetStop } from "./stopTable.js";
import { headingOf, turnsAndReading } from "./turnsAndReading.js";

/** On a slide that was found worn or wavy: what to turn for each stop by the curve that was measured, wherever on it the movement
 *  begins. Nothing where the travel is even. */
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
  // Only from where the stretch that was measured still holds the length of some stop.
  const starts = startsOver(wheel).filter((from) =>
    stops.some(({ stop }) => correctedSetting(wheel, stop.length, from) !== undefined),
  );
  const settings = (length: number) => starts.map((from) => correctedSetting(wheel, length, from));
  const told = stops.filter(({ stop }) => settings(stop.length).some((one) => one !== undefined));
  if (told.length === 0) return [];
  const counts = headingOf(wheel);
  const columns: Column[] = [
    { heading: [say("stops.stop")], align: "start", key: true },
    { heading: [say("stops.length"), unitName(units)], align: "decimal" },
    ...starts.map(
      (turn): Column => ({
        heading: [
          say("stops.begun", { turn }),
          say("turns.from turn 0", { distance: fromZero(wheel, turn, units) }),
          counts,
        ],
        align: "middle",
      }),
    ),
  ];
  const rows = told.map(({ stop }): Cell[] => [
    { text: stop.name, weight: "bold" },
    { text: figureWithin(stop.length, stop.tolerance, units) },
    ...settings(stop.length).map((one): Cell => ({ text: one === undefined ? "" : turnsAndReading(wheel, one) })),
  ]);
  return [
    ...heading(say("stops.corrected", { wheel: wheel.handwheel.name }), width, 5),
    ...kept(paragraph([...(wheel.dial ? [say("stops.turns and reading")] : []), zeroWords(wheel)].join(" "), width)),
    ...table(columns, rows, { width }),
  ];
}
