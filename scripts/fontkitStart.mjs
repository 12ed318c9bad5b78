import { readFile } from "node:fs/promises";

/** The font library unpacks its Unicode tables, and a dictionary for WOFF2 which we never read, in JavaScript at every start,
 *  which takes longer than drawing a sheet. In the bundle Node's own zlib unpacks the tables, and the dictionary stays
 *  packed. What the library does is the same; the build fails when a new version of it no longer has these places. */
export const fontkitStart = {
  name: "fontkit-start",
  setup(build) {
    build.onLoad({ filter: /fontkit\.es\.js$/ }, async ({ path }) => {
      let contents = await readFile(path, "utf8");
      const swap = (from, to) => {
        if (!contents.includes(from)) throw new Error(`The font library has changed: no ${from}`);
        contents = contents.replaceAll(from, to);
      };
      swap("dictionary.init(BrotliDecompressBuffer);", "");
      swap("pako.inflate(", "unpackWithZlib(inflateSync, ");
      swap("var tinyInflate = tinf_uncompress;", "var tinyInflate = (data) => unpackWithZlib(inflateRawSync, data);");
      return {
        contents: `import { inflateRawSync, inflateSync } from "node:zlib";
const unpackWithZlib = (unpack, data) => new Uint8Array(unpack(data));
${contents}`,
        loader: "js",
      };
    });
  },
};
