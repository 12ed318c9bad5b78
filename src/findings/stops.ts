import type { Setting } from "../dial/setting.js";
import { doubtOver } from "../feed/doubtOver.js";
import type { StopWish } from "../machine/machine.js";
import type { Findings, HandwheelFinding } from "./findings.js";
import { wheelNamed } from "./roles.js";
import { settingToRead } from "./settings.js";

/** How to set a stop, and how alike the parts can be; mm of what the dial reads. */
export type Repeat = {
  readonly setting: Setting;
  /** Half-width of what remains when every part is come to from the same side: a tenth of a division by eye, or the scatter of
   *  the machine's own readings where they were taken. Against a solid stop the scatter alone. */
  readonly byStop: number;
  /** Absent without a dial. */
  readonly byDial?: number;
  /** What coming from either side would add; absent where lost motion was not measured. */
  readonly lostMotion?: number;
  /** Doubt of the length itself, the same for all parts. */
  readonly lengthDoubt?: number;
  /** True where the tolerance (full width) holds; absent without a tolerance. */
  readonly dialServes?: boolean;
  readonly stopServes?: boolean;
  readonly beyondTravel: boolean;
};

/** How well a slide runs up to a solid stop by hand when nothing was measured, mm. Common practice. */
const usualRepeat = 0.02;

/** Undefined where the handwheel has no feed. */
export function repeatOf(stop: StopWish, wheel: HandwheelFinding): Repeat | undefined {
  const { feed, reading, dial } = wheel;
  const setting = settingToRead(wheel, stop.length);
  if (feed === undefined || reading === undefined || setting === undefined) return undefined;
  const scatter = (feed.fit === undefined ? usualRepeat : 2 * feed.fit.residualDeviation) * reading.factor;
  const byDial = dial && Math.hypot(scatter, dial.divisionWorth / 10);
  const lostMotion = feed.lostMotion && feed.lostMotion.travel * reading.factor;
  const lengthDoubt = doubtOver(stop.length, feed);
  const half = stop.tolerance === undefined ? undefined : stop.tolerance / 2;
  return {
    setting,
    byStop: scatter,
    ...(byDial !== undefined && { byDial }),
    ...(lostMotion !== undefined && { lostMotion }),
    ...(lengthDoubt !== undefined && { lengthDoubt }),
    ...(half !== undefined && { dialServes: byDial !== undefined && byDial <= half, stopServes: scatter <= half }),
    beyondTravel: reading.overTravel !== undefined && stop.length > reading.overTravel + 1e-9,
  };
}

/** Every stop of the file, with its handwheel and how it is set where that has a feed. */
export const repeats = ({ machine, handwheels }: Findings) =>
  (machine.stops ?? []).map((stop) => {
    const wheel = wheelNamed(stop.handwheel, handwheels);
    return { stop, wheel, repeat: wheel && repeatOf(stop, wheel) };
  });
