import { readsPerTurn, type Scale, type Setting } from "../dial/setting.js";
import type { Units } from "../machine/machine.js";
import { formatFixed, placesOf, unitName } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { say } from "../words/say.js";
import { type DialToRead, dialToRead } from "./dialToRead.js";
import type { HandwheelFinding } from "./findings.js";
import { dialGain, dialReading, dialTurn } from "./settings.js";

/** What is read off a dial: the figure to a tenth of a division by its own numbers, and the row that it is read on. */
export type Shown = { readonly figure: string; readonly row?: number };

/** What the numbers of a wheel's dial count, for a heading or behind a figure: "mm", or "× 0.001 in" where 25 stands for 0.025 in; of
 *  an old dial also what they are of. */
export function figureUnit(wheel: HandwheelFinding): string {
  const dial = dialToRead(wheel);
  if (dial === undefined) return "";
  if (dial.old) return say(`turns.unit of the old dial ${dial.old}`, { unit: unitName(dial.chosen.unit) });
  return dial.labelUnit?.startsWith("1 = ") ? dial.labelUnit.replace("1 =", "×") : unitName(dial.chosen.unit);
}

/** What is read at a wheel: the unit of its new dial, or of the file where it has none. */
export const unitsAt = ({ dial }: Pick<HandwheelFinding, "dial">, units: Units): Units => dial?.chosen.unit ?? units;

/** What the dial shows at a setting, as it is printed on it; undefined without a dial. `outwards`: the wheel is turned backwards. */
export function shownAt(wheel: HandwheelFinding, setting: Setting, outwards = false, parts = 10): Shown | undefined {
  const { reading } = wheel;
  const dial = dialToRead(wheel);
  const value = dialReading(wheel, setting, outwards);
  if (value === undefined || dial === undefined || reading === undefined) return undefined;
  const { rows } = dial.chosen;
  return {
    figure: figureOf(dial, value, parts),
    ...(rows > 1 && { row: Math.min(rows, Math.floor(value / readsPerTurn(dial.chosen, reading.perTurn) + 1e-9) + 1) }),
  };
}

/** The same where the wheel was zeroed, or read, at a touch: a dial that cannot be set to 0 goes on by so much beyond the whole turns from
 *  wherever it stood, in no row of its own. */
export function shownFromTouch(
  wheel: HandwheelFinding,
  setting: Setting,
): (Shown & { readonly added: boolean }) | undefined {
  const dial = dialToRead(wheel);
  const gain = dialGain(wheel, setting);
  if (dial?.fixed && gain !== undefined) return { figure: figureOf(dial, gain), added: true };
  const shown = shownAt(wheel, setting);
  return shown && { ...shown, added: false };
}

/** A whole turn of a wheel's dial, by its own numbers: "2.000 mm of travel, old dial"; undefined without a dial. */
export function dialTurnWords(wheel: HandwheelFinding): string | undefined {
  const dial = dialToRead(wheel);
  const turn = dialTurn(wheel);
  return dial && turn !== undefined ? `${figureOf(dial, turn)} ${figureUnit(wheel)}` : undefined;
}

/** So many mm of a dial's own numbers, as they are printed on it, to a tenth of a division; or to as many `parts` of one as it is read to.
 *  Of divisions of ten numbers each a tenth is a whole number. */
export function figureOf(
  { labelWorth, chosen }: Pick<DialToRead, "labelWorth"> & { readonly chosen: Pick<Scale, "unit" | "divisionValue"> },
  mm: number,
  parts = 10,
): string {
  const worth = labelWorth ?? mmPer[chosen.unit];
  return formatFixed(mm / worth, placesOf(chosen.divisionValue / worth / parts, 7));
}

/** "4 turns, then the dial reads 5.980 mm, second row"; turns alone without a dial. */
export function settingWords(wheel: HandwheelFinding, setting: Setting): string {
  const shown = shownAt(wheel, setting);
  if (shown === undefined) return say("turns.turns alone", { turns: formatFixed(setting.turns, 3) });
  const { wholeTurns: n } = setting;
  const dial = { figure: shown.figure, unit: figureUnit(wheel) };
  if (shown.row === undefined)
    return n === 0 ? say("turns.no whole turn, then", dial) : say("turns.turns, then", { n, ...dial });
  const inRow = { ...dial, row: shown.row };
  return n === 0 ? say("turns.no whole turn, then in row", inRow) : say("turns.turns, then in row", { n, ...inRow });
}

/** The same for a narrow column that holds the unit in its heading: "4 + 5.980", "4 + 5.980, row 2". */
export function settingFigures(wheel: HandwheelFinding, setting: Setting): string {
  const shown = shownAt(wheel, setting);
  if (shown === undefined) return formatFixed(setting.turns, 3);
  const plain = `${setting.wholeTurns} + ${shown.figure}`;
  return shown.row === undefined ? plain : say("turns.in row", { setting: plain, row: shown.row });
}
