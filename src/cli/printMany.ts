import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { faultLines } from "./io.js";
import { packagePath } from "./packageFiles.js";
import type { Outcome, PrintRequest } from "./printMachine.js";
import { progressBar } from "./progressBar.js";

/** Prints many machine files on all cores. What came of each is told in the order of the files, as soon as those before it are
 *  done, and then forgotten: a thousand files take no more memory than ten. */
export async function printMany(
  files: readonly string[],
  request: PrintRequest,
  tell: (outcome: Outcome) => void,
): Promise<void> {
  const bar = progressBar(files.length, "machines");
  const waiting = new Map<number, Outcome>();
  let told = 0;
  const done = (index: number, outcome: Outcome) => {
    waiting.set(index, outcome);
    for (let next = waiting.get(told); next !== undefined; next = waiting.get(told)) {
      waiting.delete(told++);
      bar.clear();
      tell(next);
    }
    bar.show(told);
  };
  const launcher = JSON.stringify(packagePath("dist", "witnessmark.cjs"));
  let next = 0;
  const thread = (): Promise<void> =>
    new Promise((resolve) => {
      const worker = new Worker(`require(${launcher}).load("commands").printThread()`, {
        eval: true,
        workerData: request,
      });
      let index = -1;
      const give = () => {
        index = next++;
        if (index < files.length) worker.postMessage(files[index]);
        else void worker.terminate().then(() => resolve());
      };
      worker.on("message", (outcome: Outcome) => {
        done(index, outcome);
        give();
      });
      // A thread that dies takes its file along; another goes on with the rest.
      worker.on("error", (error) => {
        done(index, { written: [], lines: faultLines(error), status: 1 });
        resolve(thread());
      });
      give();
    });
  await Promise.all(Array.from({ length: Math.min(availableParallelism(), files.length) }, thread));
  bar.clear();
}
