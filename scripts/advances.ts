/** Writes src/drawing/advances.generated.ts anew: `npm run advances`, after a change of font. */
import { writeFileSync } from "node:fs";
import { advancesSource } from "./advancesSource.js";
import { readFonts } from "./font.js";

writeFileSync("src/drawing/advances.generated.ts", advancesSource(readFonts()));
