import type { Drive, Step, TachometerReading } from "../machine/machine.js";
import { largestOf, smallestOf } from "../quantity/extremes.js";
import type { Astray, DoubtfulReading, Position, StrayStep } from "./finding.js";
import { noLoadShare } from "./motor.js";
import { positions } from "./positions.js";
import { placeOf } from "./readings.js";
import { type SlipFinding, slipPerStage, WILD_SHARE } from "./slipPerStage.js";

/** Slip beyond this is a wrong number more often than a loose belt. Common practice. */
const SUSPICIOUS_SLIP = 0.15;
/** A reading may lie this far above what motor and pulleys can give: pulleys by a rule and a hand tachometer are each good
 *  to about 1 %. Own choice. */
const PULLEY_DOUBT = 0.02;
/** A reading further off than this is a mistake of reading or writing, and says nothing of a step or a motor: no pulley is
 *  taken for one so much larger. Own choice. */
const MISTAKEN = 4;

/** Readings that agree are within this factor of one another. Own choice. */
const ALIKE = 1.1;

/** What the tachometer's readings are worth. Only `sound` ones serve anything, and the slips are fitted to them alone. */
export type Judged = {
  readonly sound: readonly TachometerReading[];
  readonly doubtful: readonly DoubtfulReading[];
  readonly astray?: Astray;
  /** Steps that the readings through them say are not what the file says. */
  readonly strays: readonly (StrayStep & { readonly step: Step })[];
  readonly slips?: SlipFinding;
  /** By how much a position may be faster than an unloaded motor drives it by ratio, as doubtful readings of other positions
   *  suggest: a factor, 1 where none does. */
  readonly lift: (position: Position) => number;
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
    strays: astray ? [] : strayStepsOf(places, sound, drive),
    lift: liftBy(places, sound, drive),
  };
}

/** A reading that is too fast may mean that a step it ran through is not what the file says, unless a sound reading vouches
 *  for that step; it then lifts every position through it. Without a sound reading the motor itself may be what is wrong. */
function liftBy(places: readonly Here[], sound: readonly Here[], drive: Drive): Judged["lift"] {
  const vouched = new Set(sound.flatMap(({ position }) => position.steps));
  const fast = places
    .filter((here) => !sound.includes(here))
    .flatMap(({ position, readings }) =>
      readings.map(({ share }) => ({ position, factor: share / riseAt(drive, position) })),
    )
    .filter(({ factor }) => factor > 1 && factor < MISTAKEN);
  return (position) =>
    fast
      .filter(
        (reading) =>
          sound.length === 0 ||
          position.steps.some((step, at) => step === reading.position.steps[at] && !vouched.has(step)),
      )
      .reduce((most, { factor }) => Math.max(most, factor), 1);
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

const tooFast = (share: number, rise: number): boolean => share > rise * (1 + PULLEY_DOUBT);
const tooSlow = (share: number): boolean => share < 1 - SUSPICIOUS_SLIP;

function oddity({ position, readings }: Here, drive: Drive): DoubtfulReading["why"] | undefined {
  const shares = readings.map(({ share }) => share);
  const rise = riseAt(drive, position);
  if (largestOf(shares) / smallestOf(shares) > 1 + WILD_SHARE) return "contradict one another";
  if (shares.some((share) => tooFast(share, rise))) return "too fast";
  return shares.some(tooSlow) ? "too slow" : undefined;
}

function doubtful({ position, readings }: Here, why: DoubtfulReading["why"], expectedRpm: number): DoubtfulReading {
  const off = (rpm: number) => Math.abs(Math.log(rpm / expectedRpm));
  const worst = readings.reduce((so, one) => (off(one.rpm) > off(so.rpm) ? one : so));
  return { name: position.name, rpms: readings.map(({ rpm }) => rpm), expectedRpm, why, reading: worst.index };
}

/** Readings through one step at two positions or more that are off one way and alike speak for one another, and against the
 *  file: a pulley of that step is not what it says. None that a sound reading vouches for. */
function strayStepsOf(places: readonly Here[], sound: readonly Here[], drive: Drive): Judged["strays"] {
  const vouched = new Set(sound.flatMap(({ position }) => position.steps));
  return drive.stages.flatMap(({ name, steps }, at) =>
    steps.length < 2
      ? []
      : steps.flatMap((step) => {
          if (vouched.has(step)) return [];
          const through = places.filter(({ position }) => position.steps[at] === step);
          const shares = through.flatMap(({ readings }) => readings.map(({ share }) => share));
          const astray = allOneWay(through, drive);
          if (through.length < 2 || astray === undefined || astray.most / astray.least > ALIKE) return [];
          if (shares.some((share) => share > MISTAKEN || share < 1 / MISTAKEN)) return [];
          return [{ step, name: `step ${step.label} of ${name}`, ...astray }];
        }),
  );
}

function allOneWay(places: readonly Here[], drive: Drive): Astray | undefined {
  const all = places.flatMap(({ position, readings }) =>
    readings.map(({ share }) => ({ share, fast: tooFast(share, riseAt(drive, position)) })),
  );
  if (all.length === 0 || !(all.every(({ fast }) => fast) || all.every(({ share }) => tooSlow(share))))
    return undefined;
  const shares = all.map(({ share }) => share);
  return { least: smallestOf(shares), most: largestOf(shares) };
}
