import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { defineConfig } from "vitest/config";

/** What runs the built command or a browser sees no mutant; whole packs of random machines take longer than all the rest. */
const leftOut = (path) =>
  /^tests\/[^/]*$|^tests\/(page|sheets|blocks|cli|output)\//.test(path) ||
  /support\/command\.js|scripts\/fuzz/.test(readFileSync(path, "utf8"));
const tests = readdirSync("tests", { recursive: true })
  .map((name) => join("tests", name))
  .filter((path) => path.endsWith(".test.ts"));

/** With `--own`: the folders whose own tests are run, and those of published values, which are of all. */
const own = process.env.WITNESSMARK_MUTATION_OWN?.split(",");
const isOwn = (path) =>
  own === undefined || [...own, "published"].some((folder) => path.startsWith(join("tests", folder, "/")));

/** The tests that run on the sources themselves. */
export default defineConfig({
  test: {
    include: tests.filter((path) => isOwn(path) && !leftOut(path)),
    setupFiles: ["tests/support/seed.ts"],
    testTimeout: 180_000,
    isolate: false,
  },
});
