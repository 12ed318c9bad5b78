import { say } from "../words/say.js";
import type { DialChoice } from "./finding.js";

/** The way over which an error or a doubt of the dial is told, as the dial reads it: what it counts on diameter is twice what the
 *  slide goes, and an error on diameter over a way of the slide would compare the two. `show`: a length in words. */
export const overOnDial = (
  { overTravel, onDiameter }: Pick<DialChoice, "overTravel" | "onDiameter">,
  show: (mm: number) => string,
): string => (onDiameter ? say("dials.on the dial", { length: show(2 * overTravel) }) : show(overTravel));
