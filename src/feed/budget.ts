import type { Readings } from "../machine/machine.js";
import type { Fit } from "./finding.js";
import { NO_SCATTER, roundingDeviation } from "./gauge.js";
import { studentT95 } from "./studentT.js";

/** Scatter of the readings; graduation of the gauge; error limit of the gauge; temperature, of which screw and gauge feel the same, so
 *  that the growth of one alone is the limit. */
export type Source = "scatter" | "graduation" | "gauge error" | "temperature";

/** One reason why a feed is not known exactly. */
export type Contribution = {
  readonly source: Source;
  /** Standard uncertainty that it brings to the feed, mm per turn. */
  readonly standard: number;
  /** Infinite where it is taken as known. */
  readonly degreesOfFreedom: number;
  /** False for what another line holds already, and is shown only. */
  readonly counts: boolean;
};

export type Budget = {
  readonly contributions: readonly Contribution[];
  /** Combined standard uncertainty, mm per turn. */
  readonly combined: number;
  readonly degreesOfFreedom: number;
  readonly coverageFactor: number;
  /** Half-width at 95 %. */
  readonly expanded: number;
};

/** Steel, per °C: D. A. Swyt, J. Res. NIST 99 (1994) 31. */
const EXPANSION_OF_STEEL = 11.5e-6;
/** Lengths are true at this temperature: ISO 1. */
const REFERENCE_TEMPERATURE = 20;

/** Uncertainty budget of a fitted feed after the Guide to the Expression of Uncertainty in Measurement (ISO/IEC Guide
 *  98-3): contributions squared and added, Welch and Satterthwaite's degrees of freedom, Student's t at 95 %.
 *  Undefined where nothing at all says how good the readings are, or where they stand at two places alone. */
export function budget(line: Fit, readings: Readings): Budget | undefined {
  const { turns, gauge, gaugeError, temperature } = readings;
  if (line.degreesOfFreedom < 1) return undefined;
  const scatter = line.residualDeviation;
  const rounding = roundingDeviation(gauge ?? 0);
  const feed = Math.abs(line.slope);
  const contributions: Contribution[] = [];
  if (scatter >= NO_SCATTER || gauge !== undefined)
    contributions.push({
      source: "scatter",
      standard: scatter * line.leverage,
      degreesOfFreedom: line.degreesOfFreedom,
      counts: scatter >= rounding,
    });
  if (gauge !== undefined)
    contributions.push({
      source: "graduation",
      standard: rounding * line.leverage,
      degreesOfFreedom: line.degreesOfFreedom,
      counts: scatter < rounding,
    });
  if (gaugeError !== undefined)
    contributions.push({
      source: "gauge error",
      standard: gaugeError / Math.sqrt(3) / spanOf(turns),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      counts: true,
    });
  if (temperature !== undefined)
    contributions.push({
      source: "temperature",
      standard: (feed * EXPANSION_OF_STEEL * Math.abs(temperature - REFERENCE_TEMPERATURE)) / Math.sqrt(3),
      degreesOfFreedom: Number.POSITIVE_INFINITY,
      counts: true,
    });
  const counting = contributions.filter(({ counts }) => counts);
  if (counting.length === 0) return undefined;
  const combined = Math.sqrt(counting.reduce((sum, { standard }) => sum + standard ** 2, 0));
  const degreesOfFreedom = effectiveDegrees(counting, combined);
  const coverageFactor = studentT95(Math.min(degreesOfFreedom, 1e6));
  return { contributions, combined, degreesOfFreedom, coverageFactor, expanded: coverageFactor * combined };
}

/** Welch and Satterthwaite, GUM G.4.1, rounded down to a whole number. */
function effectiveDegrees(contributions: readonly Contribution[], combined: number): number {
  const sum = contributions.reduce(
    (total, { standard, degreesOfFreedom }) => total + standard ** 4 / degreesOfFreedom,
    0,
  );
  return sum === 0 ? Number.POSITIVE_INFINITY : Math.max(1, Math.floor(combined ** 4 / sum + 1e-9));
}

function spanOf(turns: readonly number[]): number {
  const [least, most] = turns.reduce(
    ([low, high], turn) => [Math.min(low, turn), Math.max(high, turn)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );
  return most - least;
}
