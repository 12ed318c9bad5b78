import { withinATurn } from "../../dial/reading.js";
import type { Setting } from "../../dial/setting.js";
import { dialToRead } from "../../findings/dialToRead.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { dialTurnWords, figureUnit, shownFromTouch } from "../../findings/settingWords.js";
import { formatFixed } from "../../quantity/format.js";
import { say } from "../../words/say.js";

/** For a narrow column that holds the unit in its heading: "4 + 5.980", "4 + 5.980, row 2"; turns alone without a dial,
 *  the reading alone where no turn is ever whole. */
export function turnsAndReading(wheel: HandwheelFinding, setting: Setting): string {
  const shown = shownFromTouch(wheel, setting);
  if (shown === undefined) return formatFixed(setting.turns, 3);
  const { figure, row, added } = shown;
  const turns = formatFixed(setting.wholeTurns, 0);
  if (row === undefined && !added && withinATurn(wheel.reading)) return figure;
  return row === undefined ? `${turns} + ${figure}` : say("stops.turns in row", { turns, figure, row });
}

/** What stands behind the turns: what the dial then reads, or what it goes on by, and in which unit. */
export const behindTheTurns = (wheel: HandwheelFinding): string[] => {
  const dial = dialToRead(wheel);
  if (dial === undefined) return [say("stops.turns alone")];
  const unit = headingOf(wheel);
  return [
    dial.fixed
      ? say("stops.turns and sum", { unit, turn: dialTurnWords(wheel) ?? "" })
      : say("stops.turns and reading", { unit }),
  ];
};

/** What the column counts: the unit of the dial's own numbers, in a word less than behind a figure, or turns. A unit that wraps
 *  would leave "in" to be read as the word. */
export const headingOf = (wheel: HandwheelFinding): string =>
  dialToRead(wheel) ? figureUnit(wheel).replace("× ", "") : say("stops.turns");
