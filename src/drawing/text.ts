import type { Weight } from "./drawing.js";
import { advances } from "./advances.generated.js";

/** Width, mm, of one line of text set at `size` mm em. Kerning is off in every renderer, so widths simply add up. */
export function textWidth(text: string, size: number, weight: Weight): number {
  let units = 0;
  for (const char of text) units += advances[weight][char] ?? advances[weight]["0"] ?? 0;
  return (units * size) / advances.unitsPerEm;
}
