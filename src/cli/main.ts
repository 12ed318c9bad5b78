import { processIo, Refusal } from "./io.js";
import { run } from "./run.js";

// A reader that closes the pipe early (`witnessmark check … | head`) is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(0);
});

run(process.argv.slice(2), processIo).then(
  (status) => {
    process.exitCode = status;
  },
  (error: unknown) => {
    process.exitCode = error instanceof Refusal ? error.exitCode : 1;
    if (error instanceof Refusal) return processIo.err(error.message);
    const message = error instanceof Error ? error.message : String(error);
    processIo.err(`witnessmark stopped on a fault of its own (${message}). Nothing was written.`);
    processIo.err("Please report it with the machine file; WITNESSMARK_TRACE=1 shows where it happened.");
    if (process.env.WITNESSMARK_TRACE && error instanceof Error) processIo.err(error.stack ?? "");
  },
);
