import { expect, test } from "vitest";
import { hint } from "../../src/page/app/form/hint.js";
import { jobSchema, machineSchema, type Schema } from "../../src/page/schema.js";

const descriptionsIn = (schema: Schema): string[] => [
  ...(schema.description ? [schema.description] : []),
  ...[
    ...Object.values(schema.properties ?? {}),
    ...(schema.anyOf ?? []),
    ...(schema.prefixItems ?? []),
    ...[schema.items, schema.additionalProperties].flatMap((one) => (typeof one === "object" ? [one] : [])),
  ].flatMap(descriptionsIn),
];

test("no hint of the form shows a way of writing that its field does not take", () => {
  const all = [machineSchema, jobSchema].flatMap(descriptionsIn);
  expect(all.length).toBeGreaterThan(100);
  expect(all.map((one) => hint(one, "mm")).filter((words) => /[[\]{}]/.test(words))).toEqual([]);
  expect(hint("Of a motor with several: [710, 1425]", "mm")).toBe("Of a motor with several: 710, 1425");
});
