import fontkit from "@pdf-lib/fontkit";
import {
  appendBezierCurve,
  beginText,
  closePath,
  concatTransformationMatrix,
  endText,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  PDFHexString,
  PDFName,
  PDFOperator,
  PDFOperatorNames,
  type PDFPage,
  PrintScaling,
  popGraphicsState,
  pushGraphicsState,
  setDashPattern,
  setFillingRgbColor,
  setFontAndSize,
  setLineWidth,
  setStrokingRgbColor,
  setTextMatrix,
  showText,
  stroke,
} from "pdf-lib";
import type { Ink, Mark, PathMark, TextMark, Weight } from "../drawing/drawing.js";
import type { Print } from "../drawing/page.js";
import { textWidth } from "../drawing/text.js";
import type { Affine } from "../paper/printerCorrection.js";
import { arcCurves, onArc } from "./arcCurves.js";
import { addBookmarks } from "./bookmarks.js";
import type { FontBytes } from "./fonts.js";
import { inkRgb } from "./inks.js";
import { mark } from "./ours.js";

const POINTS_PER_MM = 72 / 25.4;

/** One PDF of all pages. The same print gives the same bytes: no clock, no randomness. */
export async function renderPdf(print: Print, correction: Affine, fonts: FontBytes): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.registerFontkit(fontkit);
  pdf.setTitle(print.title, { showInWindowTitleBar: true });
  pdf.setProducer("witnessmark");
  pdf.catalog.set(PDFName.of("WitnessmarkOrigin"), PDFName.of(mark));
  pdf.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const weights = weightsUsed(print);
  const embedded: Partial<Record<Weight, PDFFont>> = {};
  for (const weight of weights)
    embedded[weight] = await pdf.embedFont(fonts[weight], { subset: true, features: { kern: false, liga: false } });
  for (const { drawing } of print.pages) {
    const page = pdf.addPage([drawing.width * POINTS_PER_MM, drawing.height * POINTS_PER_MM]);
    const names: Partial<Record<Weight, PDFName>> = {};
    for (const weight of weights) {
      const font = embedded[weight];
      if (font) names[weight] = page.node.newFontDictionary(font.name, font.ref);
    }
    drawPage(page, drawing.marks, drawing.height, correction, { embedded, names });
  }
  if (print.sections)
    addBookmarks(
      pdf,
      print.sections,
      print.pages.map(({ title }) => title),
    );
  return pdf.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false });
}

type PageFonts = {
  readonly embedded: Partial<Record<Weight, PDFFont>>;
  readonly names: Partial<Record<Weight, PDFName>>;
};

/** One matrix takes millimetres with y down, through the printer's correction, to points with y up; all below is mm. */
function drawPage(
  page: PDFPage,
  marks: readonly Mark[],
  height: number,
  [a, b, c, d, e, f]: Affine,
  fonts: PageFonts,
): void {
  const k = POINTS_PER_MM;
  page.pushOperators(
    pushGraphicsState(),
    concatTransformationMatrix(k * a, -k * b, k * c, -k * d, k * e, k * (height - f)),
    ...marks.flatMap((mark) => operators(mark, fonts)),
    popGraphicsState(),
  );
}

function operators(mark: Mark, fonts: PageFonts): PDFOperator[] {
  if (mark.kind === "path") return pathOperators(mark);
  if (mark.kind === "text") return textOperators(mark, fonts);
  const turn = mark.turn ?? 0;
  return [
    pushGraphicsState(),
    concatTransformationMatrix(Math.cos(turn), Math.sin(turn), -Math.sin(turn), Math.cos(turn), mark.at.x, mark.at.y),
    ...mark.marks.flatMap((inner) => operators(inner, fonts)),
    popGraphicsState(),
  ];
}

function pathOperators({ segments, pen, fill: filling }: PathMark): PDFOperator[] {
  const result: PDFOperator[] = [];
  if (filling) result.push(setFillingRgbColor(...rgb(filling)));
  if (pen)
    result.push(
      setStrokingRgbColor(...rgb(pen.ink)),
      setLineWidth(pen.width),
      setDashPattern([...(pen.dash ?? [])], 0),
    );
  let open = false;
  for (const segment of segments) {
    if (segment.to === "arc") {
      const [x, y] = onArc(segment.centre, segment.radius, segment.start);
      result.push(open ? lineTo(x, y) : moveTo(x, y), ...arcCurves(segment).map(curve));
    } else if (segment.to === "curve") result.push(curve(segment));
    else if (segment.to === "close") result.push(closePath());
    else result.push(segment.to === "move" ? moveTo(segment.x, segment.y) : lineTo(segment.x, segment.y));
    open = segment.to !== "close";
  }
  result.push(pen && filling ? fillAndStrokeEvenOdd() : filling ? fillEvenOdd() : stroke());
  return result;
}

const curve = ({
  x1,
  y1,
  x2,
  y2,
  x,
  y,
}: {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  x: number;
  y: number;
}): PDFOperator => appendBezierCurve(x1, y1, x2, y2, x, y);
const fillEvenOdd = (): PDFOperator => PDFOperator.of(PDFOperatorNames.FillEvenOdd);
const fillAndStrokeEvenOdd = (): PDFOperator => PDFOperator.of(PDFOperatorNames.FillEvenOddAndStroke);
const rgb = (ink: Ink): [number, number, number] => [...inkRgb[ink]];

/** Glyphs stand upright although y runs down: the text matrix mirrors them back. */
function textOperators(mark: TextMark, { embedded, names }: PageFonts): PDFOperator[] {
  const font = embedded[mark.weight];
  const name = names[mark.weight];
  if (font === undefined || name === undefined || mark.text === "") return [];
  const turn = mark.turn ?? 0;
  const back =
    mark.anchor === "start" ? 0 : textWidth(mark.text, mark.size, mark.weight) * (mark.anchor === "middle" ? 0.5 : 1);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [
    beginText(),
    setFillingRgbColor(...rgb(mark.ink)),
    setFontAndSize(name, mark.size),
    setTextMatrix(cos, sin, sin, -cos, mark.at.x - back * cos, mark.at.y - back * sin),
    showText(encoded(mark.text, font)),
    endText(),
  ];
}

/** Kerning and ligatures are off, so a text is its letters one after the other, and each is looked up in the font but
 *  once: laying out every text anew takes longer than all else on a sheet of figures. */
function encoded(text: string, font: PDFFont): PDFHexString {
  const known = letters.get(font) ?? new Map<string, string>();
  letters.set(font, known);
  let hex = "";
  for (const letter of text) {
    const code = known.get(letter) ?? font.encodeText(letter).asString();
    known.set(letter, code);
    hex += code;
  }
  return PDFHexString.of(hex);
}

const letters = new WeakMap<PDFFont, Map<string, string>>();

function weightsUsed({ pages }: Print): Weight[] {
  const used = new Set<Weight>();
  const walk = (marks: readonly Mark[]): void => {
    for (const mark of marks) {
      if (mark.kind === "text") used.add(mark.weight);
      else if (mark.kind === "group") walk(mark.marks);
    }
  };
  for (const { drawing } of pages) walk(drawing.marks);
  return [...used].sort();
}
