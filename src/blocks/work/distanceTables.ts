import { withinATurn } from "../../dial/reading.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { doubtToRead, farthestTold, oldSettingToRead, settingToRead } from "../../findings/settings.js";
import { figureUnit, shownAt } from "../../findings/settingWords.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { type Sizes, show, showDoubt, sizeText, type Table } from "./turnFigures.js";

/** Distances to turns and reading: what the hand needs is large. */
export function distanceTable(finding: HandwheelFinding, distances: readonly number[], sizes: Sizes): Table {
  const { feed, reading, dial, handwheel } = finding;
  const { units } = sizes;
  const doubted = feed?.uncertainty !== undefined;
  const unit = unitName(units);
  const none = dial !== undefined && withinATurn(reading);
  const columns: Column[] = [
    { heading: [say(`turns.of ${handwheel.reads}`), unit], align: units === "in" ? "end" : "decimal", key: true },
    ...(none ? [] : [{ heading: [say("turns.turns")], align: "decimal" } as const]),
    ...(dial
      ? [{ heading: [say("turns.dial"), figureUnit(finding).replace("× ", "×")], align: "decimal" } as const]
      : []),
    ...(dial && dial.chosen.rows > 1 ? [{ heading: [say("turns.row")], align: "middle" } as const] : []),
    ...(doubted ? [{ heading: ["±", unit], align: "decimal" } as const] : []),
  ];
  const rows = distances.map((distance): Cell[] => {
    const setting = settingToRead(finding, distance);
    if (setting === undefined || reading === undefined) return [];
    // The old dial has a table of its own.
    const shown = dial && shownAt(finding, setting);
    const doubt = doubtToRead(finding, distance);
    const told = distance / reading.factor <= farthestTold(finding);
    const hand = (text: string): Cell => ({ text, weight: "bold", size: size.card });
    return [
      { text: sizeText(distance, sizes), weight: "bold" },
      ...(shown === undefined
        ? [hand(formatFixed(setting.turns, 3))]
        : [...(none ? [] : [hand(String(setting.wholeTurns))]), hand(shown.figure)]),
      ...(shown?.row === undefined ? [] : [{ text: String(shown.row), weight: "bold" } as const]),
      ...(doubted ? [{ text: told && doubt !== undefined ? showDoubt(doubt, units) : "–" }] : []),
    ];
  });
  return { columns, rows };
}

/** The same distances on the dial that the wheel had, where the file says what that reads. */
export function oldDialStrip(
  finding: HandwheelFinding,
  distances: readonly number[],
  sizes: Sizes,
  width: number,
): Run[] {
  const { handwheel } = finding;
  const { oldDial } = handwheel;
  if (oldDial === undefined) return [];
  const unit = unitName(oldDial.unit);
  const columns: Column[] = [
    {
      heading: [say(`turns.of ${handwheel.reads}`), unitName(sizes.units)],
      align: sizes.units === "in" ? "end" : "decimal",
    },
    { heading: [say("turns.turns")], align: "decimal" },
    { heading: [say(`turns.reads in ${oldDial.reads}`), unit], align: "decimal" },
    { heading: [say("turns.uncorrected"), unitName(sizes.units)], align: "decimal", optional: true },
  ];
  const rows = distances.flatMap((distance): Cell[][] => {
    const old = oldSettingToRead(finding, distance);
    if (old === undefined) return [];
    return [
      [
        { text: sizeText(distance, sizes) },
        { text: String(old.wholeTurns), weight: "bold" },
        { text: show(old.reading, oldDial.unit), weight: "bold" },
        { text: show(old.outBy, sizes.units) },
      ],
    ];
  });
  return table(columns, rows, { width, list: true });
}
