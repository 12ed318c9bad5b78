import fontkit from "@pdf-lib/fontkit";

/** Text of src/drawing/advances.generated.ts for the two fonts given as TrueType. */
export function advancesSource(fonts: { regular: Uint8Array; bold: Uint8Array }): string {
  const regular = measures(fonts.regular);
  const bold = measures(fonts.bold);
  return `/** What text measures in our font; written by scripts/advances.ts from the font itself, never by hand.
 *  Font units: divide by unitsPerEm and multiply by the size. Heights are above the baseline, descender is negative. */
export const unitsPerEm = ${regular.unitsPerEm};
${table(regular, bold)}`;
}

type Measures = ReturnType<typeof measures>;

function table(regular: Measures, bold: Measures): string {
  const heights = ({ heights }: Measures) => JSON.stringify(heights);
  const advances = ({ advances }: Measures) => JSON.stringify(Object.fromEntries(advances));
  return `
export const heights = {
  regular: ${heights(regular)},
  bold: ${heights(bold)},
};

type Advances = { unitsPerEm: number; regular: Record<string, number>; bold: Record<string, number> };

export const advances: Advances = {
  unitsPerEm,
  regular: ${advances(regular)},
  bold: ${advances(bold)},
};
`;
}

function measures(bytes: Uint8Array) {
  const font = fontkit.create(bytes);
  const advances = font.characterSet
    .filter((code) => code >= 0x20 && code < 0xfff0)
    .sort((a, b) => a - b)
    .map((code): [string, number] => [String.fromCodePoint(code), font.glyphForCodePoint(code).advanceWidth]);
  return {
    unitsPerEm: font.unitsPerEm,
    advances,
    heights: {
      ascender: font.ascent,
      descender: font.descent,
      capHeight: font.capHeight,
      xHeight: font.xHeight,
      digitHeight: font.glyphForCodePoint(0x31).bbox.maxY,
    },
  };
}
