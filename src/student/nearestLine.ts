import type { Setting } from "../dial/setting.js";
import type { HandwheelFinding } from "../findings/findings.js";
import { settingToRead } from "../findings/settings.js";

/** The line nearest to a setting that lies between two, as a setting of its own; undefined where it lies on one, or the dial has none. A
 *  dial whose divisions do not fit is set to tenths, which a beginner has not learnt to split. `distance`: what was wanted, mm. */
export function nearestLine(wheel: HandwheelFinding, setting: Setting, distance: number): Setting | undefined {
  const { dial, reading } = wheel;
  if (dial === undefined || reading === undefined || setting.divisions === undefined) return undefined;
  const { divisionValue, divisions, rows, beginsAgain } = dial.chosen;
  const steps = setting.reading === undefined ? setting.divisions : setting.reading / divisionValue;
  if (Math.abs(steps - Math.round(steps)) < 1e-6) return undefined;
  // The last line of one that begins again may be left out.
  if (beginsAgain && steps > divisions - 1) return undefined;
  const at = steps * dial.divisionWorth;
  const below = Math.floor(steps) * dial.divisionWorth;
  const above = Math.min(Math.ceil(steps) * dial.divisionWorth, rows * reading.perTurn);
  return settingToRead(wheel, distance + setting.error - at + (above - at < at - below ? above : below));
}
