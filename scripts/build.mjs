/** Bundles the command into dist/, with the fonts beside it, and keeps V8's compiled code of one whole run. */
import { spawnSync } from "node:child_process";
import { chmod, copyFile, mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { fontkitStart } from "./fontkitStart.mjs";

await mkdir("dist/fonts", { recursive: true });
await build({
  entryPoints: ["scripts/font.ts"],
  outfile: "node_modules/.cache/witnessmark/font.mjs",
  bundle: true,
  format: "esm",
  platform: "node",
});
const { readFonts, fontFiles, fontPackage } = await import(
  new URL("../node_modules/.cache/witnessmark/font.mjs", import.meta.url)
);
for (const [weight, bytes] of Object.entries(readFonts())) await writeFile(`dist/fonts/${weight}.ttf`, bytes);
for (const [weight, file] of Object.entries(fontFiles)) await copyFile(file, `dist/fonts/${weight}.woff`);
await copyFile(`${fontPackage}/LICENSE`, "dist/fonts/LICENSE");

// One script as a function of require and its own address: late imports stay unevaluated until they are asked for.
await build({
  entryPoints: ["src/cli/main.ts"],
  outfile: "dist/bundle.cjs",
  bundle: true,
  format: "cjs",
  platform: "node",
  mainFields: ["module", "main"],
  plugins: [fontkitStart],
  target: "node20.19",
  minify: true,
  charset: "ascii", // so that the launcher may read it byte by byte
  legalComments: "none",
  define: { "import.meta.url": "address" },
  banner: { js: "(function (require, address) { var module = { exports: {} }, exports = module.exports;" },
  footer: { js: "})" },
});
await copyFile("scripts/launcher.mjs", "dist/witnessmark.js");
await chmod("dist/witnessmark.js", 0o755);
await rm("dist/bundle.cache", { force: true });

const out = await mkdtemp(join(tmpdir(), "witnessmark-build-"));
const run = spawnSync(
  process.execPath,
  ["dist/witnessmark.js", "print", "templates/machines/boathouse.yaml", "--out", out],
  { env: { ...process.env, WITNESSMARK_KEEP_CODE: "dist/bundle.cache" }, encoding: "utf8" },
);
await rm(out, { recursive: true, force: true });
if (run.status !== 0) throw new Error(`The fresh bundle does not print the demo: ${run.stderr}`);
