import type { Setting } from "../dial/setting.js";
import type { FeedFinding } from "../feed/finding.js";
import { NO_SCATTER, roundingDeviation } from "../feed/gauge.js";
import { studentT95 } from "../feed/studentT.js";
import type { Handwheel, StopWish } from "../machine/machine.js";
import type { Findings, HandwheelFinding } from "./findings.js";
import { wheelNamed } from "./roles.js";
import { doubtToRead, settingToRead } from "./settings.js";

/** How to set a stop, and how alike the parts can be; mm of what the dial reads. */
export type Repeat = {
  readonly setting: Setting;
  /** Half-width at 95 % of what remains when every part is come to from the same side against a solid stop; absent where
   *  no place of the readings was come to twice: nobody measured it. */
  readonly byStop?: number;
  /** With a tenth of a division by eye; absent without a dial, or where the first is. */
  readonly byDial?: number;
  /** What coming from either side would add; absent where lost motion was not measured. */
  readonly lostMotion?: number;
  /** Doubt of the length itself, the same for all parts. */
  readonly lengthDoubt?: number;
  /** True where the tolerance (full width) holds; absent without a tolerance, or where nobody measured how alike. A dial too
   *  coarse to read it does not serve in any case. */
  readonly dialServes?: boolean;
  readonly stopServes?: boolean;
  readonly beyondTravel: boolean;
};

/** How alike a place of the slide is come to, half-width at 95 %, mm, from readings of several runs; never less than the gauge
 *  could show. Undefined where it was not measured. */
export function repeatability({ fit }: FeedFinding, { feed }: Handwheel): number | undefined {
  if (fit?.repeat === undefined) return undefined;
  const gauge = feed?.from === "readings" ? (feed.gauge ?? 0) : 0;
  const deviation = Math.max(fit.repeat.deviation, roundingDeviation(gauge));
  // Without a gauge's graduation, readings that agree to the last figure say how they were rounded, not how alike they were.
  return deviation < NO_SCATTER ? undefined : studentT95(fit.repeat.degreesOfFreedom) * deviation;
}

/** Undefined where the handwheel has no feed. */
export function repeatOf(stop: StopWish, wheel: HandwheelFinding): Repeat | undefined {
  const { handwheel, feed, reading, dial } = wheel;
  const setting = settingToRead(wheel, stop.length);
  if (feed === undefined || reading === undefined || setting === undefined) return undefined;
  const again = repeatability(feed, handwheel);
  const byStop = again === undefined ? undefined : again * reading.factor;
  const tenth = dial && dial.divisionWorth / 10;
  const byDial = byStop === undefined || tenth === undefined ? undefined : Math.hypot(byStop, tenth);
  const lostMotion = feed.lostMotion && feed.lostMotion.travel * reading.factor;
  const lengthDoubt = doubtToRead(wheel, stop.length);
  const half = stop.tolerance === undefined ? undefined : stop.tolerance / 2;
  const dialServes =
    byDial === undefined ? (tenth !== undefined && tenth <= (half ?? 0) ? undefined : false) : byDial <= (half ?? 0);
  return {
    setting,
    ...(byStop !== undefined && { byStop }),
    ...(byDial !== undefined && { byDial }),
    ...(lostMotion !== undefined && { lostMotion }),
    ...(lengthDoubt !== undefined && { lengthDoubt }),
    ...(half !== undefined && dialServes !== undefined && { dialServes }),
    ...(half !== undefined && byStop !== undefined && { stopServes: byStop <= half }),
    beyondTravel: reading.overTravel !== undefined && stop.length > reading.overTravel + 1e-9,
  };
}

/** Every stop of the file, with its handwheel and how it is set where that has a feed. */
export const repeats = ({ machine, handwheels }: Findings) =>
  (machine.stops ?? []).map((stop) => {
    const wheel = wheelNamed(stop.handwheel, handwheels);
    return { stop, wheel, repeat: wheel && repeatOf(stop, wheel) };
  });
