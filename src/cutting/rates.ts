import { type LengthUnit, MM_PER_FOOT } from "../quantity/length.js";

/** n = 1000 v / (π d). Cutting speed in m/min, diameter in mm. */
export const rpmFor = (metresPerMinute: number, diameter: number): number =>
  (1000 * metresPerMinute) / (Math.PI * diameter);

/** d = 1000 v / (π n), the same relation asked for the diameter, mm. */
export const diameterFor = (metresPerMinute: number, rpm: number): number => (1000 * metresPerMinute) / (Math.PI * rpm);

/** v = π d n / 1000, m/min; diameter in mm. */
export const metresPerMinuteAt = (rpm: number, diameter: number): number => (Math.PI * diameter * rpm) / 1000;

/** The unit in which a reader of mm or of inches thinks of cutting speeds, and how many m/min one of it is. */
export const cuttingSpeedUnit: Readonly<
  Record<LengthUnit, { readonly name: string; readonly metresPerMinute: number }>
> = {
  mm: { name: "m/min", metresPerMinute: 1 },
  in: { name: "ft/min", metresPerMinute: MM_PER_FOOT / 1000 },
};
