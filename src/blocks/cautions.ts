import type { Mark } from "../drawing/drawing.js";
import { rectangle, text } from "../drawing/shapes.js";
import { wrapText } from "../drawing/text.js";
import { block, type Run } from "./block.js";
import { leading, size } from "./style.js";

/** The usual cautions of the trade (common practice), by where the hand will be. */
const cautions = {
  belt: [
    "Switch off and pull the plug before you open the cover or move a belt. Close the cover before you start.",
    "Take the key out of the chuck. Never exceed the speed marked on the chuck, whatever this card says.",
    "Eyes covered, sleeves and hair tied back, no gloves, no rings. Start slow with long, large or uneven work.",
    "Speeds are guides, for sharp tools and firm work. Maker's manual, local rules and a competent supervisor come first.",
  ],
  dial: [
    "Stop the spindle before you measure work or change a setting. Take up lost motion: come to every reading from the same side.",
    "Try the dial against an indicator before you trust it with work. Maker's manual and local rules come first.",
  ],
} as const;

export const cautionLines = block({ of: "belt" }, ({ settings, width }): Run[] => {
  const lines = cautions[settings.of as keyof typeof cautions] ?? cautions.belt;
  return lines.flatMap((caution, index) => {
    const parts = wrapText(caution, width - 4, size.small, "regular");
    const step = size.small * leading;
    const marks: Mark[] = [
      rectangle({ x: 0, y: step * 0.28 }, 1.4, 1.4, { fill: "accent" }),
      ...parts.map((part, row) => text(part, { x: 3, y: step * (row + 0.76) }, { size: size.small })),
    ];
    return [{ drawing: { width, height: step * parts.length + 0.4, marks }, gap: index === 0 ? 2 : 0 }];
  });
});
