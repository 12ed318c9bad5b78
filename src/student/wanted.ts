import type { SpeedChoice } from "../cutting/finding.js";
import { nearlySame } from "../drive/alike.js";
import type { SpeedFinding } from "../drive/finding.js";
import type { HandwheelFinding } from "../findings/findings.js";
import { choiceDoubt, heldByLimit } from "../findings/limits.js";
import type { Limits, Units } from "../machine/machine.js";

/** What a right answer to an exercise comes to: a wheel turned to a place, a number, or a position of the belt. */
export type Wanted = WantedSetting | WantedNumber | WantedPosition;

/** In turns of a wheel from its zero. */
export type WantedSetting = {
  readonly by: "turning";
  readonly wheel: string;
  readonly turns: number;
  readonly within: number;
  /** One of its dial. */
  readonly division: number;
  /** Where the wheel stands to begin with: more than nothing where one went too far. */
  readonly from: number;
};

/** A length is in mm; `units`: in which it is asked for. */
export type WantedNumber = {
  readonly by: "number";
  readonly of: "length" | "lines" | "turns";
  readonly value: number;
  readonly units?: Units;
  readonly within: number;
  /** What is counted to come to it, so that an answer can be told to be one of them off. */
  readonly step?: Step;
  /** The wheel that the question shows, and where it stands. */
  readonly shownBy?: { readonly wheel: string; readonly turns: number };
};
export type Step = { readonly of: "line" | "turn" | "eighth"; readonly worth: number };

export type WantedPosition = {
  readonly by: "position";
  /** All that run as one should, by name; none where there is no place for the belt. */
  readonly right: readonly string[];
  /** From the fastest on, as the belt card lists them. */
  readonly positions: readonly { readonly name: string; readonly rpm: number }[];
};

export const wantedLength = (value: number, units: Units, within: number, step: Step): WantedNumber => ({
  ...{ by: "number", of: "length", value, units, step },
  // An answer that was rounded as it is printed is on the very edge.
  within: within * (1 + 1e-6),
});

export const wantedTurns = (value: number, within: number, step?: Step): WantedNumber => ({
  ...{ by: "number", of: "turns", value },
  within: within * (1 + 1e-6),
  ...(step && { step }),
});

/** Of a division: half a one, and what a figure is rounded by, which is printed to a tenth. Where it lies halfway between two lines it
 *  is as near to either. */
const NEAREST = 0.5 + 0.05;

/** A place on the dial of a wheel, to its nearest line; undefined without a dial. */
export function wantedOn(
  { handwheel, reading, dial }: HandwheelFinding,
  turns: number,
  from = 0,
): { readonly wanted: WantedSetting } | undefined {
  if (reading === undefined || dial === undefined) return undefined;
  const division = dial.divisionWorth / reading.perTurn;
  return {
    wanted: { by: "turning", wheel: handwheel.name, turns, within: NEAREST * division * (1 + 1e-6), division, from },
  };
}

/** The position chosen, and those that a card may name in its stead since they run nearly as fast. */
export function wantedPosition(
  { speed, rpm }: SpeedChoice,
  speeds: readonly SpeedFinding[],
  limits: Limits,
): WantedPosition {
  const asGood = (other: SpeedFinding): boolean =>
    rpm !== undefined &&
    other.from !== "unknown" &&
    other.slowestRpm <= rpm * (1 + 1e-9) &&
    nearlySame(Math.min(other.rpm, rpm), rpm) &&
    choiceDoubt(other, limits) === "" &&
    heldByLimit(other, limits) === undefined;
  return {
    by: "position",
    right: speed === undefined ? [] : speeds.filter((one) => one === speed || asGood(one)).map(nameOf),
    positions: [...speeds].sort((a, b) => b.rpm - a.rpm).map((one) => ({ name: nameOf(one), rpm: one.rpm })),
  };
}

const nameOf = ({ position }: SpeedFinding): string => position.name;
