import { expect, test } from "vitest";
import { bareUnit } from "../../src/page/app/form/units.js";
import type { Way } from "../../src/page/file/edit.js";
import { jobSchema, kindFor, machineSchema, type Schema, schemaAt } from "../../src/page/schema.js";

const at = (root: Schema, ...way: Way): string | undefined =>
  bareUnit(way, kindFor(schemaAt(root, way, () => undefined) ?? {}, 1), "in");

test.each([
  [machineSchema, ["handwheels", 0, "dial", "diameter"], "in"],
  [machineSchema, ["handwheels", 0, "feed"], "in"],
  [machineSchema, ["limits", "chuck"], "rpm"],
  [machineSchema, ["drive", "motor", "speed"], "rpm"],
  [machineSchema, ["drive", "motor", "speeds", 0], "rpm"],
  [machineSchema, ["drive", "tachometer", 0, "speed"], "rpm"],
  [machineSchema, ["drive", "cover", "width"], "in"],
  [machineSchema, ["work", "diameters", 0], "in"],
  [machineSchema, ["work", "materials", 0], undefined],
  [machineSchema, ["work", "cuttingSpeeds", 0, "speed", 0], "ft/min"],
  [machineSchema, ["tapers", 0, "half"], "°"],
  [machineSchema, ["tapers", 0, "ratio"], undefined],
  [machineSchema, ["printers", "shed", "across"], undefined],
  [machineSchema, ["printers", "shed", "diagonals", 0], undefined],
  [machineSchema, ["name"], undefined],
  [jobSchema, ["bar", "diameter"], "in"],
  [jobSchema, ["steps", 0, "to"], "in"],
  [jobSchema, ["parts"], undefined],
] as const)("what a bare number is taken for, in a file in inches: %#, $1", (root, way, unit) => {
  expect(at(root, ...way)).toBe(unit);
});
