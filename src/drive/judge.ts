import type { Drive, TachometerReading } from "../machine/machine.js";
import type { Astray, DoubtfulReading, Position } from "./finding.js";
import { noLoadShare } from "./motor.js";
import { positions } from "./positions.js";
import { placeOf } from "./readings.js";
import { type SlipFinding, slipPerStage, WILD_SHARE } from "./slipPerStage.js";

/** Slip beyond this is a wrong number more often than a loose belt. Common practice. */
const SUSPICIOUS_SLIP = 0.15;

/** What the tachometer's readings are worth. Only `sound` ones serve anything, and the slips are fitted to them alone. */
export type Judged = {
  readonly sound: readonly TachometerReading[];
  readonly doubtful: readonly DoubtfulReading[];
  readonly astray?: Astray;
  readonly slips?: SlipFinding;
};

type Here = {
  readonly position: Position;
  readonly readings: readonly { rpm: number; share: number; index: number }[];
};

/** Judges the readings place by place: those of one position stand or fall together, since nobody knows which of two that
 *  contradict one another is the true one. Readings at no position are in neither list. */
export function judge(drive: Drive): Judged {
  const places = readPlaces(drive);
  const odd = places.flatMap((here): DoubtfulReading[] => {
    const why = oddity(here, drive);
    return why === undefined ? [] : [doubtful(here, why, drive.motor.fastestRpm * here.position.ratio)];
  });
  const oddNames = new Set(odd.map(({ name }) => name));
  const plausible = places.filter(({ position }) => !oddNames.has(position.name));
  const fitted = slipPerStage({ ...drive, tachometer: readingsOf(plausible, drive) });
  const expected = new Map(fitted?.wild.map(({ name, expectedRpm }) => [name, expectedRpm]));
  const wild = plausible.flatMap((here) => {
    const foretold = expected.get(here.position.name);
    return foretold === undefined ? [] : [doubtful(here, "wild", foretold)];
  });
  const sound = plausible.filter(({ position }) => !expected.has(position.name));
  const astray = allOneWay(places, drive);
  return {
    sound: readingsOf(sound, drive),
    doubtful: [...odd, ...wild],
    ...(astray && { astray }),
    ...(fitted && { slips: fitted }),
  };
}

/** Speed that the motor has at this position, rpm, by its plate. */
const motorRpm = ({ motor }: Drive, { steps }: Position): number =>
  steps.reduce((rpm, step) => (step.kind === "motor" ? rpm * step.factor : rpm), motor.fastestRpm);

/** The most that a reading, or a speed by ratio alone, may be over the ratio: the motor's rise when nothing loads it. */
export const riseAt = (drive: Drive, position: Position): number => noLoadShare(drive.motor, motorRpm(drive, position));

function readPlaces(drive: Drive): Here[] {
  return positions(drive).flatMap((position): Here[] => {
    const byRatio = drive.motor.fastestRpm * position.ratio;
    const place = placeOf(position);
    const readings = drive.tachometer.flatMap((reading, index) =>
      placeOf(reading) === place ? [{ rpm: reading.rpm, share: reading.rpm / byRatio, index }] : [],
    );
    return readings.length === 0 ? [] : [{ position, readings }];
  });
}

const readingsOf = (places: readonly Here[], { tachometer }: Drive): TachometerReading[] => {
  const kept = new Set(places.flatMap(({ readings }) => readings.map(({ index }) => index)));
  return tachometer.filter((_, index) => kept.has(index));
};

const tooFast = (share: number, rise: number): boolean => share > rise * (1 + 1e-9);
const tooSlow = (share: number): boolean => share < 1 - SUSPICIOUS_SLIP;

function oddity({ position, readings }: Here, drive: Drive): DoubtfulReading["why"] | undefined {
  const shares = readings.map(({ share }) => share);
  const rise = riseAt(drive, position);
  if (Math.max(...shares) / Math.min(...shares) > 1 + WILD_SHARE) return "contradict one another";
  if (shares.some((share) => tooFast(share, rise))) return "too fast";
  return shares.some(tooSlow) ? "too slow" : undefined;
}

function doubtful({ position, readings }: Here, why: DoubtfulReading["why"], expectedRpm: number): DoubtfulReading {
  const off = (rpm: number) => Math.abs(Math.log(rpm / expectedRpm));
  const worst = readings.reduce((so, one) => (off(one.rpm) > off(so.rpm) ? one : so));
  return { name: position.name, rpms: readings.map(({ rpm }) => rpm), expectedRpm, why, reading: worst.index };
}

function allOneWay(places: readonly Here[], drive: Drive): Astray | undefined {
  const all = places.flatMap(({ position, readings }) =>
    readings.map(({ share }) => ({ share, fast: tooFast(share, riseAt(drive, position)) })),
  );
  if (all.length === 0 || !(all.every(({ fast }) => fast) || all.every(({ share }) => tooSlow(share))))
    return undefined;
  const shares = all.map(({ share }) => share);
  return { least: Math.min(...shares), most: Math.max(...shares) };
}
