import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

test("every key carries a text for editors", () => {
  const missing: string[] = [];
  type Schema = { description?: string; properties?: Record<string, Schema>; items?: Schema; anyOf?: Schema[] };
  const walk = (schema: Schema, path: string): void => {
    for (const [key, value] of Object.entries(schema.properties ?? {})) {
      if (!value.description) missing.push(`${path}.${key}`);
      walk(value, `${path}.${key}`);
    }
    for (const inner of [schema.items, ...(schema.anyOf ?? [])]) if (inner) walk(inner, path);
  };
  walk(JSON.parse(readFileSync("templates/machine.schema.json", "utf8")), "");
  expect(missing).toEqual([]);
});
