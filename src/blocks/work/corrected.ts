import type { Setting } from "../../dial/setting.js";
import { settingsByPlace } from "../../findings/byPlace.js";
import { dialToRead } from "../../findings/dialToRead.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { figureUnit, shownAt } from "../../findings/settingWords.js";
import { notCorrectedWords, zeroWords } from "../../findings/travelWords.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { MOST_COLUMNS, onTheRule } from "./onTheRule.js";
import { type Sizes, showDoubt, sizeText } from "./turnFigures.js";

/** What to turn on a slide that was found worn: a row for each distance, mm of what the dial reads, a column for each stretch on which
 *  the movement begins. Nothing where the travel is even. */
export function correctedTable(
  finding: HandwheelFinding,
  distances: readonly number[],
  sizes: Sizes,
  width: number,
): Run[] {
  const { units } = sizes;
  const { handwheel, reading } = finding;
  const factor = reading?.factor ?? 1;
  const travels = [...distances].sort((a, b) => a - b).map((distance) => distance / factor);
  const corrected = settingsByPlace(finding, travels, { units, most: MOST_COLUMNS });
  if (corrected === undefined)
    return [notCorrectedWords(finding) ?? []]
      .flat()
      .flatMap((words) => paragraph(words, width, { size: size.text, gap: 2 }));
  const rows = corrected.placed.map(({ travel, settings, within }): Cell[] => [
    { text: sizeText(travel * factor, sizes), weight: "bold" },
    ...settings.map((setting): Cell => ({ text: setting === undefined ? "–" : figures(finding, setting) })),
    { text: showDoubt(within * factor, units) },
  ]);
  const columns: Column[] = [
    {
      heading: [say(`turns.of ${handwheel.reads}`), unitName(units)],
      align: units === "in" ? "end" : "decimal",
      key: true,
    },
    ...corrected.stretches.map(
      (stretch): Column => ({ heading: [say("turns.begun"), onTheRule(stretch, units)], align: "middle" }),
    ),
    { heading: ["±", unitName(units)], align: "decimal" },
  ];
  const counted = dialToRead(finding) ? say("turns.counted", { unit: figureUnit(finding) }) : say("turns.counted bare");
  return [
    ...heading(say("turns.corrected"), width, 4, size.text),
    ...kept(paragraph(`${counted} ${zeroWords(finding)}`, width, { size: size.text, gap: 0.5 })),
    ...table(columns, rows, { width }),
  ];
}

/** "4 + 5.980", with its row where the dial has several. */
function figures(finding: HandwheelFinding, setting: Setting): string {
  const shown = shownAt(finding, setting);
  if (shown === undefined) return formatFixed(setting.turns, 3);
  const { wholeTurns: turns } = setting;
  return shown.row === undefined
    ? `${turns} + ${shown.figure}`
    : say("turns.on row", { turns, figure: shown.figure, row: shown.row });
}
