/** `npm run killed [times]`: prints a machine's pages over those of its last revision and kills the command at a random moment, 1000 times
 *  when left out; ends with status 1 where a page is neither the old nor the new one whole, or where the next print leaves anything
 *  behind. It says how often some pages were new and others old, which a kill between two of them cannot but leave. */
import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, watch, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Somewhat longer than placing the pages takes, ms. */
const WRITING = 12;
const times = Number(process.argv[2] ?? 1000);
const work = mkdtempSync(join(tmpdir(), "witnessmark-killed-"));
const out = join(work, "out");
const demo = readFileSync("templates/machines/boathouse.yaml", "utf8");
const revised = (revision) => demo.replace(/^revision:.*$/m, `revision: ${revision}`);
const file = join(work, "lathe.yaml");
const args = ["dist/witnessmark.cjs", "print", file, "--sheet", "belt-card,turns,stops,tapers", "--out", out];
const pages = () => new Map(readdirSync(out).map((name) => [name, readFileSync(join(out, name)).toString("base64")]));

/** Both revisions' pages, and how long a print takes, ms. */
let took = 0;
const [old, fresh] = ["A", "B"].map((revision) => {
  writeFileSync(file, revised(revision));
  const begun = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
  took = performance.now() - begun;
  return pages();
});
if ([...old.keys()].join() !== [...fresh.keys()].join() || [...old].some(([name, page]) => page === fresh.get(name)))
  throw new Error("the two revisions' pages must have the same names and differ");

const seen = { old: 0, fresh: 0, mixed: 0, done: 0 };
const faults = [];
for (let time = 0; time < times; time++) {
  for (const [name, page] of old) writeFileSync(join(out, name), Buffer.from(page, "base64"));
  const child = spawn(process.execPath, args, { stdio: "ignore" });
  const ended = new Promise((resolve) => child.on("exit", (_, signal) => resolve(signal)));
  const kill = () => child.kill("SIGKILL");
  // Every second one while it writes, which is a small part of its time.
  const writes = time % 2 === 1 ? watch(out, () => setTimeout(kill, Math.random() * WRITING)) : undefined;
  const timer = writes ? undefined : setTimeout(kill, Math.random() * 1.1 * took);
  const signal = await ended;
  writes?.close();
  clearTimeout(timer);
  if (signal === null) seen.done++;
  const left = pages();
  const kinds = [...old.keys()].map((name) => {
    const page = left.get(name);
    if (page === fresh.get(name)) return "fresh";
    if (page === old.get(name)) return "old";
    faults.push(`kill ${time}: ${name} is ${page === undefined ? "gone" : "neither the old page nor the new"}`);
    return "broken";
  });
  seen[new Set(kinds).size === 1 ? kinds[0] : "mixed"]++;
}
const { status } = spawnSync(process.execPath, args);
if (status !== 0) faults.push(`the next print ends with ${status}`);
const after = readdirSync(out).sort().join();
if (after !== [...fresh.keys()].sort().join()) faults.push(`the next print leaves ${after}`);
rmSync(work, { recursive: true });
for (const fault of faults) console.log(fault);
console.log(
  `${times} prints of ${old.size} pages, ${times - seen.done} killed: ${seen.old} times all were old, ${seen.fresh} new, ${seen.mixed} some of each; ${faults.length} faults`,
);
process.exitCode = faults.length > 0 ? 1 : 0;
