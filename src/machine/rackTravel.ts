import type { Feed } from "./machine.js";

/** Travel, mm, of a rack for one turn of the handwheel: the pinion's pitch circumference π·module·teeth times the turns of the
 *  pinion for one of the handwheel. Geometry. */
export const rackTravel = ({
  module,
  teeth,
  reduction,
}: Pick<Extract<Feed, { from: "rack" }>, "module" | "teeth" | "reduction">): number =>
  (Math.PI * module * teeth * reduction[0]) / reduction[1];
