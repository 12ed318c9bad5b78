import { origin } from "../../answers/supposed.js";
import type { CuttingSpeed } from "../../cutting/finding.js";
import { hazardOf } from "../../cutting/hazards.js";
import { namedMaterials } from "../../cutting/materials.js";
import { isThreaded, operations } from "../../cutting/operations.js";
import { fastestThreadedRpm } from "../../cutting/powerTapping.js";
import { cuttingSpeedUnit, rpmFor } from "../../cutting/rates.js";
import { sourceTitle } from "../../cutting/sources.js";
import type { Setting } from "../../dial/setting.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { beyondTravel } from "../../findings/beyondTravel.js";
import { dialToRead } from "../../findings/dialToRead.js";
import { beyondTheDrillLimit, byHandOnly, byHandWords, makesHoles } from "../../findings/drills.js";
import type { Findings, HandwheelFinding } from "../../findings/findings.js";
import { limitWords } from "../../findings/limits.js";
import { dialReading, doubtToRead, settingToRead } from "../../findings/settings.js";
import { figureOf, settingWords, unitsAt } from "../../findings/settingWords.js";
import { speedFor, speedForHole } from "../../findings/speedChoice.js";
import { usesOf } from "../../findings/uses.js";
import { drillNamed } from "../../quantity/drill.js";
import { formatBound, formatFixed, formatSize, trimmedSize } from "../../quantity/format.js";
import { inWords, parseLength } from "../../quantity/length.js";
import { threadNamed } from "../../thread/thread.js";
import { say } from "../../words/say.js";
import { wheelNamed } from "./inHand.js";
import type { Answered, AnswerTo, Asked } from "./protocol.js";

const nothing = (...said: string[]): Answered => ({ said, working: [] });
const unsound = nothing("The file has something to mend first.");

/** How to set a wheel for a distance that its dial is to go on by. */
export function distanceAnswer(
  findings: Findings | undefined,
  { wheel, distance }: Asked<"distance">,
): AnswerTo<"distance"> {
  if (findings === undefined) return unsound;
  const found = wheelNamed(findings, wheel);
  if (found === undefined) return nothing("Choose a handwheel.");
  const units = unitsAt(found, findings.machine.units);
  const mm = parseLength(distance, units);
  if (mm === undefined || mm < 0)
    return nothing(`Write a distance, as ${units === "mm" ? "12.5" : "1/2"}; a bare number is in ${inWords[units]}.`);
  const setting = settingToRead(found, mm);
  const { reading } = found;
  if (setting === undefined || reading === undefined) return nothing(`The feed of ${wheel} is not known yet.`);
  const doubt = doubtToRead(found, mm);
  const old = dialToRead(found)?.old !== undefined;
  const beyond = beyondTravel(found, mm / reading.perTurn, units);
  return {
    said: [
      settingWords(found, setting),
      ...betweenLines(found, setting),
      ...(doubt === undefined
        ? ["how well the feed is known nothing tells: measure the part"]
        : [`± ${formatBound(doubt, units)}, come to from one side${old ? "; reading the old dial comes on top" : ""}`]),
      ...(old ? ["the dial counted from 0; where it cannot be set there, add to what it reads"] : []),
      ...(beyond === undefined ? [] : [beyond]),
    ],
    working: [
      `${formatSize(mm, units, 3)} ÷ ${formatSize(reading.perTurn, units, 5)} a turn = ${formatFixed(setting.turns, 3)} turns`,
      measureWords(found, reading.factor),
    ],
    turns: setting.turns,
    from: [{ quantity: "feed", of: wheel }, ...(found.dial ? [{ quantity: "dial", of: wheel }] : [])],
  };
}

/** Of what the distance was asked: what a new dial reads; of one that the wheel had, which may read another, or without any the file's
 *  own measure. */
function measureWords({ dial }: HandwheelFinding, factor: 1 | 2): string {
  if (dial === undefined)
    return factor === 2
      ? "Asked is what the diameter changes by: twice what the slide moves."
      : "Asked is what the slide moves.";
  return factor === 2
    ? "The dial reads the diameter: twice what the slide moves."
    : "The dial reads what the slide moves.";
}

/** Where a distance lies that no tenth of a division is, and what was told is the nearest one. */
function betweenLines(wheel: HandwheelFinding, setting: Setting): string[] {
  const { dial } = wheel;
  const told = dialReading(wheel, setting, false);
  if (dial === undefined || told === undefined) return [];
  const { divisionValue, unit } = dial.chosen;
  const divisions = told / divisionValue - setting.error / dial.divisionWorth;
  if (Math.abs(setting.error) < LEAST_BESIDE * dial.divisionWorth || divisions < 0) return [];
  const line = Math.floor(divisions);
  const [low, high] = [line, line + 1].map((one) => figureOf(dial, one * divisionValue));
  const exact = trimmedSize(divisions * divisionValue, unit, 4);
  return [`that is to the nearest tenth of a division: ${exact} lies between the lines ${low} and ${high}`];
}

/** Parts of a division that an eye may wonder about. */
const LEAST_BESIDE = 0.03;

