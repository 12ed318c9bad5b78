import job from "../../templates/job.schema.json" with { type: "json" };
import machine from "../../templates/machine.schema.json" with { type: "json" };
import type { Way } from "./file/edit.js";

/** As much of JSON Schema as our files' schemas use. */
export type Schema = {
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly enum?: readonly string[];
  readonly const?: unknown;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: boolean | Schema;
  readonly required?: readonly string[];
  readonly items?: Schema | false;
  readonly prefixItems?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
};

export const machineSchema = machine as Schema;
export const jobSchema = job as Schema;

/** What a schema's value is typed as: one field, a choice, a tick, a record of named parts, a list, entries under names of one's
 *  own, or one of several of these. */
export type Kind = "field" | "choice" | "tick" | "record" | "list" | "named" | "several kinds";

export function kindOf(schema: Schema): Kind {
  if (schema.anyOf) return schema.anyOf.every(scalar) ? "field" : "several kinds";
  if (schema.enum) return "choice";
  if (schema.type === "boolean") return "tick";
  if (schema.type === "array") return "list";
  if (schema.type === "object") return schema.properties ? "record" : "named";
  return "field";
}

/** One value, typed into one field. */
export const scalar = ({ type, anyOf, enum: words }: Schema): boolean =>
  anyOf ? anyOf.every(scalar) : words !== undefined || (type !== "array" && type !== "object" && type !== "boolean");

/** What a list holds at an index. */
export const itemOf = (list: Schema, index: number): Schema =>
  list.prefixItems?.[Math.min(index, list.prefixItems.length - 1)] ?? (list.items || {});

/** Of several kinds, the one that what stands in the file is; the first where nothing does. */
export function kindFor(schema: Schema, value: unknown): Schema {
  const [first = {}, ...others] = schema.anyOf ?? [schema];
  const wanted = Array.isArray(value) ? "array" : typeof value;
  const fits = ({ type }: Schema) => type === wanted || (Array.isArray(type) && type.includes(wanted));
  return [first, ...others].find(fits) ?? first;
}

/** The schema at a place in a file, given what stands there; undefined where the file knows no such place. */
export function schemaAt(root: Schema, way: Way, value: (way: Way) => unknown): Schema | undefined {
  let at: Schema | undefined = root;
  for (const [depth, step] of way.entries()) {
    if (at === undefined) return undefined;
    const own: Schema = kindFor(at, value(way.slice(0, depth)));
    if (typeof step === "number") at = own.type === "array" ? itemOf(own, step) : undefined;
    else
      at =
        own.properties?.[step] ?? (typeof own.additionalProperties === "object" ? own.additionalProperties : undefined);
  }
  return at;
}

/** A key in words: "smallDiameter" is "small diameter". */
export const inWords = (key: string): string => key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
