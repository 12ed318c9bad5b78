import * as z from "zod";
import { drive } from "./driveSchema.js";
import { angle, anyLength, count, feedText, length, measuredOf, metresPerMinute, rpm, words } from "./fields.js";

/** The machine file as users write it. One definition serves the reader and the published JSON Schema. What needs the whole
 *  file to judge (units, readings of equal length, exclusive forms) is judged in `assemble.ts`. */

const readings = z.union([
  z.string(),
  z.strictObject({
    file: z.string().optional().describe("A CSV beside this file instead of the lists: columns turns, travel, return"),
    gauge: length().optional().describe("Smallest graduation of the gauge"),
    gaugeError: length().optional().describe("How far the gauge itself may be wrong over its reach, as its maker says"),
    temperature: z.number().optional().describe("°C while measuring; lengths are true at 20"),
    turns: z.array(z.number()).optional().describe("Handwheel turns at each reading"),
    travel: z.array(anyLength()).optional().describe("Gauge reading at each, going one way"),
    return: z
      .array(anyLength())
      .optional()
      .describe("Gauge reading at the same turns on the way back, come from past the end"),
  }),
]);

const feed = z.union([
  feedText(),
  z.strictObject({
    nominal: feedText().optional().describe("What the maker meant; only ever compared against"),
    perTurn: feedText().optional().describe("True travel for one turn"),
    uncertainty: length().optional().describe("How far off it may be, at 95 %"),
    screw: z
      .strictObject({
        pitch: feedText().describe("1.5 mm or 16 tpi"),
        starts: count(1, 12).optional().describe("1 when left out"),
      })
      .optional()
      .describe("A feed screw"),
    rack: z
      .strictObject({
        module: length().describe("Module of rack and pinion, mm"),
        teeth: count(5, 200).describe("Teeth of the pinion on the rack"),
        reduction: z
          .tuple([count(1, 500), count(1, 500)])
          .optional()
          .describe("Driving and driven teeth between handwheel and pinion"),
      })
      .optional()
      .describe("A rack and pinion"),
    readings: readings.optional().describe("What was measured; beats everything else"),
  }),
]);

/** YAML reads a bare `true` as yes; here it is a word like the others. */
const closure = z
  .union([z.enum(["even", "true", "rows"]), z.literal(true)])
  .transform((word) => (word === true ? "true" : word));

const dial = z.strictObject({
  shape: z.enum(["drum", "face", "bevel"]).describe("drum: cylinder; face: flat ring; bevel: cone"),
  diameter: length().optional().describe("Of the bare drum, or the larger one of a bevel"),
  wrap: length()
    .optional()
    .describe("Length once round a drum, measured with a strip of the same paper; beats the diameter"),
  width: length().optional().describe("Of the strip, or along the slope of a bevel"),
  outside: length().optional().describe("Outside diameter of a face dial"),
  inside: length().optional().describe("Inside diameter of a face dial"),
  smallDiameter: length().optional().describe("Smaller diameter of a bevel"),
  increases: z
    .enum(["clockwise", "anticlockwise"])
    .optional()
    .describe("Sense of turning in which numbers grow, seen by the operator; clockwise when left out"),
  divisions: length().optional().describe("What one division must be worth, in what the dial reads: 0.02 mm"),
  oncePerTurn: z
    .boolean()
    .optional()
    .describe("true builds a measured once-per-turn error into the marks, which are then unevenly spaced on purpose"),
  closure: closure
    .optional()
    .describe("even: equal divisions; true: exact ones, the last short; rows: one row for each turn"),
  second: length().optional().describe("Division of a second scale below the first: 0.001 in under one in mm"),
  vernier: count(2, 25).optional().describe("Parts into which a vernier beside the index line cuts a division: 10"),
  lap: length().optional().describe("Width of a tab for glue at one end; left out, the ends butt"),
  index: z
    .enum(["top", "right", "bottom", "left"])
    .optional()
    .describe("Where the index stands round a face or bevel, as the operator sees it; top when left out"),
});

const taper = z.strictObject({
  name: words().describe("What the taper is for"),
  large: length().optional().describe("Larger diameter"),
  small: anyLength().optional().describe("Smaller diameter"),
  length: length().optional().describe("Length between the two"),
  ratio: z.string().optional().describe("1 in 20: so much on diameter in that length"),
  perFoot: z.number().optional().describe("Inches on diameter in a foot"),
  included: angle().optional().describe("Angle between both sides: 60 deg"),
  half: angle().optional().describe("Angle between axis and side, which a swivel is set to"),
});

