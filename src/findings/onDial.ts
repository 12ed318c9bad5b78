import type { Units } from "../machine/machine.js";
import { placesOf, trimmed } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { say } from "../words/say.js";
import type { HandwheelFinding } from "./findings.js";
import { figureUnit } from "./settingWords.js";

/** How a size measured on the part becomes what the wheel is to go on by: "× 25.4" of a dial that counts millimetres where the
 *  sheet counts inches, "÷ 0.1" turns where there is no dial. */
export type OnDial = { readonly times: string; readonly counted: string };

/** For so much of a diameter (or of a length), in `units`; undefined where the dial counts just that. */
export function onDial(
  { dial, reading }: HandwheelFinding,
  of: "diameter" | "length",
  units: Units,
): OnDial | undefined {
  if (reading === undefined) return undefined;
  // What the wheel reads for so much of the size, which on a dial of travel is half of a diameter.
  const share = of === "diameter" ? reading.factor / 2 : reading.factor;
  const worth = dial === undefined ? reading.perTurn : (dial.labelWorth ?? mmPer[dial.chosen.unit]);
  const factor = (share * mmPer[units]) / worth;
  if (dial !== undefined && Math.abs(factor - 1) < 1e-9) return undefined;
  if (dial === undefined) return { times: divided(1 / factor), counted: say("plan.in turns") };
  const counted = say("plan.on the dial", { unit: figureUnit({ dial }) });
  // As one would reckon it: by the rounder of the two, 25.4 and not 0.0394.
  const times = placesOf(factor, PLACES) <= placesOf(1 / factor, PLACES) ? `× ${figured(factor)}` : divided(1 / factor);
  return { times, counted };
}

/** Beyond them a number shows what dividing leaves. */
const PLACES = 6;
/** Four figures that count: what is left to go is never known better. */
const figured = (by: number): string => trimmed(by, Math.max(0, Math.min(PLACES, 3 - Math.floor(Math.log10(by)))));
const divided = (by: number): string => `÷ ${figured(by)}`;
