import type { SpeedFinding } from "../drive/finding.js";
import { limitRpm } from "../machine/limits.js";
import type { Limits } from "../machine/machine.js";

/** A speed that only rounding brings over the limit is not over it. */
export const overLimit = (rpm: number, limits: Limits): boolean => rpm > limitRpm(limits) * (1 + 1e-9);

/** Whether the limits forbid a position, or, since its motor is variable, allow it only turned down. */
export const heldByLimit = ({ rpm, slowestRpm }: SpeedFinding, limits: Limits): "wholly" | "in part" | undefined =>
  overLimit(slowestRpm, limits) ? "wholly" : overLimit(rpm, limits) ? "in part" : undefined;
