import type { Problem } from "../machine/problem.js";
import { formatProblem } from "../machine/read.js";
import type { Io } from "./io.js";

/** Problems go to standard error, one a line, so that an editor can jump to them. */
export function report(problems: readonly Problem[], path: string, io: Io): void {
  for (const problem of problems) {
    const line = formatProblem(problem, path);
    io.err(io.colour ? `\u001b[${problem.severity === "error" ? 31 : 33}m${line}\u001b[0m` : line);
  }
}
