#!/usr/bin/env node
// Runs the bundle beside it, with the compiled code that V8 kept at build time: parsing the libraries anew at every start
// would cost more than all the drawing. Another Node version rejects what is kept, and only starts slower.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { Script } from "node:vm";

const at = (name) => fileURLToPath(new URL(name, import.meta.url));
const read = (name) => {
  try {
    return readFileSync(at(name));
  } catch {
    return undefined;
  }
};
const filename = at("bundle.cjs");
const cachedData = read("bundle.cache");
const script = new Script(readFileSync(filename, "latin1"), { filename, ...(cachedData && { cachedData }) });
script.runInThisContext()(createRequire(import.meta.url), import.meta.url);
if (process.env.WITNESSMARK_KEEP_CODE) {
  const { writeFileSync } = await import("node:fs");
  process.on("exit", () => writeFileSync(process.env.WITNESSMARK_KEEP_CODE, script.createCachedData()));
}
