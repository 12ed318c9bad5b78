import type { HandwheelFinding } from "../findings/findings.js";
import { type Role, wheelFor } from "../findings/roles.js";
import type { Zero } from "./zero.js";

/** What stands on the machine between two steps: the tool in its post, and the zeros that still hold. */
export type Bench = {
  readonly tool?: string;
  readonly across?: Zero;
  readonly along?: Zero;
};

export const EMPTY_BENCH: Bench = {};

export type Wheels = {
  readonly across?: HandwheelFinding;
  /** That measures lengths: the carriage, or the top slide set along the bed where there is none. */
  readonly along?: HandwheelFinding;
  /** That sets the depth of a face: the finer of those that go along. */
  readonly facing?: HandwheelFinding;
  readonly angled?: HandwheelFinding;
  readonly barrel?: HandwheelFinding;
};

export function wheelsOf(handwheels: readonly HandwheelFinding[]): Wheels {
  const find = (role: Role) => wheelFor(role, handwheels);
  const [across, along, angled, barrel] = [find("across"), find("along"), find("swivelled"), find("barrel")];
  const facing = angled ?? along;
  return {
    ...(across && { across }),
    ...(along && { along }),
    ...(facing && { facing }),
    ...(angled && { angled }),
    ...(barrel && { barrel }),
  };
}

/** The bench after a step: what it touched off stays. */
export const kept = (bench: Bench, across: Zero | undefined, along: Zero | undefined): Bench => ({
  ...bench,
  ...(across && { across }),
  ...(along && { along }),
});
