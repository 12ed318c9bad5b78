import { parseNumber } from "../quantity/number.js";
import { halfAngleOfTaper, taperOfRatio } from "./taper.js";

/** Half angle, radians, of a taper written as "1 in 20" or "1:20"; undefined where it is no such ratio. */
export function halfAngleOfRatio(text: string): number | undefined {
  const [one = 0, inLength = 0, ...more] = text.split(/\s*(?:in|:)\s*/).map(parseNumber);
  if (more.length > 0 || !(one > 0 && inLength > 0)) return undefined;
  return halfAngleOfTaper(taperOfRatio(one, inLength));
}
