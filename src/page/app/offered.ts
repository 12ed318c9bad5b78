import { kindFor, type Schema, scalar, schemaAt } from "../schema.js";

export type Offer = { readonly label: string; readonly info?: string; readonly insert: string };

/** What may be typed where the cursor stands: keys of the record that the line's indentation puts it in, or words of a choice. */
export function offeredAt(text: string, position: number, root: Schema): { from: number; options: readonly Offer[] } {
  const start = text.lastIndexOf("\n", position - 1) + 1;
  const line = text.slice(start, position);
  const chosen = /^(\s*(?:- )?)([\w]+):\s*([\w ]*)$/.exec(line);
  if (chosen) {
    const [, indent = "", key = "", word = ""] = chosen;
    const schema = schemaAt(root, [...wayAt(text.slice(0, start), indent), key], () => ({}));
    const words = (schema && (schema.enum ?? schema.anyOf?.flatMap((one) => one.enum ?? []))) ?? [];
    return { from: position - word.length, options: words.map((one) => ({ label: one, insert: one })) };
  }
  // Names of blocks are several words.
  const typed = /^(\s*(?:- )?)(|\w[\w ]*)$/.exec(line);
  if (!typed) return { from: position, options: [] };
  const [, indent = "", word = ""] = typed;
  const found = schemaAt(root, wayAt(text.slice(0, start), indent), () => ({}));
  const record = found && kindFor(found, {});
  return {
    from: position - word.length,
    options: Object.entries(record?.properties ?? {}).map(([key, schema]) => ({
      label: key,
      ...(schema.description !== undefined && { info: schema.description }),
      insert: scalar(schema) ? `${key}: ` : `${key}:`,
    })),
  };
}

/** The way to the record that a line of an indentation stands in, by the lines before it. `indent`: blanks, and a dash where it begins an
 *  item. */
export function wayAt(before: string, indent: string): (string | number)[] {
  const lines = before.split("\n").filter((line) => /\S/.test(line) && !/^\s*#/.test(line));
  const way: (string | number)[] = [];
  let depth = indent.length;
  let inItem = indent.endsWith("- ");
  if (inItem) {
    way.unshift(0);
    depth -= 2;
  }
  for (const line of lines.reverse()) {
    const [, blanks = "", dash = "", key] = /^(\s*)(- )?(\w[\w ]*):/.exec(line) ?? [];
    const at = blanks.length + dash.length;
    if (dash && at === depth && !inItem) {
      way.unshift(0);
      depth = blanks.length;
      inItem = true;
    } else if (key !== undefined && !dash && (at < depth || (inItem && at === depth))) {
      way.unshift(key);
      depth = at;
      inItem = false;
    } else if (key !== undefined && dash && at < depth) {
      way.unshift(0, key);
      depth = blanks.length;
      inItem = true;
    }
  }
  return way;
}
