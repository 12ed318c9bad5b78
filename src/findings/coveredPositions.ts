import type { SpeedFinding } from "../drive/finding.js";
import type { Limits } from "../machine/machine.js";
import { beginWith, fastestAllowed, measureFirst } from "./limits.js";

/** Positions of a variable motor that none needs, as others reach all their speeds: every one beside them would serve but a sliver of
 *  diameters. From the fastest down as few as can be stay, each reaching as far below the last as any; never left out is the one that
 *  one begins with, nor one of which there is something to mind, which stands for none either. */
export function coveredPositions(speeds: readonly SpeedFinding[], limits: Limits): SpeedFinding[] {
  const reaches = speeds.flatMap((speed): Reach[] => {
    const most = fastestAllowed(speed, limits);
    const minded = speed.from === "unknown" || speed.doubtful !== undefined || measureFirst(speed, limits);
    return most === undefined || minded || speed.slowestRpm >= speed.rpm * 0.999
      ? []
      : [{ speed, least: speed.slowestRpm, most }];
  });
  const kept = new Set<SpeedFinding | undefined>([beginWith(speeds, limits)]);
  let left = reaches;
  let down = Number.POSITIVE_INFINITY;
  while (left.length > 0) {
    const top = Math.min(down, Math.max(...left.map(({ most }) => most)));
    const [next] = left
      .filter(({ most }) => most >= top * (1 - 1e-9))
      .sort((a, b) => a.least - b.least || a.most - b.most);
    if (next === undefined) break;
    kept.add(next.speed);
    down = next.least;
    left = left.filter(({ least }) => least < down * (1 - 1e-9));
  }
  return reaches.flatMap(({ speed }) => (kept.has(speed) ? [] : [speed]));
}

/** What a position gives, as far as it may be turned up. */
type Reach = { readonly speed: SpeedFinding; readonly least: number; readonly most: number };
