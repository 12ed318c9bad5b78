import type { Units } from "../../machine/machine.js";
import { inMm } from "../../quantity/length.js";

/** A comb of ten lines inward from the end: with the rule's graduation n + f at line 0, a line k lies f − k/10 past one, so that
 *  the line that meets a graduation is the number of tenths. Spaced by more than one graduation, to leave room for the
 *  numbers. All mm. */
export type Rule = {
  /** From one graduation to the next: whole millimetres, or fiftieths of an inch. */
  readonly graduation: number;
  readonly combStep: number;
  /** Bars are whole multiples of this. */
  readonly bar: number;
  /** Numbers of the rule stand so many graduations apart. */
  readonly numbered: number;
  readonly places: number;
};

export const rules: Readonly<Record<Units, Rule>> = {
  mm: { graduation: 1, combStep: 2.1, bar: 10, numbered: 10, places: 1 },
  in: { graduation: inMm(0.02, "in"), combStep: inMm(0.102, "in"), bar: inMm(1, "in"), numbered: 50, places: 3 },
};

export const combLines = 10;
