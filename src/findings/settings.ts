import { oldDialSetting, type Setting, settingFor } from "../dial/setting.js";
import type { HandwheelFinding } from "./findings.js";

/** How to turn a wheel until its dial has gone on by `distance`, mm of what it reads; undefined where the wheel has no feed. */
export const settingToRead = ({ reading, dial }: HandwheelFinding, distance: number): Setting | undefined =>
  reading && settingFor(distance, reading.perTurn, dial?.chosen);

/** How to move the slide by `travel`, mm. */
export const settingToMove = (wheel: HandwheelFinding, travel: number): Setting | undefined =>
  wheel.reading && settingToRead(wheel, travel * wheel.reading.factor);

/** The same distance on the dial that was made for the maker's feed; undefined where the file does not give that. */
export const oldSettingToRead = ({ reading }: HandwheelFinding, distance: number) =>
  reading?.nominalPerTurn === undefined ? undefined : oldDialSetting(distance, reading.perTurn, reading.nominalPerTurn);

/** What an eye can split of a division, as travel of the slide; 0 without a dial. */
export const tenthOfDivision = ({ reading, dial }: HandwheelFinding): number =>
  reading === undefined || dial === undefined ? 0 : dial.divisionWorth / 10 / reading.factor;

/** What the dial's own numbers say at a setting, mm; undefined without a dial. A tool that feeds outwards (boring) runs the
 *  dial backwards from its zero. */
export function dialReading(
  { reading, dial }: HandwheelFinding,
  setting: Setting,
  outwards: boolean,
): number | undefined {
  if (reading === undefined || dial === undefined || setting.divisions === undefined) return undefined;
  const { closure, divisions, divisionValue, rows } = dial.chosen;
  const round = closure === "even" ? divisions * divisionValue : reading.perTurn * rows;
  const forward = setting.reading ?? setting.divisions * divisionValue;
  return outwards && forward > 1e-9 ? round - forward : forward;
}
