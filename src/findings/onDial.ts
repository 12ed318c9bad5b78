import type { Reading } from "../dial/reading.js";
import { readsPerTurn } from "../dial/setting.js";
import type { Units } from "../machine/machine.js";
import { placesOf, trimmed } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { say } from "../words/say.js";
import { type DialToRead, dialToRead } from "./dialToRead.js";
import type { HandwheelFinding } from "./findings.js";
import { figureUnit } from "./settingWords.js";

/** How a size measured on the part becomes what the wheel is to go on by: "× 25.4" of a dial that counts millimetres where the
 *  sheet counts inches, "÷ 0.1" turns where there is no dial. */
export type OnDial = { readonly times: string; readonly counted: string };

/** For so much of a diameter (or of a length), in `units`; undefined where the dial counts just that. */
export function onDial(wheel: HandwheelFinding, of: "diameter" | "length", units: Units): OnDial | undefined {
  const { reading } = wheel;
  if (reading === undefined) return undefined;
  const dial = dialToRead(wheel);
  // What the wheel reads for so much of the size, which on a dial of travel is half of a diameter.
  const share = of === "diameter" ? reading.factor / 2 : reading.factor;
  const worth = dial === undefined ? reading.perTurn : worthOf(dial, reading);
  const factor = (share * mmPer[units]) / worth;
  if (dial !== undefined && Math.abs(factor - 1) < 1e-9) return undefined;
  if (dial === undefined) return { times: divided(1 / factor), counted: say("plan.in turns") };
  const counted = say("plan.on the dial", { unit: figureUnit(wheel) });
  // As one would reckon it: by the rounder of the two, 25.4 and not 0.0394.
  const times = placesOf(factor, PLACES) <= placesOf(1 / factor, PLACES) ? `× ${figured(factor)}` : divided(1 / factor);
  return { times, counted };
}

/** What a figure of 1 stands for, mm of what the wheel reads: an old dial, which may be of another measure, is out in every turn. */
const worthOf = ({ labelWorth, chosen, old }: DialToRead, { perTurn }: Reading): number =>
  old ? (mmPer[chosen.unit] * perTurn) / readsPerTurn(chosen, perTurn) : (labelWorth ?? mmPer[chosen.unit]);

/** Beyond them a number shows what dividing leaves. */
const PLACES = 6;
/** Four figures that count: what is left to go is never known better. */
const figured = (by: number): string => trimmed(by, Math.max(0, Math.min(PLACES, 3 - Math.floor(Math.log10(by)))));
const divided = (by: number): string => `÷ ${figured(by)}`;
