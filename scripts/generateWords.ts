/** Writes the printed words as data: before all other generated files, whose making loads them. */
import { writeFileSync } from "node:fs";
import { words } from "./generated/words.js";

for (const [file, text] of Object.entries(words())) writeFileSync(file, text);
