import { LONGEST, parseNumber } from "./number.js";

/** Once round, radians. */
export const TURN = 2 * Math.PI;

const RADIANS_PER_DEGREE = Math.PI / 180;
const DEGREES = /^([^a-z°]*)(?:deg|degs|degree|degrees|°)?$/i;
const MIXED =
  /^([-+−]?)\s*([\d.,]+)\s*(?:deg|degree|degrees|°)\s*(?:([\d.,]+)\s*(?:min|minutes?|'|′)\s*)?(?:([\d.,]+)\s*(?:sec|seconds?|"|″))?$/i;

/** `5 deg`, `5.5°`, `5 deg 30 min`, `5° 30' 20"` or `0.1 rad` in radians; a bare number is in degrees. Undefined where
 *  it is no angle, or its minutes or seconds reach 60. */
export function parseAngle(text: string): number | undefined {
  if (text.length > LONGEST) return undefined;
  const whole = text.trim();
  const radians = /^(.*)\brad(?:ians?)?$/i.exec(whole);
  if (radians !== null) return parseNumber(radians[1] ?? "");
  const degrees = DEGREES.exec(whole);
  const plain = degrees === null ? undefined : parseNumber(degrees[1] ?? "");
  if (plain !== undefined) return toRadians(plain);
  const mixed = MIXED.exec(whole);
  if (mixed === null) return undefined;
  const [, sign, ...sizes] = mixed;
  const [wholeDegrees, minutes, seconds] = sizes.map((size) => (size === undefined ? 0 : parseNumber(size)));
  if (wholeDegrees === undefined || minutes === undefined || seconds === undefined) return undefined;
  if (minutes >= 60 || seconds >= 60) return undefined;
  const size = wholeDegrees + minutes / 60 + seconds / 3600;
  return toRadians(sign === "-" || sign === "−" ? -size : size);
}

export function toRadians(degrees: number): number {
  return degrees * RADIANS_PER_DEGREE;
}

export function toDegrees(radians: number): number {
  return radians / RADIANS_PER_DEGREE;
}
