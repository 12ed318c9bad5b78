import { compute } from "../../src/findings/compute.js";
import { remarks } from "../../src/findings/remarks.js";
import { readMachine } from "../../src/machine/read.js";
import { everyBadFile } from "../support/badFiles.js";

everyBadFile("tests/machine/bad", (text) => {
  const { machine, problems, places } = readMachine(text);
  const computed = machine === undefined ? [] : remarks(compute(machine));
  return [...problems, ...computed.map(({ path, ...remark }) => ({ ...remark, ...places(path) }))];
});
