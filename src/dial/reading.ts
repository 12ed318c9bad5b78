import type { FeedFinding } from "../feed/finding.js";
import type { Handwheel } from "../machine/machine.js";

/** What the dial of a handwheel with a feed shows; mm of what it reads. */
export type Reading = {
  /** For each mm that the slide goes: twice as much where it reads the diameter. */
  readonly factor: 1 | 2;
  readonly perTurn: number;
  /** Over the working travel, where the file gives it. */
  readonly overTravel?: number;
};

/** What a dial shows for each mm of slide. */
export const factorOf = (reads: Handwheel["reads"]): 1 | 2 => (reads === "diameter" ? 2 : 1);

export function readingOf(
  { perTurn }: Pick<FeedFinding, "perTurn">,
  { reads, travel }: Pick<Handwheel, "reads" | "travel">,
): Reading {
  const factor = factorOf(reads);
  return {
    factor,
    perTurn: perTurn * factor,
    ...(travel !== undefined && { overTravel: travel * factor }),
  };
}

/** Whether the whole travel is less than a turn, so that there are none to count. */
export const withinATurn = (reading: Pick<Reading, "perTurn" | "overTravel"> | undefined): boolean =>
  reading?.overTravel !== undefined && reading.overTravel < reading.perTurn * (1 - 1e-9);

/** Where each whole turn of a dial that begins again at zero stands: add it to what the dial shows. Up to `travel` as the dial
 *  reads it, at most `most` turns. mm. */
export function startReadings(perTurn: number, travel: number, most = 40): number[] {
  const turns = Math.min(most, Math.floor(travel / perTurn + 1e-9));
  return Array.from({ length: turns + 1 }, (_, index) => index * perTurn);
}
