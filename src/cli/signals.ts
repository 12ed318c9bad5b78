import { isMainThread } from "node:worker_threads";

const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;
type Signal = (typeof signals)[number];

/** Holds back what would end the process (Ctrl-C, a closed terminal) until `stop` is called, and then lets it happen; `hear` is called
 *  once, when it comes. A second one ends it at once. In a thread there are no signals. */
export function holdBack(hear: () => void = () => {}): () => void {
  if (!isMainThread) return () => {};
  // Whoever else listens (a print that goes on and on) hears it too, and ends by itself.
  const others = new Set(signals.filter((signal) => process.listenerCount(signal) > 0));
  let heard: Signal | undefined;
  const note = (signal: Signal) => {
    heard ??= signal;
    release();
    hear();
  };
  const release = () => {
    for (const signal of signals) process.off(signal, note);
  };
  for (const signal of signals) process.on(signal, note);
  return () => {
    // What came during synchronous work is only told on the next round of the loop.
    setImmediate(() => {
      release();
      if (heard !== undefined && !others.has(heard)) process.kill(process.pid, heard);
    });
  };
}

/** Does synchronous work that no signal breaks off. */
export function unbroken<T>(work: () => T): T {
  const stop = holdBack();
  try {
    return work();
  } finally {
    stop();
  }
}
