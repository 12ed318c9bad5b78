import * as z from "zod/mini";
import { MOST } from "./bounds.js";
import { anyLength, count, length, listOf, name, rpm, rpmOrRange, words } from "./fields.js";
import { needed, optional } from "./keys.js";

/** What was measured at a pulley: its effective diameter, or whatever can be reached. */
const pulley = z.union([
  length,
  z.strictObject({
    outside: optional(length, "Across the rim"),
    overBelt: optional(length, "Across the belt as it lies on the pulley"),
    string: optional(length, "Once round the rim, by a string"),
    stringOver: optional(length, "Once round the belt as it lies on the pulley, by a string"),
    teeth: optional(count(6, 500), "Teeth, for a toothed belt"),
  }),
]);

const step = z.strictObject({
  label: optional(words, "What you call this step; A, B, C… when left out"),
  driver: optional(pulley, "Effective diameter of the driving pulley, where the belt runs; or one of its measures"),
  driven: optional(pulley, "Effective diameter of the driven pulley, where the belt runs; or one of its measures"),
  teeth: optional(
    listOf(listOf(count(5, 500), MOST.idlers + 2, 2), MOST.gearPairs, 1),
    "Gear pairs, driver first: [[20, 60], [18, 54]]; wheels between the two are idlers: [[20, 35, 60]]",
  ),
});

const motor = z.strictObject({
  speed: optional(z.union([rpmOrRange, z.tuple([rpm, rpm])]), "1425 rpm, or 300 to 3000 for a variable motor"),
  speeds: optional(listOf(rpm, MOST.motorSpeeds, 2), "Of a motor with several: [710, 1425]"),
  mains: optional(
    z.union([z.literal(50), z.literal(60), z.enum(["50 Hz", "60 Hz"])]),
    "Mains that the plate is for: 50 Hz or 60 Hz",
  ),
  by: optional(z.enum(["treadle", "hand"]), "What turns it, where it is no motor; speed is its wheel's"),
});

const stage = z.strictObject({
  name: needed(name, "What you call this belt or gear pair"),
  centres: optional(length, "Distance between the two shafts"),
  belt: optional(z.string(), "Its own belt, where it differs from the drive's"),
  crossed: optional(z.boolean(), "true: the belt is crossed, and turns the driven shaft the other way"),
  idler: optional(z.boolean(), "true: an idler presses on the belt, so its length cannot be computed"),
  steps: needed(listOf(step, MOST.steps, 1), "The groove pairs or gears, one of which carries the power"),
});

const cover = z.strictObject({
  width: needed(length, "Across the flat part inside the belt cover"),
  height: needed(length, "Down it"),
  corner: optional(anyLength, "Radius of its corners; 0 when left out"),
  holes: optional(
    listOf(z.tuple([length, length, length]), MOST.coverHoles),
    "Screws to cut round: [from the left, from the top, diameter]",
  ),
});

const tachometer = z.strictObject({
  position: needed(z.union([words, listOf(words, MOST.stages)]), "The step labels of one position: [A, open]"),
  speed: needed(rpm, "Spindle speed measured there"),
});

/** Motor, belts and gears, as users write them. */
export const drive = z.strictObject({
  motor: needed(motor, "The motor, as its plate says"),
  belt: optional(z.string(), "round, 5 mm; vee, A; flat, 2 mm (thickness); toothed, 5 mm (pitch)"),
  stretch: optional(
    z.number().check(z.gte(0), z.lte(0.2)),
    "By which a joined belt is cut short, as its maker states: 0.06 is 6 %",
  ),
  stages: needed(listOf(stage, MOST.stages, 1), "Belts and gears from the motor to the spindle"),
  cover: optional(cover, "Size of the belt card; the sheet's own size when left out"),
  reverses: optional(z.boolean(), "true where the spindle can be run backwards, to take a tap out under power"),
  clutch: optional(z.boolean(), "true where a clutch lets the spindle slip or stop before a tap breaks"),
  tachometer: optional(listOf(tachometer, MOST.tachometer), "Spindle speeds that were measured"),
});
