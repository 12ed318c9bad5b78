import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { faultLines } from "./io.js";
import { packagePath } from "./packageFiles.js";
import type { Outcome, PrintRequest } from "./printMachine.js";
import { progressBar } from "./progressBar.js";
import { holdBack } from "./signals.js";

/** Starts a thread to which paths are posted, and which posts an outcome for each. */
function startThread(request: PrintRequest): Worker {
  const launcher = JSON.stringify(packagePath("dist", "witnessmark.cjs"));
  return new Worker(`require(${launcher}).load("commands").printThread()`, { eval: true, workerData: request });
}

/** Prints many machine files on all cores. What came of each is told in the order of the files, as soon as those before it are
 *  done, and then forgotten: a thousand files take no more memory than ten. */
export async function printMany(
  files: readonly string[],
  request: PrintRequest,
  tell: (outcome: Outcome) => void,
  start = startThread,
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
  let next = 0;
  // What is being printed is still written whole; nothing more is begun.
  const stop = holdBack(() => {
    next = files.length;
  });
  const thread = (): Promise<void> =>
    new Promise((resolve) => {
      const worker = start(request);
      let index = -1;
      let fault: unknown = new Error("a thread ended by itself");
      const give = () => {
        index = next++;
        if (index < files.length) worker.postMessage(files[index]);
        else void worker.terminate();
      };
      worker.on("message", (outcome: Outcome) => {
        done(index, outcome);
        give();
      });
      worker.on("error", (error) => {
        fault = error;
      });
      // A thread that dies takes its file along; another goes on with the rest.
      worker.on("exit", () => {
        if (index >= files.length) return resolve();
        done(index, { written: [], lines: faultLines(fault, files[index]), status: 1 });
        resolve(thread());
      });
      give();
    });
  await Promise.all(Array.from({ length: Math.min(availableParallelism(), files.length) }, thread));
  bar.clear();
  stop();
}
