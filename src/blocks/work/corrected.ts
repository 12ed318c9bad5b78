import type { HandwheelFinding } from "../../findings/findings.js";
import { correctedSetting } from "../../findings/settings.js";
import { settingWords } from "../../findings/settingWords.js";
import { startsOver, startWords } from "../../findings/travelWords.js";
import type { Units } from "../../machine/machine.js";
import { formatLength } from "../../quantity/format.js";

/** On a slide that was found worn or wavy: what to turn for a distance, mm of what the dial reads, by the curve that was measured,
 *  wherever on it the movement begins. No line where the travel is even. */
export function correctedLines(wheel: HandwheelFinding, distance: number, units: Units): string[] {
  const ways = startsOver(wheel).flatMap((from) => {
    const setting = correctedSetting(wheel, distance, from);
    return setting === undefined ? [] : [{ from, words: settingWords(wheel, setting) }];
  });
  const [first] = ways;
  if (first === undefined) return [];
  const same = ways.every(({ words }) => words === first.words);
  const said = same
    ? `begun at a whole turn of the readings, ${first.words}`
    : `${ways.map(({ from, words }) => `${startWords(from)} of the readings: ${words}`).join("; ")}`;
  return [
    `Corrected over the stretch that was measured, ${formatLength(distance, units, units === "mm" ? 2 : 4)} by the ${wheel.handwheel.name.toLowerCase()}: ${said}.`,
  ];
}
