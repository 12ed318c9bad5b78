import { largestOf, smallestOf } from "../quantity/extremes.js";
import { mean } from "./fit.js";

/** Deviations, mm, at each target position: one list of runs for each position, travelling up and coming back down. */
export type Runs = {
  readonly up: readonly (readonly number[])[];
  readonly down: readonly (readonly number[])[];
};

export type PositionFinding = {
  readonly meanUp: number;
  readonly meanDown: number;
  /** Mean bidirectional deviation. */
  readonly meanBoth: number;
  readonly reversal: number;
  /** Estimators of the standard uncertainty of positioning. */
  readonly deviationUp: number;
  readonly deviationDown: number;
  readonly repeatabilityUp: number;
  readonly repeatabilityDown: number;
  /** Bidirectional. */
  readonly repeatability: number;
};

/** All mm. `reversal` keeps no sign, `meanReversal` does. */
export type AxisFinding = {
  readonly positions: readonly PositionFinding[];
  readonly runs: number;
  readonly reversal: number;
  readonly meanReversal: number;
  readonly repeatabilityUp: number;
  readonly repeatabilityDown: number;
  readonly repeatability: number;
  /** Systematic deviation: of each direction, and of both together. */
  readonly systematicUp: number;
  readonly systematicDown: number;
  readonly systematic: number;
  /** Range of the mean bidirectional deviation. */
  readonly meanRange: number;
  readonly accuracyUp: number;
  readonly accuracyDown: number;
  readonly accuracy: number;
};

/** Accuracy, repeatability and reversal value of positioning by the formulas of ISO 230-2 (definitions from memory, each
 *  checked against a printed test report in tests/published/iso230.test.ts). The standard asks for 5 runs at 5 positions
 *  each way; with fewer the formulas hold and the numbers are worth less, so `runs` is told with them.
 *  Undefined with fewer than 2 runs or 2 positions.
 *  @throws RangeError where not every position has the same runs both ways. */
export function positioning({ up, down }: Runs): AxisFinding | undefined {
  const runs = up[0]?.length ?? 0;
  if (up.length !== down.length || [...up, ...down].some((list) => list.length !== runs))
    throw new RangeError("Every position needs the same number of runs, up and down.");
  if (runs < 2 || up.length < 2) return undefined;
  const positions = up.map((list, i) => position(list, down[i] ?? []));
  const of = (pick: (position: PositionFinding) => number): number[] => positions.map(pick);
  const [meansUp, meansDown] = [of(({ meanUp }) => meanUp), of(({ meanDown }) => meanDown)];
  const reaching = (sign: number, way: "Up" | "Down") => of((p) => p[`mean${way}`] + sign * 2 * p[`deviation${way}`]);
  const [highUp, lowUp] = [largestOf(reaching(1, "Up")), smallestOf(reaching(-1, "Up"))];
  const [highDown, lowDown] = [largestOf(reaching(1, "Down")), smallestOf(reaching(-1, "Down"))];
  return {
    positions,
    runs,
    reversal: largestOf(of(({ reversal }) => Math.abs(reversal))),
    meanReversal: mean(of(({ reversal }) => reversal)),
    repeatabilityUp: largestOf(of(({ repeatabilityUp }) => repeatabilityUp)),
    repeatabilityDown: largestOf(of(({ repeatabilityDown }) => repeatabilityDown)),
    repeatability: largestOf(of(({ repeatability }) => repeatability)),
    systematicUp: range(meansUp),
    systematicDown: range(meansDown),
    systematic: range([...meansUp, ...meansDown]),
    meanRange: range(of(({ meanBoth }) => meanBoth)),
    accuracyUp: highUp - lowUp,
    accuracyDown: highDown - lowDown,
    accuracy: Math.max(highUp, highDown) - Math.min(lowUp, lowDown),
  };
}

function position(up: readonly number[], down: readonly number[]): PositionFinding {
  const [meanUp, meanDown] = [mean(up), mean(down)];
  const [deviationUp, deviationDown] = [standardDeviation(up), standardDeviation(down)];
  const reversal = meanUp - meanDown;
  const [repeatabilityUp, repeatabilityDown] = [4 * deviationUp, 4 * deviationDown];
  return {
    meanUp,
    meanDown,
    meanBoth: (meanUp + meanDown) / 2,
    reversal,
    deviationUp,
    deviationDown,
    repeatabilityUp,
    repeatabilityDown,
    repeatability: Math.max(
      2 * deviationUp + 2 * deviationDown + Math.abs(reversal),
      repeatabilityUp,
      repeatabilityDown,
    ),
  };
}

/** √(Σ(value − mean)² / (n − 1)). */
export function standardDeviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
}

const range = (values: readonly number[]): number => largestOf(values) - smallestOf(values);
