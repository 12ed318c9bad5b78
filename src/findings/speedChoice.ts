import { chooseSpeed } from "../cutting/choose.js";
import { cuttingSpeed } from "../cutting/cuttingSpeeds.js";
import { feedPerRevolution } from "../cutting/feeds.js";
import type { CuttingSpeed, SpeedChoice } from "../cutting/finding.js";
import { fastestFedRpm } from "../cutting/handFeed.js";
import { isThreaded } from "../cutting/operations.js";
import { fastestThreadedRpm } from "../cutting/powerTapping.js";
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

/** The same where the band is known already: of positions of nearly the same speed the one that a card tells. A tap goes no faster
 *  than a hand can reverse it. */
export function speedInBand(
  diameter: number,
  band: CuttingSpeed,
  findings: Pick<Findings, "machine" | "drive">,
): SpeedChoice | undefined {
  return choicesOf(diameter, band, findings)?.heldTo(fastestThreadedRpm(band));
}

/** The choice by the machine's own limits, and where a hand must keep up with so many rpm: nothing beyond that is chosen. */
type Choices = { readonly free: SpeedChoice; readonly heldTo: (handRpm: number) => SpeedChoice };

function choicesOf(
  diameter: number,
  band: CuttingSpeed,
  { machine: { limits }, drive }: Pick<Findings, "machine" | "drive">,
): Choices | undefined {
  if (drive === undefined) return undefined;
  // Which stands for which goes by the machine's own limits, not by the hand's.
  const { speeds } = withoutAlike(drive.speeds, limits);
  const within = (own: Limits) => chooseSpeed(diameter, band, speeds, own);
  const free = within(limits);
  const heldTo = (handRpm: number): SpeedChoice => {
    // A limit like the spindle's, of its own name: what may truly turn faster than it says stays as much below it.
    const held = within({ ...limits, spindleRpm: Math.min(handRpm, limits.spindleRpm ?? handRpm) });
    return held.rpm === free.rpm ? free : { ...held, verdict: "held by a limit", heldBy: "hand" };
  };
  return { free, heldTo };
}

/** The position to drill at: where fine chips burn and a wheel feeds the drill, none at which the hand lags behind the least feed
 *  in print. */
export function speedForHole(cut: Cut, findings: Findings): SpeedChoice | undefined {
  const fed = leastFed(cut, findings);
  return fed === undefined ? speedFor(cut, findings) : speedToFeed(cut, fed, findings);
}

/** What a hand must feed at least into that hole, and by which wheel; undefined where fine chips do no harm, or the thread feeds. */
export function leastFed(cut: Cut, { handwheels }: Findings): Fed | undefined {
  const perTurn = drillingWheel(handwheels)?.feed?.perTurn;
  const feed =
    burns(cut.material) && !isThreaded(cut.operation)
      ? feedPerRevolution(cut.material, "drilling", cut.diameter)?.from
      : undefined;
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
  findings: Pick<Findings, "machine" | "drive">,
): SpeedChoice | undefined {
  const band = bandFor(cut, findings);
  const choices = band && choicesOf(cut.diameter, band, findings);
  if (choices === undefined) return undefined;
  const held = choices.heldTo(fastestFedRpm(feed, perTurn));
  return held.speed === undefined && !burns(cut.material) ? choices.free : held;
}
