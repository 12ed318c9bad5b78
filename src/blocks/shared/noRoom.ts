import { trimmed, unitName } from "../../quantity/format.js";
import { fromMm, inMm, type LengthUnit } from "../../quantity/length.js";

/** What is wanted is told rounded up, what there is rounded down; in whole millimetres, or twentieths of an inch. */
type RoomIn = { readonly wanted: (mm: number) => string; readonly there: (mm: number) => string };

const step = { mm: 1, in: inMm(0.05, "in") } as const;

export const roomIn = (units: LengthUnit): RoomIn => {
  const told = (mm: number) => `${trimmed(fromMm(mm, units), 2)} ${unitName(units)}`;
  return {
    wanted: (mm) => told(Math.ceil(mm / step[units] - 1e-9) * step[units]),
    there: (mm) => told(Math.floor(mm / step[units] + 1e-9) * step[units]),
  };
};

/** What has no room; a function where it tells lengths, which are those of the machine's file. */
type Told = string | ((room: RoomIn) => string);

/** Thrown by a block for which the paper is too small; the sheet then says so instead of being made. */
export class NoRoom extends Error {
  /** `remedy`: what to do, where that is not to choose larger paper. */
  constructor(
    readonly told: Told,
    readonly remedy?: string,
  ) {
    super(wordsOf(told, "mm"));
  }

  in(units: LengthUnit): string {
    return wordsOf(this.told, units);
  }
}

const wordsOf = (told: Told, units: LengthUnit): string => (typeof told === "string" ? told : told(roomIn(units)));

/** Undefined where something has no room. */
export function unlessNoRoom<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (fault) {
    if (!(fault instanceof NoRoom)) throw fault;
    return undefined;
  }
}
