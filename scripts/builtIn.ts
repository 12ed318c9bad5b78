/** Writes src/sheets/builtIn.generated.ts anew: `npm run sheets`, after a change of a sheet template or a block's settings. */
import { writeFileSync } from "node:fs";
import { builtInSource } from "./builtInSource.js";

writeFileSync("src/sheets/builtIn.generated.ts", builtInSource());
