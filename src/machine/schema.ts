import * as z from "zod/mini";
import { languages } from "../words/languages.generated.js";
import { MOST } from "./bounds.js";
import { drive } from "./driveSchema.js";
import {
  angle,
  anyLength,
  count,
  drillSize,
  feed,
  gearModule,
  length,
  listOf,
  measuredOf,
  name,
  perFoot,
  rackPitch,
  reading,
  rpm,
  cuttingSpeed as speedOfCut,
  turns,
  words,
} from "./fields.js";
import { needed, optional } from "./keys.js";

/** The machine file as users write it. One definition serves the reader and the published JSON Schema. What needs the whole
 *  file to judge (units, readings of equal length, exclusive forms) is judged in `assemble.ts`. */

const readings = z.union([
  z.string(),
  z.strictObject({
    file: optional(z.string(), "A CSV beside this file instead of the lists: columns turns, travel, return"),
    gauge: optional(length, "Smallest graduation of the gauge"),
    gaugeError: optional(length, "How far the gauge itself may be wrong over its reach, as its maker says"),
    temperature: optional(z.number(), "°C while measuring; lengths are true at 20"),
    zeroAt: optional(words, "Where the slide stood at turn 0: line on the ways, or slide flush with its end"),
    turns: optional(listOf(turns, MOST.readings), "Handwheel turns at each reading"),
    travel: optional(
      listOf(reading, MOST.readings),
      "Gauge reading at each, going one way; empty where none was taken",
    ),
    return: optional(
      listOf(reading, MOST.readings),
      "Gauge reading at the same turns on the way back, come from past the end; empty where none was taken yet",
    ),
  }),
]);

const screw = z.strictObject({
  pitch: needed(feed, "1.5 mm or 16 tpi"),
  starts: optional(count(1, 12), "1 when left out"),
});

const rack = z.strictObject({
  module: optional(gearModule, "Module of rack and pinion: always mm, in a file in inches too"),
  pitch: optional(
    rackPitch,
    "Instead of module: from tooth to tooth (circular pitch, 1/4 in), or diametral pitch (16 DP)",
  ),
  teeth: needed(count(5, 200), "Teeth of the pinion on the rack"),
  reduction: optional(z.tuple([count(1, 500), count(1, 500)]), "Driving and driven teeth between handwheel and pinion"),
});

const handwheelFeed = z.union([
  feed,
  z.strictObject({
    nominal: optional(feed, "What the maker meant; only ever compared against"),
    perTurn: optional(feed, "True travel for one turn"),
    uncertainty: optional(length, "How far off it may be, at 95 %"),
    screw: optional(screw, "A feed screw"),
    rack: optional(rack, "A rack and pinion"),
    readings: optional(readings, "What was measured; beats everything else"),
  }),
]);

/** YAML reads a bare `true` as yes; here it is a word like the others. */
const closure = z.pipe(
  z.union([z.enum(["even", "true", "rows"]), z.literal(true)]),
  z.transform((word) => (word === true ? "true" : word)),
);

const dial = z.strictObject({
  shape: needed(z.enum(["drum", "face", "bevel"]), "drum: cylinder; face: flat ring; bevel: cone"),
  diameter: optional(length, "Of the bare drum, or the larger one of a bevel"),
  wrap: optional(length, "Length once round a drum, measured with a strip of the same paper; beats the diameter"),
  width: optional(length, "Of the strip, or along the slope of a bevel"),
  outside: optional(length, "Outside diameter of a face dial"),
  inside: optional(length, "Inside diameter of a face dial"),
  smallDiameter: optional(length, "Smaller diameter of a bevel"),
  increases: optional(
    z.enum(["clockwise", "anticlockwise", "counterclockwise"]),
    "Sense of turning in which numbers grow, seen by the operator; clockwise when left out",
  ),
  divisions: optional(length, "What one division must be worth, in what the dial reads: 0.02 mm or 0.001 in"),
  oncePerTurn: optional(
    z.boolean(),
    "true builds a measured once-per-turn error into the marks, which are then unevenly spaced on purpose",
  ),
  closure: optional(closure, "even: equal divisions; true: exact ones, the last short; rows: one row for each turn"),
  second: optional(length, "Division of a second scale below the first: 0.001 in under one in mm"),
  vernier: optional(count(2, 25), "Parts into which a vernier beside the index line cuts a division: 10"),
  fixed: optional(
    z.boolean(),
    "true where it cannot be turned to 0 on its wheel, as one glued to it: plans then give sums to write out; when left out, it can",
  ),
  lap: optional(length, "Width of a tab for glue at one end; left out, the ends butt"),
  index: optional(
    z.enum(["top", "right", "bottom", "left"]),
    "Where the index stands round a face or bevel, as the operator sees it; top when left out",
  ),
});

