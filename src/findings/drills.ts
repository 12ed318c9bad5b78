import { findOperation } from "../cutting/operations.js";
import type { Machine } from "../machine/machine.js";
import { inMm } from "../quantity/length.js";
import { powerOff } from "./powerOff.js";

/** Drills of everyday work on a small machine, mm and in. Common practice. */
const usualDrills = {
  mm: [2, 4, 6, 8, 10, 12],
  in: [1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2],
} as const;

/** Diameters of the drills to tell of, mm, the smallest first: the file's, or usual ones, none larger than the machine drives. */
export function drillsOf({ work, units, limits }: Pick<Machine, "work" | "units" | "limits">): number[] {
  const drills = work.drills ?? usualDrills[units].map((size) => inMm(size, units));
  return drills.filter((diameter) => !beyondTheDrillLimit(diameter, limits)).sort((one, other) => one - other);
}

/** Diameters to tell an operation for, mm: of the drills where a hole is made, else of the work. */
export const diametersFor = (
  operation: string,
  machine: Pick<Machine, "work" | "units" | "limits">,
): readonly number[] => (makesHoles(operation) ? drillsOf(machine) : machine.work.diameters);

export const makesHoles = (operation: string): boolean => findOperation(operation)?.like === "drilling";

/** Whether a hole of that diameter, mm, is larger than the machine is said to drive. */
export const beyondTheDrillLimit = (diameter: number, limits: Machine["limits"]): boolean =>
  diameter > largestDrill(limits) + 1e-9;

export const largestDrill = ({ largestDrill = Number.POSITIVE_INFINITY }: Machine["limits"]): number => largestDrill;

/** Operations whose tool must come out of the hole again by turning back, or stop before it breaks. */
const heldByTheHole = ["tapping", "threading by die", "reaming"].map(findOperation);

/** True of an operation that goes by hand on this machine: it is not said to reverse or to have a clutch. */
export const byHandOnly = (operation: string, { drive }: Pick<Machine, "drive">): boolean =>
  heldByTheHole.includes(findOperation(operation)) && drive?.reverses !== true && drive?.clutch !== true;

export const byHandWords = (machine: Pick<Machine, "drive">): string =>
  `Turn the spindle by hand, ${powerOff(machine)}`;
