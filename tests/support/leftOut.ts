import type { Reporter, TestModule } from "vitest/node";
import { browserPath } from "./browserPath.js";

/** Says in the last lines of a run that tests of the page were left out for want of a browser, and how to get one. */
export const leftOut: Reporter = {
  onTestRunEnd(modules: readonly TestModule[]) {
    // Where there is one, what was left out was not asked for.
    if (browserPath !== undefined) return;
    const tests = modules
      .filter(({ moduleId }) => moduleId.includes("/tests/page/browser/"))
      .flatMap(({ children }) => [...children.allTests()]);
    const skipped = tests.filter((test) => test.result().state === "skipped").length;
    if (skipped === 0) return;
    console.log(
      `\n${skipped} tests of the page were not run: they need Chromium, and none was found.` +
        "\nOn Debian: apt-get install chromium. Elsewhere name it: WITNESSMARK_BROWSER=/path/to/chromium npm test\n",
    );
  },
};
