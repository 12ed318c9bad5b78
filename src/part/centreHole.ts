import { inMm } from "../quantity/length.js";
import { cylinder, type Stretch } from "./outline.js";

type Size = { readonly pilot: number; readonly mouth: number };

/** Centre drills that one owns: of form A, 60°, after ISO 866; in inches numbers 00 to 5 of the usual combined drills and countersinks.
 *  Both from memory; mouths in inches at 2.12 pilots, as the metric ones are. mm. */
const sizes: Readonly<Record<"mm" | "in", readonly Size[]>> = {
  mm: [
    { pilot: 1, mouth: 2.12 },
    { pilot: 1.25, mouth: 2.65 },
    { pilot: 1.6, mouth: 3.35 },
    { pilot: 2, mouth: 4.25 },
    { pilot: 2.5, mouth: 5.3 },
    { pilot: 3.15, mouth: 6.7 },
    { pilot: 4, mouth: 8.5 },
    { pilot: 5, mouth: 10.6 },
    { pilot: 6.3, mouth: 13.2 },
  ],
  in: [0.025, 3 / 64, 5 / 64, 7 / 64, 1 / 8, 3 / 16].map((pilot) => ({
    pilot: inMm(pilot, "in"),
    mouth: inMm(2.12 * pilot, "in"),
  })),
};

/** Mouths are about so many pilots wide; the table rounds. */
const mouthOf = (pilot: number): number =>
  sizes.mm.find((size) => Math.abs(size.pilot - pilot) < 0.01)?.mouth ?? 2.12 * pilot;

/** The largest centre drill whose mouth is no wider than that; the smallest where none is so small. */
export const centreDrillUpTo = (mouth: number, units: "mm" | "in" = "mm"): number =>
  (sizes[units].findLast((size) => size.mouth <= mouth + 1e-9) ?? (sizes[units][0] as Size)).pilot;

/** The centre drill for work of a diameter that is to run on a centre: its mouth is no wider than 0.4 of it. Common practice. */
export const centreDrillFor = (diameter: number, units: "mm" | "in" = "mm"): number =>
  centreDrillUpTo(0.4 * diameter, units);

/** How deep it is fed for the full mouth, to the tip of its pilot, and the hole that it leaves from a face at 0; mm. */
export function centreHole(pilot: number): {
  readonly depth: number;
  readonly mouth: number;
  readonly cuts: readonly Stretch[];
} {
  const mouth = mouthOf(pilot);
  const cone = (mouth - pilot) / 2 / Math.tan(Math.PI / 6);
  const depth = cone + 1.2 * pilot;
  return {
    depth,
    mouth,
    cuts: [{ from: 0, to: cone, start: mouth, end: pilot }, cylinder(cone, depth, pilot)],
  };
}
