import { type Io, processIo, reason, told as toStatus } from "./io.js";
import { asksForJson, unreadJson } from "./nothingKnown.js";
import { run } from "./run.js";

let unheard = false;
// A reader that closes the pipe early (`witnessmark print … | head`) is no error: the work goes on, only unheard.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") return;
    if (!unheard && stream === process.stdout)
      processIo.err(`what was to be shown could not be written (${reason(error)})`);
    unheard = true;
    process.exitCode = 1;
  });

const words = process.argv.slice(2);
const told: string[] = [];
let shown = false;
const io: Io = {
  ...processIo,
  out(text) {
    shown = true;
    processIo.out(text);
  },
  err(text) {
    told.push(text);
    processIo.err(text);
  },
};
toStatus(io, () => run(words, io)).then((status) => {
  if (status !== 0 && !shown && asksForJson(words)) io.out(unreadJson(status === 2 ? "usage" : "refused", told));
  process.exitCode = unheard ? 1 : status;
});
