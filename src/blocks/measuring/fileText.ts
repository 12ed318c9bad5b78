import type { Units } from "../../machine/machine.js";
import { fromMm } from "../../quantity/length.js";

/** A number as the machine file wants it: with a point, in whatever language the paper is. */
export const fileNumber = (value: number, places = 4): string => String(Number(value.toFixed(places)));

/** A length for the file, in its unit; an inch is said where a bare number would be in mm. */
export const fileLength = (mm: number, units: Units): string =>
  `${fileNumber(fromMm(mm, units))}${units === "in" ? " in" : ""}`;
