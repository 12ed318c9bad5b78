/** Start-up and drawing time as ratios to a bare Node start, median of whole-process runs taken in turn, and peak memory; then
 *  how time grows with the size of a file and the number of files. `npm run bench [runs]`. Not a test: machines differ, ratios
 *  within one run hardly, as long as nothing else runs beside. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { transformSync } from "esbuild";
import { machineAtBounds } from "./atBounds.mjs";
import { growth, job as steppedJob } from "./growth.mjs";

const runs = Math.max(7, Number(process.argv[2] ?? 9));
const work = mkdtempSync(join(tmpdir(), "witnessmark-bench-"));
const out = join(work, "out");
const command = "dist/witnessmark.cjs";
const demo = "templates/machines/boathouse.yaml";
const job = "templates/jobs/deck-pin.yaml";
const memory = ["--import", new URL("./memory.mjs", import.meta.url).href];
const printed = (...args) => [command, "print", ...args, "--out", out];
const sheet = (name) => [`print: ${name}`, printed(demo, "--sheet", name)];

/** Name, command line of node, and the most that it may cost in bare starts where that was set as a goal. */
const rows = [
  ["bare node start", ["-e", "0"]],
  ["one strip by pdfkit, the yardstick", ["bench/pdfkit-strip.mjs", join(work, "pdfkit.pdf")]],
  ["--help", [command, "--help"], 1.5],
  ["check", [command, "check", demo], 2],
  ["check --suppose", [command, "check", demo, "--suppose", "60 Hz"]],
  ["print: one dial", printed(demo, "--sheet", "dial", "--handwheel", "Cross slide"), 2.5],
  ["print: the whole pack", printed(demo), 5],
  ["print: the whole pack as SVG", printed(demo, "--format", "svg")],
  ["print --all: with the binder", printed(demo, "--job", job, "--all")],
  ["print: plan of a job", printed(demo, "--job", job, "--sheet", "plan")],
  ["print: plan of 12 steps", printed(demo, "--job", write("pin-12.yaml", steppedJob(12)), "--sheet", "plan")],
  ["print: plan of 200 steps", printed(demo, "--job", write("pin-200.yaml", steppedJob(200)), "--sheet", "plan")],
  ["check --job: the demo's", [command, "check", demo, "--job", job]],
  ["print: engraving as DXF", printed(demo, "--sheet", "engraving", "--format", "dxf")],
  ...readdirSync("templates/sheets")
    .map((file) => file.slice(0, -5))
    .filter((name) => name !== "dial" && name !== "plan")
    .map(sheet),
];

const times = rows.map(() => []);
for (let run = -1; run < runs; run++)
  // The first round fills the caches.
  for (const [index, [, args]] of rows.entries()) {
    const took = timed(args);
    if (run >= 0) times[index].push(took);
  }
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const bare = median(times[0]);
console.log(
  `node ${process.version}, ${availableParallelism()} cores, median of ${runs} runs; bare start ${bare.toFixed(0)} ms`,
);
for (const [index, [name, args, goal]] of rows.entries()) {
  const ratio = median(times[index]) / bare;
  const verdict = goal === undefined ? "" : ` (goal ${goal}${ratio > goal ? ", MISSED" : ""})`;
  console.log(
    `${name.padEnd(36)} ${ratio.toFixed(2).padStart(6)} bare starts ${peak(args).toFixed(0).padStart(5)} MB${verdict}`,
  );
}

rmSync(out, { recursive: true, force: true });
timed(printed(demo));
const sizes = readdirSync(out).map((file) => statSync(join(out, file)).size / 1000);
console.log(
  `\nfiles of the pack: ${sizes.length}, ${sum(sizes).toFixed(0)} kB, the smallest ${Math.min(...sizes).toFixed(1)} kB`,
);

console.log(
  "\ngrowth: time for the larger file over time for the smaller, each less a bare start; n log n would be the second figure",
);
for (const { what, small, large, machine, job: jobFile } of growth) {
  const cost = (count) => {
    const args = [write(`${what}-${count}.yaml`, machine(count))];
    if (jobFile) args.push("--job", write(`job-${count}.yaml`, jobFile(count)));
    return median(Array.from({ length: 5 }, () => timed(printed(...args)))) - bare;
  };
  const [less, more] = [cost(small), cost(large)];
  const bound = (large * Math.log(large)) / (small * Math.log(small));
  console.log(
    `${`${small} to ${large} ${what}`.padEnd(28)} ${(more / less).toFixed(2).padStart(6)} (${bound.toFixed(0)})`,
  );
}

console.log("\na machine file at all bounds at once");
const { code } = transformSync(readFileSync("src/machine/bounds.ts", "utf8"), { loader: "ts", format: "esm" });
const { MOST } = await import(`data:text/javascript,${encodeURIComponent(code)}`);
const atBounds = write("at-bounds.yaml", machineAtBounds(MOST));
for (const [name, args] of [
  ["check", [command, "check", atBounds]],
  ...["dial", "belt-card", "hand-feed", "ring-cutting", "measured-report"].map((one) => [
    one,
    printed(atBounds, "--sheet", one),
  ]),
])
  console.log(`${name.padEnd(20)} ${(timed(args) / 1000).toFixed(1)} s, ${peak(args).toFixed(0)} MB`);

console.log("\nmany machines in one call, the demo's pack of each");
const text = readFileSync(demo, "utf8");
for (const count of [1, 10, 100, 1000]) {
  const files = Array.from({ length: count }, (_, index) => write(`lathe-${index}.yaml`, text));
  const took = timed(printed(...files));
  console.log(
    `${String(count).padStart(5)} ${(took / bare).toFixed(1).padStart(7)} bare starts, ${(took / bare / count).toFixed(2)} a machine, ${peak(printed(...files)).toFixed(0)} MB`,
  );
}
rmSync(work, { recursive: true, force: true });
await import("./page.mjs");

function write(name, text) {
  const path = join(work, name);
  writeFileSync(path, text);
  return path;
}

function run(args) {
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8", maxBuffer: 1 << 28 });
  if (status !== 0) throw new Error(`${args.slice(0, 4).join(" ")} failed: ${stderr.slice(0, 500)}`);
  return stderr;
}

function timed(args) {
  const start = process.hrtime.bigint();
  run(args);
  return Number(process.hrtime.bigint() - start) / 1e6;
}

function peak(args) {
  return Number(/peak-memory-kb=(\d+)/.exec(run([...memory, ...args]))?.[1] ?? Number.NaN) / 1024;
}

function sum(values) {
  return values.reduce((total, value) => total + value, 0);
}
