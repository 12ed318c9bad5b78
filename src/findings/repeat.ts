import { readingFactor, readingPerTurn } from "../dial/reading.js";
import { divisionWorth, type Setting, settingFor } from "../dial/setting.js";
import type { StopWish } from "../machine/machine.js";
import type { HandwheelFinding } from "./findings.js";

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
export function repeatOf(stop: StopWish, { handwheel, feed, dial }: HandwheelFinding): Repeat | undefined {
  if (feed === undefined) return undefined;
  const factor = readingFactor(handwheel);
  const perTurn = readingPerTurn(feed, handwheel.reads);
  const setting = settingFor(stop.length, perTurn, dial?.chosen);
  const scatter = feed.fit === undefined ? usualRepeat * factor : 2 * feed.fit.residualDeviation * factor;
  const byDial = dial && Math.hypot(scatter, divisionWorth(dial.chosen, perTurn) / 10);
  const lostMotion = feed.lostMotion && feed.lostMotion.travel * factor;
  const half = stop.tolerance === undefined ? undefined : stop.tolerance / 2;
  return {
    setting,
    byStop: scatter,
    ...(byDial !== undefined && { byDial }),
    ...(lostMotion !== undefined && { lostMotion }),
    ...(feed.uncertainty !== undefined && { lengthDoubt: (stop.length * feed.uncertainty) / feed.perTurn }),
    ...(half !== undefined && { dialServes: byDial !== undefined && byDial <= half, stopServes: scatter <= half }),
    beyondTravel: handwheel.travel !== undefined && stop.length > handwheel.travel * factor + 1e-9,
  };
}
