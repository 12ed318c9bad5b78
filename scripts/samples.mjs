/** Draws the demo's pages anew into out/sample/: `npm run samples`, after any change that shows on paper. */
import { spawnSync } from "node:child_process";
import { readdirSync, rmSync } from "node:fs";

for (const file of readdirSync("out/sample")) rmSync(`out/sample/${file}`);
const args = [
  "print",
  "templates/machines/boathouse.yaml",
  "--job",
  "templates/jobs/deck-pin.yaml",
  "--format",
  "svg",
  "--out",
  "out/sample",
  "--replace",
];
// What was printed here is nobody's page on a machine.
const record = "out/sample/boathouse-printed.json";
const { status } = spawnSync(process.execPath, ["dist/witnessmark.cjs", ...args], { stdio: "inherit" });
rmSync(record, { force: true });
process.exitCode = status ?? 1;
