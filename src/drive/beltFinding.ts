import type { Stage } from "../machine/machine.js";
import { largestOf, smallestOf } from "../quantity/extremes.js";
import { type BeltRun, beltLength, centresFor, wrapAngles } from "./beltLength.js";

export type BeltStep = {
  readonly label: string;
  readonly driver: number;
  readonly driven: number;
  /** On the neutral line, mm. */
  readonly length: number;
  /** Of the belt on the smaller pulley, radians. */
  readonly wrap: number;
  /** How far the shafts must move apart (+) or together (−) from the stated centres to keep the shortest belt just
   *  tight, mm. */
  readonly move: number;
};

export type BeltFinding = {
  readonly stage: string;
  readonly run: BeltRun;
  readonly centres: number;
  readonly steps: readonly BeltStep[];
  /** Shortest and longest need over the steps, mm. */
  readonly shortest: number;
  readonly longest: number;
  /** Whether one belt serves every step without moving a shaft: it goes slack by no more than `SLACK` of its length. */
  readonly oneServesAll: boolean;
};

/** Difference of length that a belt's own stretch takes up. Common practice: about half a per cent. */
export const SLACK = 0.005;
/** Less wrap than this on the small pulley lets a plain belt slip; an idler or more distance helps. Common practice. */
export const LEAST_WRAP = (120 / 180) * Math.PI;

/** Belt lengths of one stage. Undefined where it holds no belt, no centres, an idler (its path is not known), or pulleys
 *  that would touch. Diameters are effective, mm. */
export function beltFinding(stage: Stage & { crossed?: boolean; idler?: boolean }): BeltFinding | undefined {
  const { centres } = stage;
  const run: BeltRun = stage.crossed ? "crossed" : "open";
  const belts = stage.steps.flatMap((step) => (step.kind === "belt" ? [step] : []));
  if (centres === undefined || stage.idler || belts.length === 0) return undefined;
  const lengths = belts.map(({ driver, driven }) => beltLength(driver, driven, centres, run));
  if (lengths.some((length) => length === undefined)) return undefined;
  const known = lengths as number[];
  const shortest = smallestOf(known);
  const longest = largestOf(known);
  const steps = belts.map(({ label, driver, driven }, index): BeltStep => {
    const angles = wrapAngles(driver, driven, centres, run) ?? { driver: Math.PI, driven: Math.PI };
    return {
      label,
      driver,
      driven,
      length: known[index] ?? 0,
      wrap: Math.min(angles.driver, angles.driven),
      move: (centresFor(shortest, driver, driven, run) ?? centres) - centres,
    };
  });
  return {
    stage: stage.name,
    run,
    centres,
    steps,
    shortest,
    longest,
    oneServesAll: longest - shortest <= SLACK * longest,
  };
}

/** Length, mm, to cut a belt that is joined end to end: what the shortest step needs on the neutral line, less the stretch
 *  that makes it drive. `stretch` is a fraction, as the belt's maker states it; what the joint itself eats is added by
 *  whoever knows the joint. */
export const cutLength = (neutral: number, stretch: number): number => neutral / (1 + stretch);
