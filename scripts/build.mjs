/** Bundles the command into dist/, with the parts that are loaded late as chunks of their own, and the fonts beside it. */
import { chmod, cp, mkdir, rm, writeFile } from "node:fs/promises";
import { build } from "esbuild";

await rm("dist", { recursive: true, force: true });
await build({
  entryPoints: { witnessmark: "src/cli/main.ts" },
  outdir: "dist",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20.19",
  minify: true,
  legalComments: "none",
  banner: { js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);' },
});
await chmod("dist/witnessmark.js", 0o755);
await mkdir("dist/fonts", { recursive: true });
await build({
  entryPoints: ["scripts/font.ts"],
  outfile: "node_modules/.cache/witnessmark/font.mjs",
  bundle: true,
  format: "esm",
  platform: "node",
});
const { readFonts, fontPackage } = await import(
  new URL("../node_modules/.cache/witnessmark/font.mjs", import.meta.url)
);
for (const [weight, bytes] of Object.entries(readFonts())) await writeFile(`dist/fonts/${weight}.ttf`, bytes);
await cp(`${fontPackage}/LICENSE`, "dist/fonts/LICENSE");
