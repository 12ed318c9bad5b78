import * as z from "zod";
import { machineFile } from "../src/machine/schema.js";

/** The published JSON Schema of the machine file, from the definition that the reader itself uses. */
export function schemaSource(): string {
  const schema = z.toJSONSchema(machineFile, { io: "input", target: "draft-2020-12", reused: "inline" });
  return `${JSON.stringify({ ...schema, title: "witnessmark machine file" }, null, 2)}\n`;
}
