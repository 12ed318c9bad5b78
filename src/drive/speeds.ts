import type { Drive, TachometerReading } from "../machine/machine.js";
import { largestOf } from "../quantity/extremes.js";
import { formatFixed } from "../quantity/format.js";
import type {
  Astray,
  DoubtfulReading,
  DriveFinding,
  DriveRemark,
  Position,
  SpeedFinding,
  StrayStep,
} from "./finding.js";
import { type Judged, judge, riseAt } from "./judge.js";
import { positions } from "./positions.js";
import { average, placeOf, rpmsByPlace } from "./readings.js";

/** All belts together slip no more than this where they are sound and tight. Common practice. */
const SOUND_SLIP = 0.05;

/** Spindle speed at every position, slowest first. A tachometer reading beats the ratio at its own position; several
 *  readings of one position are averaged, and with a variable motor they are taken at its fastest. Positions that were
 *  not measured lose the slip of the belts they use, as fitted to the readings; each groove pair has its own, so such a
 *  speed says `from: "slip"`. A doubtful reading serves nothing but the limits (`judge`). Without a sound reading the ratio
 *  alone counts. */
export function speeds(drive: Drive): DriveFinding {
  const all = positions(drive);
  const judged = judge(drive);
  const read = rpmsByPlace(judged.sound);
  const { slowestRpm, fastestRpm } = drive.motor;
  const found = all.map((position): SpeedFinding => {
    const here = read.get(placeOf(position));
    if (here === undefined) return unmeasured(position, drive, judged);
    const byRatioRpm = fastestRpm * position.ratio;
    const rpm = average(here);
    const highestRpm = largestOf(here);
    return {
      ...{ position, rpm, slowestRpm: (rpm * slowestRpm) / fastestRpm, highestRpm, byRatioRpm },
      ...{ from: "measured", slip: 1 - rpm / byRatioRpm },
    };
  });
  const slips = found.flatMap(({ slip }) => slip ?? []);
  const remarks = [
    ...judged.strays.map(strayRemark),
    ...(judged.astray
      ? [astrayRemark(judged.astray, drive)]
      : judged.doubtful.map((one) => doubtfulRemark(one, drive))),
    ...strayReadings(all, drive.tachometer),
  ];
  return {
    speeds: found.sort((a, b) => a.rpm - b.rpm),
    ...(judged.slips !== undefined && slips.length > 0 && { slip: average(slips), stageSlips: judged.slips.stages }),
    ...(remarks.length > 0 && { remarks }),
    ...(judged.doubtful.length > 0 && { doubtful: judged.doubtful }),
    ...(judged.astray && { astray: judged.astray }),
    ...(judged.strays.length > 0 && {
      strays: judged.strays.map(({ name, least, most }) => ({ name, least, most })),
    }),
  };
}

/** A position of `drive` without a sound reading of its own: by ratio, less the slip of the belts in use as `judged`. */
export function unmeasured(position: Position, drive: Drive, judged: Judged): SpeedFinding {
  const { slips, doubtful, astray, strays } = judged;
  const stray = strays.find(({ step }) => position.steps.includes(step));
  const { slowestRpm, fastestRpm } = drive.motor;
  const byRatioRpm = fastestRpm * position.ratio;
  const left = slips?.left(position.steps.map(({ kind }) => kind === "belt"));
  const rpm = byRatioRpm * (left ?? 1);
  const here = doubtful.find(({ name }) => name === position.name)?.rpms ?? [];
  const lift = judged.lift(position);
  // Slip was measured with the motor running light, as a tachometer finds it; the plate's speed was not. Where a reading of
  // this position, or of its steps, is in doubt, so is that slip; and more than sound belts slip is no rule for another one.
  const bySlip = left !== undefined && left >= 1 - SOUND_SLIP && here.length === 0 && lift === 1;
  const likely = bySlip ? rpm : byRatioRpm * riseAt(drive, position) * lift;
  return {
    ...{ position, rpm, slowestRpm: (rpm * slowestRpm) / fastestRpm, byRatioRpm },
    highestRpm: Math.max(likely, largestOf(here), byRatioRpm * Math.max(astray?.most ?? 0, stray?.most ?? 0)),
    from: astray || stray ? "unknown" : left === undefined ? "ratio" : "slip",
    ...(here.length > 0 && { doubtful: here }),
  };
}

const whole = (rpm: number): string => formatFixed(rpm, 0);

function doubtfulRemark(
  { name, rpms, expectedRpm, why, reading }: DoubtfulReading,
  { tachometer }: Drive,
): DriveRemark {
  const read = rpms.map(whole).join(" and ");
  const foretold = `the pulleys and gears give ${whole(expectedRpm)} rpm`;
  const what = {
    "contradict one another": `Position ${name}: the readings ${read} rpm contradict one another; ${foretold}`,
    "too fast": `Position ${name}: ${read} rpm was measured, ${foretold}, and a belt cannot gain speed`,
    "too slow": `Position ${name}: ${read} rpm was measured, ${foretold}, and that is more than a sound belt slips`,
    wild: `Position ${name}: ${read} rpm was measured, but the other readings foretell ${whole(expectedRpm)} rpm`,
  }[why];
  return {
    what: `${what}. ${rpms.length === 1 ? "The reading is" : "They are"} left out`,
    reading,
    factor: (tachometer[reading]?.rpm ?? expectedRpm) / expectedRpm,
  };
}

function astrayRemark(astray: Astray, { tachometer }: Drive): DriveRemark {
  const every = tachometer.length === 1 ? "The only tachometer reading is" : "All tachometer readings are";
  return {
    what: `${every} ${timesWords(astray)} the speed by motor and pulleys: the motor or a pulley is not what the file says${tachometer.length === 1 ? ", or the reading is wrong" : ""}. No speed is taken as known`,
    factor: Math.sqrt(astray.least * astray.most),
    // One reading alone may itself be what is wrong.
    ...(tachometer.length === 1 && { reading: 0 }),
  };
}

function strayRemark({ name, ...times }: StrayStep): DriveRemark {
  return {
    what: `All readings through ${name} are ${timesWords(times)} the speed by motor and pulleys: a pulley of it is not what the file says. No speed through it is taken as known`,
    factor: Math.sqrt(times.least * times.most),
  };
}

/** "about 2.00 times" or "0.40 to 0.52 times". */
function timesWords({ least, most }: Astray): string {
  const [from, to] = [least, most].map((share) => formatFixed(share, 2));
  return from === to ? `about ${to} times` : `${from} to ${to} times`;
}

function strayReadings(all: readonly Position[], readings: readonly TachometerReading[]): DriveRemark[] {
  const places = new Set(all.map(placeOf));
  return readings.flatMap((reading, index) =>
    places.has(placeOf(reading))
      ? []
      : [
          {
            what: `The tachometer reading at "${reading.labels.join(" ")}" is left out: no such position`,
            reading: index,
          },
        ],
  );
}
