import { largestOf } from "../quantity/extremes.js";
import { inWords, parseLength } from "../quantity/length.js";
import { splitUnit } from "../quantity/number.js";
import { inEveryTongue } from "../words/say.js";
import type { Key } from "../words/words.generated.js";
import { MOST } from "./bounds.js";
import { closest } from "./closest.js";
import type { Context, Raw } from "./context.js";
import { effectiveDiameter, type PulleyMeasure, veeSections } from "./effectiveDiameter.js";
import type { LengthText } from "./fields.js";
import type { Belt, BeltKind, Cover, Drive, Motor, Stage, Step } from "./machine.js";
import type { Path } from "./problem.js";
import { usualLabel } from "./stepLabel.js";

/** What else belts are called (common practice). */
const otherNames: readonly (readonly [BeltKind, RegExp])[] = [
  ["vee", /^v\b|v-|wedge|^[zabm]$/i],
  ["toothed", /tooth|timing|synchron|cog/i],
  ["round", /round|cord|o-?ring/i],
  ["flat", /flat|leather/i],
];
const beltExamples: Readonly<Record<BeltKind, string>> = {
  vee: "write vee, or vee, A with its section",
  toothed: "write toothed, 5 mm with its pitch",
  round: "write round, 5 mm with its thickness",
  flat: "write flat, 2 mm with its thickness",
};

const beltKinds: readonly BeltKind[] = ["round", "vee", "flat", "toothed"];

export function assembleDrive(drive: Raw<"drive">, context: Context): Drive {
  const { motor, speedStage } = readMotor(drive.motor, context);
  const plain = drive.belt === undefined ? undefined : readBelt(drive.belt, ["drive", "belt"], context);
  const belt = plain && { ...plain, ...(drive.stretch !== undefined && { stretch: drive.stretch }) };
  const stages = [
    ...speedStage,
    ...drive.stages.map((stage, index) => readStage(stage, belt, ["drive", "stages", index], context)),
  ];
  judgeBareSteps(drive.stages, context);
  const ways = stages.reduce((product, { steps }) => product * steps.length, 1);
  if (ways > MOST.positions)
    context.error(
      ["drive", "stages"],
      "too-many",
      `steps of ${stages.length} stages make ${ways} positions, more than ${MOST.positions}`,
      "give only the steps that belts and gears can truly be put on",
    );
  return {
    motor,
    ...(belt && { belt }),
    stages,
    ...(drive.reverses !== undefined && { reverses: drive.reverses }),
    ...(drive.clutch !== undefined && { clutch: drive.clutch }),
    ...(drive.cover && { cover: readCover(drive.cover, context) }),
    tachometer: (drive.tachometer ?? []).map(({ position, speed }, index) => ({
      labels: readLabels(
        Array.isArray(position) ? position : [position],
        stages,
        ["drive", "tachometer", index, "position"],
        context,
      ),
      rpm: speed,
    })),
  };
}

/** A motor with several speeds becomes a first stage whose steps are its speeds. */
function readMotor(given: Raw<"drive">["motor"], { error }: Context): { motor: Motor; speedStage: Stage[] } {
  const path = ["drive", "motor"];
  const { speed, speeds, mains, by } = given;
  if (speed === undefined && speeds === undefined)
    error(path, "missing", "motor has no speed", "add speed: 1425 rpm, as on its plate");
  if (speed !== undefined && speeds !== undefined)
    error(path, "two-forms", "motor has both speed and speeds", "keep the one that is true");
  const ends =
    speeds === undefined ? (Array.isArray(speed) ? speed : [speed ?? 1, speed ?? 1]) : [1, largestOf(speeds)];
  const [slowestRpm = 1, fastestRpm = 1] = speeds === undefined ? ends : [ends[1], ends[1]];
  if (slowestRpm > fastestRpm)
    error(
      [...path, "speed"],
      "backwards",
      "the motor's slowest speed comes after its fastest",
      "write the slower one first",
    );
  if (by !== undefined && mains !== undefined)
    error([...path, "mains"], "two-forms", `a ${by} drive knows no mains`, "leave mains out");
  const twice = speeds?.findIndex((one, index) => speeds.indexOf(one) !== index) ?? -1;
  if (twice >= 0)
    error(
      [...path, "speeds", twice],
      "same-speed",
      `the motor has ${speeds?.[twice]} rpm twice`,
      "give each of its speeds once, as on its plate; for a single one write speed:",
    );
  const hertz = mains === undefined ? undefined : Number.parseInt(String(mains), 10);
  const steps = (speeds ?? []).map((rpm): Step => ({ label: String(rpm), kind: "motor", factor: rpm / fastestRpm }));
  return {
    motor: { slowestRpm, fastestRpm, ...(hertz !== undefined && { hertz }), ...(by !== undefined && { by }) },
    speedStage: steps.length > 1 ? [{ name: "motor speed", steps }] : [],
  };
}

