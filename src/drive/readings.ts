import type { TachometerReading } from "../machine/machine.js";
import type { Position } from "./finding.js";

/** Whether a reading was taken at this position. */
export function belongsTo(reading: TachometerReading, position: Position): boolean {
  return (
    reading.labels.length === position.labels.length && reading.labels.every((label, i) => label === position.labels[i])
  );
}

/** Mean of at least one value. */
export function average(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0) / values.length;
}
