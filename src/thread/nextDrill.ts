import { type DrillSize, drillSizes } from "../cutting/drillSizes.js";
import type { Units } from "../machine/machine.js";

/** The next usual drill that makes a hole of that size or larger, mm: of metric ones by twentieths up to 3 mm and by tenths beyond
 *  (from memory, DIN 338), or of number, letter and fraction drills, the nearest of them. */
export function nextDrill(hole: number, units: Units): DrillSize | undefined {
  if (units === "mm") {
    const step = hole <= 3 ? 20 : 10;
    return { name: "", diameter: Math.ceil(hole * step - 1e-6) / step };
  }
  return inInches
    .flatMap((system) => drillSizes(system, hole, hole + 1).slice(0, 1))
    .sort((a, b) => a.diameter - b.diameter)[0];
}

const inInches = ["number", "letter", "fraction"] as const;

/** The usual inch drill that is nearest to a diameter, mm. */
export function nearestInchDrill(diameter: number): DrillSize | undefined {
  const off = (drill: DrillSize) => Math.abs(drill.diameter - diameter);
  return inInches
    .flatMap((system) => drillSizes(system, diameter - 1, diameter + 1))
    .sort((a, b) => off(a) - off(b))[0];
}
