import { risingZero } from "./bisect.js";

/** A crossed belt turns the driven shaft the other way. */
export type BeltRun = "open" | "crossed";

/** Length, mm, of a belt on its neutral line, exact. `driver` and `driven` are effective diameters, `centres` the distance
 *  between the shafts, all mm. Undefined where the pulleys would touch.
 *  Encyclopaedia Britannica, 11th ed., vol. 17 "Mechanics", §§ 59-60 (in substance).
 *  @example beltLength(50, 150, 180, "open")   // 688.2… */
export function beltLength(driver: number, driven: number, centres: number, run: BeltRun): number | undefined {
  if (!(centres > (driver + driven) / 2)) return undefined;
  const sum = driver + driven;
  const lean = Math.asin(offset(driver, driven, run) / (2 * centres));
  const straight = 2 * centres * Math.cos(lean);
  return run === "open"
    ? straight + (Math.PI * sum) / 2 + lean * Math.abs(driver - driven)
    : straight + (Math.PI / 2 + lean) * sum;
}

/** Angle, radians, over which the belt lies on each pulley. Undefined where the pulleys would touch. */
export function wrapAngles(
  driver: number,
  driven: number,
  centres: number,
  run: BeltRun,
): { readonly driver: number; readonly driven: number } | undefined {
  if (!(centres > (driver + driven) / 2)) return undefined;
  const lean = Math.asin(offset(driver, driven, run) / (2 * centres));
  if (run === "crossed") return { driver: Math.PI + 2 * lean, driven: Math.PI + 2 * lean };
  const larger = Math.PI + 2 * lean;
  const smaller = Math.PI - 2 * lean;
  return driver >= driven ? { driver: larger, driven: smaller } : { driver: smaller, driven: larger };
}

/** Distance between the shafts at which a belt of this length is just tight. Undefined where it is too short. */
export function centresFor(length: number, driver: number, driven: number, run: BeltRun): number | undefined {
  const touching = ((driver + driven) / 2) * (1 + 1e-12);
  return risingZero((c) => (beltLength(driver, driven, c, run) ?? 0) - length, touching, touching + length);
}

/** Effective diameter of the other pulley with which a belt of this length is just tight: how the next step of a cone
 *  is found. Undefined where none would do. */
export function matchingDiameter(length: number, pulley: number, centres: number, run: BeltRun): number | undefined {
  const largest = (2 * centres - pulley) * (1 - 1e-12);
  return risingZero((d) => (beltLength(pulley, d, centres, run) ?? Number.POSITIVE_INFINITY) - length, 0, largest);
}

const offset = (driver: number, driven: number, run: BeltRun): number =>
  run === "open" ? Math.abs(driver - driven) : driver + driven;
