import * as z from "zod/mini";
import { checkShape } from "../../src/cli/checkShape.js";
import { jobFile } from "../../src/job/schema.js";
import { machineFile } from "../../src/machine/schema.js";

/** The published JSON Schemas, from path to text, from the definitions that the readers themselves use. */
export const schemas = (): Readonly<Record<string, string>> => ({
  "templates/machine.schema.json": source(machineFile, "witnessmark machine file"),
  "templates/job.schema.json": source(jobFile, "witnessmark job file"),
  "templates/check.schema.json": source(checkShape, "what witnessmark check --json prints"),
});

function source(definition: z.ZodMiniType, title: string): string {
  const schema = z.toJSONSchema(definition, { io: "input", target: "draft-2020-12", reused: "inline" });
  return `${JSON.stringify({ ...schema, title }, null, 2)}\n`;
}
