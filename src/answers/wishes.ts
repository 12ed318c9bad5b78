import { changed } from "../drive/suppose.js";
import type { Findings } from "../findings/findings.js";
import type { Drive, Units } from "../machine/machine.js";
import { trimmed } from "../quantity/format.js";
import { fromMm } from "../quantity/length.js";

/** What may be supposed of this drive, in the words in which it is asked for: its own figures, to be changed to others. Empty where
 *  there is no drive. */
export function wishesFor({ machine: { drive, units } }: Findings): string[] {
  if (drive === undefined) return [];
  const { motor } = drive;
  const own = [`${motor.hertz === 60 ? 50 : 60} Hz`, `motor ${trimmed(motor.fastestRpm, 0)} rpm`];
  const stands = (wish: string) => "drive" in changed(drive, wish, units);
  return [...own.filter(stands), ...pulleys(drive, units), ...belts[units].filter(stands)];
}

/** Of belts or steps with one name the first alone is what its name changes. */
const pulleys = (drive: Drive, units: Units): string[] =>
  drive.stages.flatMap((stage, index) =>
    stage.steps.flatMap((step, place) => {
      if (step.kind !== "belt") return [];
      const [driver, driven] = [step.driver, step.driven].map((mm) => trimmed(fromMm(mm, units), 3));
      const wish = `${[stage.name, step.label].filter((word) => word !== "").join(" ")} ${driver} to ${driven}`;
      const then = changed(drive, wish, units);
      return "drive" in then && then.drive.stages[index]?.steps[place] !== step ? [wish] : [];
    }),
  );

const belts: Readonly<Record<Units, readonly string[]>> = {
  mm: ["belt flat, 3 mm", "belt round, 6 mm", "belt vee, Z", "belt vee, A"],
  in: ["belt flat, 1/8 in", "belt round, 1/4 in", "belt vee, Z", "belt vee, A"],
};
