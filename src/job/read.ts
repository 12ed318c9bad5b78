import { mind } from "../cutting/hazards.js";
import { findMaterial, namedMaterials, nearestMaterial } from "../cutting/materials.js";
import { readDocument } from "../machine/document.js";
import type { LengthText } from "../machine/fields.js";
import type { Path, Problem, Remark } from "../machine/problem.js";
import { asGiven, writtenAs } from "../machine/written.js";
import { type DrillName, drillNameIn } from "../quantity/drill.js";
import { inMm, roundIn } from "../quantity/length.js";
import { type Bar, isHoleStep, type Job } from "./job.js";
import { withPilots } from "./pilots.js";
import { type JobFile, jobFile } from "./schema.js";
import { readStep } from "./steps.js";

export type JobReading = { readonly job?: Job; readonly problems: readonly Problem[] };

/** Reads a job file; problems as for a machine file: all at once, with their places. Never throws. */
export function readJob(text: string): JobReading {
  const kind = {
    noun: "job file",
    begin: "name: Deck pin",
    standIns: { name: "unnamed", material: "mild steel" },
    mistaken: [
      {
        keys: ["handwheels", "drive", "limits", "paper", "work"],
        noun: "machine file",
        remedy: "name it before --job, and give --job the file that lists the steps",
      },
    ],
  };
  const { value, problems, places } = readDocument(text, jobFile, kind, assemble);
  if (value === undefined) return { problems };
  return { job: { ...value, stepsAt: value.steps.map((_, index) => places(["steps", index])) }, problems };
}

/** Tools keep so far from what turns with the work, mm. Common practice. */
const usualClear = roundIn(2, 0.08);

function assemble(file: JobFile, report: (remark: Remark) => void): Job {
  const units = file.units ?? "mm";
  let bare = false;
  const written = new Map<number, string>();
  const drillNames = new Map<number, DrillName>();
  const mm = (length: LengthText) => {
    bare ||= length.unit === "file";
    const size = length.unit === "mm" ? length.value : inMm(length.value, units);
    const words = length.text === undefined ? undefined : writtenAs(length.text, units);
    if (words !== undefined) written.set(size, words);
    const stamped = drillNameIn(length.text ?? "");
    if (stamped !== undefined) drillNames.set(size, stamped);
    return size;
  };
  const said = (size: number) => asGiven(size, { units, written });
  const error = (path: Path, code: string, what: string, remedy: string) =>
    report({ severity: "error", path, code, what, remedy });
  if (findMaterial(file.material) === undefined) {
    const nearest = nearestMaterial(file.material);
    error(
      ["material"],
      "unknown-material",
      `no cutting speeds are known for "${file.material}"`,
      `${nearest ? `did you mean "${nearest}"?` : `known are ${namedMaterials().join(", ")}`}${mind(file.material)}`,
    );
  }
  const bar = file.bar && readBar(file.bar);
  const turning = file.steps.findIndex((raw) => !isHoleStep(raw));
  if (bar === undefined && turning >= 0)
    // Stands at the part that lacks it: a bar that is there and faulty is told of by its fault.
    error(
      ["bar"],
      "no-bar",
      `"${file.steps[turning]?.do}" is done on a bar, and the job does not say what bar`,
      "add bar: { diameter: 16, out: 45 }, its diameter and how far it stands out of the chuck",
    );
  const context = { bar, units, mm, said, error };
  const steps = file.steps.map((raw, index) => readStep(raw, ["steps", index], context));

  const named = steps.filter((step) => "hole" in step);
  if (named.length > 0)
    for (const [index, step] of steps.entries())
      if (isHoleStep(step) && !named.includes(step))
        error(
          ["steps", index],
          "missing",
          `"${step.do}" does not say in which hole it is done, and another step does`,
          "add hole:, the name of its hole, at every step or at none",
        );

  function readBar({ diameter, out, supported, held, length, bore }: NonNullable<JobFile["bar"]>): Bar {
    const result: Bar = {
      diameter: mm(diameter),
      out: mm(out),
      held: held ?? (supported ? "chuck and centre" : "chuck"),
      ...(length && { length: mm(length) }),
      ...(bore && { bore: mm(bore) }),
    };
    if (supported !== undefined && held !== undefined)
      error(
        ["bar", "supported"],
        "two-forms",
        "supported: and held: both say what holds it",
        "keep held:, which says it all",
      );
    if (result.length !== undefined && result.out > result.length + 1e-9)
      error(
        ["bar", "out"],
        "longer-than-blank",
        `a blank of ${said(result.length)} cannot stand out ${said(result.out)}`,
        "out: is what the chuck leaves free, length: the whole blank",
      );
    if (result.bore !== undefined && result.bore >= result.diameter)
      error(
        ["bar", "bore"],
        "inside-out",
        `a tube of ${said(result.diameter)} has no bore of ${said(result.bore)}`,
        "diameter: is its outside, bore: its hole",
      );
    return result;
  }

  return {
    name: file.name,
    units,
    written,
    drillNames,
    ...(file.units === undefined && bare ? { unitsLeftOpen: true } : {}),
    material: file.material,
    tool: file.tool ?? "high-speed steel",
    ...(bar && { bar }),
    parts: file.parts ?? 1,
    batch: file.batch ?? "part",
    clear: file.clear ? mm(file.clear) : usualClear[units],
    spindleStop: file.spindleStop ?? false,
    steps: withPilots(steps, units),
  };
}
