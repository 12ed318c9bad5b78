import { compute } from "../../src/findings/compute.js";
import { remarks } from "../../src/findings/remarks.js";
import type { Problem } from "../../src/machine/problem.js";
import { readMachine } from "../../src/machine/read.js";

/** All that is said of a machine file: what reading finds, then what only computing shows. */
export function problemsOf(text: string): Problem[] {
  const { machine, problems, places } = readMachine(text);
  const computed = machine === undefined ? [] : remarks(compute(machine));
  return [...problems, ...computed.map(({ path, ...remark }) => ({ ...remark, ...places(path) }))];
}