const oldDial = z.strictObject({
  reads: needed(z.enum(["travel", "diameter"]), "What the dial that is on it shows, whatever the new one is to read"),
  perTurn: optional(
    feed,
    "What it shows in one turn, in its own unit: 0.1 in; when left out, what the maker meant (feed.nominal), doubled where it reads diameter",
  ),
  fixed: optional(
    z.boolean(),
    "false where it can be turned to 0 on its wheel; when left out, it is counted on from where it stands",
  ),
});

const handwheel = z.strictObject({
  name: needed(name, "Cross slide, top slide, tailstock barrel…"),
  moves: optional(
    z.enum(["across", "along", "angled", "barrel", "quill"]),
    "What it moves; guessed from its name when left out. across: the slide square to the bed; along: the carriage; angled: the top slide, which swivels; barrel: of the tailstock; quill: the drill spindle's",
  ),
  travel: optional(length, "Working travel of the slide"),
  feed: optional(handwheelFeed, "True travel for one turn of the handwheel"),
  reads: optional(
    z.enum(["travel", "diameter"]),
    "What its dial shows: how far the slide moves, or what comes off round work; travel when left out",
  ),
  dial: optional(dial, "The part that the dial is stuck on"),
  oldDial: optional(
    oldDial,
    "The dial that is on it now: the turns sheet tells what to read on it; plans and stops do where no new one is made",
  ),
  distances: optional(listOf(length, MOST.distances), "Distances of your own for its turn table: [6.35, 3/8 in]"),
});

const stop = z.strictObject({
  name: needed(name, "What the stop is for"),
  handwheel: needed(name, "Which handwheel runs up to it, by name"),
  length: needed(length, "How far from the zero that you touch off at, in what its dial reads"),
  tolerance: optional(length, "How much the parts may differ"),
  parts: optional(count(1, 10_000), "How many alike"),
});

const taper = z.strictObject({
  name: needed(name, "What the taper is for"),
  large: optional(length, "Larger diameter"),
  small: optional(anyLength, "Smaller diameter"),
  length: optional(length, "Length between the two"),
  ratio: optional(z.string(), "1 in 20: so much on diameter in that length"),
  perFoot: optional(perFoot, "Inches on diameter in a foot: 0.75 or 3/4"),
  included: optional(angle, "Angle between both sides: 60 deg"),
  half: optional(angle, "Angle between axis and side, which a swivel is set to"),
});

const scale = z.strictObject({
  name: needed(name, "What it is for: tailstock barrel, quill, bed, depth stop"),
  length: needed(length, "How long the scale is"),
  width: optional(length, "Width of the strip; 8 mm when left out"),
  divisions: optional(length, "True lengths: 1 mm, 0.5 mm or 1/16 in"),
  turnsOf: optional(words, "Instead of lengths: turns of this handwheel"),
  parts: optional(count(1, 50), "Divisions to a turn; 10 when left out"),
  grows: optional(z.enum(["left", "right"]), "Side to which the numbers grow; right when left out"),
});

const angleScale = z.strictObject({
  name: needed(name, "What swivels"),
  part: needed(
    z.enum(["headstock", "top slide", "vice", "spindle"]),
    "Tells which end of the work comes out small; spindle: a degree plate for its nose",
  ),
  shape: optional(
    z.enum(["face", "drum"]),
    "face: stuck on a flat top; drum: round a cylinder's side; face when left out",
  ),
  radius: needed(
    length,
    "From the swivel's axis to the edge where the scale is read; of a cylinder, without the paper",
  ),
  width: optional(length, "Width of the scale; 9 mm when left out"),
  range: optional(z.tuple([z.number(), z.number()]), "Degrees on either side: [-45, 45] when left out"),
  step: optional(z.number().check(z.gt(0), z.lte(15)), "Degrees between marks: 0.5, 1, 2, 5; 1 when left out"),
  turns: optional(z.boolean(), "true: the scale turns past a fixed index; true when left out"),
  vernier: optional(count(2, 30), "Parts of a step that a vernier shows: 12 of 1° is 5 minutes"),
});

const dividing = z.strictObject({
  ratio: optional(count(1, 200), "Turns of the crank for one turn of the work; 40 when left out"),
  plates: optional(
    listOf(listOf(count(3, 400), MOST.circles, 1), MOST.plates),
    "Hole circles of each plate: [[15, 16, 17, 18, 19, 20], [21, 23, 27, 29, 31, 33]]",
  ),
});

