import type { Setting } from "../dial/setting.js";
import { formatFixed, plural, trimmed } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import type { HandwheelFinding } from "./findings.js";
import { dialReading } from "./settings.js";

/** What is read off a dial: the figure to a tenth of a division by its own numbers, and the row that it is read on. */
export type Shown = { readonly figure: string; readonly row?: number };

/** What the numbers of a wheel's dial count, for a heading or behind a figure: "mm", or "× 0.001 in" where 25 stands for 0.025 in. */
export function figureUnit({ dial }: Pick<HandwheelFinding, "dial">): string {
  if (dial === undefined) return "";
  return dial.labelUnit?.startsWith("1 = ") ? dial.labelUnit.replace("1 =", "×") : dial.chosen.unit;
}

/** What the dial shows at a setting, as it is printed on it; undefined without a dial. `outwards`: the wheel is turned backwards. */
export function shownAt(wheel: HandwheelFinding, setting: Setting, outwards = false): Shown | undefined {
  const { dial, reading } = wheel;
  const value = dialReading(wheel, setting, outwards);
  if (value === undefined || dial === undefined || reading === undefined) return undefined;
  const worth = dial.labelWorth ?? mmPer[dial.chosen.unit];
  const division = trimmed(dial.chosen.divisionValue / worth, 6);
  const places = 1 + (division.split(".")[1]?.length ?? 0);
  const { rows } = dial.chosen;
  return {
    figure: formatFixed(value / worth, places),
    ...(rows > 1 && { row: Math.min(rows, Math.floor(value / reading.perTurn + 1e-9) + 1) }),
  };
}

const ordinals = ["first", "second", "third", "fourth", "fifth", "sixth"];

/** "4 turns, then the dial reads 5.980 mm, second row"; turns alone without a dial. */
export function settingWords(wheel: HandwheelFinding, setting: Setting): string {
  const shown = shownAt(wheel, setting);
  if (shown === undefined) return `${formatFixed(setting.turns, 3)} turns`;
  const turns = setting.wholeTurns === 0 ? "no whole turn" : plural(setting.wholeTurns, "turn");
  const row = shown.row === undefined ? "" : `, ${ordinals[shown.row - 1] ?? `${shown.row}th`} row`;
  return `${turns}, then the dial reads ${shown.figure} ${figureUnit(wheel)}${row}`;
}

/** The same for a narrow column that holds the unit in its heading: "4 + 5.980", "4 + 5.980, row 2". */
export function settingFigures(wheel: HandwheelFinding, setting: Setting): string {
  const shown = shownAt(wheel, setting);
  if (shown === undefined) return formatFixed(setting.turns, 3);
  return `${setting.wholeTurns} + ${shown.figure}${shown.row === undefined ? "" : `, row ${shown.row}`}`;
}
