import type { SpeedFinding } from "../drive/finding.js";
import { limitRpm } from "../machine/limits.js";
import type { Limits } from "../machine/machine.js";
import { formatFixed } from "../quantity/format.js";
import { say } from "../words/say.js";

/** A speed that only rounding brings over the limit is not over it. */
export const overLimit = (rpm: number, limits: Limits): boolean => rpm > limitRpm(limits) * (1 + 1e-9);

type Speed = Pick<SpeedFinding, "rpm" | "slowestRpm" | "highestRpm">;

/** Whether the limits forbid a position, or, since its motor is variable, allow it only turned down. The highest speed that
 *  may be true decides. */
export const heldByLimit = (
  { rpm, slowestRpm, highestRpm }: Speed,
  limits: Limits,
): "wholly" | "in part" | undefined =>
  overLimit((slowestRpm / rpm) * highestRpm, limits) ? "wholly" : overLimit(highestRpm, limits) ? "in part" : undefined;

/** What a variable motor's position may be turned up to by what its card says: as much below the limit as it may truly turn
 *  faster. */
export const limitSetting = ({ rpm, highestRpm }: Speed, limits: Limits): number =>
  limitRpm(limits) * Math.min(1, rpm / highestRpm);

/** How fast a position may be run by what its card says; undefined where it must be left alone. */
export function fastestAllowed(speed: Speed, limits: Limits): number | undefined {
  const held = heldByLimit(speed, limits);
  return held === "wholly" ? undefined : held === "in part" ? limitSetting(speed, limits) : speed.rpm;
}

/** Of a speed that nobody measured: so near below a limit that a pulley measured a little wrong brings it over. Own choice. */
const NEAR = 0.05;

/** Measure this position before it is used. */
export const measureFirst = (
  { from, highestRpm }: Pick<SpeedFinding, "from" | "highestRpm">,
  limits: Limits,
): boolean => from !== "measured" && !overLimit(highestRpm, limits) && highestRpm >= limitRpm(limits) * (1 - NEAR);

/** The slowest that is known and that no limit forbids: with it one begins. */
export const beginWith = (speeds: readonly SpeedFinding[], limits: Limits): SpeedFinding | undefined =>
  speeds.find((speed) => speed.from !== "unknown" && heldByLimit(speed, limits) !== "wholly");

/** What the limits forbid or ask at a position, in words to stand beside its speed; undefined where nothing. */
export function limitWords(speed: SpeedFinding, limits: Limits): string | undefined {
  switch (heldByLimit(speed, limits)) {
    case "wholly": {
      // Where the speed that is printed lies within, the one that may be true is told.
      const reach = formatFixed(Math.ceil((speed.slowestRpm / speed.rpm) * speed.highestRpm), 0);
      return speed.from === "unknown" || overLimit(speed.slowestRpm, limits)
        ? say("remarks.beyond limit")
        : say("remarks.may reach", { rpm: reach });
    }
    case "in part":
      return say("remarks.never above", { rpm: formatFixed(limitSetting(speed, limits), 0) });
    case undefined:
      return measureFirst(speed, limits) ? say("remarks.near limit, short") : undefined;
  }
}

/** What to mind at a chosen position, in a note's few words; empty where nothing. */
export const choiceDoubt = (speed: SpeedFinding | undefined, limits: Limits): string =>
  speed === undefined
    ? ""
    : measureFirst(speed, limits)
      ? say("remarks.measure first")
      : speed.doubtful
        ? say("remarks.reading doubtful")
        : "";
