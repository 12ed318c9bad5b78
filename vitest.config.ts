import { defineConfig } from "vitest/config";
import { leftOut } from "./tests/support/leftOut.js";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    reporters: ["default", leftOut],
    setupFiles: ["tests/support/seed.ts"],
    // Ends what hangs; it measures nothing, and a machine that does other work besides may take its time.
    testTimeout: 240_000,
    expect: { poll: { timeout: 20_000 } },
    // What is tested is pure, so that files may share what they loaded: a third of the time was loading it again for each.
    isolate: false,
    // As many as there are cores: one left free costs a third of the time on a machine of two.
    maxWorkers: "100%",
  },
});
