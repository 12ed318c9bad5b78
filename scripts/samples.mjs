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
const { status } = spawnSync(process.execPath, ["dist/witnessmark.cjs", ...args], { stdio: "inherit" });
process.exitCode = status ?? 1;
