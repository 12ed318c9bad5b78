import type { Closing } from "../../dial/closing.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, formatLength, trimmedSize, unitName } from "../../quantity/format.js";
import { fromMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Column, table } from "../shared/table.js";

/** Finer than a gauge shows: what a turn leaves over adds up. */
const places: Readonly<Record<Units, number>> = { mm: 4, in: 5 };

/** What one turn reads, as the first line of a wheel's part. */
export function turnLine({ reading, handwheel }: HandwheelFinding, units: Units, width: number): Run[] {
  if (reading === undefined) return [];
  const length = formatLength(reading.perTurn, units, places[units]);
  const key = handwheel.reads === "diameter" ? "start readings.turn reads diameter" : "start readings.turn reads";
  return paragraph(say(key, { length }), width, { size: size.text, weight: "bold" });
}

/** After how few turns the chosen divisions come round to zero, or nearest to it. */
export function comesRound({ dial }: HandwheelFinding, units: Units, width: number): Run[] {
  const found = (dial?.closings ?? []).slice(-4);
  if (dial === undefined || found.length === 0) return [];
  const columns: Column[] = [
    { heading: [say("start readings.turns")], align: "decimal" },
    { heading: [say("start readings.divisions")], align: "decimal" },
    { heading: [say("start readings.out by"), unitName(units)], align: "end" },
  ];
  const rows = found.map((closing) => [
    { text: String(closing.turns), weight: "bold" } as const,
    { text: String(closing.divisions) },
    { text: outBy(closing, units) },
  ]);
  const division = trimmedSize(dial.chosen.divisionValue, dial.chosen.unit, 5);
  return [
    ...heading(say("start readings.come round", { division }), width, 3, size.text),
    ...table(columns, rows, { width }),
  ];
}

function outBy({ error }: Closing, units: Units): string {
  if (error === 0) return say("start readings.exact");
  const off = Math.abs(fromMm(error, units));
  const least = 10 ** -places[units];
  return off < least / 2
    ? say("start readings.under", { least: formatFixed(least, places[units]) })
    : formatFixed(off, places[units]);
}
