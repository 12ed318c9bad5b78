/** Bytes of the two weights, handed in by whoever may read files: TrueType for PDF, WOFF for SVG. */
export type FontBytes = { readonly regular: Uint8Array; readonly bold: Uint8Array };
