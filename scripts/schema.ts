/** Writes templates/machine.schema.json anew: `npm run schema`, after a change of src/machine/schema.ts. */
import { writeFileSync } from "node:fs";
import { schemaSource } from "./schemaSource.js";

writeFileSync("templates/machine.schema.json", schemaSource());
