import type { Drive, TachometerReading } from "../machine/machine.js";
import type { DriveFinding, Position, SpeedFinding } from "./finding.js";
import { positions } from "./positions.js";

/** Slip beyond this is a wrong number more often than a loose belt. Common practice. */
const SUSPICIOUS_SLIP = 0.15;

/** Spindle speed at every position, slowest first. A tachometer reading beats the ratio at its own position; several
 *  readings of one position are averaged, and with a variable motor they are taken at its fastest. Positions that were
 *  not measured lose the mean slip of those that were. Strictly slip belongs to the belts (gears do not slip) and each
 *  groove pair has its own; to take it as the same at every position is the best that one or two readings allow, so
 *  such a speed says `from: "slip"`. Without any reading the ratio alone counts. */
export function speeds(drive: Drive): DriveFinding {
  const all = positions(drive);
  const { slowestRpm, fastestRpm } = drive.motor;
  const measured = all.map((position) => measuredRpm(position, drive.tachometer));
  const slips = all.flatMap((position, i) => {
    const rpm = measured[i];
    return rpm === undefined ? [] : [slipAt(position, rpm, fastestRpm)];
  });
  const slip = slips.length === 0 ? undefined : average(slips);

  const found = all.map((position, i): SpeedFinding => {
    const byRatioRpm = fastestRpm * position.ratio;
    const rpm = measured[i] ?? byRatioRpm * (1 - (slip ?? 0));
    const speed = { position, rpm, slowestRpm: (rpm * slowestRpm) / fastestRpm, byRatioRpm };
    if (measured[i] !== undefined) return { ...speed, from: "measured", slip: slipAt(position, rpm, fastestRpm) };
    return { ...speed, from: slip === undefined ? "ratio" : "slip" };
  });
  const remarks = [...found.flatMap(oddSlip), ...strayReadings(all, drive.tachometer)];
  return {
    speeds: found.sort((a, b) => a.rpm - b.rpm),
    ...(slip === undefined ? {} : { slip }),
    ...(remarks.length === 0 ? {} : { remarks }),
  };
}

function measuredRpm(position: Position, readings: readonly TachometerReading[]): number | undefined {
  const here = readings.filter((reading) => belongsTo(reading, position)).map((reading) => reading.rpm);
  return here.length === 0 ? undefined : average(here);
}

function belongsTo(reading: TachometerReading, position: Position): boolean {
  return (
    reading.labels.length === position.labels.length && reading.labels.every((label, i) => label === position.labels[i])
  );
}

function slipAt(position: Position, rpm: number, motorRpm: number): number {
  return 1 - rpm / (motorRpm * position.ratio);
}

function average(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0) / values.length;
}

function oddSlip({ position, rpm, byRatioRpm, slip }: SpeedFinding): string[] {
  if (slip === undefined) return [];
  const where = `Position ${position.name}: ${rpm.toFixed(0)} rpm was measured, the pulleys and gears give ${byRatioRpm.toFixed(0)} rpm.`;
  if (slip < 0) return [`${where} A belt cannot gain speed: check the diameters, the motor's speed and the reading.`];
  if (slip <= SUSPICIOUS_SLIP) return [];
  const percent = (slip * 100).toFixed(0);
  return [`${where} ${percent} % is more than a sound belt slips: check the diameters, the belt and the reading.`];
}

function strayReadings(all: readonly Position[], readings: readonly TachometerReading[]): string[] {
  return readings
    .filter((reading) => !all.some((position) => belongsTo(reading, position)))
    .map((reading) => `The tachometer reading at "${reading.labels.join(" ")}" is left out: no such position.`);
}
