import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** Folder that holds package.json: two above in the sources, one above in the bundle. */
function findRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "package.json")) && folder !== dirname(folder)) folder = dirname(folder);
  return folder;
}
const root = findRoot();

export const packageText = (...path: string[]): string => readFileSync(join(root, ...path), "utf8");
export const packageBytes = (...path: string[]): Uint8Array => readFileSync(join(root, ...path));
export const packagePath = (...path: string[]): string => join(root, ...path);

/** What the program's own package.json says. */
export const packageFile = () =>
  JSON.parse(packageText("package.json")) as {
    readonly version: string;
    readonly optionalDependencies?: Readonly<Record<string, string>>;
  };

export const packageVersion = (): string => packageFile().version;
