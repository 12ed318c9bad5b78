import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { isDrill } from "../findings/uses.js";
import type { Machine } from "../machine/machine.js";
import { type Io, Refusal, writeNew } from "./io.js";
import { packageText } from "./packageFiles.js";

/** Writes the starter of a machine file, or of a job file where that alone is named; never over another. A job is one for the machine
 *  that is named and there already, or for those beside it. */
export async function newFiles(path: string | undefined, job: string | undefined, io: Io): Promise<number> {
  if (job?.trim() === "") throw new Refusal("--job needs the name of a file behind it; for example: --job pin.yaml", 2);
  const there = path !== undefined && job !== undefined && existsSync(path);
  if (!there && (path !== undefined || job === undefined)) {
    const file = path ?? "machine.yaml";
    writeNew(file, packageText("templates", "machines", "starter.yaml"));
    io.out(`${file} written. Fill it in, then: witnessmark check ${file}`);
  }
  if (job === undefined) return 0;
  const machines = await machinesIn(path === undefined ? filesBeside(job) : [path]);
  const drills = machines.length > 0 && machines.every(({ machine }) => isDrill(machine));
  writeNew(job, packageText("templates", "jobs", drills ? "drilling.yaml" : "starter.yaml"));
  const on = path ?? (machines.length === 1 ? machines[0]?.file : undefined) ?? (drills ? "drill.yaml" : "lathe.yaml");
  io.out(`${job} written. Fill it in, then: witnessmark check ${on} --job ${job}`);
  return 0;
}

/** More files than these are a store, and nobody's one machine. */
const FEW = 50;

function filesBeside(job: string): string[] {
  const folder = dirname(job);
  if (!existsSync(folder)) return [];
  const files = readdirSync(folder).filter((name) => /\.ya?ml$/i.test(name));
  return files.length > FEW ? [] : files.map((name) => join(folder, name));
}

/** Those that are machine files without a fault; jobs and others are none. */
async function machinesIn(files: readonly string[]): Promise<{ file: string; machine: Machine }[]> {
  if (files.length === 0) return [];
  const { load } = await import("./load.js");
  const machines: { file: string; machine: Machine }[] = [];
  for (const file of files) {
    const { findings } = await load(file).catch(() => ({ findings: undefined }));
    if (findings) machines.push({ file, machine: findings.machine });
  }
  return machines;
}
