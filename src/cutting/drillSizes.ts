import { letterDrills, numberDrills } from "../quantity/drill.js";
import { trimmed } from "../quantity/format.js";
import { MM_PER_INCH } from "../quantity/length.js";
import { say } from "../words/say.js";

/** A drill by the name that is stamped on it. */
export type DrillSize = { readonly name: string; readonly diameter: number };

export const drillSystems = ["metric", "fraction", "number", "letter"] as const;
export type DrillSystem = (typeof drillSystems)[number];

/** Drills of one system from `least` to `most`, mm, smallest first. Metric: half millimetres from 1 mm on; fractions: every
 *  64th of an inch, reduced. */
export function drillSizes(system: DrillSystem, least: number, most: number): DrillSize[] {
  const all: DrillSize[] = {
    metric: () => Array.from({ length: 200 }, (_, i) => ({ name: trimmed((i + 1) / 2, 1), diameter: (i + 1) / 2 })),
    fraction: () =>
      Array.from({ length: 128 }, (_, i) => ({ name: fraction(i + 1), diameter: ((i + 1) / 64) * MM_PER_INCH })),
    number: () =>
      numberDrills
        .map((thou, i) => ({
          name: say("drilling card.number drill", { number: i + 1 }),
          diameter: (thou / 1000) * MM_PER_INCH,
        }))
        .reverse(),
    letter: () =>
      letterDrills.map((thou, i) => ({ name: String.fromCharCode(65 + i), diameter: (thou / 1000) * MM_PER_INCH })),
  }[system]();
  return all.filter(({ diameter }) => diameter >= least - 1e-9 && diameter <= most + 1e-9);
}

function fraction(sixtyFourths: number): string {
  let [over, under] = [sixtyFourths, 64];
  while (over % 2 === 0 && under > 1) [over, under] = [over / 2, under / 2];
  if (under === 1) return String(over);
  const whole = Math.floor(over / under);
  return whole === 0 ? `${over}/${under}` : `${whole}-${over % under}/${under}`;
}
