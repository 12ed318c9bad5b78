import { explainable, explained } from "../answers/explained.js";
import { answered } from "./answered.js";
import type { Io } from "./io.js";
import { load } from "./load.js";
import { report } from "./report.js";

/** Prints how a number came about; without a quantity, what can be asked of this file. */
export async function explain(
  path: string,
  quantity: string | undefined,
  of: string | undefined,
  io: Io,
): Promise<number> {
  const { findings, problems, places } = await load(path);
  report(problems, path, io);
  if (findings === undefined) return 1;
  const lines =
    quantity === undefined
      ? explainable(findings)
      : [`From ${path}`, ...answered(path, () => explained(findings, places, quantity, of))];
  for (const line of lines) io.out(line);
  return 0;
}
