/** `npm run mutation [folder or file…] [--lines n] [--seed s] [--own | --by folder,folder]`: changes the sources in small ways, a line here and there of each folder that
 *  computes, and looks whether a test notes it. What none notes is listed in out/mutation, to be killed by a test or explained. Takes
 *  far longer than the check, so that it is no part of it. With `--own` only the tests of the same folders are asked, which is
 *  quick and stricter; with `--by` those of the folders that are named. Tests of published values are always asked. */
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const computing = [
  "quantity",
  "taper",
  "machine",
  "feed",
  "drive",
  "cutting",
  "dial",
  "dividing",
  "thread",
  "part",
  "plan",
  "paper",
];
/** Lines side by side that are changed together: a change that reaches over several lines is found within. */
const window = 8;

const words = process.argv.slice(2);
const option = (name, usual) => {
  const at = words.indexOf(`--${name}`);
  return at < 0 ? usual : words.splice(at, 2)[1];
};
const lines = Number(option("lines", "160"));
let state = Number(option("seed", "1")) || 1;
const below = (most) => {
  state = (state * 16807) % 2147483647;
  return state % most;
};

/** The sources of a folder, or the one that is named: "paper/pages.ts". */
function filesOf(place) {
  if (place.endsWith(".ts")) return [join("src", place)];
  return readdirSync(join("src", place), { recursive: true })
    .filter((name) => name.endsWith(".ts") && !name.includes(".generated."))
    .sort()
    .map((name) => join("src", place, name));
}

/** So many windows of a folder's lines, the same for the same seed. */
function sample(folder) {
  const all = filesOf(folder).flatMap((path) => {
    const long = readFileSync(path, "utf8").split("\n").length;
    return Array.from(
      { length: Math.ceil(long / window) },
      (_, at) => `${path}:${at * window + 1}-${(at + 1) * window}`,
    );
  });
  const wanted = Math.min(all.length, Math.ceil(lines / window));
  return Array.from({ length: wanted }, () => all.splice(below(all.length), 1)[0]);
}

const named = option("by", undefined);
const own = words.includes("--own");
if (own) words.splice(words.indexOf("--own"), 1);
const folders = words.length > 0 ? words : computing;
/** Whose tests are asked; all where nothing is said. */
const asked = named ?? (own ? folders.map((one) => one.split("/")[0]).join(",") : undefined);
const report = "out/mutation/report.json";
mkdirSync("out/mutation", { recursive: true });
writeFileSync(
  "out/mutation/settings.json",
  JSON.stringify({
    testRunner: "vitest",
    vitest: { configFile: "scripts/mutation/vitest.config.mjs" },
    plugins: ["@stryker-mutator/vitest-runner"],
    mutate: folders.flatMap(sample), // all in one run: which test reaches which line is found out but once
    coverageAnalysis: "perTest",
    ignoreStatic: true, // what is only done once as a file is loaded would need all tests anew for each change
    reporters: ["json"],
    jsonReporter: { fileName: report },
    tempDirName: "out/mutation/tmp",
    ignorePatterns: ["out", "dist"],
    tsconfigFile: "none.json", // its reader wants an older compiler
    disableTypeChecks: false,
    allowEmpty: true,
    concurrency: 2,
    logLevel: "error",
  }),
);
const { status } = spawnSync("npx", ["stryker", "run", "out/mutation/settings.json"], {
  stdio: "inherit",
  env: asked === undefined ? process.env : { ...process.env, WITNESSMARK_MUTATION_TESTS: asked },
});
if (status !== 0) process.exit(status ?? 1);
const mutants = Object.entries(JSON.parse(readFileSync(report, "utf8")).files).flatMap(([path, { mutants, source }]) =>
  mutants.map((mutant) => ({ path, source: source.split("\n"), ...mutant })),
);
for (const folder of folders) {
  const here = mutants.filter(({ path }) => filesOf(folder).includes(path));
  const killed = here.filter(({ status }) => status === "Killed" || status === "Timeout");
  const left = here.filter(({ status }) => status === "Survived" || status === "NoCoverage");
  console.log(`${folder}: ${killed.length} of ${killed.length + left.length} noted by a test`);
  writeFileSync(
    `out/mutation/${folder.replaceAll("/", "-")}.txt`,
    left
      .map(({ path, location: { start }, source, replacement, mutatorName }) =>
        [
          `${path}:${start.line}:${start.column} ${mutatorName}`,
          `  ${source[start.line - 1].trim()}`,
          `  → ${replacement}`,
        ].join("\n"),
      )
      .join("\n"),
  );
}
