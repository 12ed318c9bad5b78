import { fontTables } from "./fontTables.js";
import { schemas } from "./schemas.js";
import { sheets } from "./sheets.js";
import { words } from "./words.js";

/** Every file of the repository that is written from others, from path to text. */
export const generatedFiles = (): Readonly<Record<string, string>> => ({
  ...words(),
  ...fontTables(),
  ...schemas(),
  ...sheets(),
});
