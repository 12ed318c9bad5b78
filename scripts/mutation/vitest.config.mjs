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

/** With `--own` or `--by`: the folders whose tests are run, and those of published values, which are of all. */
const asked = process.env.WITNESSMARK_MUTATION_TESTS?.split(",");
const isAsked = (path) =>
  asked === undefined || [...asked, "published"].some((folder) => path.startsWith(join("tests", folder, "/")));

/** The tests that run on the sources themselves. */
export default defineConfig({
  test: {
    include: tests.filter((path) => isAsked(path) && !leftOut(path)),
    setupFiles: ["tests/support/seed.ts"],
    testTimeout: 180_000,
    isolate: false,
  },
});
