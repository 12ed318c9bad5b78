import { parseLength } from "../quantity/length.js";
import { splitUnit } from "../quantity/number.js";
import { closest } from "./closest.js";
import type { Context, Raw } from "./context.js";
import type { Belt, BeltKind, Drive, Stage, Step } from "./machine.js";
import type { Path } from "./problem.js";

const beltKinds: readonly BeltKind[] = ["round", "vee", "flat", "toothed"];

export function assembleDrive(drive: Raw<"drive">, context: Context): Drive {
  const { error } = context;
  const speed = drive.motor.speed;
  const [slowestRpm, fastestRpm] = Array.isArray(speed) ? speed : [speed, speed];
  if (slowestRpm > fastestRpm)
    error(
      ["drive", "motor", "speed"],
      "backwards",
      "the motor's slowest speed comes after its fastest",
      "write the slower one first",
    );
  const belt = drive.belt === undefined ? undefined : readBelt(drive.belt, context);
  const stages = drive.stages.map((stage, index) => readStage(stage, ["drive", "stages", index], context));
  return {
    motor: { slowestRpm, fastestRpm },
    ...(belt && { belt }),
    stages,
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

function readBelt(text: string, { units, error }: Context): Belt | undefined {
  const [kind = "", size] = text.split(",").map((part) => part.trim());
  if (!beltKinds.includes(kind as BeltKind)) {
    const nearest = closest(kind, beltKinds);
    error(
      ["drive", "belt"],
      "unknown-word",
      `belt cannot be "${kind}"`,
      nearest ? `did you mean "${nearest}"?` : `it is one of ${beltKinds.join(", ")}`,
    );
    return undefined;
  }
  // A vee belt's size may be a letter (A, B, Z); only a length means something here.
  const mm = size === undefined || splitUnit(size) === undefined ? undefined : parseLength(size, units);
  return { kind: kind as BeltKind, ...(mm !== undefined && { size: mm }) };
}

function readStage(stage: Raw<"drive">["stages"][number], path: Path, context: Context): Stage {
  const { mm, error } = context;
  const steps = stage.steps.map((step, index) =>
    readStep(step, stage.steps.length > 1 ? letter(index) : "", [...path, "steps", index], context),
  );
  const labels = steps.map(({ label }) => label);
  for (const [index, label] of labels.entries())
    if (labels.indexOf(label) !== index)
      error(
        [...path, "steps", index],
        "same-name",
        `two steps of "${stage.name}" are labelled "${label}"`,
        "give each a label of its own",
      );
  return { name: stage.name, ...(stage.centres !== undefined && { centres: mm(stage.centres) }), steps };
}

const letter = (index: number): string => (index < 26 ? String.fromCharCode(65 + index) : String(index + 1));

function readStep(
  step: Raw<"drive">["stages"][number]["steps"][number],
  usual: string,
  path: Path,
  { mm, error }: Context,
): Step {
  const label = step.label ?? usual;
  if (step.teeth !== undefined) {
    if (step.driver !== undefined || step.driven !== undefined)
      error(path, "two-forms", "a step is either pulleys or gears", "keep driver and driven, or teeth");
    return { label, kind: "gears", pairs: step.teeth.map(([driver, driven]) => ({ driver, driven })) };
  }
  if (step.driver === undefined && step.driven === undefined) return { label, kind: "direct" };
  if (step.driver === undefined || step.driven === undefined) {
    const missing = step.driver === undefined ? "driver" : "driven";
    error(path, "missing", `the step has no ${missing}`, `add ${missing}:, the effective diameter of the other pulley`);
  }
  return { label, kind: "belt", driver: step.driver ? mm(step.driver) : 1, driven: step.driven ? mm(step.driven) : 1 };
}

/** One label for each stage that offers a choice, in the stages' order. */
function readLabels(labels: readonly string[], stages: readonly Stage[], path: Path, { error }: Context): string[] {
  const choices = stages.filter(({ steps }) => steps.length > 1);
  if (labels.length !== choices.length) {
    const example = choices.map(({ steps }) => steps[0]?.label).join(", ");
    error(
      path,
      "not-a-position",
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
