/** Bundles the command into dist/, with its fonts, the notices of what is bundled, and V8's compiled code of whole runs. */
import { spawnSync } from "node:child_process";
import { chmod, copyFile, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { lean } from "./lean/plugin.mjs";
import { notices } from "./notices.mjs";
import { buildPage } from "./page.mjs";

await rm("dist", { recursive: true, force: true });
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

const { engines, optionalDependencies } = JSON.parse(await readFile("package.json", "utf8"));
const [, needed] = /^>=(\d+\.\d+)$/.exec(engines.node);

// Two scripts, each a function of require, its own address and its module: late imports stay unevaluated until asked for.
const bundles = {
  main: { entryPoints: ["src/cli/main.ts"], external: ["./commands.js"] },
  commands: { entryPoints: ["src/cli/commands.ts"], external: Object.keys(optionalDependencies) },
};
const metafiles = [];
for (const [name, options] of Object.entries(bundles)) {
  const { metafile } = await build({
    ...options,
    outfile: `dist/${name}.js`,
    bundle: true,
    format: "cjs",
    platform: "node",
    mainFields: ["module", "main"],
    plugins: [lean],
    target: `node${needed}`,
    supported: { "dynamic-import": false },
    minify: true,
    metafile: true,
    charset: "ascii", // so that the launcher may read it byte by byte
    legalComments: "none", // they stand in the notices
    define: { "import.meta.url": "address" },
    banner: { js: "(function (require, address, module, exports) {" },
    footer: { js: "})" },
  });
  metafiles.push(metafile);
  // Bundling leaves letters beyond ASCII alone in regular expressions; read byte by byte those would match something else.
  const file = `dist/${name}.js`;
  const code = await readFile(file, "utf8");
  await writeFile(
    file,
    code.replace(/[^\0-\x7F]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`),
  );
}
metafiles.push(...(await buildPage("dist/page.html", fontFiles)));
await writeFile("dist/NOTICES.txt", notices(metafiles));

await build({
  entryPoints: ["scripts/launcher.cjs"],
  outfile: "dist/witnessmark.cjs",
  format: "cjs",
  platform: "node",
  target: "es2015",
  define: { NEEDED: JSON.stringify(needed.split(".").map(Number)) },
});
await chmod("dist/witnessmark.cjs", 0o755);

const out = await mkdtemp(join(tmpdir(), "witnessmark-build-"));
const run = spawnSync(
  process.execPath,
  ["dist/witnessmark.cjs", "print", "templates/machines/boathouse.yaml", "--out", out],
  { env: { ...process.env, WITNESSMARK_KEEP_CODE: "1" }, encoding: "utf8" },
);
await rm(out, { recursive: true, force: true });
if (run.status !== 0) throw new Error(`The fresh bundle does not print the demo: ${run.stderr}`);
