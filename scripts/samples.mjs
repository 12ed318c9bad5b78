/** Draws the demo's pages anew into out/sample/: `npm run samples`, after any change that shows on paper. */
import { readdirSync, rmSync } from "node:fs";
import { takePicture } from "./pagePicture.mjs";
import { writeSamples } from "./samplePages.mjs";

const picture = "page.png";
for (const file of readdirSync("out/sample")) if (file !== picture) rmSync(`out/sample/${file}`);
writeSamples("out/sample");
await takePicture(`out/sample/${picture}`);
