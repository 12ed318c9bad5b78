import type { PaperSize } from "../machine/machine.js";

export type Orientation = "portrait" | "landscape";

/** Portrait sizes, mm. A sizes: ISO 216. Letter and Legal: 8.5 × 11 in and 8.5 × 14 in. */
const sizes: Readonly<Record<PaperSize, readonly [number, number]>> = {
  A3: [297, 420],
  A4: [210, 297],
  A5: [148, 210],
  Letter: [215.9, 279.4],
  Legal: [215.9, 355.6],
};

export function paperSize(size: PaperSize, orientation: Orientation): { width: number; height: number } {
  const [short, long] = sizes[size];
  return orientation === "portrait" ? { width: short, height: long } : { width: long, height: short };
}
