/** Writes the JSON Schemas in templates/ anew: `npm run schema`, after a change of a schema.ts. */
import { writeFileSync } from "node:fs";
import { jobSchemaSource, schemaSource } from "./schemaSource.js";

writeFileSync("templates/machine.schema.json", schemaSource());
writeFileSync("templates/job.schema.json", jobSchemaSource());
