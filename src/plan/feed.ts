import { type FeedRange, feedPerRevolution } from "../cutting/feeds.js";
import type { SpeedChoice } from "../cutting/finding.js";
import { type HandFeed, handFeed, handFeedAtLeast } from "../cutting/handFeed.js";
import { metresPerMinuteAt } from "../cutting/rates.js";
import { burns } from "../findings/chipFire.js";
import type { Findings, HandwheelFinding } from "../findings/findings.js";
import { speedFor, speedToFeed } from "../findings/speedChoice.js";
import type { Job } from "../job/job.js";
import { limitRpm } from "../machine/limits.js";

/** A cut, and which published feed goes with it; for reaming there is none. */
export type FedCut = {
  readonly operation: string;
  readonly diameter: number;
  readonly fed?: "finishing" | "drilling" | "parting";
  /** Whose feed is taken, mm, where that is not the widest place that cuts: the thin tip of a centre drill breaks first. */
  readonly fedAs?: number;
};

export type Fed = {
  readonly speed?: SpeedChoice;
  /** The slowest position is faster than this machine is given, but within what is published. */
  readonly aboveAim?: true;
  /** The published feed per revolution, of which the least is taken. */
  readonly published?: FeedRange;
  /** That feed counted at the handwheel that gives it. */
  readonly feed?: HandFeed;
  readonly feedWheel?: string;
};

/** The speed of a cut and its lightest published feed, counted at this handwheel; each absent where it is not known. */
export function speedAndFeed(
  { operation, diameter, fed, fedAs = diameter }: FedCut,
  wheel: HandwheelFinding | undefined,
  { material, tool }: Pick<Job, "material" | "tool">,
  findings: Findings,
): Fed {
  // Where nothing stands, as in a job that is refused, no speed is right.
  if (!(diameter > 0)) return {};
  const cut = { operation, diameter, material, tool };
  const published = fed && feedRange(fed, material, fedAs);
  const perTurn = wheel?.feed?.perTurn;
  const chosen =
    published && perTurn !== undefined
      ? speedToFeed(cut, { feed: published.from, perTurn }, findings)
      : speedFor(cut, findings);
  const slowest = chosen && slowestInPrint(chosen, findings);
  const speed = slowest ?? chosen;
  const known = {
    ...(speed && { speed }),
    ...(slowest && { aboveAim: true as const }),
    ...(published && { published }),
  };
  if (published === undefined || speed?.rpm === undefined || wheel === undefined || perTurn === undefined) return known;
  const feed = counted(published, speed.rpm, wheel, material);
  return { ...known, ...(feed && { feed, feedWheel: wheel.handwheel.name }) };
}

/** The lightest of a published feed, counted at that handwheel. */
function counted(
  { from }: FeedRange,
  rpm: number,
  { feed, dial }: HandwheelFinding,
  material: string,
): HandFeed | undefined {
  if (feed === undefined) return undefined;
  return burns(material)
    ? handFeedAtLeast(from, rpm, feed.perTurn)
    : handFeed(from, rpm, feed.perTurn, dial?.chosen.divisionsPerTurn);
}

/** The feed of one drill of several, at the speed of the step. */
export function drillFeed(
  diameter: number,
  { speed, feed: ofStep }: Fed,
  wheel: HandwheelFinding | undefined,
  { material }: Pick<Job, "material">,
): Pick<Fed, "published" | "feed"> {
  const published = feedRange("drilling", material, diameter);
  if (published === undefined) return {};
  const feed = ofStep && wheel && speed?.rpm !== undefined ? counted(published, speed.rpm, wheel, material) : undefined;
  return { published, ...(feed && { feed }) };
}

/** A steel without figures of its own is fed like mild steel. */
const feedRange = (kind: NonNullable<FedCut["fed"]>, material: string, diameter: number): FeedRange | undefined =>
  feedPerRevolution(material, kind, diameter) ??
  (/steel/.test(material) && !burns(material) ? feedPerRevolution("mild steel", kind, diameter) : undefined);

/** Where even the slowest position is faster than is aimed at: that one, as long as it stays within the published range and the limits. */
function slowestInPrint(choice: SpeedChoice, { drive, machine }: Findings): SpeedChoice | undefined {
  if (choice.verdict !== "slowest is too fast" || drive === undefined || burns(choice.band.material)) return undefined;
  const known = drive.speeds.filter(
    ({ from, highestRpm }) => from !== "unknown" && highestRpm <= limitRpm(machine.limits),
  );
  const [speed] = known.sort((a, b) => a.slowestRpm - b.slowestRpm);
  if (speed === undefined) return undefined;
  const rpm = speed.slowestRpm;
  const metresPerMinute = metresPerMinuteAt(rpm, choice.diameter);
  const inPrint = choice.band.rpm === undefined && metresPerMinute <= choice.band.fastest;
  return inPrint ? { ...choice, speed, rpm, metresPerMinute, verdict: "in the band" } : undefined;
}
