import type { Readings } from "../machine/machine.js";
import { largestOf } from "../quantity/extremes.js";
import { REAL_BELOW, type Shape } from "./alongTravel.js";
import { type Budget, budget } from "./budget.js";
import type { Fit } from "./finding.js";
import { type OtherZero, otherZeros } from "./gaugeZero.js";
import type { AxisFinding } from "./iso230.js";
import { type Jump, jumpIn } from "./jump.js";
import { lostMotion } from "./lostMotion.js";
import { miscountedFrom, type Wild, wildReadings } from "./outliers.js";
import { alongPlaces, chanceOfPattern } from "./pattern.js";
import { type ReturnStudy, returnStudy } from "./returnStudy.js";
import { positioningOf } from "./runs.js";

/** Everything that readings say beyond their straight line. */
export type FeedStudy = {
  /** Readings that do not belong to the others: named, never left out. */
  readonly wild: readonly Wild[];
  /** A whole turn lost or gained in counting. */
  readonly miscounted?: { readonly index: number; readonly turns: number };
  /** Within a run, readings that stand off from there on by what is no whole turn. */
  readonly jump?: Jump;
  /** Repeated runs that were read from another zero of the gauge. */
  readonly otherZeros: readonly OtherZero[];
  readonly back?: ReturnStudy;
  readonly shape: Shape;
  /** How likely chance alone strays the same way for as long a stretch; absent where rounding alone does, or nothing tells. */
  readonly pattern?: {
    readonly chance: number;
    readonly real: boolean /** Off the line at most, mm. */;
    readonly most: number;
  };
  readonly budget?: Budget;
  /** By ISO 230-2's formulas, where enough runs exist. */
  readonly positioning?: AxisFinding;
};

export function study(line: Fit, shape: Shape, readings: Readings): FeedStudy {
  const { turns, travel, gauge, unit } = readings;
  const miscounted = miscountedFrom(turns, travel);
  const sources = budget(line, readings);
  const zeros = miscounted ? [] : otherZeros(readings);
  // Positioning is judged from one zero; where a run had another there is none to judge by.
  const axis = zeros.length > 0 ? undefined : positioningOf(readings, line.slope, line.intercept);
  const wild = miscounted ? [] : wildReadings(turns, travel, gauge, unit);
  const jump = miscounted ? undefined : jumpAmong(readings, wild, shape);
  const pattern = miscounted || jump || wild.length > 0 ? undefined : patternIn(line, shape, readings);
  const curved = shape.alongTravel?.real || pattern?.real;
  // Where the gauge never moved there is no way back to compare.
  const lost = line.slope === 0 ? undefined : lostMotion(readings, line.slope);
  const back = returnStudy(readings, lost, curved && wild.length === 0 && !jump ? line.residuals : undefined);
  return {
    // A jump makes many readings look wild: it is told in their place.
    wild: jump ? [] : wild,
    ...(jump && { jump }),
    otherZeros: zeros,
    ...(miscounted && { miscounted }),
    shape,
    ...(pattern && { pattern }),
    ...(back && { back }),
    ...(sources && { budget: sources }),
    ...(axis && { positioning: axis }),
  };
}

/** Readings rounded to the gauge make a saw of their own: what strays by less than a graduation is no curve, and without a gauge
 *  nothing tells the two apart. A wave within the turn is told as such. */
function patternIn(
  { residuals, withWave }: Fit,
  { oncePerTurn }: Shape,
  { turns, gauge }: Readings,
): FeedStudy["pattern"] {
  if (gauge === undefined || withWave || oncePerTurn?.real) return undefined;
  const along = alongPlaces(turns, residuals);
  const most = largestOf(along.values.map(Math.abs));
  if (!(most > gauge)) return undefined;
  const chance = chanceOfPattern(along.turns, along.values, "line");
  return chance === undefined ? undefined : { chance, real: chance < REAL_BELOW, most };
}

/** One wild reading is no jump; of several, which may be all that stand beyond one, they are judged with the others. */
function jumpAmong({ turns, travel, gauge }: Readings, wild: readonly Wild[], shape: Shape): Jump | undefined {
  const curved = shape.alongTravel?.real || shape.oncePerTurn?.real;
  return jumpIn(turns, travel, gauge, {
    ...(wild.length === 1 && { without: wild.map(({ index }) => index) }),
    ...(curved && shape.left && { smooth: shape.left.deviation }),
  });
}
