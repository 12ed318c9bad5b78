import { chooseSpeed } from "../cutting/choose.js";
import { cuttingSpeed } from "../cutting/cuttingSpeeds.js";
import { feedPerRevolution } from "../cutting/feeds.js";
import type { CuttingSpeed, SpeedChoice } from "../cutting/finding.js";
import { fastestFedRpm } from "../cutting/handFeed.js";
import type { Limits } from "../machine/machine.js";
import { burns } from "./chipFire.js";
import type { Findings } from "./findings.js";
import { withoutAlike } from "./nearlyAlike.js";
import { drillingWheel } from "./roles.js";

/** A cut to find a speed for. */
export type Cut = {
  readonly operation: string;
  readonly material: string;
  /** The file's, where it is left out. */
  readonly tool?: string;
  readonly diameter: number;
};

/** Cutting speeds that serve, by the sources or the file's own rows; undefined where nothing is known. */
export const bandFor = (cut: Cut, { machine: { work } }: Pick<Findings, "machine">): CuttingSpeed | undefined =>
  cuttingSpeed(cut.material, cut.tool ?? work.tool, cut.operation, { ...work, diameter: cut.diameter });

/** The position to cut at; undefined where the file has no drive, or nothing is known of the material with this tool. */
export function speedFor(cut: Cut, findings: Findings): SpeedChoice | undefined {
  const band = bandFor(cut, findings);
  return band && speedInBand(cut.diameter, band, findings);
}

/** The same where the band is known already: of positions of nearly the same speed the one that a card tells. */
export function speedInBand(
  diameter: number,
  band: CuttingSpeed,
  { machine: { limits }, drive }: Pick<Findings, "machine" | "drive">,
): SpeedChoice | undefined {
  return drive && chooseSpeed(diameter, band, withoutAlike(drive.speeds, limits).speeds, limits);
}

/** The position to drill at: where fine chips burn and a wheel feeds the drill, none at which the hand lags behind the least feed
 *  in print. */
export function speedForHole(cut: Cut, findings: Findings): SpeedChoice | undefined {
  const fed = leastFed(cut, findings);
  return fed === undefined ? speedFor(cut, findings) : speedToFeed(cut, fed, findings);
}

/** What a hand must feed at least into that hole, and by which wheel; undefined where fine chips do no harm. */
export function leastFed(cut: Cut, { handwheels }: Findings): Fed | undefined {
  const perTurn = drillingWheel(handwheels)?.feed?.perTurn;
  const feed = burns(cut.material) ? feedPerRevolution(cut.material, "drilling", cut.diameter)?.from : undefined;
  return perTurn === undefined || feed === undefined ? undefined : { feed, perTurn };
}

/** A feed per revolution, and what a turn of the wheel moves; mm. */
type Fed = { readonly feed: number; readonly perTurn: number };

/** The position to cut at where a hand gives the feed per revolution, mm, by a wheel that moves `perTurn` mm a turn: no faster than
 *  the hand keeps up with, where there is such a position. Where fine chips burn there is none at all beyond: behind the spindle,
 *  the hand would feed more finely. */
export function speedToFeed(
  cut: Cut,
  { feed, perTurn }: Fed,
  { machine, drive }: Pick<Findings, "machine" | "drive">,
): SpeedChoice | undefined {
  const band = bandFor(cut, { machine });
  if (band === undefined || drive === undefined) return undefined;
  // Which stands for which goes by the machine's own limits, not by the hand's.
  const { speeds } = withoutAlike(drive.speeds, machine.limits);
  const within = (limits: Limits) => chooseSpeed(cut.diameter, band, speeds, limits);
  const free = within(machine.limits);
  const handRpm = fastestFedRpm(feed, perTurn);
  if (free.rpm === undefined || free.rpm <= handRpm) return free;
  // A limit like the spindle's, of its own name.
  const held = within({ ...machine.limits, spindleRpm: Math.min(handRpm, machine.limits.spindleRpm ?? handRpm) });
  if (held.speed === undefined && !burns(cut.material)) return free;
  return { ...held, verdict: "held by a limit", heldBy: "hand" };
}
