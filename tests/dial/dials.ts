import fc from "fast-check";
import type { DialWish, Handwheel } from "../../src/machine/machine.js";

export const paper = { thickness: 0.11, adhesive: 0.03 };

export function drum(diameter: number, more: Partial<DialWish> = {}): DialWish {
  return { shape: "drum", diameter, width: 9, increases: "clockwise", ...more } as DialWish;
}

export function handwheel(dial: DialWish, reads: Handwheel["reads"] = "travel"): Handwheel {
  return { name: "Cross slide", reads, dial };
}

/** Feeds of small machines, mm per turn, and division values, mm. */
export const feeds = fc.double({ min: 0.2, max: 25, noNaN: true });
export const diameters = fc.double({ min: 20, max: 120, noNaN: true });
export const values = fc.constantFrom(0.01, 0.02, 0.025, 0.05, 0.1, 0.0254, 0.0127, 0.0508);
export const doubts = fc.option(fc.double({ min: 1e-5, max: 0.02, noNaN: true }), { nil: undefined });
