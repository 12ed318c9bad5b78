import type { DialFinding } from "../dial/finding.js";
import type { Scale } from "../dial/setting.js";
import type { Units } from "../machine/machine.js";
import { inMm } from "../quantity/length.js";
import type { HandwheelFinding } from "./findings.js";

/** What is read at a wheel. */
export type DialToRead = Pick<DialFinding, "labelUnit" | "labelWorth"> & {
  readonly chosen: Scale;
  /** It cannot be set to 0, or nobody said that it can. */
  readonly fixed: boolean;
  /** Of the dial that the wheel had: what that reads, whatever the file's lengths are of. */
  readonly old?: "travel" | "diameter";
};

/** To as much are readings of an old dial told, mm: as fine as they are printed. */
const leastToRead: Readonly<Record<Units, number>> = { mm: 0.001, in: inMm(0.0001, "in") };

/** Which dial one reads at a wheel: the new one where one is made, else the old one where the file says what that shows; undefined
 *  where turns are all that can be counted. A feed too doubtful for a new dial's divisions is too doubtful for an old one's too. */
export function dialToRead(wheel: HandwheelFinding): DialToRead | undefined {
  const { handwheel, dial, doubtful } = wheel;
  if (dial !== undefined) return { ...dial, fixed: handwheel.dial?.fixed === true };
  return doubtful === undefined ? oldDialToRead(wheel) : undefined;
}

/** The dial that the wheel had, whether a new one is made or not. How it is divided nobody says: it is told to what is printed. Counted on
 *  from wherever it stands it is read rightly whether it can be set to 0 or not. */
export function oldDialToRead({ handwheel: { oldDial, dial }, reading }: HandwheelFinding): DialToRead | undefined {
  if (oldDial === undefined || reading === undefined) return undefined;
  // Read to a tenth of a division.
  const divisionValue = 10 * leastToRead[oldDial.unit];
  const { unit, perTurn, reads, fixed } = oldDial;
  return {
    chosen: { closure: "even", divisionValue, divisions: perTurn / divisionValue, rows: 1, unit },
    fixed: fixed ?? dial?.fixed ?? dial === undefined,
    old: reads,
  };
}
