import { Worker } from "node:worker_threads";
import { expect, test } from "vitest";
import type { Outcome, PrintRequest } from "../../src/cli/printMachine.js";
import { printMany } from "../../src/cli/printMany.js";

const files = Array.from({ length: 9 }, (_, index) => `lathe-${index}.yaml`);

/** Prints with threads of the given answer to a path; the outcomes in the order in which they were told. */
async function outcomes(answer: string): Promise<Outcome[]> {
  const told: Outcome[] = [];
  const thread = () =>
    new Worker(
      `const { parentPort } = require("node:worker_threads");
parentPort.on("message", (path) => { ${answer} parentPort.postMessage({ written: [path], lines: [], status: 0 }); });`,
      { eval: true },
    );
  await printMany(files, {} as PrintRequest, (outcome) => void told.push(outcome), thread);
  return told;
}

test.each([
  ["throws", `if (path.includes("3")) throw new Error("broken");`, "broken"],
  ["ends without a word", `if (path.includes("3")) return process.exit(0);`, "a thread ended by itself"],
])("a thread that %s takes its own file along and no other", async (_, answer, words) => {
  const told = await outcomes(answer);
  expect(told.map(({ written }) => written[0])).toEqual(files.map((file, index) => (index === 3 ? undefined : file)));
  expect(told[3]).toMatchObject({ status: 1 });
  expect(told[3]?.lines[0]).toContain("lathe-3.yaml: witnessmark stopped on a fault of its own");
  expect(told[3]?.lines[0]).toContain(words);
});

test("when every thread dies at once, every file is told to have failed", async () => {
  const told = await outcomes(`throw new Error("no luck");`);
  expect(told.map(({ status }) => status)).toEqual(files.map(() => 1));
});
