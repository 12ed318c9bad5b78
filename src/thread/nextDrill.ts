import { type DrillSize, drillSizes } from "../cutting/drillSizes.js";
import type { Units } from "../machine/machine.js";

/** The next usual drill that makes a hole of that size or larger, mm: of metric ones by twentieths up to 3 mm and by tenths beyond
 *  (from memory, DIN 338), or of number, letter and fraction drills, the nearest of them. */
export function nextDrill(hole: number, units: Units): DrillSize | undefined {
  if (units === "mm") {
    const step = hole <= 3 ? 20 : 10;
    return { name: "", diameter: Math.ceil(hole * step - 1e-6) / step };
  }
  return (["number", "letter", "fraction"] as const)
    .flatMap((system) => drillSizes(system, hole, hole + 1).slice(0, 1))
    .sort((a, b) => a.diameter - b.diameter)[0];
}
