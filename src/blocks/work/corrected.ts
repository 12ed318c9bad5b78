import type { Setting } from "../../dial/setting.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { correctedSetting, dialGain, settingToRead } from "../../findings/settings.js";
import { figureOf, figureUnit, settingWords, shownAt } from "../../findings/settingWords.js";
import { startsOver } from "../../findings/travelWords.js";
import type { Units } from "../../machine/machine.js";
import { formatFixed, formatLength, unitName } from "../../quantity/format.js";
import { say, withinSentence } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { heading, kept } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { type Sizes, sizeText } from "./turnFigures.js";

/** On a slide that was found worn or wavy: what to turn for a distance, mm of what the dial reads, by the curve that was measured,
 *  wherever on it the movement begins. Less than 0: backwards, as a bore is enlarged. No line where the travel is even. */
export function correctedLines(wheel: HandwheelFinding, distance: number, units: Units): string[] {
  const back = distance < 0;
  const ways = startsOver(wheel, back).flatMap((from) => {
    const setting = correctedSetting(wheel, distance, from);
    return setting === undefined ? [] : [{ turn: formatFixed(from, 0), setting: toSet(wheel, setting, back) }];
  });
  const [first] = ways;
  const plain = settingToRead(wheel, Math.abs(distance));
  // What comes to the same as the table's own reading is not told twice.
  if (first === undefined || (plain && ways.every(({ setting }) => setting === toSet(wheel, plain, back)))) return [];
  const asked = {
    distance: formatLength(Math.abs(distance), units, units === "mm" ? 2 : 4),
    wheel: withinSentence(wheel.handwheel.name),
  };
  return [
    ways.every(({ setting }) => setting === first.setting)
      ? say("turns.corrected anywhere", { ...asked, setting: first.setting })
      : say("turns.corrected by start", {
          ...asked,
          ways: ways.map((way) => say("turns.corrected from", way)).join("; "),
        }),
  ];
}

/** On a dial that cannot be set to 0: what it goes on by from wherever it stood, or goes back by. */
function toSet(wheel: HandwheelFinding, setting: Setting, back: boolean): string {
  const gain = wheel.handwheel.dial?.fixed ? dialGain(wheel, setting) : undefined;
  if (gain === undefined || wheel.dial === undefined) {
    const words = settingWords(wheel, setting, back);
    return back ? say("turns.backwards", { setting: words }) : words;
  }
  const [turns, figure] = [formatFixed(setting.wholeTurns, 0), figureOf(wheel.dial, gain)];
  return back ? say("turns.backwards", { setting: `${turns}, − ${figure}` }) : `${turns} + ${figure}`;
}

/** The same as a table: a row for each distance, a column for each place at which the movement begins. */
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
        heading: [say("turns.begun", { turn: formatFixed(from, 0) })],
        align: "middle",
      }),
    ),
  ];
  const counted = dial ? say("turns.counted", { unit: figureUnit(finding) }) : say("turns.counted bare");
  return [
    ...heading(say("turns.corrected"), width, 4, size.text),
    ...kept(paragraph(counted, width, { size: size.text, gap: 0.5 })),
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
