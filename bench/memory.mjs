/** Loaded before a command, says its peak memory when it ends. */
process.on("exit", () => process.stderr.write(`peak-memory-kb=${process.resourceUsage().maxRSS}\n`));
