/** Runs one of our TypeScript scripts: `node scripts/run.mjs scripts/generate.ts`.
 *  Node 20 reads no TypeScript, and esbuild is here anyway. The bundle goes beside node_modules' own caches, so that
 *  packages resolve from it as they do from the source. */
import { mkdir } from "node:fs/promises";
import { basename, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("..", import.meta.url));
const [script] = process.argv.slice(2);
if (script === undefined) throw new Error("Say which script to run, as scripts/generate.ts");
const outfile = join(root, "node_modules", ".cache", "witnessmark", `${basename(script, ".ts")}.mjs`);
await mkdir(join(outfile, ".."), { recursive: true });
await build({ entryPoints: [script], outfile, bundle: true, packages: "external", platform: "node", format: "esm" });
process.argv.splice(1, 2, outfile);
process.chdir(root);
await import(pathToFileURL(outfile).href);
