/** Bundles the page: one HTML file that holds the core (for a worker), what is seen, both fonts, and room for a reader's files. */
import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { basename } from "node:path";
import { build } from "esbuild";
import { lean } from "./lean/plugin.mjs";
import { notices } from "./notices.mjs";

/** Where `witnessmark page` puts the files that a page brings. */
const INSIDE = "[]";

const browser = {
  bundle: true,
  write: false,
  format: "iife",
  platform: "browser",
  target: "es2022",
  minify: true,
  metafile: true,
  charset: "utf8",
  legalComments: "none",
};

/** Both programs read YAML: the library stands once in the page, as a script before each. */
const yamlShared = {
  name: "yaml-shared",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^yaml$/ }, () => ({ path: "yaml", namespace: "shared" }));
    onLoad({ filter: /^yaml$/, namespace: "shared" }, () => ({ contents: "module.exports = yaml" }));
  },
};

/** Text of a script or data element: no end of it inside. */
const inElement = (text) => text.replaceAll(/<(?=\/script|!--|script)/gi, "\\x3c");

/** What one may begin with: the text of every sheet's template, and the files to fill in or to look at, by name. */
async function beginnings() {
  const text = (path) => readFile(`templates/${path}`, "utf8");
  const sheets = {};
  for (const file of (await readdir("templates/sheets")).sort())
    sheets[basename(file, ".yaml")] = await text(`sheets/${file}`);
  return {
    sheets,
    machine: await text("machines/starter.yaml"),
    job: await text("jobs/starter.yaml"),
    drillingJob: await text("jobs/drilling.yaml"),
    example: { machine: await text("machines/boathouse.yaml"), job: await text("jobs/deck-pin.yaml") },
  };
}

/** Writes the page without files inside; returns what esbuild bundled, for the notices. */
export async function buildPage(file, fontFiles) {
  const yaml = await build({
    ...browser,
    // All that either asks of it.
    stdin: {
      contents: 'export { isMap, isScalar, isSeq, LineCounter, parseDocument, visit } from "yaml"',
      resolveDir: ".",
    },
    globalName: "yaml",
  });
  const worker = await build({
    ...browser,
    entryPoints: ["src/page/work/worker.ts"],
    plugins: [yamlShared, lean],
  });
  const app = await build({
    ...browser,
    entryPoints: ["src/page/app/main.tsx"],
    plugins: [yamlShared, lean],
    jsx: "automatic",
    jsxImportSource: "preact",
    loader: { ".css": "text" },
  });
  const style = await build({ entryPoints: ["src/page/app/page.css"], minify: true, write: false, bundle: true });
  const library = inElement(yaml.outputFiles[0].text);
  const script = inElement(app.outputFiles[0].text);
  const hash = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
  const fonts = {};
  for (const [weight, path] of Object.entries(fontFiles)) fonts[weight] = (await readFile(path)).toString("base64");
  const policy = [
    "default-src 'none'",
    `script-src ${hash(library)} ${hash(script)} blob:`,
    "worker-src blob:",
    "style-src 'unsafe-inline'", // the editor writes its own style element; nothing that a user types becomes one
    "img-src data: blob:",
    "form-action 'none'",
    "base-uri 'none'",
  ].join("; ");
  const metafiles = [yaml.metafile, worker.metafile, app.metafile];
  const html = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>witnessmark</title>
<link rel="icon" href="data:,">
<style>${style.outputFiles[0].text.replaceAll("</style", "<\\/style")}</style>
</head>
<body>
<div id="root"><noscript>This page computes dials and charts in your browser, and needs JavaScript for that.</noscript></div>
<script type="application/json" id="inside">${INSIDE}</script>
<script type="application/json" id="fonts">${JSON.stringify(fonts)}</script>
<script type="application/json" id="beginnings">${JSON.stringify(await beginnings()).replaceAll("<", "\\u003c")}</script>
<script type="text/plain" id="notices">${inElement(notices(metafiles))}</script>
<script type="text/plain" id="core">${inElement(worker.outputFiles[0].text)}</script>
<script id="yaml">${library}</script>
<script>${script}</script>
</body>
</html>
`;
  await writeFile(file, html);
  return metafiles;
}
