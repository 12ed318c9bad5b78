import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";

const here = (file) => fileURLToPath(new URL(file, import.meta.url));
const inPdfLib = /[\\/]pdf-lib[\\/]|^pdf-lib$/;

/** A source without the texts that its schemas' keys bear for editors: the published schemas hold them, and no program reads them.
 *  Throws where a key would keep its own. */
function withoutTexts(path, source) {
  const keys = source.match(/\b(?:needed|optional)\(/g)?.length ?? 0;
  let texts = 0;
  const without = source.replace(/,\s*(?:"(?:[^"\\]|\\.)*"|`[^`]*`),?\s*\)/g, () => {
    texts++;
    return ")";
  });
  if (texts !== keys) throw new Error(`${path}: ${keys} keys, but ${texts} texts are their last argument`);
  return without;
}

/** A DXF writer without the hatchings that it knows by name: some seventy are laid out whether one is drawn or not, and none is here.
 *  Throws where they do not stand by themselves. */
function withoutHatchings(path, source) {
  const begins = source.search(/^const \w+ = new HatchPattern\("/m);
  const ends = source.indexOf("//#endregion", begins);
  const rest = source
    .slice(begins, ends)
    .replace(
      /^const \w+ = new HatchPattern\("\w+"\);$|^\w+\.add\(\{[^{}]*\}\);$|^PredefinedHatchPatterns\.set\("\w+", \w+\);$/gm,
      "",
    );
  if (begins < 0 || rest.trim() !== "") throw new Error(`${path}: more than hatchings: ${rest.trim().slice(0, 200)}`);
  return source.slice(0, begins) + source.slice(ends);
}

/** Leaves out of the bundle what its libraries bring and no command ever reaches. What they do is the same. */
export const lean = {
  name: "lean",
  setup(build) {
    // pdf-lib fetches its own deflate, besides the one that we hand in, and the tables of fourteen fonts that we never embed.
    build.onResolve({ filter: /^(pako|@pdf-lib\/standard-fonts)$/ }, ({ importer }) =>
      inPdfLib.test(importer) ? { path: here("neverCalled.mjs") } : undefined,
    );
    build.onLoad({ filter: /[\\/]src[\\/](machine|job)[\\/]\w*[sS]chema\.ts$/ }, async ({ path }) => ({
      contents: withoutTexts(path, await readFile(path, "utf8")),
      loader: "ts",
    }));
    build.onLoad({ filter: /[\\/]@tarikjabiri[\\/]dxf[\\/]lib[\\/]index\.mjs$/ }, async ({ path }) => ({
      contents: withoutHatchings(path, await readFile(path, "utf8")),
    }));
    // Scales here are of numbers: d3-interpolate asks for colours only where it is handed one.
    build.onResolve({ filter: /^d3-color$/ }, () => ({ path: here("noColours.mjs") }));
    // The help's words are Latin: no tables of wide letters and emoji.
    build.onResolve({ filter: /^string-width$/ }, () => ({ path: here("latinWidth.mjs") }));
    // pdf-lib does not declare that its files do nothing by themselves, so that all of them would come along with one.
    build.onResolve({ filter: /./ }, async ({ path, pluginData, ...about }) => {
      if (pluginData === lean || !inPdfLib.test(`${about.importer} ${path}`)) return undefined;
      const found = await build.resolve(path, { ...about, pluginData: lean });
      return { ...found, sideEffects: false };
    });
  },
};
