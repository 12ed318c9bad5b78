import { effectiveDiameter, type PulleyMeasure, type VeeSection, veeSections } from "../machine/effectiveDiameter.js";
import type { Belt, BeltKind, Drive, Stage, Step, Units } from "../machine/machine.js";
import { largestOf } from "../quantity/extremes.js";
import { trimmed } from "../quantity/format.js";
import { fromMm, parseLength } from "../quantity/length.js";
import { parseSpeed } from "../quantity/speed.js";
import type { DriveFinding, SpeedFinding } from "./finding.js";
import { type Judged, judge } from "./judge.js";
import { onOtherMains } from "./motor.js";
import { positions } from "./positions.js";
import { speeds, unmeasured } from "./speeds.js";

export type Changed = { readonly drive: Drive /** What was changed, in words. */; readonly words: string };
export type Refused = { readonly what: string; readonly remedy: string };

/** A drive with one thing changed, from words such as "60 Hz", "motor 1725 rpm", "motor belt 60 to 150",
 *  "spindle belt B 70 to 60" or "belt flat, 3 mm". Lengths without a unit are in `units`. */
export function changed(drive: Drive, text: string, units: Units): Changed | Refused {
  const words = text.trim().replace(/\s+/g, " ");
  const hertz = /^(?:mains )?(50|60) ?Hz$/i.exec(words);
  if (hertz !== null) return otherMains(drive, Number(hertz[1]), units);
  const motor = /^motor (.+)$/i.exec(words);
  const rpm = motor === null ? undefined : parseSpeed(motor[1] ?? "");
  if (rpm !== undefined && rpm > 0) {
    const share = drive.motor.slowestRpm / drive.motor.fastestRpm;
    return {
      drive: { ...drive, motor: { ...drive.motor, fastestRpm: rpm, slowestRpm: rpm * share } },
      words: `motor ${rpm} rpm`,
    };
  }
  const belt = /^belt (round|vee|flat|toothed)(?:\s*,\s*(.+))?$/i.exec(words);
  if (belt !== null) return otherBelt(drive, (belt[1] ?? "").toLowerCase() as BeltKind, belt[2], units);
  return otherPulley(drive, words, units);
}

/** What may be asked, by the drive's own names, sizes and unit. */
function formsOf({ motor, stages }: Drive, units: Units): string {
  const belts = stages.flatMap((stage) => exampleOf(stage, units) ?? []).slice(0, 1);
  const own = [
    ...(motor.by === undefined
      ? [`${motor.hertz === 60 ? 50 : 60} Hz`, `motor ${trimmed(motor.fastestRpm, 0)} rpm`]
      : []),
    ...belts,
    units === "mm" ? "belt flat, 3 mm" : "belt flat, 1/8 in",
  ].map((one) => `"${one}"`);
  return `write for example ${own.slice(0, -1).join(", ")} or ${own.at(-1)}, with figures of your own; several with ; between them`;
}

/** A belt's first step with the pulleys that it has; undefined for gears. */
function exampleOf({ name, steps }: Stage, units: Units): string | undefined {
  const step = steps.find(({ kind }) => kind === "belt");
  if (step?.kind !== "belt") return undefined;
  const [driver, driven] = [step.driver, step.driven].map((mm) => trimmed(fromMm(mm, units), 3));
  return `${[name, step.label].filter((word) => word !== "").join(" ")} ${driver} to ${driven}`;
}

function otherMains(drive: Drive, hertz: number, units: Units): Changed | Refused {
  const { motor } = drive;
  if (motor.by !== undefined) return { what: `a ${motor.by} drive knows no mains`, remedy: formsOf(drive, units) };
  if (motor.slowestRpm !== motor.fastestRpm)
    return { what: "a variable motor does not follow the mains", remedy: 'give its new top speed: "motor 3000 rpm"' };
  const own = motor.hertz ?? (hertz === 60 ? 50 : 60);
  const fastest = onOtherMains(motor.fastestRpm, own, hertz);
  if (fastest === undefined)
    return {
      what: `${motor.fastestRpm} rpm is no mains motor's speed at ${own} Hz`,
      remedy: "give drive.motor.mains, or the new speed",
    };
  const assumed = motor.hertz === undefined ? ` (plate taken to be for ${own} Hz: drive.motor.mains is not given)` : "";
  return {
    drive: { ...drive, motor: { ...motor, hertz, fastestRpm: fastest, slowestRpm: fastest } },
    words: `mains of ${hertz} Hz${assumed}: motor ${fastest.toFixed(0)} rpm`,
  };
}

/** Effective diameters follow the belt where something else was measured. */
function otherBelt(drive: Drive, kind: BeltKind, size: string | undefined, units: Units): Changed | Refused {
  const section = veeSections.find((one) => one === size?.trim().toUpperCase());
  const mm = size === undefined ? undefined : parseLength(size, units);
  const belt: Belt = {
    kind,
    ...(kind === "vee" && section !== undefined ? { section: section as VeeSection } : {}),
    ...(mm !== undefined && { size: mm }),
  };
  let lacks: string | undefined;
  const again = (diameter: number, by: PulleyMeasure | undefined): number => {
    if (by === undefined) return diameter;
    const found = effectiveDiameter(by, belt);
    if (typeof found === "number") return found;
    lacks = found.lacks;
    return diameter;
  };
  const stages = drive.stages.map((stage): Stage => {
    if (stage.belt !== undefined) return stage;
    return {
      ...stage,
      steps: stage.steps.map((step) =>
        step.kind === "belt"
          ? { ...step, driver: again(step.driver, step.driverBy), driven: again(step.driven, step.drivenBy) }
          : step,
      ),
    };
  });
  if (lacks !== undefined) return { what: "that belt's effective diameters cannot be known", remedy: `give ${lacks}` };
  const measured = drive.stages.some(({ steps }) => steps.some((s) => s.kind === "belt" && (s.driverBy ?? s.drivenBy)));
  const note = measured
    ? ""
    : ": the file gives effective diameters, so speeds by ratio stay; measure where the new belt runs";
  return {
    drive: { ...drive, belt, stages },
    words: `belt ${kind}${size === undefined ? "" : `, ${size.trim()}`}${note}`,
  };
}

