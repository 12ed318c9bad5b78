import type { Drive, TachometerReading } from "../machine/machine.js";
import type { DriveFinding, Position, SpeedFinding } from "./finding.js";
import { positions } from "./positions.js";
import { average, placeOf, rpmsByPlace } from "./readings.js";
import { type SlipFinding, slipPerStage, type WildReading } from "./slipPerStage.js";

/** Slip beyond this is a wrong number more often than a loose belt. Common practice. */
const SUSPICIOUS_SLIP = 0.15;

/** Spindle speed at every position, slowest first. A tachometer reading beats the ratio at its own position; several
 *  readings of one position are averaged, and with a variable motor they are taken at its fastest. Positions that were
 *  not measured lose the slip of the belts they use, as fitted to the readings; each groove pair has its own, so such a
 *  speed says `from: "slip"`. A reading that the others contradict is named and not used. Without any reading the ratio
 *  alone counts. */
export function speeds(drive: Drive): DriveFinding {
  const all = positions(drive);
  const byPlace = new Map(all.map((position) => [placeOf(position), position]));
  const read = rpmsByPlace(drive.tachometer);
  const { slowestRpm, fastestRpm } = drive.motor;
  // A reading that no sound belt explains says nothing of the other positions: it must not make them look slow.
  const sound = drive.tachometer.filter((reading) => isSound(reading, byPlace.get(placeOf(reading)), fastestRpm));
  const slips = slipPerStage({ ...drive, tachometer: sound });
  const wild = slips?.wild ?? [];
  const wildNames = new Set(wild.map(({ name }) => name));
  const found = all.map((position): SpeedFinding => {
    const byRatioRpm = fastestRpm * position.ratio;
    const here = read.get(placeOf(position));
    const measured = here && !wildNames.has(position.name) ? average(here) : undefined;
    const rpm = measured ?? bySlip(position, fastestRpm, slips);
    const speed = { position, rpm, slowestRpm: (rpm * slowestRpm) / fastestRpm, byRatioRpm };
    if (measured !== undefined) return { ...speed, from: "measured", slip: 1 - measured / byRatioRpm };
    return { ...speed, from: slips === undefined ? "ratio" : "slip" };
  });
  const measuredSlips = found.flatMap(({ slip }) =>
    slip === undefined || slip < 0 || slip > SUSPICIOUS_SLIP ? [] : [slip],
  );
  const remarks = [...found.flatMap(oddSlip), ...wild.map(wildWords), ...strayReadings(byPlace, drive.tachometer)];
  return {
    speeds: found.sort((a, b) => a.rpm - b.rpm),
    ...(slips !== undefined && measuredSlips.length > 0 && { slip: average(measuredSlips), stageSlips: slips.stages }),
    ...(remarks.length > 0 && { remarks }),
  };
}

function isSound(reading: TachometerReading, position: Position | undefined, motorRpm: number): boolean {
  const slip = position && 1 - reading.rpm / (motorRpm * position.ratio);
  return slip !== undefined && slip >= 0 && slip <= SUSPICIOUS_SLIP;
}

/** Speed by ratio, less the slip of the belts in use. */
export function bySlip({ steps, ratio }: Position, motorRpm: number, slips: SlipFinding | undefined): number {
  const left = slips?.left(steps.map(({ kind }) => kind === "belt")) ?? 1;
  return motorRpm * ratio * left;
}

function oddSlip({ position, rpm, byRatioRpm, slip }: SpeedFinding): string[] {
  if (slip === undefined) return [];
  const where = `Position ${position.name}: ${rpm.toFixed(0)} rpm was measured, the pulleys and gears give ${byRatioRpm.toFixed(0)} rpm.`;
  if (slip < 0) return [`${where} A belt cannot gain speed: check the diameters, the motor's speed and the reading.`];
  if (slip <= SUSPICIOUS_SLIP) return [];
  const percent = (slip * 100).toFixed(0);
  return [`${where} ${percent} % is more than a sound belt slips: check the diameters, the belt and the reading.`];
}

const wildWords = ({ name, rpm, expectedRpm }: WildReading): string =>
  `Position ${name}: ${rpm.toFixed(0)} rpm was measured, but the other readings foretell ${expectedRpm.toFixed(0)} rpm. The reading is left out.`;

function strayReadings(byPlace: ReadonlyMap<string, Position>, readings: readonly TachometerReading[]): string[] {
  return readings
    .filter((reading) => !byPlace.has(placeOf(reading)))
    .map((reading) => `The tachometer reading at "${reading.labels.join(" ")}" is left out: no such position.`);
}
