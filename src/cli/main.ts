#!/usr/bin/env node
import { processIo, Refusal } from "./io.js";
import { run } from "./run.js";

// A reader that closes the pipe early (`witnessmark check … | head`) is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(0);
});

try {
  process.exitCode = await run(process.argv.slice(2), processIo);
} catch (error) {
  if (error instanceof Refusal) {
    processIo.err(error.message);
    process.exitCode = error.exitCode;
  } else {
    processIo.err(`witnessmark stopped on a fault of its own (${error instanceof Error ? error.message : error}).`);
    processIo.err(
      "Nothing was written. Please report it with the machine file; WITNESSMARK_TRACE=1 shows where it happened.",
    );
    if (process.env["WITNESSMARK_TRACE"] && error instanceof Error) processIo.err(error.stack ?? "");
    process.exitCode = 1;
  }
}
