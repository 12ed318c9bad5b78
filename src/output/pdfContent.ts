import type { Drawing, Ink, Mark, PathMark, TextMark, Weight } from "../drawing/drawing.js";
import { textWidth } from "../drawing/text.js";
import type { Affine } from "../paper/printerCorrection.js";
import { arcCurves, onArc } from "./arcCurves.js";
import { glyphNumber } from "./glyphNumber.js";
import { inkRgb } from "./inks.js";

export const POINTS_PER_MM = 72 / 25.4;

/** Names of the two fonts among a page's resources. */
export const fontName: Readonly<Record<Weight, string>> = { regular: "R", bold: "B" };

/** Letters that a document shows in each weight. */
export type Letters = Readonly<Record<Weight, Set<string>>>;

/** Content of one page (ISO 32000-1, 7.8.2), plain ASCII. One matrix takes millimetres with y down, through the printer's
 *  correction, to points with y up; all below it is mm. Notes the letters that it shows. */
export function pageContent(drawing: Drawing, [a, b, c, d, e, f]: Affine, letters: Letters): string {
  const k = POINTS_PER_MM;
  const map = matrix(k * a, -k * b, k * c, -k * d, k * e, k * (drawing.height - f));
  return `${map} cm\n${drawing.marks.map((mark) => content(mark, letters)).join("")}`;
}

function content(mark: Mark, letters: Letters): string {
  if (mark.kind === "path") return pathContent(mark);
  if (mark.kind === "text") return textContent(mark, letters);
  const turn = mark.turn ?? 0;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const inner = mark.marks.map((one) => content(one, letters)).join("");
  return `q ${matrix(cos, sin, -sin, cos, mark.at.x, mark.at.y)} cm\n${inner}Q\n`;
}

function pathContent({ segments, pen, fill }: PathMark): string {
  let path = "";
  if (fill) path += `${fillInk[fill]}\n`;
  if (pen) path += `${strokeInk[pen.ink]} ${number(pen.width)} w [${(pen.dash ?? []).map(number).join(" ")}] 0 d\n`;
  let open = false;
  for (const segment of segments) {
    if (segment.to === "arc") {
      path += `${pair(...onArc(segment.centre, segment.radius, segment.start))} ${open ? "l" : "m"}\n`;
      for (const curve of arcCurves(segment)) path += curveContent(curve);
    } else if (segment.to === "curve") path += curveContent(segment);
    else if (segment.to === "close") path += "h\n";
    else path += `${pair(segment.x, segment.y)} ${segment.to === "move" ? "m" : "l"}\n`;
    open = segment.to !== "close";
  }
  return `${path}${pen && fill ? "B*" : fill ? "f*" : "S"}\n`;
}

type Curve = Extract<PathMark["segments"][number], { to: "curve" }>;

const curveContent = ({ x1, y1, x2, y2, x, y }: Curve): string => `${pair(x1, y1)} ${pair(x2, y2)} ${pair(x, y)} c\n`;

/** Glyphs stand upright although y runs down: the text matrix mirrors them back. */
function textContent({ text, size, weight, anchor, at, ink, turn = 0 }: TextMark, letters: Letters): string {
  if (text === "") return "";
  const back = anchor === "start" ? 0 : textWidth(text, size, weight) * (anchor === "middle" ? 0.5 : 1);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const place = matrix(cos, sin, sin, -cos, at.x - back * cos, at.y - back * sin);
  let codes = "";
  for (const letter of text) {
    letters[weight].add(letter);
    codes += code(letter);
  }
  return `BT ${fillInk[ink]} /${fontName[weight]} ${number(size)} Tf ${place} Tm <${codes}> Tj ET\n`;
}

const codes = new Map<string, string>();
function code(letter: string): string {
  const known = codes.get(letter);
  if (known !== undefined) return known;
  const made = glyphNumber(letter).toString(16).padStart(4, "0");
  codes.set(letter, made);
  return made;
}

/** A millionth of a millimetre; never an exponent, which PDF does not know. Throws where there is no number: a viewer would leave
 *  the mark out without a word. */
function number(value: number): string {
  const rounded = Math.round(value * 1e6) / 1e6;
  if (Number.isNaN(rounded)) throw new Error("a place in a drawing is no number");
  return String(rounded);
}
const pair = (x: number, y: number): string => `${number(x)} ${number(y)}`;

/** Ten places, since six would put the far end of a long scale a fortieth of a micrometre off. */
function factor(value: number): string {
  const rounded = Math.round(value * 1e10) / 1e10;
  return rounded !== 0 && Math.abs(rounded) < 1e-6 ? rounded.toFixed(10) : String(rounded);
}
const matrix = (a: number, b: number, c: number, d: number, e: number, f: number): string =>
  `${factor(a)} ${factor(b)} ${factor(c)} ${factor(d)} ${factor(e)} ${factor(f)}`;

const colour = (ink: Ink): string => inkRgb[ink].map(number).join(" ");
const inks = Object.keys(inkRgb) as Ink[];
const each = (operator: string) =>
  Object.fromEntries(inks.map((ink) => [ink, `${colour(ink)} ${operator}`])) as Record<Ink, string>;
const fillInk = each("rg");
const strokeInk = each("RG");
