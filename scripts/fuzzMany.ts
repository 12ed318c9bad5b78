/** `npm run fuzz [count] [seed]`: hostile files of every kind, 100 000 when left out; faults are written out with the file that made
 *  them, and end it with status 1. */
import { mkdirSync, writeFileSync } from "node:fs";
import { fuzz } from "./fuzz/fuzz.js";

const [count = "100000", seed = String(Date.now())] = process.argv.slice(2);
const started = Date.now();
const { reached, printed, commanded, slowest, faults } = await fuzz(Number(count), { seed });
for (const [at, { target, what, text, seed }] of faults.entries()) {
  mkdirSync("out/fuzz", { recursive: true });
  writeFileSync(`out/fuzz/${at}-${target.replace(" ", "-")}.txt`, text);
  console.log(`${target} ${seed}: ${what.split("\n").slice(0, 4).join("\n  ")}\n  out/fuzz/${at}-${target}.txt`);
}
console.log(
  `${reached} inputs of seed ${seed}, ${commanded} of them command lines, up to ${printed} printed, in ${Math.round((Date.now() - started) / 1000)} s; the slowest took ${slowest.toFixed(2)} s; ${faults.length} faults`,
);
process.exitCode = faults.length > 0 ? 1 : 0;