export const machineFile = z.strictObject({
  name: words().describe("What you call the machine"),
  revision: words().optional().describe("Count it up whenever you measure again; it stands on every sheet"),
  measured: words().optional().describe("Day of measurement, year first: 2026-11-01"),
  units: z.enum(["mm", "in"]).optional().describe("Unit of every length without one; mm when left out"),
  limits: z
    .strictObject({
      chuck: rpm().optional().describe("The speed marked on the chuck"),
      spindle: rpm().optional().describe("The most that the spindle may run"),
    })
    .optional()
    .describe("Never recommend beyond these"),
  drive: drive.optional().describe("Motor, belts and gears"),
  stops: z
    .array(
      z.strictObject({
        name: words().describe("What the stop is for"),
        handwheel: words().describe("Which handwheel runs up to it, by name"),
        length: length().describe("How far from the zero that you touch off at, in what its dial reads"),
        tolerance: length().optional().describe("How much the parts may differ"),
        parts: count(1, 10_000).optional().describe("How many alike"),
      }),
    )
    .optional()
    .describe("Repeat lengths to a bed or depth stop"),
  tapers: z.array(taper).optional().describe("Tapers that you want to turn"),
  handwheels: z
    .array(
      z.strictObject({
        name: words().describe("Cross slide, top slide, tailstock barrel…"),
        reads: z.enum(["travel", "diameter"]).optional().describe("What its dial shows; travel when left out"),
        travel: length().optional().describe("Working travel of the slide"),
        feed: feed.optional().describe("True travel for one turn of the handwheel"),
        dial: dial.optional().describe("The part that the dial is stuck on"),
        distances: z.array(length()).optional().describe("Distances of your own for its turn table: [6.35, 3/8 in]"),
      }),
    )
    .optional()
    .describe("Every wheel or lever that moves a slide"),
  scales: z
    .array(
      z.strictObject({
        name: words().describe("What it is for: tailstock barrel, quill, bed, depth stop"),
        length: length().describe("How long the scale is"),
        width: length().optional().describe("Width of the strip; 8 mm when left out"),
        divisions: length().optional().describe("True lengths: 1 mm, 0.5 mm or 1/16 in"),
        turnsOf: words().optional().describe("Instead of lengths: turns of this handwheel"),
        parts: count(1, 50).optional().describe("Divisions to a turn; 10 when left out"),
        grows: z.enum(["left", "right"]).optional().describe("Side to which the numbers grow; right when left out"),
      }),
    )
    .optional()
    .describe("Straight scales to stick on"),
  angleScales: z
    .array(
      z.strictObject({
        name: words().describe("What swivels"),
        part: z
          .enum(["headstock", "top slide", "vice", "spindle"])
          .describe("Tells which end of the work comes out small; spindle: a degree plate for its nose"),
        shape: z
          .enum(["face", "drum"])
          .optional()
          .describe("face: stuck on a flat top; drum: round a cylinder's side; face when left out"),
        radius: length().describe("From the swivel's axis to the edge where the scale is read"),
        width: length().optional().describe("Width of the scale; 9 mm when left out"),
        range: z.tuple([z.number(), z.number()]).optional().describe("Degrees on either side: [-45, 45] when left out"),
        step: z.number().gt(0).max(15).optional().describe("Degrees between marks: 0.5, 1, 2, 5; 1 when left out"),
        turns: z.boolean().optional().describe("true: the scale turns past a fixed index; true when left out"),
        vernier: count(2, 30).optional().describe("Parts of a step that a vernier shows: 12 of 1° is 5 minutes"),
      }),
    )
    .optional()
    .describe("Scales of degrees for a swivelling headstock, top slide or vice"),
  dividing: z
    .strictObject({
      ratio: count(1, 200).optional().describe("Turns of the crank for one turn of the work; 40 when left out"),
      plates: z
        .array(z.array(count(3, 400)).min(1))
        .optional()
        .describe("Hole circles of each plate: [[15, 16, 17, 18, 19, 20], [21, 23, 27, 29, 31, 33]]"),
    })
    .optional()
    .describe("A dividing head or rotary table, to cut a dial in metal"),
  gears: z
    .array(count(5, 500))
    .optional()
    .describe("Tooth counts of gears at hand: change wheels to index by, or to gear a dial"),
  printers: z
    .record(
      z.string(),
      z.strictObject({
        across: measuredOf().optional().describe("Bar across the page, in mm unless a unit is written: 199.3 of 200"),
        down: measuredOf().optional().describe("Bar down the page, in mm unless a unit is written: 250.4 of 250"),
        diagonals: z.tuple([length(), length()]).optional().describe("From top left, then from top right"),
      }),
    )
    .optional()
    .describe("What each printer really prints"),
  paper: z
    .strictObject({
      size: z.enum(["A3", "A4", "A5", "Letter", "Legal"]).optional().describe("A4 when left out"),
      thickness: anyLength().optional().describe("0.10 mm when left out: copy paper of 75 to 80 g/m²"),
      adhesive: anyLength().optional().describe("Thickness of glue or tape under the strip; 0 when left out"),
      printer: words().optional().describe("Which of the printers prints it"),
    })
    .optional()
    .describe("What the pages are printed on"),
  work: z
    .strictObject({
      tool: words().optional().describe("high-speed steel when left out"),
      materials: z.array(words()).min(1).optional().describe("Materials on the speed table"),
      diameters: z.array(length()).min(1).optional().describe("Diameters on the speed table"),
      derating: z
        .number()
        .gt(0)
        .max(1)
        .optional()
        .describe("Factor on every published cutting speed, for a light machine: 0.8; it is printed"),
      cuttingSpeeds: z
        .array(
          z.strictObject({
            material: words().describe("A known material, or one of your own"),
            tool: words().optional().describe("high-speed steel when left out"),
            operation: words().optional().describe("turning when left out"),
            speed: z.tuple([metresPerMinute(), metresPerMinute()]).describe("Least and most: [25 m/min, 35 m/min]"),
            source: words().optional().describe("Where you have it from; it is printed"),
          }),
        )
        .optional()
        .describe("Cutting speeds of your own; they override the published ones"),
    })
    .optional()
    .describe("What the machine is used for"),
});

export type MachineFile = z.output<typeof machineFile>;
