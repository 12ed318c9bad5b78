import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import { type Matrix, times } from "./matrix.js";

/** What one of our PDFs really holds, read back by an independent reader, in page millimetres with y down. */
export type PageRead = {
  readonly width: number;
  readonly height: number;
  /** Straight strokes, end to end, with the pen's width. */
  readonly lines: readonly LineRead[];
  /** End points of every drawn path segment, curves included. */
  readonly points: readonly Spot[];
  readonly texts: readonly TextRead[];
};
export type Spot = { readonly x: number; readonly y: number };
export type LineRead = { readonly from: Spot; readonly to: Spot; readonly pen: number; readonly stroked: boolean };
export type TextRead = Spot & { readonly text: string /** mm */; readonly size: number };

const MM = 25.4 / 72;
export async function readPdf(
  bytes: Uint8Array,
): Promise<{ pages: PageRead[]; printScaling: unknown; title: unknown; outline: unknown }> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, isEvalSupported: false });
  const pdf = await task.promise;
  const preferences = (await pdf.getViewerPreferences()) as { PrintScaling?: string } | null;
  const { info } = (await pdf.getMetadata()) as { info: { Title?: string } };
  const pages: PageRead[] = [];
  for (let number = 1; number <= pdf.numPages; number++) pages.push(await readPage(await pdf.getPage(number)));
  const outline = await pdf.getOutline();
  await task.destroy();
  return { pages, printScaling: preferences?.PrintScaling, title: info.Title, outline };
}

type PdfPage = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>["promise"]>["getPage"]>>;

async function readPage(page: PdfPage): Promise<PageRead> {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  const { fnArray, argsArray } = await page.getOperatorList();
  const toMm = (m: Matrix, x: number, y: number): Spot => ({
    x: (m[0] * x + m[2] * y + m[4] - left) * MM,
    y: (top - (m[1] * x + m[3] * y + m[5])) * MM,
  });
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  // Text is read from its own operators: the reader's list of texts joins what happens to stand in one line.
  let textMatrix: Matrix = matrix;
  let em = 1;
  const texts: TextRead[] = [];
  let pen = 1;
  const stack: [Matrix, number][] = [];
  const lines: LineRead[] = [];
  const points: Spot[] = [];
  for (const [index, operator] of fnArray.entries()) {
    const args = argsArray[index];
    if (operator === OPS.save) stack.push([matrix, pen]);
    else if (operator === OPS.restore) [matrix, pen] = stack.pop() ?? [matrix, pen];
    else if (operator === OPS.transform) matrix = times(matrix, args as Matrix);
    else if (operator === OPS.setLineWidth) pen = args[0];
    else if (operator === OPS.setFont) em = args[1];
    else if (operator === OPS.setTextMatrix) textMatrix = Array.from(args[0] as ArrayLike<number>) as unknown as Matrix;
    else if (operator === OPS.showText) {
      const text = (args[0] as { unicode?: string }[]).map(({ unicode = "" }) => unicode).join("");
      const whole = times(matrix, textMatrix);
      const size = em * Math.hypot(whole[0], whole[1]) * MM;
      if (text.trim() !== "") texts.push({ text, ...toMm(whole, 0, 0), size });
    } else if (operator === OPS.constructPath) {
      const stroked = [
        OPS.stroke,
        OPS.closeStroke,
        OPS.fillStroke,
        OPS.eoFillStroke,
        OPS.closeFillStroke,
        OPS.closeEOFillStroke,
      ].includes(args[0]);
      const data = (args[1]?.[0] ?? []) as Float32Array | number[];
      readPath(
        [...data],
        (m) => toMm(matrix, m.x, m.y),
        { pen: pen * Math.hypot(matrix[0], matrix[1]) * MM, stroked },
        lines,
        points,
      );
    }
  }
  return { width: (right - left) * MM, height: (top - bottom) * MM, lines, points, texts };
}

/** pdf.js hands a path over as numbers: 0 move, 1 line, 2 curve, 3 quadratic, 4 close. */
function readPath(
  data: number[],
  place: (spot: Spot) => Spot,
  look: { pen: number; stroked: boolean },
  lines: LineRead[],
  points: Spot[],
): void {
  let here: Spot = { x: 0, y: 0 };
  let start = here;
  for (let at = 0; at < data.length; ) {
    const kind = data[at++];
    const spot = (skip: number): Spot =>
      place({ x: data[at + skip] ?? Number.NaN, y: data[at + skip + 1] ?? Number.NaN });
    if (kind === 0) {
      here = spot(0);
      start = here;
      at += 2;
    } else if (kind === 1) {
      const to = spot(0);
      lines.push({ from: here, to, ...look });
      here = to;
      at += 2;
    } else if (kind === 2) {
      here = spot(4);
      at += 6;
    } else if (kind === 3) {
      here = spot(2);
      at += 4;
    } else if (kind === 4) {
      lines.push({ from: here, to: start, ...look });
      here = start;
    } else throw new Error(`a path holds ${kind}, which is no operator`);
    points.push(here);
  }
}
