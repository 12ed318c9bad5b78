import type { Setting } from "../../dial/setting.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { correctedSetting } from "../../findings/settings.js";
import { figureUnit, shownAt } from "../../findings/settingWords.js";
import { fromZero, startsOver, zeroWords } from "../../findings/travelWords.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { type Sizes, sizeText } from "./turnFigures.js";

/** What to turn on a slide that was found worn or wavy, by the curve that was measured: a row for each distance, mm of what the dial
 *  reads, a column for each place at which the movement begins. Nothing where the travel is even. */
export function correctedTable(
  finding: HandwheelFinding,
  distances: readonly number[],
  sizes: Sizes,
  width: number,
): Run[] {
  const { units } = sizes;
  const starts = startsOver(finding);
  const { dial, handwheel } = finding;
  const rows = [...distances]
    .sort((a, b) => a - b)
    .flatMap((distance): Cell[][] => {
      const settings = starts.map((from) => correctedSetting(finding, distance, from));
      if (settings.every((setting) => setting === undefined)) return [];
      return [
        [
          { text: sizeText(distance, sizes), weight: "bold" },
          ...settings.map((setting): Cell => ({ text: setting === undefined ? "–" : figures(finding, setting) })),
        ],
      ];
    });
  if (rows.length === 0) return [];
  const columns: Column[] = [
    { heading: [say(`turns.of ${handwheel.reads}`), unitName(units)], align: units === "in" ? "end" : "decimal" },
    ...starts.map(
      (from): Column => ({
        heading: [
          say("turns.begun", { turn: formatFixed(from, 0) }),
          say("turns.from turn 0", { distance: fromZero(finding, from, units) }),
        ],
        align: "middle",
      }),
    ),
  ];
  const counted = dial ? say("turns.counted", { unit: figureUnit(finding) }) : say("turns.counted bare");
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