function readCover(cover: NonNullable<Raw<"drive">["cover"]>, { mm, said, error }: Context): Cover {
  const path = ["drive", "cover"];
  const [width, height] = [mm(cover.width), mm(cover.height)];
  const corner = cover.corner === undefined ? 0 : mm(cover.corner);
  if (width < 60 || height < 50)
    error(
      path,
      "too-small",
      "a card this small has no room for figures",
      `give at least ${said(60, 0)} × ${said(50, 0)}, and check the unit`,
    );
  else if (corner < 0 || corner > Math.min(width, height) / 2)
    error(
      [...path, "corner"],
      "bad-value",
      "the corner's radius is larger than the card",
      "give at most half its width",
    );
  const holes = (cover.holes ?? []).map(([x, y, diameter], index) => {
    const hole = { x: mm(x), y: mm(y), diameter: mm(diameter) };
    if (hole.x > width || hole.y > height)
      error(
        [...path, "holes", index],
        "bad-value",
        "the hole lies off the card",
        "measure it from the top left corner",
      );
    return hole;
  });
  return { width, height, corner, holes };
}

function readBelt(text: string, path: Path, { units, error }: Context): Belt | undefined {
  const [kind = "", size] = text.split(",").map((part) => part.trim());
  if (!beltKinds.includes(kind as BeltKind)) {
    const nearest = otherNames.find(([, pattern]) => pattern.test(kind))?.[0] ?? closest(kind, beltKinds);
    error(
      path,
      "unknown-word",
      `belt cannot be "${kind}"`,
      nearest
        ? `did you mean "${nearest}"? ${beltExamples[nearest as BeltKind]}`
        : `it is one of ${beltKinds.join(", ")}; ${beltExamples.vee}`,
    );
    return undefined;
  }
  const section = veeSections.find((one) => one === size?.toUpperCase());
  if (kind === "vee" && section !== undefined) return { kind, section };
  const mm = size === undefined || splitUnit(size) === undefined ? undefined : parseLength(size, units);
  return { kind: kind as BeltKind, ...(mm !== undefined && { size: mm }) };
}

function readStage(
  stage: Raw<"drive">["stages"][number],
  usual: Belt | undefined,
  path: Path,
  context: Context,
): Stage {
  const { mm, said, error } = context;
  const own = stage.belt === undefined ? undefined : readBelt(stage.belt, [...path, "belt"], context);
  const steps = stage.steps.map((step, index) =>
    readStep(step, usualLabel(index, stage.steps.length), own ?? usual, [...path, "steps", index], context),
  );
  const labels = new Set<string>();
  for (const [index, { label }] of steps.entries()) {
    if (labels.has(label))
      error(
        [...path, "steps", index],
        "same-name",
        `two steps of "${stage.name}" are labelled "${label}"`,
        "give each a label of its own",
      );
    labels.add(label);
  }
  const centres = stage.centres === undefined ? undefined : mm(stage.centres);
  const widest = largestOf(steps.map((step) => (step.kind === "belt" ? (step.driver + step.driven) / 2 : 0)));
  if (centres !== undefined && centres <= widest)
    error(
      [...path, "centres"],
      "pulleys-touch",
      `the pulleys of "${stage.name}" would touch at this distance`,
      `measure the shafts from middle to middle; it is more than ${said(widest, 1)}`,
    );
  return {
    name: stage.name,
    ...(stage.centres !== undefined && { centres: mm(stage.centres) }),
    ...(stage.crossed && { crossed: true }),
    ...(stage.idler && { idler: true }),
    ...(own && { belt: own }),
    steps,
  };
}

/** Whether the name of a step begins with one of these words, in any language that paper speaks. */
const begins = (label: string, keys: readonly Key[]): boolean =>
  keys.flatMap(inEveryTongue).some((word) => new RegExp(`^${word}(?![\\p{L}\\p{N}])`, "iu").test(label));

/** A coupling of one to one, or a back gear out of mesh: the speed is handed on as it is. */
const isIdle = ({ label = "" }: RawStep) =>
  begins(label, ["step labels.open", "step labels.open otherwise", "step labels.direct"]);

/** A coupling in gear hands the speed on as well; but beside a step that does so already it is a back gear in mesh. */
const isCoupled = ({ label = "" }: RawStep, others: readonly RawStep[]) =>
  begins(label, ["step labels.engaged"]) && !others.some(isIdle);

/** A step of which neither pulleys nor gears are told would pass for a coupling, its speeds as wrong as the pulleys are unlike. Of a
 *  drive without any there is no doubt. */
function judgeBareSteps(stages: Raw<"drive">["stages"], { error }: Context): void {
  const isBare = ({ driver, driven, teeth }: RawStep) => (driver ?? driven ?? teeth) === undefined;
  if (stages.every(({ steps }) => steps.every(isBare))) return;
  for (const [at, { name, steps }] of stages.entries())
    for (const [index, step] of steps.entries())
      if (isBare(step) && !isIdle(step) && !isCoupled(step, steps))
        error(
          ["drive", "stages", at, "steps", index],
          "missing",
          `the step has neither pulleys nor gears, in "${name}"`,
          begins(step.label ?? "", ["step labels.engaged"])
            ? "add teeth: of the gears in mesh, [driver, driven] for each pair; the other step hands the speed on as it is"
            : "add driver: and driven:, or teeth:; of a coupling or a back gear out of mesh write label: direct or label: open",
        );
}