export const choices = (findings: Findings | undefined): AnswerTo<"choices"> => ({
  materials: [...new Set([...(findings?.machine.work.materials ?? []), ...namedMaterials()])],
  operations: byUse(findings).map(({ name }) => name),
  holes: operations.map(({ name }) => name).filter(makesHoles),
});

/** What its kind of machine does; what it is used for above all comes first. */
function byUse(findings: Findings | undefined) {
  if (findings === undefined) return operations;
  const [use, ...others] = usesOf(findings.machine);
  // A lathe drills too; a drill does nothing else.
  const done = [use, ...others].includes("turning") ? operations : operations.filter(({ like }) => like === "drilling");
  return [...done.filter(({ name }) => name === use), ...done.filter(({ name }) => name !== use)];
}

/** How a speed is known; what it may be at most where nobody measured it. */
const knownWords = ({ from, rpm, highestRpm }: SpeedFinding): string => {
  if (from === "measured") return "measured with a tachometer";
  const most = formatFixed(highestRpm, 0);
  return `${origin[from]}, not measured${most === formatFixed(rpm, 0) ? "" : `: up to ${most} rpm`}`;
};

/** What the material asks for, as the belt is asked for. */
function bandWords(band: CuttingSpeed, diameter: number): string {
  const { slowest, most, rpm } = band;
  const [from, to] = rpm ? [rpm.slowest, rpm.most] : [rpmFor(slowest, diameter), rpmFor(most, diameter)];
  // A published tapping speed is for a machine that reverses by itself.
  const hand = fastestThreadedRpm(band);
  return to > hand
    ? `no faster than ${formatFixed(hand, 0)} rpm, at which a hand still reverses in time`
    : `${[...new Set([from, to].map((rpm) => formatFixed(rpm, 0)))].join(" to ")} rpm serves`;
}

/** Where the belt goes for a cut. */
export function speedAnswer(
  findings: Findings | undefined,
  { material, operation, diameter }: Asked<"speed">,
): Answered {
  if (findings === undefined) return unsound;
  const { machine, drive } = findings;
  const { units } = machine;
  const holes = makesHoles(operation);
  const threaded = isThreaded(operation);
  const named = threaded ? threadNamed(diameter)?.major : holes ? drillNamed(diameter) : undefined;
  const mm = named ?? parseLength(diameter, units);
  if (mm === undefined || !(mm > 0))
    return nothing(
      `Write a diameter, as ${units === "mm" ? "16" : "5/8"}${threaded ? ", or a thread’s name, as M8 or 1/4-20 UNC" : holes ? ", or a drill’s name, as no. 21 or letter F" : ""}; a bare number is in ${inWords[units]}.`,
    );
  if (holes && !isThreaded(operation) && beyondTheDrillLimit(mm, machine.limits)) {
    const [size, limit] = [mm, machine.limits.largestDrill ?? 0].map((one) => trimmedSize(one, units));
    // As a job is told that asks for such a hole.
    return nothing(`${say("plan findings.beyond the drill limit", { diameter: size ?? "", limit: limit ?? "" })}.`);
  }
  if (drive === undefined) return nothing("The file has no belts yet.");
  if (byHandOnly(operation, machine)) return nothing(`${byHandWords(machine)}.`);
  const cut = { material, operation, diameter: mm };
  const choice = holes ? speedForHole(cut, findings) : speedFor(cut, findings);
  const hazard = hazardOf(material);
  const minded = hazard === undefined ? [] : [hazard.caution];
  if (choice === undefined)
    return nothing(`No cutting speed is known for ${operation} ${material} with ${machine.work.tool}.`, ...minded);
  const { speed, rpm, band, verdict, heldBy } = choice;
  if (speed === undefined && threaded && heldBy === "hand")
    return nothing(`${byHandWords(machine)}: no position is slow enough to reverse a tap in time.`, ...minded);
  const limit = speed && limitWords(speed, machine.limits);
  const unit = cuttingSpeedUnit[units];
  const speedIn = (metresPerMinute: number) => formatFixed(metresPerMinute / unit.metresPerMinute, 0);
  return {
    said: [
      speed === undefined || rpm === undefined
        ? `${threaded ? byHandWords(machine) : "No position"}: ${verdict}.`
        : `Belt on ${speed.position.name}: ${rpmWords({ ...speed, rpm, slowestRpm: rpm })} rpm`,
      ...(speed === undefined ? [] : [knownWords(speed)]),
      `${band.operation} ${material}: ${bandWords(band, mm)}`,
      ...(speed === undefined || verdict === "in the band" ? [] : [verdict]),
      ...(limit ? [limit] : []),
      ...minded,
    ],
    working: [
      `${speedIn(band.slowest)} to ${speedIn(band.most)} ${unit.name} for ${material} with ${band.tool}`,
      ...(rpm === undefined
        ? []
        : [
            `at ${formatSize(mm, units, 2)} and ${formatFixed(rpm, 0)} rpm: ${speedIn(choice.metresPerMinute ?? 0)} ${unit.name}`,
          ]),
      ...band.sources.map((source) => `source: ${sourceTitle(source)}`),
    ],
    ...(speed && { from: [{ quantity: "speed", of: speed.position.name }] }),
  };
}
