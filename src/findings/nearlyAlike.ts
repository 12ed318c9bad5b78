import { nearlySame } from "../drive/alike.js";
import type { SpeedFinding } from "../drive/finding.js";
import type { Limits } from "../machine/machine.js";
import { grouped } from "../quantity/grouped.js";
import { coveredPositions } from "./coveredPositions.js";
import type { Findings } from "./findings.js";
import { beginWith, heldByLimit, measureFirst } from "./limits.js";

/** A position that a card needs no row for, and the one whose row names it too, since that gives nearly the same speed. */
export type Alike = { readonly speed: SpeedFinding; readonly as: SpeedFinding };

/** The positions of a drive that another stands for; never the one that one begins with, nor one of which there is something to
 *  mind, which stands for none either. The one that stands is never the faster: wherever another of its own might cut, it may too,
 *  and no work falls to a far slower position. */
export function nearlyAlike(speeds: readonly SpeedFinding[], limits: Limits): Alike[] {
  const first = beginWith(speeds, limits);
  const plain = speeds.filter(
    (speed) =>
      speed.from !== "unknown" &&
      speed.doubtful === undefined &&
      speed.slowestRpm >= speed.rpm * 0.999 &&
      heldByLimit(speed, limits) === undefined &&
      !measureFirst(speed, limits),
  );
  // A measured one is the better of two.
  const worth = (speed: SpeedFinding) => (speed === first ? 2 : speed.from === "measured" ? 1 : 0);
  const kept: SpeedFinding[] = [];
  const found: Alike[] = [];
  for (const speed of plain.sort((a, b) => worth(b) - worth(a) || a.rpm - b.rpm)) {
    const as = kept.find((one) => one.rpm <= speed.rpm && nearlySame(one.rpm, speed.rpm));
    if (as === undefined) kept.push(speed);
    else found.push({ speed, as });
  }
  return found;
}

/** Each that stands for others, and those after it. */
export const sameSpeed = (alike: readonly Alike[]): (readonly SpeedFinding[])[] =>
  [...grouped(alike, ({ as }) => as)].map(([as, others]) => [as, ...others.map(({ speed }) => speed)]);

/** The same machine without them, nor those that a variable motor does without, and which they are. */
export function withoutNearlyAlike(findings: Findings): Omit<Told, "speeds"> & { readonly findings: Findings } {
  const { drive, machine } = findings;
  if (drive === undefined) return { findings, alike: [], covered: [] };
  const { speeds, ...without } = withoutAlike(drive.speeds, machine.limits);
  return {
    findings: speeds.length === drive.speeds.length ? findings : { ...findings, drive: { ...drive, speeds } },
    ...without,
  };
}

/** The positions that a card tells, those that are left to another's row, and those whose speeds other rows give. */
export type Told = {
  readonly speeds: readonly SpeedFinding[];
  readonly alike: readonly Alike[];
  readonly covered: readonly SpeedFinding[];
};

/** Sheets ask for many diameters of the same drive. */
const found = new WeakMap<readonly SpeedFinding[], { readonly limits: Limits; readonly told: Told }>();

/** What every card shows of a drive's positions, and every choice is made among: who reads it at the cover is told the same by
 *  every sheet. */
export function withoutAlike(all: readonly SpeedFinding[], limits: Limits): Told {
  const known = found.get(all);
  if (known?.limits === limits) return known.told;
  const alike = nearlyAlike(all, limits);
  const covered = coveredPositions(all, limits);
  const omitted = new Set([...alike.map(({ speed }) => speed), ...covered]);
  const told = { alike, covered, speeds: omitted.size === 0 ? all : all.filter((speed) => !omitted.has(speed)) };
  found.set(all, { limits, told });
  return told;
}
