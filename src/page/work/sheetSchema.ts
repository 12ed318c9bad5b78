import { blockAbout, type SettingLine, settingsOf, sheetKeys } from "../../answers/blockSettings.js";
import { type BlockName, blocks } from "../../blocks/registry.js";
import type { Block } from "../../blocks/shared/block.js";
import { uses } from "../../findings/uses.js";
import { needs, orientations } from "../../sheets/template.js";
import type { Schema } from "../schema.js";

/** What a sheet's template may say, for the editor to offer and to tell of; faults are told by who reads it. */
export function sheetSchema(): Schema {
  const named = Object.keys(blocks).map((name) => [name, blockSchema(name as BlockName)]);
  const words = { needs, orientation: orientations, for: uses, each: ["handwheel"] };
  const item: Schema = { type: "object", properties: Object.fromEntries(named) };
  return {
    type: "object",
    properties: {
      ...keysOf(sheetKeys(), words),
      blocks: { type: "array", items: item, description: "What stands on it, one below the other" },
    },
  };
}

const blockSchema = (name: BlockName): Schema => ({
  type: "object",
  description: blockAbout(name),
  properties: {
    ...keysOf(settingsOf(name), (blocks[name] as Block).allowed),
    for: { enum: uses, description: "only on machines with that use" },
  },
});

/** `words`: of keys that are one of certain words, which. */
const keysOf = (
  lines: readonly SettingLine[],
  words: Readonly<Record<string, readonly string[] | undefined>>,
): Record<string, Schema> =>
  Object.fromEntries(
    lines.map(([yaml, description]) => {
      const [, key = "", value = ""] = /^(?:# )?(\w+): (.*)$/.exec(yaml) ?? [];
      const flag = /^(true|false)$/.test(value) ? ["true", "false"] : undefined;
      const known = value.startsWith("[") ? undefined : (words[key] ?? flag);
      return [key, { description, ...(known && { enum: known }) }];
    }),
  );
