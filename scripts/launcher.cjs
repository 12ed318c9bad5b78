#!/usr/bin/env node
// Runs the two bundles beside it, the command line and what stands behind it, with the compiled code that was kept of each at
// build time: compiling the libraries anew at every start costs as much as all the drawing. V8 trusts such code blindly, so
// it is used only where its digest, which covers the bundle and this very Node, is right; otherwise the start is slower, and
// nothing else differs. Plain old JavaScript, so that a Node that is too old can read it and say so.
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < NEEDED[0] || (major === NEEDED[0] && minor < NEEDED[1])) {
  console.error(`witnessmark needs Node.js ${NEEDED.join(".")} or later; this is ${process.version}`);
  process.exit(1);
}
try {
  process.cwd();
} catch (_) {
  console.error("the folder that this was called in is no more; change into one that is there");
  process.exit(1);
}
// biome-ignore-start lint/style/useNodejsImportProtocol: a Node that is too old does not know it
const { createHash } = require("crypto");
const { readFileSync, writeFileSync } = require("fs");
const { join } = require("path");
const { pathToFileURL } = require("url");
const { Script } = require("vm");
// biome-ignore-end lint/style/useNodejsImportProtocol: as above

const digestLength = 32;
const loaded = {};

/** Exports of one bundle, which is a function of require, its own address, and its module. */
exports.load = function load(name) {
  if (loaded[name]) return loaded[name].exports;
  const filename = join(__dirname, `${name}.js`);
  const source = readFileSync(filename);
  const digestOf = (code) =>
    createHash("sha256").update(`${process.version} ${process.arch}\n`).update(source).update(code).digest();
  const keptFile = join(__dirname, `${name}.code`);
  const script = new Script(source.toString("latin1"), { filename, cachedData: keptCode(keptFile, digestOf) });
  const module = { exports: {} };
  loaded[name] = module;
  const requireIn = (wanted) => (wanted === "./commands.js" ? load("commands") : require(wanted));
  script.runInThisContext()(requireIn, pathToFileURL(filename).href, module, module.exports);
  if (process.env.WITNESSMARK_KEEP_CODE)
    process.on("exit", () => {
      const code = script.createCachedData();
      writeFileSync(keptFile, Buffer.concat([digestOf(code), code]));
    });
  return module.exports;
};

function keptCode(file, digestOf) {
  try {
    const kept = readFileSync(file);
    const code = kept.subarray(digestLength);
    return digestOf(code).equals(kept.subarray(0, digestLength)) ? code : undefined;
  } catch (_) {
    return undefined;
  }
}

// A thread loads what it needs itself.
if (require.main === module) exports.load("main");
