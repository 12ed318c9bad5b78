import type { FeedFinding, Measured } from "./finding.js";

/** How far a movement of so many turns is in doubt: half-width at 95 %, mm of the slide; undefined where nothing says how good
 *  the feed is. The feed's own doubt grows with the turns; each end of the movement strays by itself; and where the travel
 *  was found uneven its bound is added whole, since it is no chance: GUM F.2.4.5 for a known effect that is not corrected
 *  (memory). `read`: half-width of reading the dial at each end, mm of the slide. */
export function doubtOver(turns: number, { uncertainty, measured }: FeedFinding, read = 0): number | undefined {
  if (uncertainty === undefined) return undefined;
  const ends = Math.SQRT2 * Math.hypot(measured?.position ?? 0, read);
  return Math.hypot(turns * uncertainty, ends) + boundOver(turns, measured);
}

/** What the feed itself leaves in doubt over a whole length of travel, for the worst of all movements of up to so many turns: as
 *  above, without what each end strays by. */
export function feedDoubtOver(turns: number, { uncertainty, measured }: FeedFinding): number | undefined {
  if (uncertainty === undefined) return undefined;
  const { sway = 0 } = measured?.uneven ?? {};
  const worst = swayOver(Math.min(turns, 0.5), sway) - swayOver(turns, sway);
  return turns * uncertainty + boundOver(turns, measured) + worst;
}

/** A wave does not touch whole turns and counts twice over half a turn. */
const swayOver = (turns: number, sway: number): number => 2 * sway * Math.abs(Math.sin(Math.PI * turns));

/** The most by which worn or wavy travel can throw a movement of so many turns out, wherever it begins; mm. */
export function boundOver(turns: number, measured: Measured | undefined): number {
  const { most, sway = 0 } = measured?.uneven ?? {};
  const wave = swayOver(turns, sway);
  if (measured === undefined || most === undefined) return wave;
  const at = (Math.abs(turns) / (measured.to - measured.from)) * (most.length - 1);
  const before = Math.min(Math.floor(at), most.length - 1);
  const [low = 0, high = low] = most.slice(before, before + 2);
  return wave + low + (high - low) * Math.min(1, at - before);
}
