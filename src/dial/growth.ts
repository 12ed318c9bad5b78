import type { DialWish } from "../machine/machine.js";

/** Which way a scale's numbers grow on paper: leftward is counter-clockwise round a ring. */
export type Growth = "leftward" | "rightward";

/** Seen by the operator, a wheel turned clockwise brings marks to a top index from the left: there numbers grow leftward,
 *  round a face counter-clockwise. */
export const growthOf = ({ increases }: Pick<DialWish, "increases">): Growth =>
  increases === "clockwise" ? "leftward" : "rightward";