function otherPulley(drive: Drive, words: string, units: Units): Changed | Refused {
  const sizes = /^(.*\S) ([\d.,/ -]+(?: ?(?:mm|in|inch|"))?) to ([\d.,/ -]+(?: ?(?:mm|in|inch|"))?)$/i.exec(words);
  const [driver, driven] = [sizes?.[2], sizes?.[3]].map((size) =>
    size === undefined ? undefined : parseLength(size.trim(), units),
  );
  const named = sizes?.[1]?.toLowerCase() ?? "";
  if (driver === undefined || driven === undefined || !(driver > 0 && driven > 0))
    return { what: `"${words}" is no change of a drive`, remedy: formsOf(drive, units) };
  for (const [index, stage] of drive.stages.entries()) {
    const name = stage.name.toLowerCase();
    if (named !== name && !named.startsWith(`${name} `)) continue;
    const label = named.slice(name.length).trim();
    const place =
      label === "" && stage.steps.length === 1 ? 0 : stage.steps.findIndex((one) => one.label.toLowerCase() === label);
    const step = stage.steps[place];
    if (step === undefined || step.kind !== "belt") {
      const example = exampleOf(stage, units);
      if (example === undefined || step !== undefined)
        return {
          what: `"${step?.label || stage.name}" has no pulleys, and teeth cannot be supposed`,
          remedy: `change them in a copy of the file; else ${formsOf(drive, units)}`,
        };
      return {
        what: `"${words}" does not say which pulleys of "${stage.name}" change`,
        remedy: `name the step too, with its two new pulleys, as "${example}"`,
      };
    }
    const swapped: Step = { label: step.label, kind: "belt", driver, driven };
    const steps = stage.steps.map((one, at) => (at === place ? swapped : one));
    const stages = drive.stages.map((one, at) => (at === index ? { ...stage, steps } : one));
    return {
      drive: { ...drive, stages },
      words: `${stage.name}${step.label === "" ? "" : ` ${step.label}`}: ${sizes?.[2]?.trim()} to ${sizes?.[3]?.trim()}`,
    };
  }
  const belted = drive.stages.filter((stage) => exampleOf(stage, units) !== undefined);
  if (belted.length === 0) return { what: "the drive has no belt", remedy: formsOf(drive, units) };
  return {
    what: `no belt is called "${sizes?.[1]}"`,
    remedy: `there are ${belted.map(({ name }) => `"${name}"`).join(", ")}; ${formsOf(drive, units)}`,
  };
}

/** Speeds of the changed drive. A position whose motor, ratio and belt stay keeps its measured speed; the others go by
 *  ratio, less the slip that was measured there, or that the other sound readings showed, unless the belt is another: its slip is not known. */
export function speedsAfter(before: Drive, after: Drive): DriveFinding {
  const found = speeds(before);
  const old = new Map(found.speeds.map((speed) => [speed.position.name, speed]));
  const sameBelt = JSON.stringify(before.belt) === JSON.stringify(after.belt);
  const { slips, ...rest } = judge(before);
  // A reading that was doubted at the old ratio says nothing of the new one.
  const judged: Judged = { ...rest, doubtful: [], ...(sameBelt && slips && { slips }) };
  const then = positions(after).map((position): SpeedFinding => {
    const was = old.get(position.name);
    const byRatioRpm = after.motor.fastestRpm * position.ratio;
    const same = sameBelt && was !== undefined && Math.abs(was.byRatioRpm / byRatioRpm - 1) < 1e-9;
    if (same) return { ...was, position };
    const speed = afterSlip(was, unmeasured(position, after, judged), sameBelt);
    // Were the doubted reading true, it would rise and fall with the ratio.
    const share = was?.doubtful ? largestOf(was.doubtful) / was.byRatioRpm : 0;
    return { ...speed, highestRpm: Math.max(speed.highestRpm, byRatioRpm * share) };
  });
  const { doubtful, astray } = found;
  return {
    speeds: then.sort((a, b) => a.rpm - b.rpm),
    ...(judged.slips && { stageSlips: judged.slips.stages }),
    ...(doubtful && { doubtful }),
    ...(astray && { astray }),
  };
}

/** A position's own slip stays with it: with that of the others a change of some per cent could seem to go the other way. */
function afterSlip(was: SpeedFinding | undefined, now: SpeedFinding, sameBelt: boolean): SpeedFinding {
  if (!sameBelt || was?.slip === undefined) return now;
  const share = (now.byRatioRpm * (1 - was.slip)) / now.rpm;
  const [rpm, slowestRpm] = [now.rpm * share, now.slowestRpm * share];
  return { ...now, rpm, slowestRpm, highestRpm: Math.max(now.highestRpm, rpm) };
}
