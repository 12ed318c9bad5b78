/** The font as it comes from its package, and as we hand it on. Only scripts and tests come here. */
import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { woffToTrueType } from "../src/output/woff.js";

export const fontPackage = "node_modules/@fontsource/b612";
export const fontFiles = {
  regular: `${fontPackage}/files/b612-latin-400-normal.woff`,
  bold: `${fontPackage}/files/b612-latin-700-normal.woff`,
} as const;

/** Both weights as TrueType, from the packages beside us; paths count from the repository's root. */
export function readFonts(root = "."): { regular: Uint8Array; bold: Uint8Array } {
  const read = (file: string) => woffToTrueType(readFileSync(`${root}/${file}`), inflateSync);
  return { regular: read(fontFiles.regular), bold: read(fontFiles.bold) };
}
