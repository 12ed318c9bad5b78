import type * as z from "zod/mini";

/** Walking a schema along the keys of a file. */

type Def = {
  shape?: Record<string, z.core.$ZodType>;
  innerType?: z.core.$ZodType;
  element?: z.core.$ZodType;
  options?: z.core.$ZodType[];
  items?: z.core.$ZodType[];
  valueType?: z.core.$ZodType;
  in?: z.core.$ZodType;
};
export const defOf = (schema: z.core.$ZodType): Def => schema._zod.def as unknown as Def;

/** The schemas that one is made of: what an optional one wraps, what a pipe takes in, the forms of a union. */
export const partsOf = (schema: z.core.$ZodType): z.core.$ZodType[] => {
  const { innerType, in: input, options = [] } = defOf(schema);
  return [innerType, input, ...options].flatMap((inner) => (inner ? [inner] : []));
};

/** The schemas that a key, or a place in a list, may have. */
export function stepInto(schema: z.core.$ZodType, part: string | number): z.core.$ZodType[] {
  const def = defOf(schema);
  if (typeof part === "number" && def.element) return [def.element];
  const own = def.shape && Object.hasOwn(def.shape, part) ? def.shape[part] : undefined;
  if (own) return [own];
  if (def.valueType) return [def.valueType];
  return partsOf(schema).flatMap((inner) => stepInto(inner, part));
}

/** Keys that the schema knows at a path. */
export function keysAt(path: readonly (string | number)[], root: z.core.$ZodType): string[] {
  let schemas: z.core.$ZodType[] = [root];
  for (const part of path) schemas = schemas.flatMap((schema) => stepInto(schema, part));
  return [...new Set(schemas.flatMap((schema) => shapesOf(schema).flatMap((shape) => Object.keys(shape))))];
}

function shapesOf(schema: z.core.$ZodType): Record<string, z.core.$ZodType>[] {
  const { shape } = defOf(schema);
  return shape ? [shape] : partsOf(schema).flatMap(shapesOf);
}
