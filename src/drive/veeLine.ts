import { type VeeDepth, type VeeSection, veeDepthsOf } from "../machine/effectiveDiameter.js";
import type { Drive, Step } from "../machine/machine.js";
import { stepRatio } from "./ratio.js";

/** Two published places of a vee belt's neutral line, in a drive whose pulleys were measured elsewhere. */
export type VeeLine = {
  readonly section: VeeSection;
  readonly used: VeeDepth;
  readonly other: VeeDepth;
  /** By the other, speeds by ratio differ by up to this share. */
  readonly most: number;
};

/** One for each section in use of which two are published. */
export function veeLines(drive: Drive): VeeLine[] {
  const sections = new Set(
    drive.stages.flatMap(({ belt = drive.belt, steps }) =>
      belt?.section && steps.some(measuredElsewhere) ? belt.section : [],
    ),
  );
  return [...sections].flatMap((section): VeeLine[] => {
    const [used, other] = veeDepthsOf(section);
    if (other === undefined) return [];
    const outward = 2 * (used.depth - other.depth);
    const shares = drive.stages.map(({ belt = drive.belt, steps }) =>
      belt?.section === section ? steps.map((step) => ratioBy(step, outward) / stepRatio(step)) : [1],
    );
    const [least, most] = [Math.min, Math.max].map((pick) =>
      shares.reduce((product, stage) => product * pick(...stage), 1),
    ) as [number, number];
    return [{ section, used, other, most: Math.max(most - 1, 1 - least) }];
  });
}

const measuredElsewhere = (step: Step): boolean =>
  step.kind === "belt" && (step.driverBy !== undefined || step.drivenBy !== undefined);

/** With the effective diameters further out by so much where they were not given themselves. */
function ratioBy(step: Step, outward: number): number {
  if (step.kind !== "belt") return stepRatio(step);
  const { driver, driven, driverBy, drivenBy } = step;
  return stepRatio({
    ...step,
    driver: driverBy === undefined ? driver : driver + outward,
    driven: drivenBy === undefined ? driven : driven + outward,
  });
}
