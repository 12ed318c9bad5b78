import type { Units } from "../machine/machine.js";
import { trimmedSize } from "../quantity/format.js";
import type { HandwheelFinding } from "./findings.js";

/** That so many turns are more than a wheel's slide goes; undefined where they are not, or nobody has said how far it goes. */
export const beyondTravel = (
  { handwheel: { travel }, feed }: HandwheelFinding,
  turns: number,
  units: Units,
): string | undefined =>
  travel !== undefined && feed !== undefined && turns * feed.perTurn > travel + 1e-9
    ? `beyond its travel of ${trimmedSize(travel, units)}`
    : undefined;
