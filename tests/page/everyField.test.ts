import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { isMap, parse, parseDocument } from "yaml";
import { type Way, without, withValue } from "../../src/page/file/edit.js";
import { nodesOf } from "../../src/page/file/nodes.js";
import type { Plain } from "../../src/page/file/yamlText.js";
import { itemOf, jobSchema, kindOf, machineSchema, type Schema } from "../../src/page/schema.js";

type Field = { readonly way: Way; readonly schema: Schema };

/** Every field that a schema knows, by each way of saying what may be said in several; of a list its first entry, and all of one of a fixed length. */
function fieldsOf(schema: Schema, way: Way = []): Field[] {
  switch (kindOf(schema)) {
    case "several kinds":
      return (schema.anyOf ?? []).flatMap((one) => fieldsOf(one, way));
    case "record":
      return Object.entries(schema.properties ?? {}).flatMap(([key, one]) => fieldsOf(one, [...way, key]));
    case "named":
      return typeof schema.additionalProperties === "object"
        ? fieldsOf(schema.additionalProperties, [...way, "own name"])
        : [];
    case "list":
      return (schema.prefixItems ?? [0]).flatMap((_, index) => fieldsOf(itemOf(schema, index), [...way, index]));
    default:
      return [{ way, schema }];
  }
}

/** What is typed or chosen there: of what may be typed two kinds at each field, each kind at many. */
function typed(schema: Schema, at: number): readonly Plain[] {
  if (kindOf(schema) === "choice") return schema.enum ?? [];
  if (kindOf(schema) === "tick") return [true, false];
  const words = ["12.5", "1/2 in", "1,25", "16 tpi", "name: of # mine", "0.10"];
  return [0, 1].map((more) => words[(at + more) % words.length] ?? "");
}

/** What the form does first where something of another kind stands on the way: a value, or a list in the place of parts. */
function cleared(text: string, way: Way): string {
  const { value } = nodesOf(text);
  for (let depth = 1; depth < way.length; depth++) {
    const there = value(way.slice(0, depth));
    const fits =
      there === undefined ||
      (typeof way[depth] === "number" ? Array.isArray(there) : typeof there === "object" && !Array.isArray(there));
    if (!fits) return without(text, way.slice(0, depth));
  }
  return text;
}

const comments = (text: string): string[] => text.match(/(?<=^|\s)# [^\n]*/gm) ?? [];
const keys = (text: string): unknown[] => {
  const { contents } = parseDocument(text);
  return isMap(contents) ? contents.items.map(({ key }) => String(key)) : [];
};

describe.each([
  ["a machine's file", machineSchema, "templates/machines/boathouse.yaml", 100],
  ["a job", jobSchema, "templates/jobs/deck-pin.yaml", 20],
] as const)("every field of %s", (_, schema, file, least) => {
  const fields = fieldsOf(schema);
  const order = Object.keys(schema.properties ?? {});
  const whole = readFileSync(file, "utf8");

  test("is found", () => expect(fields.length).toBeGreaterThan(least));

  test.each([
    ["the demo's", whole],
    ["an empty file", ""],
  ])("is read back as it was typed, all else as it was: %s", (_, text) => {
    for (const [at, { way, schema }] of fields.entries()) {
      // Entries of a list are begun one after the other.
      const base = cleared(text, way);
      const { value: there } = nodesOf(base);
      const begun = way.every(
        (step, depth) => typeof step !== "number" || step === 0 || there([...way.slice(0, depth), step - 1]),
      );
      if (!begun) continue;
      for (const value of typed(schema, at).slice(0, text === "" ? undefined : 1)) {
        const edited = withValue(base, way, value, order);
        const said = `${way.join(".")} = ${value}`;
        const nodes = nodesOf(edited);
        expect(nodes.fault, said).toBeUndefined();
        if (typeof value === "string") expect(nodes.words(way), said).toBe(value);
        else expect(nodes.value(way), said).toBe(value);
        expect(comments(edited), said).toEqual(expect.arrayContaining(comments(base)));
        expect(
          keys(edited).filter((key) => keys(base).includes(key)),
          said,
        ).toEqual(keys(base));
        // What was there besides is there still: put back, it is the file as it was.
        const before = nodesOf(base);
        const was = before.value(way);
        if (typeof was === "object") continue;
        const again = typeof was === "boolean" ? was : before.words(way);
        const back = was === undefined ? without(edited, way) : withValue(edited, way, again, order);
        if (way.every((step) => typeof step === "string")) expect(parse(back) ?? {}, said).toEqual(parse(base) ?? {});
      }
    }
  });
});
