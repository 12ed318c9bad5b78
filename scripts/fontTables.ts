/** Writes what sheets and renderers know of the font anew: `npm run font-tables`, after a change of font. */
import { writeFileSync } from "node:fs";
import { readFonts } from "./font.js";
import { fontTables } from "./fontTablesSource.js";

for (const [file, text] of Object.entries(fontTables(readFonts()))) writeFileSync(file, text);
