import { fileURLToPath } from "node:url";

const here = (file) => fileURLToPath(new URL(file, import.meta.url));

/** Leaves out of the bundle what its libraries bring and no command ever reaches. What they do is the same. */
export const lean = {
  name: "lean",
  setup(build) {
    // pdf-lib fetches its own deflate and the tables of fourteen fonts that we never embed.
    build.onResolve({ filter: /^(pako|@pdf-lib\/standard-fonts)$/ }, () => ({ path: here("neverCalled.mjs") }));
    // Scales here are of numbers: d3-interpolate asks for colours only where it is handed one.
    build.onResolve({ filter: /^d3-color$/ }, () => ({ path: here("noColours.mjs") }));
    // The help's words are Latin: no tables of wide letters and emoji.
    build.onResolve({ filter: /^string-width$/ }, () => ({ path: here("latinWidth.mjs") }));
    // pdf-lib does not declare that its files do nothing by themselves, so that all of them would come along with one.
    build.onResolve({ filter: /./ }, async ({ path, pluginData, ...about }) => {
      if (pluginData === lean || !/[\\/]pdf-lib[\\/]|^pdf-lib$/.test(`${about.importer} ${path}`)) return undefined;
      const found = await build.resolve(path, { ...about, pluginData: lean });
      return { ...found, sideEffects: false };
    });
  },
};