type RawStep = Raw<"drive">["stages"][number]["steps"][number];

function readStep(step: RawStep, usual: string, belt: Belt | undefined, path: Path, context: Context): Step {
  const { error } = context;
  const label = step.label ?? usual;
  if (step.teeth !== undefined) {
    if (step.driver !== undefined || step.driven !== undefined)
      error(path, "two-forms", "a step is either pulleys or gears", "keep driver and driven, or teeth");
    return { label, kind: "gears", pairs: step.teeth.map(gearPair) };
  }
  if (step.driver === undefined && step.driven === undefined) return { label, kind: "direct" };
  if (step.driver === undefined || step.driven === undefined) {
    const missing = step.driver === undefined ? "driver" : "driven";
    error(path, "missing", `the step has no ${missing}`, `add ${missing}:, the effective diameter of the other pulley`);
  }
  const driver = readPulley(step.driver, belt, [...path, "driver"], context);
  const driven = readPulley(step.driven, belt, [...path, "driven"], context);
  return {
    ...{ label, kind: "belt", driver: driver.effective, driven: driven.effective },
    ...(driver.by && { driverBy: driver.by }),
    ...(driven.by && { drivenBy: driven.by }),
  };
}

/** Wheels between the first and the last only turn the other way. */
const gearPair = (wheels: readonly number[]) => {
  const idlers = wheels.length - 2;
  return { driver: wheels[0] ?? 1, driven: wheels.at(-1) ?? 1, ...(idlers > 0 && { idlers }) };
};

type RawPulley = RawStep["driver"];

function readPulley(
  given: RawPulley,
  belt: Belt | undefined,
  path: Path,
  { mm, said, units, error, warn }: Context,
): { readonly effective: number; readonly by?: PulleyMeasure } {
  if (given === undefined) return { effective: 1 };
  const judged = (effective: number): number => {
    const small = effective < usualPulleys.least;
    if (small || effective > usualPulleys.largest)
      (effective < possiblePulleys.least || effective > possiblePulleys.largest ? error : warn)(
        path,
        small ? "too-small" : "too-large",
        `a pulley of ${said(effective)} is unusual on a small machine`,
        `write the unit beside it, and mind the decimal point: a bare number is in ${inWords[units]} here`,
      );
    return effective;
  };
  if ("value" in given) return { effective: judged(mm(given)) };
  const measures = pulleyMeasures.filter((by) => given[by] !== undefined);
  const [by] = measures;
  if (by === undefined || measures.length > 1) {
    error(path, "two-forms", "a pulley is given by one measure", `give one of ${pulleyMeasures.join(", ")}`);
    return { effective: 1 };
  }
  const size = by === "teeth" ? (given.teeth ?? 1) : mm(given[by] as LengthText);
  const found = effectiveDiameter({ by, size }, belt);
  if (typeof found === "number" && found > 0) return { effective: judged(found), by: { by, size } };
  if (typeof found === "number")
    error(path, "bad-value", "the belt is thicker than the pulley", "check the unit and the belt's size");
  else error(path, "missing", "the effective diameter cannot be known from this", `give ${found.lacks}`);
  return { effective: 1 };
}

/** Diameters, mm, of a small machine's pulleys, from a toy motor's to a flywheel's; and those beyond which there are none, even
 *  where only their ratio was written down. Common practice. */
const usualPulleys = { least: 3, largest: 1000 };
const possiblePulleys = { least: 0.1, largest: 3000 };

const pulleyMeasures = ["outside", "overBelt", "string", "stringOver", "teeth"] as const;

/** One label for each stage that offers a choice, in the stages' order. */
function readLabels(labels: readonly string[], stages: readonly Stage[], path: Path, { error }: Context): string[] {
  const choices = stages.filter(({ steps }) => steps.length > 1);
  if (labels.length !== choices.length) {
    const example = choices.map(({ steps }) => steps[0]?.label).join(", ");
    error(
      path,
      "unknown-position",
      `a position of this drive is ${choices.length === 0 ? "not named: there is no choice" : `one label from each of ${choices.map(({ name }) => name).join(", ")}`}`,
      `for example [${example}]`,
    );
    return [...labels];
  }
  for (const [index, stage] of choices.entries()) {
    const known = stage.steps.map(({ label }) => label);
    const label = labels[index] ?? "";
    if (known.includes(label)) continue;
    const nearest = closest(label, known);
    error(
      [...path, index],
      "unknown-label",
      `"${label}" is no step of ${stage.name}`,
      nearest ? `did you mean "${nearest}"?` : `there are ${known.join(", ")}`,
    );
  }
  return [...labels];
}
