/** Draws the demo's pages anew into out/sample/: `npm run samples`, after any change that shows on paper. */
import { readdirSync, rmSync } from "node:fs";
import { writeSamples } from "./samplePages.mjs";

for (const file of readdirSync("out/sample")) rmSync(`out/sample/${file}`);
writeSamples("out/sample");
