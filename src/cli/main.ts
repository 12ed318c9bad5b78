import { processIo, told } from "./io.js";
import { run } from "./run.js";

// A reader that closes the pipe early (`witnessmark print … | head`) is no error: the work goes on, only unheard.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });

told(processIo, () => run(process.argv.slice(2), processIo)).then((status) => {
  process.exitCode = status;
});
