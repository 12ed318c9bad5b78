import type { Mark, Weight } from "../../drawing/drawing.js";
import { rectangle, text } from "../../drawing/shapes.js";
import { wrapText } from "../../drawing/text.js";
import { block, type Run } from "./block.js";
import { leading, size } from "./style.js";

/** The usual cautions of the trade (common practice), by where the hand will be. */
const cautions = {
  tailstock: [
    "Lock the tailstock, and seat the drill chuck hard in its barrel: a drill that grabs pulls it out and spins it.",
    "Begin with a centre drill. Ease the feed as the drill breaks through. Stop before you clear chips, and use a brush.",
    "Take the key out of the chuck. Hair and sleeves tied back, no gloves. Eyes covered.",
    "Speeds are guides, for sharp drills. Maker's manual, local rules and a competent supervisor come first.",
  ],
  drill: [
    "Clamp the work: a drill that grabs spins it like a propeller. Never hold it in the hand.",
    "Stop before you clear chips, and use a brush. Take the key out of the chuck. Hair and sleeves tied back, no gloves.",
    "Stand the machine so that it cannot topple: bolt it down. Ease the feed as the drill breaks through.",
    "Speeds are guides, for sharp drills. Maker's manual, local rules and a competent supervisor come first.",
  ],
  belt: [
    "Switch off and pull the plug before you open the cover or move a belt. Close the cover before you start.",
    "Take the key out of the chuck. Never exceed the speed marked on the chuck, whatever this card says.",
    "Eyes covered, sleeves and hair tied back, no gloves, no rings. Start slow with large or uneven work.",
    "A belt left loose on purpose slips sooner, but nobody knows at what load: it saves no finger.",
    "Speeds are guides, for sharp tools and firm work. Maker's manual, local rules and a competent supervisor come first.",
  ],
  dial: [
    "Stop the spindle before you measure work or change a setting. Take up lost motion: come to every reading from the same side.",
    "Try the dial against an indicator before you trust it with work. Maker's manual and local rules come first.",
  ],
  thread: [
    "Turn the spindle by hand, power off and the plug pulled: a tap or die under power breaks, and takes the hand with it.",
    "Half a turn on, a quarter back, to break the chip; cutting oil for steel. Chips are sharp: brush, never fingers.",
    "Start square: let the tailstock or the spindle guide the tap. Clear a blind hole often.",
    "Key out of the chuck. Maker's manual, local rules and a competent supervisor come first.",
  ],
  job: [
    "Key out of the chuck; turn the work by hand through one whole turn before the power goes on. Eyes, sleeves, hair; no gloves.",
    "Stop the spindle to measure, to move a belt, to clear chips. Chips are hot and sharp; cast-iron dust is not for lungs or slides.",
    "Never above the speed marked on the chuck. Work out of true, long or large: slowest position first.",
    "Maker's manual, the tool and material suppliers, local rules and a competent supervisor come before this sheet.",
  ],
  bar: [
    "Long bar behind the spindle whips: cut it to end inside, or run it slowly in a supporting tube.",
    "Stop the spindle to measure and to clear chips; a brush or hook, never fingers. Key out of the chuck.",
    "Do not lean on the stop with power feed: it is a gauge, not a brake. Maker's manual, local rules and a competent supervisor come first.",
  ],
  taper: [
    "Stop and isolate the machine before you swing the headstock or top slide, and lock it before you start again.",
    "Take a trial cut and measure: the swivel's own marks are rarely good to a tenth of a degree.",
    "Turn the chuck by hand through one whole turn first: nothing may strike the tool, slide or guard.",
    "Key out of the chuck. Maker's manual, local rules and a competent supervisor come first.",
  ],
} as const;

export const cautionLines = block(
  { of: "" },
  ({ settings, width }): Run[] =>
    cautionRuns(cautions[settings.of as keyof typeof cautions], width).map((run, index) => ({
      ...run,
      gap: index === 0 ? 2 : 0,
    })),
  { of: Object.keys(cautions) },
);

/** Each behind a square of the warning colour. They stay together: one left over on a page of its own is not read. */
export const cautionRuns = (lines: readonly string[], width: number, weight: Weight = "regular"): Run[] =>
  lines.map((caution, index) => {
    const parts = wrapText(caution, width - 4, size.small, weight);
    const step = size.small * leading;
    const marks: Mark[] = [
      rectangle({ x: 0, y: step * 0.28 }, 1.4, 1.4, { fill: "accent" }),
      ...parts.map((part, row) => text(part, { x: 3, y: step * (row + 0.76) }, { size: size.small, weight })),
    ];
    const keepWithNext = index < lines.length - 1;
    return { drawing: { width, height: step * parts.length + 0.4, marks }, keepWithNext };
  });
