import { drillSizes, drillSystems } from "../cutting/drillSizes.js";
import { drillOnPaper } from "../findings/sizeName.js";
import type { Job } from "../job/job.js";
import type { Machine } from "../machine/machine.js";
import { asOnPaper } from "../machine/written.js";
import { trimmedSize } from "../quantity/format.js";
import { inMm } from "../quantity/length.js";
import { say } from "../words/say.js";
import type { Show } from "./words.js";

/** A decimal inch on a drawing is rounded by up to this, mm; drills that are neighbours lie closer in a few places alone. */
const ROUNDED = inMm(0.0003, "in");
const SAME = 1e-6;

type Files = {
  readonly job: Pick<Job, "units" | "written" | "drillNames">;
  readonly machine: Pick<Machine, "work" | "written">;
};

/** A drill as it is found in its box: by the name that either file gives it, or that an inch job's decimals stand for, its size behind
 *  it; else by its size. */
export function drillWords(mm: number, { job, machine }: Files, show: Show): string {
  const { units } = job;
  const stamped = job.drillNames?.get(mm) ?? machine.work.drillNames?.get(mm);
  const named = (name: string) => say("plan.drill named", { name, size: trimmedSize(mm, units, 3) });
  if (stamped !== undefined) return named(drillOnPaper(stamped));
  if (job.written?.has(mm)) return show(mm);
  const listed = asOnPaper(machine.written?.get(mm));
  if (listed !== undefined) return listed;
  // A stage that was computed for a machine in mm, in a job in inches: half a millimetre is what stands on the drill.
  if (isWhole(mm / 0.1)) return units === "mm" ? show(mm) : trimmedSize(mm, "mm", 1);
  if (units === "mm" && !isWhole(mm / inMm(1 / 64, "in"))) return show(mm);
  const [nearest] = drillSystems
    .filter((system) => system !== "metric")
    .flatMap((system) => drillSizes(system, mm - ROUNDED, mm + ROUNDED).map((drill) => ({ ...drill, system })))
    .toSorted((a, b) => Math.abs(a.diameter - mm) - Math.abs(b.diameter - mm));
  if (nearest === undefined) return show(mm);
  const { system, name, diameter } = nearest;
  if (system === "fraction") {
    const fraction = `${name} ${say("units and numbers.unit in")}`;
    return Math.abs(diameter - mm) < SAME ? fraction : named(fraction);
  }
  return named(system === "letter" ? drillOnPaper(name) : name);
}

const isWhole = (n: number): boolean => Math.abs(n - Math.round(n)) < SAME;
