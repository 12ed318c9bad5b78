import { type Io, Refusal, writeNew } from "./io.js";
import { packageText } from "./packageFiles.js";

/** Writes the starter of a machine file, or of a job file where that alone is named; never over another. */
export function newFiles(path: string | undefined, job: string | undefined, io: Io): number {
  if (job?.trim() === "") throw new Refusal("--job needs the name of a file behind it; for example: --job pin.yaml", 2);
  if (path !== undefined || job === undefined) {
    const file = path ?? "machine.yaml";
    writeNew(file, packageText("templates", "machines", "starter.yaml"));
    io.out(`${file} written. Fill it in, then: witnessmark check ${file}`);
  }
  if (job !== undefined) {
    writeNew(job, packageText("templates", "jobs", "starter.yaml"));
    io.out(`${job} written. Fill it in, then: witnessmark check ${path ?? "lathe.yaml"} --job ${job}`);
  }
  return 0;
}
