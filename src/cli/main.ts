import { isMainThread } from "node:worker_threads";
import { faultLines, processIo, Refusal } from "./io.js";
import { run } from "./run.js";

// A reader that closes the pipe early (`witnessmark check … | head`) is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(0);
});

if (isMainThread)
  run(process.argv.slice(2), processIo).then(
    (status) => {
      process.exitCode = status;
    },
    (error: unknown) => {
      process.exitCode = error instanceof Refusal ? error.exitCode : 1;
      for (const line of error instanceof Refusal ? [error.message] : faultLines(error)) processIo.err(line);
    },
  );
else void import("./printThread.js").then(({ serve }) => serve());
