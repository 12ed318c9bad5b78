import type { TachometerReading } from "../machine/machine.js";
import type { Position } from "./finding.js";

/** What a position and the readings taken at it have in common. */
export const placeOf = ({ labels }: Pick<Position, "labels">): string => labels.join("\u0000");

/** Speeds read at each place. */
export function rpmsByPlace(readings: readonly TachometerReading[]): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  for (const reading of readings) {
    const place = placeOf(reading);
    const here = found.get(place);
    if (here === undefined) found.set(place, [reading.rpm]);
    else here.push(reading.rpm);
  }
  return found;
}

/** Mean of at least one value. */
export function average(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0) / values.length;
}
