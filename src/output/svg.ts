import type { Ink, Mark, PathMark, Segment, TextMark, Weight } from "../drawing/drawing.js";
import { mark as ours } from "../drawing/ours.js";
import type { Page, Print } from "../drawing/page.js";
import type { Affine } from "../paper/printerCorrection.js";
import { onArc } from "./arcCurves.js";
import type { FontBytes } from "./fonts.js";
import { inkRgb } from "./inks.js";

/** One page as SVG, in millimetres, with the fonts it uses (WOFF) inside, so that it looks the same anywhere. Without fonts it is
 *  for a place that has them, and says itself how its letters look. */
export function renderSvg(page: Page, print: Print, correction: Affine, fonts?: FontBytes): string {
  const { width, height, marks } = page.drawing;
  const body = marks.map((mark) => element(mark)).join("\n");
  const map = correction.every((part, index) => part === [1, 0, 0, 1, 0, 0][index])
    ? body
    : `<g transform="matrix(${correction.map(number).join(" ")})">\n${body}\n</g>`;
  return `<?xml version="1.0" encoding="UTF-8"?>
<!-- ${ours} -->
<svg xmlns="http://www.w3.org/2000/svg" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}">
<title>${escaped(`${print.title}: ${page.title}`)}</title>
${fonts ? styled(body, fonts) : ""}<rect width="${number(width)}" height="${number(height)}" fill="#fff"/>
${map}
</svg>
`;
}

function styled(body: string, fonts: FontBytes): string {
  const weights = (["regular", "bold"] as const).filter((weight) => body.includes(`class="${weight}"`));
  const faces = weights.map(
    (weight) =>
      `@font-face{font-family:witnessmark;font-weight:${css[weight]};src:url(data:font/woff;base64,${base64(fonts[weight])})}`,
  );
  return `<style>${faces.join("")}text{font-family:witnessmark,sans-serif;font-kerning:none;white-space:pre}.regular{font-weight:400}.bold{font-weight:700}</style>\n`;
}

const css: Readonly<Record<Weight, number>> = { regular: 400, bold: 700 };

function element(mark: Mark): string {
  if (mark.kind === "path") return pathElement(mark);
  if (mark.kind === "text") return textElement(mark);
  const place =
    mark.at.x === 0 && mark.at.y === 0 && !mark.turn
      ? ""
      : ` transform="translate(${number(mark.at.x)} ${number(mark.at.y)})${mark.turn ? ` rotate(${degrees(mark.turn)})` : ""}"`;
  const name = mark.name === undefined ? "" : ` class="${escaped(mark.name)}"`;
  return `<g${name}${place}>\n${mark.marks.map(element).join("\n")}\n</g>`;
}

function pathElement({ segments, pen, fill }: PathMark): string {
  let data = "";
  let open = false;
  for (const segment of segments) {
    if (segment.to === "arc")
      data += (open ? "L" : "M") + pair(...onArc(segment.centre, segment.radius, segment.start)) + arcData(segment);
    else if (segment.to === "curve")
      data += `C${pair(segment.x1, segment.y1)} ${pair(segment.x2, segment.y2)} ${pair(segment.x, segment.y)}`;
    else if (segment.to === "close") data += "Z";
    else data += `${segment.to === "move" ? "M" : "L"}${pair(segment.x, segment.y)}`;
    open = segment.to !== "close";
  }
  const stroke = pen
    ? ` stroke="${colour(pen.ink)}" stroke-width="${number(pen.width)}"${pen.dash ? ` stroke-dasharray="${pen.dash.map(number).join(" ")}"` : ""}`
    : "";
  return `<path d="${data}" fill="${fill ? colour(fill) : "none"}"${fill ? ' fill-rule="evenodd"' : ""}${stroke}/>`;
}

function textElement({ at, text, size, anchor, weight, ink, turn }: TextMark): string {
  const place = turn
    ? `transform="translate(${number(at.x)} ${number(at.y)}) rotate(${degrees(turn)})"`
    : `x="${number(at.x)}" y="${number(at.y)}"`;
  const anchored = anchor === "start" ? "" : ` text-anchor="${anchor}"`;
  return `<text class="${weight}" ${place} font-size="${number(size)}"${anchored}${ink === "black" ? "" : ` fill="${colour(ink)}"`}>${escaped(text)}</text>`;
}

/** In parts of at most 120°: an arc whose ends coincide would vanish, and where they lie almost opposite each other a viewer,
 *  which rebuilds the centre from the ends, makes a thousandth of a millimetre out of their last decimal. */
function arcData({ centre, radius, start, end }: Extract<Segment, { to: "arc" }>): string {
  const count = Math.max(2, Math.ceil(Math.abs(end - start) / ((2 / 3) * Math.PI)));
  const sense = end > start ? 1 : 0;
  return Array.from({ length: count }, (_, index) => {
    const to = start + ((end - start) * (index + 1)) / count;
    return `A${number(radius)} ${number(radius)} 0 0 ${sense} ${pair(...onArc(centre, radius, to))}`;
  }).join("");
}

/** Eight decimals of a millimetre: far below the 0.001 mm that is promised, and no noise of the last bit. */
const number = (value: number): string => String(Number(value.toFixed(8)) + 0);
const pair = (x: number, y: number): string => `${number(x)} ${number(y)}`;
const degrees = (turn: number): string => String(Number(((turn * 180) / Math.PI).toFixed(10)));
const colour = (ink: Ink): string =>
  `#${inkRgb[ink]
    .map((part) =>
      Math.round(part * 255)
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`;
const escaped = (text: string): string =>
  text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/--/g, "&#45;-");

function base64(bytes: Uint8Array): string {
  let binary = "";
  for (let at = 0; at < bytes.length; at += 0x8000) binary += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(binary);
}
