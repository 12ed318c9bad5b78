import { processIo, told } from "./io.js";
import { run } from "./run.js";

// A reader that closes the pipe early (`witnessmark check … | head`) is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(0);
});

told(processIo, () => run(process.argv.slice(2), processIo)).then((status) => {
  process.exitCode = status;
});
