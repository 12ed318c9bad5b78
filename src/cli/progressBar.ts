const patience = 2000;

/** A line on a terminal that says how far long work has come; nothing before two seconds have passed, or where it is no
 *  terminal. `clear` takes it away, so that other lines can be written. */
export function progressBar(
  total: number,
  what: string,
  terminal: { readonly isTTY?: boolean; write(text: string): unknown } = process.stderr,
  now: () => number = Date.now,
): { show(done: number): void; clear(): void } {
  const begun = now();
  let shown = false;
  return {
    show(done) {
      if (!terminal.isTTY || now() - begun < patience) return;
      const filled = Math.round((done / total) * 30);
      terminal.write(`\r${"#".repeat(filled)}${"-".repeat(30 - filled)} ${done} of ${total} ${what}`);
      shown = true;
    },
    clear() {
      if (shown) terminal.write("\r\u001b[K");
      shown = false;
    },
  };
}
