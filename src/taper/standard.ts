import { MM_PER_INCH } from "../quantity/length.js";

/** A taper that the trade knows by name; diameters mm at the gauge line (large) and the small end. */
export type StandardTaper = {
  readonly name: string;
  /** Change of diameter per length. */
  readonly taper: number;
  readonly large: number;
  readonly source: string;
  /** `memory`: the last figure of the taper was not seen in print. */
  readonly confidence: "read" | "memory";
};

const inch = (
  name: string,
  perFoot: number,
  large: number,
  source: string,
  confidence: "read" | "memory" = "read",
): StandardTaper => ({
  name,
  taper: perFoot / 12,
  large: large * MM_PER_INCH,
  source,
  confidence,
});

const five = "five-figure table (johnfsworkshop.org)";
const four = "four-figure Dimensions of Standard Tapers (vintagemachinery.org); fifth figure from memory";
const jarno = "E. P. Lobben, Machinists' and Draftsmen's Handbook, p. 477";

export const standardTapers: readonly StandardTaper[] = [
  inch("Morse 0", 0.6246, 0.3561, four, "memory"),
  inch("Morse 1", 0.59858, 0.475, five),
  inch("Morse 2", 0.59941, 0.7, five),
  inch("Morse 3", 0.60235, 0.938, five),
  inch("Morse 4", 0.62326, 1.231, five),
  inch("Morse 5", 0.63151, 1.748, four, "memory"),
  inch("Jarno 5", 0.6, 5 / 8, jarno),
  inch("Jarno 7", 0.6, 7 / 8, jarno),
  {
    name: "taper pin, 1 : 48",
    taper: 1 / 48,
    large: 0,
    source: "US Army OD1645, p. 76 (1/4 in a foot)",
    confidence: "read",
  },
];
