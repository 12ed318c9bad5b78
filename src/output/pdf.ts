import { PDFContext, PDFHexString, PDFName, PDFWriter } from "pdf-lib";
import type { Drawing, Weight } from "../drawing/drawing.js";
import { mark } from "../drawing/ours.js";
import type { Print } from "../drawing/page.js";
import type { Affine } from "../paper/printerCorrection.js";
import { addBookmarks } from "./bookmarks.js";
import type { FontBytes } from "./fonts.js";
import { type Deflate, packed } from "./packed.js";
import { fontName, type Letters, POINTS_PER_MM, pageContent } from "./pdfContent.js";
import { embedFont } from "./pdfFont.js";

/** One PDF of all pages. The same print gives the same bytes: no clock, no randomness. `fonts` are TrueType. */
export function renderPdf(
  print: Print,
  correction: (page: Drawing) => Affine,
  fonts: FontBytes,
  deflate: Deflate,
): Promise<Uint8Array> {
  const context = PDFContext.create();
  const letters: Letters = { regular: new Set(), bold: new Set() };
  const [tree, resources] = [context.nextRef(), context.nextRef()];
  const pages = print.pages.map(({ drawing }) => {
    const content = new TextEncoder().encode(pageContent(drawing, correction(drawing), letters));
    const page = context.obj({
      Type: "Page",
      Parent: tree,
      Resources: resources,
      MediaBox: [0, 0, drawing.width * POINTS_PER_MM, drawing.height * POINTS_PER_MM],
      Contents: packed(context, deflate, content),
    });
    return context.register(page);
  });
  context.assign(tree, context.obj({ Type: "Pages", Kids: pages, Count: pages.length }));
  const used = (["regular", "bold"] as const).filter((weight) => letters[weight].size > 0);
  const font = (weight: Weight) => embedFont(context, weight, fonts[weight], letters[weight], deflate);
  const named = Object.fromEntries(used.map((weight) => [fontName[weight], font(weight)]));
  context.assign(resources, context.obj({ Font: named }));
  const catalog = context.obj({
    Type: "Catalog",
    Pages: tree,
    // A viewer must neither scale true-size pages nor hide what they are under a file's name.
    ViewerPreferences: { PrintScaling: "None", DisplayDocTitle: true },
    WitnessmarkOrigin: PDFName.of(mark),
  });
  if (print.sections) {
    const titles = print.pages.map(({ title }) => title);
    addBookmarks(context, catalog, pages, print.sections, titles);
  }
  context.trailerInfo.Root = context.register(catalog);
  context.trailerInfo.Info = context.register(
    context.obj({ Title: PDFHexString.fromText(print.title), Producer: PDFHexString.fromText("witnessmark") }),
  );
  return PDFWriter.forContext(context, Number.POSITIVE_INFINITY).serializeToBuffer();
}
