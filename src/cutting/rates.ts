/** n = 1000 v / (π d). Cutting speed in m/min, diameter in mm. */
export const rpmFor = (metresPerMinute: number, diameter: number): number =>
  (1000 * metresPerMinute) / (Math.PI * diameter);

/** v = π d n / 1000, m/min; diameter in mm. */
export const metresPerMinuteAt = (rpm: number, diameter: number): number => (Math.PI * diameter * rpm) / 1000;
