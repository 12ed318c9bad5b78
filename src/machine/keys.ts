import * as z from "zod/mini";

/** Keys of a file, each with the text that editors show beside it. A kind of value is shared by many keys, but a text belongs
 *  to one key: it hangs on a schema of the key's own. */

export const needed = <S extends z.ZodMiniType>(kind: S, about: string): S => described(z.clone(kind), about);

export const optional = <S extends z.ZodMiniType>(kind: S, about: string): z.ZodMiniOptional<S> =>
  described(z.optional(kind), about);

function described<S extends z.ZodMiniType>(schema: S, description: string): S {
  z.globalRegistry.add(schema, { description });
  return schema;
}
