import { type Measured, mendWords, verified } from "../answers/verified.js";
import { answered } from "./answered.js";
import type { Io } from "./io.js";
import { load } from "./load.js";
import { report } from "./report.js";

/** Answers whether a printed dial is good enough. Exit status 1 when it is not. */
export async function verify(path: string, measured: Measured, io: Io): Promise<number> {
  const { findings, problems } = await load(path);
  report(problems, path, io);
  if (findings === undefined) return 1;
  const { good, lines, mend } = answered(path, () => verified(findings, measured));
  for (const line of [...lines, ...(mend ? [mendWords(mend)] : [])]) io.out(line);
  return good ? 0 : 1;
}
