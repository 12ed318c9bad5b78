import type { Context, Raw } from "./context.js";
import type { AngleScale, DividingHead, LinearScale, Machine } from "./machine.js";
import { noSuchWheel } from "./noSuchWheel.js";
import type { Path } from "./problem.js";
import type { MachineFile } from "./schema.js";
import { unitWritten } from "./written.js";

/** Straight scales, angle scales and what divides a circle. */
export function assembleScales(
  file: MachineFile,
  context: Context,
): Pick<Machine, "scales" | "angleScales" | "dividing" | "gears"> {
  const known = (file.handwheels ?? []).map(({ name }) => name);
  return {
    ...(file.scales && { scales: file.scales.map((scale, index) => linearScale(scale, index, known, context)) }),
    ...(file.angleScales && { angleScales: file.angleScales.map((scale, index) => angleScale(scale, index, context)) }),
    ...(file.dividing && { dividing: dividingHead(file.dividing) }),
    ...(file.gears && { gears: file.gears }),
  };
}

function linearScale(
  scale: Raw<"scales">[number],
  index: number,
  known: readonly string[],
  context: Context,
): LinearScale {
  const { units, mm, said, error } = context;
  const path = ["scales", index];
  if ((scale.divisions === undefined) === (scale.turnsOf === undefined))
    error(
      path,
      "one-of-two",
      `scale "${scale.name}" needs either divisions or turnsOf`,
      "give divisions: 1 mm for true lengths, or turnsOf: and a handwheel's name for its turns",
    );
  if (scale.turnsOf !== undefined && !known.includes(scale.turnsOf)) {
    const { what, remedy } = noSuchWheel(scale.turnsOf, known);
    error([...path, "turnsOf"], "unknown-handwheel", what, remedy);
  }
  if (scale.parts !== undefined && scale.turnsOf === undefined)
    error([...path, "parts"], "stray", "parts says into what a turn is divided", "add turnsOf:, or leave parts out");
  const divisions = scale.divisions && mm(scale.divisions);
  const length = mm(scale.length);
  if (divisions !== undefined && (divisions < 0.3 || divisions > length))
    error(
      [...path, "divisions"],
      "too-close",
      `divisions of ${said(divisions)} cannot be drawn on a scale of ${said(length)}`,
      `choose between ${said(0.5, 1)} and the whole length`,
    );
  judgeWidth(scale.width && mm(scale.width), path, context);
  return {
    name: scale.name,
    length,
    width: scale.width === undefined ? 8 : mm(scale.width),
    grows: scale.grows ?? "right",
    ...(scale.divisions && divisions !== undefined && { divisions, unit: unitWritten(scale.divisions, units) }),
    ...(scale.turnsOf !== undefined && { turnsOf: scale.turnsOf, parts: scale.parts ?? 10 }),
  };
}

function angleScale(scale: Raw<"angleScales">[number], index: number, context: Context): AngleScale {
  const { mm, said, error } = context;
  const path = ["angleScales", index];
  const plate = scale.part === "spindle";
  if (plate && (scale.range !== undefined || scale.shape === "drum"))
    error(
      [...path, scale.range === undefined ? "shape" : "range"],
      "not-this-part",
      "a degree plate is a flat ring right round the spindle",
      "leave range and shape out",
    );
  const [from, to] = plate ? [0, 360] : (scale.range ?? [-45, 45]);
  if (!(from <= 0 && to >= 0 && to > from && to - from <= 360))
    error(
      [...path, "range"],
      "bad-range",
      `a range from ${from} to ${to} degrees does not hold zero`,
      "write it from the one side to the other, as [-45, 45]",
    );
  const radius = mm(scale.radius);
  const width = scale.width === undefined ? 9 : mm(scale.width);
  const step = scale.step ?? 1;
  judgeWidth(width, path, context);
  if ((step * Math.PI * radius) / 180 < 0.5)
    error(
      [...path, "step"],
      "too-close",
      `marks ${step}° apart are only ${said((step * Math.PI * radius) / 180, 2)} from each other on a radius of ${said(radius)}`,
      "take a larger step: 1, 2 or 5 degrees",
    );
  if (scale.shape !== "drum" && width >= radius)
    error(
      [...path, "width"],
      "inside-out",
      "the scale is as wide as its radius",
      `make it narrower: about ${said(9, 0)}`,
    );
  return {
    name: scale.name,
    part: scale.part,
    shape: scale.shape ?? "face",
    radius,
    width,
    from,
    to,
    step,
    turns: scale.turns ?? true,
    ...(scale.vernier !== undefined && { vernier: scale.vernier }),
  };
}

/** Widths, mm, between which a strip has room for its numbers and is still a strip. */
const narrowest = 3;
const widest = 60;

function judgeWidth(width: number | undefined, path: Path, { error, said }: Context): void {
  if (width === undefined || (width >= narrowest && width <= widest)) return;
  error(
    [...path, "width"],
    width < narrowest ? "too-narrow" : "too-large",
    `a scale ${said(width)} wide ${width < narrowest ? "has no room for numbers" : "is no strip"}`,
    `give its width across the marks, ${said(narrowest)} to ${said(widest)}; mind the unit`,
  );
}

const dividingHead = (given: Raw<"dividing">): DividingHead => ({
  ratio: given.ratio ?? 40,
  plates: given.plates ?? [],
});