const printer = z.strictObject({
  across: optional(
    measuredOf,
    "Along the short side of the sheet of paper, what was measured of what it should be: 199.3 of 200, or 6.98 of 7 in",
  ),
  down: optional(measuredOf, "Along the long side of the sheet: 250.4 of 250, or 8.98 of 9 in"),
  diagonals: optional(z.tuple([length, length]), "From top left, then from top right"),
});

const paper = z.strictObject({
  size: optional(z.enum(["A3", "A4", "A5", "Letter", "Legal"]), "A4 when left out"),
  thickness: optional(anyLength, "0.10 mm when left out: copy paper of 75 to 80 g/m²"),
  adhesive: optional(anyLength, "Thickness of glue or tape under the strip; 0 when left out"),
  printer: optional(words, "Which of the printers prints it"),
});

const cuttingSpeed = z.strictObject({
  material: needed(name, "A known material, or one of your own"),
  tool: optional(words, "high-speed steel when left out"),
  operation: optional(words, "turning when left out"),
  speed: needed(
    z.tuple([speedOfCut, speedOfCut]),
    "Least and most: [25 m/min, 35 m/min]; bare ones are ft/min in an inch file",
  ),
  source: optional(words, "Where you have it from; it is printed"),
});

const work = z.strictObject({
  tool: optional(words, "high-speed steel when left out"),
  materials: optional(listOf(words, MOST.materials, 1), "Materials on the speed charts"),
  diameters: optional(listOf(length, MOST.diameters, 1), "Diameters on the speed charts"),
  deepest: optional(
    length,
    "Deepest cut on the radius that it bears; 1 mm (0.04 in) on a light machine, 2 mm (0.08 in) on a firm one when left out",
  ),
  firmness: optional(
    z.enum(["light", "firm"]),
    "light when left out: the lower half of a published cutting speed; firm: up to its upper end",
  ),
  drills: optional(
    listOf(drillSize, MOST.drills, 1),
    "Drills on the drilling table, by diameter or as no. 21, letter F; usual ones when left out",
  ),
  derating: optional(
    z.number().check(z.gt(0), z.lte(1)),
    "Factor on every published cutting speed, for a machine that bears still less: 0.8; it is printed",
  ),
  cuttingSpeeds: optional(
    listOf(cuttingSpeed, MOST.cuttingSpeeds),
    "Cutting speeds of your own; they override the published ones",
  ),
});

const limits = z.strictObject({
  chuck: optional(rpm, "The speed marked on the chuck"),
  spindle: optional(rpm, "The most that the spindle may run"),
  drill: optional(length, "The largest drill that it drives, or that its chuck holds"),
});

export const machineFile = z.strictObject({
  name: needed(name, "What you call the machine"),
  revision: optional(words, "Count it up whenever you measure again; it stands on every sheet"),
  measured: optional(words, "Day of measurement, year first: 2026-11-01"),
  kind: optional(
    z.enum(["lathe", "drill", "lathe stood on end"]),
    "lathe when left out; of a drill no turning sheets are printed, of a lathe stood on end those of both",
  ),
  language: optional(z.enum(languages), "Language of the paper: en when left out; one chosen at print comes before it"),
  units: optional(z.enum(["mm", "in"]), "Unit of every length without one; mm when left out"),
  limits: optional(limits, "Never recommend beyond these"),
  drive: optional(drive, "Motor, belts and gears"),
  stops: optional(listOf(stop, MOST.stops), "Repeat lengths to a bed or depth stop"),
  tapers: optional(listOf(taper, MOST.tapers), "Tapers that you want to turn"),
  handwheels: optional(listOf(handwheel, MOST.handwheels), "Every wheel or lever that moves a slide"),
  scales: optional(listOf(scale, MOST.scales), "Straight scales to stick on"),
  angleScales: optional(
    listOf(angleScale, MOST.scales),
    "Scales of degrees for a swivelling headstock, top slide or vice",
  ),
  dividing: optional(dividing, "A dividing head or rotary table, to cut a dial in metal"),
  gears: optional(
    listOf(count(5, 500), MOST.gears),
    "Tooth counts of gears at hand: change wheels to index by, or to gear a dial",
  ),
  printers: optional(z.record(z.string(), printer), "What each printer really prints"),
  paper: optional(paper, "What the pages are printed on"),
  work: optional(work, "What the machine is used for"),
});

export type MachineFile = z.output<typeof machineFile>;
