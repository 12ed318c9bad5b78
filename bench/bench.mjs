/** Start-up and drawing time as ratios to a bare Node start, median of whole-process runs taken in turn, and peak memory.
 *  `npm run bench [runs]`. Not a test: machines differ, ratios within one run hardly. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const runs = Math.max(7, Number(process.argv[2] ?? 9));
const out = mkdtempSync(join(tmpdir(), "witnessmark-bench-"));
const command = "dist/witnessmark.cjs";
const demo = "templates/machines/boathouse.yaml";
const job = "templates/jobs/deck-pin.yaml";
const memory = ["--import", new URL("./memory.mjs", import.meta.url).href];

/** Each row is one command line of node. A new sheet or command gets a row of its own. */
const rows = [
  ["bare node start", ["-e", "0"]],
  ["the same strip by pdfkit", ["bench/pdfkit-strip.mjs", join(out, "pdfkit.pdf")]],
  ["print: one dial", [command, "print", demo, "--sheet", "dial", "--handwheel", "Cross slide", "--out", out]],
  ["print: the whole pack", [command, "print", demo, "--out", out]],
  ["print: the whole pack as SVG", [command, "print", demo, "--format", "svg", "--out", out]],
  ...["belt-card", "speed-diagram", "speed-tree", "hand-feed", "drilling-card"].map((sheet) => [
    `print: ${sheet}`,
    [command, "print", demo, "--sheet", sheet, "--out", out],
  ]),
  ...["scales", "angle-scale", "vernier", "start-readings", "dial-choices", "ring-cutting", "engraving"].map(
    (sheet) => [`print: ${sheet}`, [command, "print", demo, "--sheet", sheet, "--out", out]],
  ),
  ...["turns", "stops", "tapers", "threads", "student"].map((sheet) => [
    `print: ${sheet}`,
    [command, "print", demo, "--sheet", sheet, "--out", out],
  ]),
  ["print: plan of a job", [command, "print", demo, "--job", job, "--sheet", "plan", "--out", out]],
  ["print --all: the binder", [command, "print", demo, "--job", job, "--all", "--out", out]],
  ["print: engraving as DXF", [command, "print", demo, "--sheet", "engraving", "--format", "dxf", "--out", out]],
  ["check", [command, "check", demo]],
  ["check --what-if", [command, "check", demo, "--what-if", "60 Hz"]],
  ["--help", [command, "--help"]],
];

const times = rows.map(() => []);
const peaks = rows.map(() => 0);
for (let run = -1; run < runs; run++) {
  for (const [index, [name, args]] of rows.entries()) {
    const start = process.hrtime.bigint();
    const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
    const took = Number(process.hrtime.bigint() - start) / 1e6;
    if (status !== 0) throw new Error(`${name} failed: ${stderr}`);
    // The first round fills the caches and counts for memory alone.
    if (run >= 0) times[index].push(took);
    else {
      const measured = spawnSync(process.execPath, [...memory, ...args], { encoding: "utf8" });
      peaks[index] = Number(/peak-memory-kb=(\d+)/.exec(measured.stderr)?.[1] ?? Number.NaN) / 1024;
    }
  }
}
rmSync(out, { recursive: true, force: true });

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const bare = median(times[0]);
console.log(`median of ${runs} runs; node ${process.version}`);
for (const [index, [name]] of rows.entries())
  console.log(
    `${name.padEnd(30)} ${(median(times[index]) / bare).toFixed(2).padStart(6)} × bare start ${median(times[index]).toFixed(0).padStart(6)} ms ${peaks[index].toFixed(0).padStart(5)} MB`,
  );
