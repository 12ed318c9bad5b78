import type { Step } from "../machine/machine.js";

/** Speed out ÷ speed in of one step: driver ÷ driven, by effective diameters or by teeth; `direct` is 1. Geometry. */
export function stepRatio(step: Step): number {
  switch (step.kind) {
    case "belt":
      return step.driver / step.driven;
    case "gears":
      return step.pairs.reduce((ratio, pair) => (ratio * pair.driver) / pair.driven, 1);
    case "direct":
      return 1;
    case "motor":
      return step.factor;
  }
}

/** Spindle speed ÷ motor speed through these steps. `slipPerBelt`, a fraction, is lost once at each belt; gears do not
 *  slip. Common practice; checked against worked examples in tests/published/ratios.test.ts. */
export function ratio(steps: readonly Step[], slipPerBelt = 0): number {
  return steps.reduce((whole, step) => whole * stepRatio(step) * (step.kind === "belt" ? 1 - slipPerBelt : 1), 1);
}
