import { parentPort, workerData } from "node:worker_threads";
import { type PrintRequest, printMachine } from "./printMachine.js";

/** A thread's side of printing many machines: a path comes in, its outcome goes out, one after the other. */
export function serve(): void {
  const request = workerData as PrintRequest;
  parentPort?.on("message", async (path: string) => parentPort?.postMessage(await printMachine(path, request)));
}
