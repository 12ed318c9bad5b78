import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** Folder that holds package.json: two above in the sources, one above in the bundle. */
function findRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "package.json"))) folder = dirname(folder);
  return folder;
}
const root = findRoot();

export const packageText = (...path: string[]): Promise<string> => readFile(join(root, ...path), "utf8");
export const packageBytes = async (...path: string[]): Promise<Uint8Array> => readFile(join(root, ...path));
export const packagePath = (...path: string[]): string => join(root, ...path);
