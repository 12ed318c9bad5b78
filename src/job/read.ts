import { mind } from "../cutting/hazards.js";
import { findMaterial, namedMaterials, nearestMaterial } from "../cutting/materials.js";
import { closest } from "../machine/closest.js";
import { readDocument } from "../machine/document.js";
import type { LengthText } from "../machine/fields.js";
import type { Path, Problem, Remark } from "../machine/problem.js";
import { asGiven, writtenAs } from "../machine/written.js";
import { inMm } from "../quantity/length.js";
import { threads } from "../thread/data.js";
import { designationOf, threadsMeant } from "../thread/thread.js";
import { isHoleStep, type Job, type JobStep } from "./job.js";
import { type JobFile, jobFile } from "./schema.js";

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

type RawStep = JobFile["steps"][number];
type Key = Exclude<keyof RawStep, "do">;

/** What each step needs, and may have besides. */
const keys: Readonly<Record<RawStep["do"], { needs: readonly Key[]; may: readonly Key[] }>> = {
  face: { needs: ["depth"], may: ["cut", "diameter"] },
  turn: { needs: ["from", "to", "length"], may: ["cut", "finish", "tolerance"] },
  shoulder: { needs: ["from", "to", "length"], may: ["cut", "finish", "tolerance"] },
  bore: { needs: ["from", "to", "depth"], may: ["cut", "finish", "tolerance"] },
  part: { needs: ["length", "blade"], may: ["diameter"] },
  drill: { needs: ["diameter", "depth"], may: [] },
  ream: { needs: ["diameter", "depth"], may: [] },
  tap: { needs: ["thread", "depth"], may: [] },
  die: { needs: ["thread", "length"], may: [] },
  taper: { needs: ["large", "small", "length"], may: ["cut", "finish"] },
};

const usualCut = 0.5;
const usualFinish = 0.1;

function assemble(file: JobFile, report: (remark: Remark) => void): Job {
  const units = file.units ?? "mm";
  let bare = false;
  const written = new Map<number, string>();
  const mm = (length: LengthText) => {
    bare ||= length.unit === "file";
    const size = length.unit === "mm" ? length.value : inMm(length.value, units);
    const words = length.text === undefined ? undefined : writtenAs(length.text, units);
    if (words !== undefined) written.set(size, words);
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
  const bar = file.bar && {
    diameter: mm(file.bar.diameter),
    out: mm(file.bar.out),
    supported: file.bar.supported ?? false,
  };
  const turning = file.steps.findIndex((raw) => !isHoleStep(raw));
  if (bar === undefined && turning >= 0)
    error(
      ["steps", turning],
      "no-bar",
      `"${file.steps[turning]?.do}" is done on a bar, and the job does not say what bar`,
      "add bar: { diameter: 16, out: 45 }, its diameter and how far it stands out of the chuck",
    );
  const steps = file.steps.map((raw, index) => step(raw, ["steps", index]));

  function step(raw: RawStep, path: Path): JobStep {
    const { needs, may } = keys[raw.do];
    for (const key of needs)
      if (raw[key] === undefined) error(path, "missing", `"${raw.do}" needs its ${key}`, `add ${key}:`);
    for (const key of Object.keys(raw) as (keyof RawStep)[])
      if (key !== "do" && raw[key] !== undefined && !needs.includes(key) && !may.includes(key))
        error([...path, key], "not-here", `"${raw.do}" has no ${key}`, `it takes ${[...needs, ...may].join(", ")}`);
    const at = (key: Exclude<Key, "thread">, usual = 1) => (raw[key] === undefined ? usual : mm(raw[key]));
    const cut = at("cut", usualCut);
    const finish = at("finish", usualFinish);
    switch (raw.do) {
      case "face":
        return { do: "face", depth: at("depth"), cut, diameter: at("diameter", bar?.diameter) };
      case "turn":
      case "shoulder":
      case "bore": {
        const [from, to] = [at("from", 2), at("to")];
        const inward = raw.do !== "bore";
        if (raw.from && raw.to && (inward ? to >= from : to <= from))
          error(
            [...path, "to"],
            "backwards",
            `"${raw.do}" goes from ${said(from)} to ${said(to)}`,
            inward ? "to is the smaller diameter" : "a bore grows: to is the larger diameter",
          );
        if (inward && bar !== undefined && from > bar.diameter + 1e-6)
          error(
            [...path, "from"],
            "larger-than-bar",
            `from ${said(from)} is more than the bar of ${said(bar.diameter)}`,
            "mind the order of steps, or the bar",
          );
        return {
          do: raw.do,
          from,
          to,
          length: at(raw.do === "bore" ? "depth" : "length"),
          cut,
          finish,
          ...(raw.tolerance && { tolerance: mm(raw.tolerance) }),
        };
      }
      case "part":
        return { do: "part", diameter: at("diameter", bar?.diameter), length: at("length"), blade: at("blade") };
      case "drill":
      case "ream":
        return { do: raw.do, diameter: at("diameter"), depth: at("depth") };
      case "tap":
      case "die":
        return {
          do: raw.do,
          thread: threadName(raw.thread ?? "", [...path, "thread"]),
          depth: at(raw.do === "tap" ? "depth" : "length"),
        };
      case "taper": {
        const [large, small] = [at("large", 2), at("small")];
        if (raw.large && raw.small && small >= large)
          error(
            [...path, "small"],
            "inside-out",
            "small is not smaller than large",
            "large is the bigger diameter, whichever end it is at",
          );
        return { do: "taper", large, small, length: at("length"), cut, finish };
      }
    }
  }

  function threadName(name: string, path: Path): string {
    const [found, ...others] = threadsMeant(name);
    if (found !== undefined && others.length > 0)
      error(
        path,
        "which-thread",
        `${[found, ...others].length} threads are called "${name}", and their forms differ`,
        `write ${[found, ...others].join(" or ")}, whichever the tap or die is marked`,
      );
    if (found === undefined && name !== "") {
      const nearest = closest(name, threads.map(designationOf));
      error(
        path,
        "unknown-thread",
        `there is no thread "${name}" in the tables`,
        nearest ? `did you mean "${nearest}"?` : "write it as M6, M8x1, 2BA, 1/4-20 UNC",
      );
    }
    return found ?? name;
  }

  return {
    name: file.name,
    units,
    written,
    ...(file.units === undefined && bare ? { unitsLeftOpen: true } : {}),
    material: file.material,
    tool: file.tool ?? "high-speed steel",
    ...(bar && { bar }),
    parts: file.parts ?? 1,
    steps,
  };
}
