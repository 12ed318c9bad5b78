/** Writes the generated files anew: `npm run generate`, after a change of font, of a schema, of a sheet's template or of a block's
 *  settings. A test fails when one of them is stale. */
import { writeFileSync } from "node:fs";
import { generatedFiles } from "./generated/files.js";

for (const [file, text] of Object.entries(generatedFiles())) writeFileSync(file, text);
