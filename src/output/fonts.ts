/** TrueType bytes of the two weights, handed in by whoever may read files. */
export type FontBytes = { readonly regular: Uint8Array; readonly bold: Uint8Array };
