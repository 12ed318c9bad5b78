import { type PDFContext, PDFRawStream, type PDFRef } from "pdf-lib";

/** Packs bytes as a zlib stream (RFC 1950). Node's own zlib and the library for browsers are ports of one algorithm and give
 *  the same bytes, as a test checks; so it is handed in. */
export type Deflate = (bytes: Uint8Array) => Uint8Array;

/** Adds a packed stream to a PDF. */
export function packed(
  context: PDFContext,
  deflate: Deflate,
  bytes: Uint8Array,
  entries: { readonly Length1?: number } = {},
): PDFRef {
  return context.register(PDFRawStream.of(context.obj({ ...entries, Filter: "FlateDecode" }), deflate(bytes)));
}
