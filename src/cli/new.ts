import { type Io, writeNew } from "./io.js";
import { packageText } from "./packageFiles.js";

/** Writes the starter file; never over another. */
export function newFile(path: string, io: Io): number {
  writeNew(path, packageText("templates", "machines", "starter.yaml"));
  io.out(`${path} written. Fill it in, then: witnessmark check ${path}`);
  return 0;
}
