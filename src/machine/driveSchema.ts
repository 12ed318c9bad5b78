import * as z from "zod";
import { anyLength, count, length, rpm, words } from "./fields.js";

/** What was measured at a pulley: its effective diameter, or whatever can be reached. */
const pulley = (which: string) =>
  z
    .union([
      length(),
      z.strictObject({
        outside: length().optional().describe("Across the rim"),
        overBelt: length().optional().describe("Across the belt as it lies on the pulley"),
        string: length().optional().describe("Once round the rim, by a string"),
        stringOver: length().optional().describe("Once round the belt as it lies on the pulley, by a string"),
        teeth: count(6, 500).optional().describe("Teeth, for a toothed belt"),
      }),
    ])
    .optional()
    .describe(`Effective diameter of the ${which} pulley, where the belt runs; or one of its measures`);

const step = z.strictObject({
  label: words().optional().describe("What you call this step; A, B, C… when left out"),
  driver: pulley("driving"),
  driven: pulley("driven"),
  teeth: z
    .array(z.array(count(5, 500)).min(2))
    .min(1)
    .optional()
    .describe("Gear pairs, driver first: [[20, 60], [18, 54]]; wheels between the two are idlers: [[20, 35, 60]]"),
});

/** Motor, belts and gears, as users write them. */
export const drive = z.strictObject({
  motor: z
    .strictObject({
      speed: z
        .union([rpm(), z.tuple([rpm(), rpm()])])
        .optional()
        .describe("1425 rpm, or [300, 3000] for a variable motor"),
      speeds: z.array(rpm()).min(2).optional().describe("Of a motor with several: [710, 1425]"),
      mains: z
        .union([z.literal(50), z.literal(60), z.enum(["50 Hz", "60 Hz"])])
        .optional()
        .describe("Mains that the plate is for: 50 Hz or 60 Hz"),
      by: z.enum(["treadle", "hand"]).optional().describe("What turns it, where it is no motor; speed is its wheel's"),
    })
    .describe("The motor, as its plate says"),
  belt: z.string().optional().describe("round, 5 mm; vee, A; flat, 2 mm (thickness); toothed, 5 mm (pitch)"),
  stretch: z
    .number()
    .min(0)
    .max(0.2)
    .optional()
    .describe("By which a joined belt is cut short, as its maker states: 0.06 is 6 %"),
  stages: z
    .array(
      z.strictObject({
        name: words().describe("What you call this belt or gear pair"),
        centres: length().optional().describe("Distance between the two shafts"),
        belt: z.string().optional().describe("Its own belt, where it differs from the drive's"),
        crossed: z.boolean().optional().describe("true: the belt is crossed, and turns the driven shaft the other way"),
        idler: z.boolean().optional().describe("true: an idler presses on the belt, so its length cannot be computed"),
        steps: z.array(step).min(1).describe("The groove pairs or gears, one of which carries the power"),
      }),
    )
    .min(1)
    .describe("Belts and gears from the motor to the spindle"),
  cover: z
    .strictObject({
      width: length().describe("Across the flat part inside the belt cover"),
      height: length().describe("Down it"),
      corner: anyLength().optional().describe("Radius of its corners; 0 when left out"),
      holes: z
        .array(z.tuple([length(), length(), length()]))
        .optional()
        .describe("Screws to cut round: [from the left, from the top, diameter]"),
    })
    .optional()
    .describe("Size of the belt card; the sheet's own size when left out"),
  tachometer: z
    .array(
      z.strictObject({
        position: z.union([words(), z.array(words())]).describe("The step labels of one position: [A, open]"),
        speed: rpm().describe("Spindle speed measured there"),
      }),
    )
    .optional()
    .describe("Spindle speeds that were measured"),
});
