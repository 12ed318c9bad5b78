import { beltFinding } from "../drive/beltFinding.js";
import type { Findings } from "../findings/findings.js";
import type { PulleyMeasure } from "../machine/effectiveDiameter.js";
import type { Machine } from "../machine/machine.js";
import { stagePath, stepPath } from "../machine/stagePath.js";
import { asGiven } from "../machine/written.js";
import { toDegrees } from "../quantity/angle.js";
import { formatFixed } from "../quantity/format.js";
import type { Subject } from "./working.js";

/** Teeth are counted, everything else is a length. */
const measuredWords = (measure: PulleyMeasure | undefined, machine: Machine): string =>
  measure === undefined ? "" : measure.by === "teeth" ? String(measure.size) : asGiven(measure.size, machine);

/** Length of every belt at every step. */
export function explainBeltLength({ machine }: Findings): Subject[] {
  const stages = machine.drive?.stages ?? [];
  return stages.flatMap((stage, index) =>
    stage.steps.flatMap((step, place): Subject[] => {
      if (step.kind !== "belt") return [];
      const name = [stage.name, step.label].filter((word) => word !== "").join(" ");
      const path = stagePath(stages, index);
      const explain: Subject["explain"] = () => {
        const found = beltFinding(stage);
        const own = found?.steps.find(({ label }) => label === step.label);
        if (found === undefined || own === undefined)
          return {
            missing: stage.idler
              ? "an idler presses on this belt, so its path is not known: measure it by a string"
              : "the distance of the two shafts is not given: add centres",
          };
        const pulley = (which: "driver" | "driven") => ({
          name: `${which} d${which === "driver" ? "1" : "2"}`,
          value: step[which],
          unit: "mm",
          source:
            step[`${which}By`] === undefined
              ? ({ from: "stated", path: [...stepPath(stages, index, place), which] } as const)
              : ({
                  from: "computed",
                  how: `from what was measured: ${step[`${which}By`]?.by} ${measuredWords(step[`${which}By`], machine)}`,
                } as const),
        });
        return {
          title: `Belt length: ${name}`,
          formula:
            found.run === "open"
              ? "L = 2 C cos φ + π (d1 + d2) ÷ 2 + φ |d2 − d1|, sin φ = |d2 − d1| ÷ 2 C"
              : "L = 2 C cos φ + (π ÷ 2 + φ) (d1 + d2), sin φ = (d1 + d2) ÷ 2 C",
          inputs: [
            pulley("driver"),
            pulley("driven"),
            {
              name: "distance of the shafts C",
              value: found.centres,
              unit: "mm",
              source: { from: "stated", path: [...path, "centres"] },
            },
          ],
          result: { name: "belt length", value: own.length, unit: "mm" },
          notes: [
            `the belt lies on the smaller pulley over ${formatFixed(toDegrees(own.wrap), 0)}°`,
            "it is the length of the neutral line, where the belt neither stretches nor shrinks in bending",
            "formula: Encyclopaedia Britannica, 11th ed., Mechanics, §§ 59-60",
          ],
        };
      };
      return [{ name, explain }];
    }),
  );
}
