import type { DialFinding } from "../dial/finding.js";
import { TURN } from "../quantity/angle.js";
import { type LengthUnit, mmPer } from "../quantity/length.js";

/** What can be measured of a cut-out dial; lengths in mm. */
export type Measure = {
  /** How the command line is told which of several: "arc", "chord". */
  readonly by: "strip" | "ring" | "arc" | "chord";
  /** "the strip between its cut ends". */
  readonly what: string;
  readonly wanted: number;
  /** Once round, where it is a part of that; mm. */
  readonly whole?: number;
  /** As much may be off either way: what puts marks out by a fifth of a division in a turn, but no caliper asks less than
   *  0.05 mm of paper. In the last place that is printed, rounded down: a wider one would let more pass. */
  readonly slack: number;
};

/** What a caliper shows on paper, and the least that it asks of it, in each unit. */
const fineness = { mm: { step: 0.01, least: 0.05 }, in: { step: 0.001, least: 0.002 } } as const;

/** The lengths by which a dial of a shape is checked, told in `units`. Of two scales the finer tells how well. Empty where
 *  its sizes make no dial. */
export function measuresOf(
  { flat, chosen, second }: Pick<DialFinding, "flat" | "chosen" | "second">,
  units: LengthUnit,
): Measure[] {
  if (flat === undefined) return [];
  const measure = (by: Measure["by"], what: string, wanted: number): Measure => ({
    by,
    what,
    wanted,
    slack: slackOf(wanted, { chosen, second }, units),
  });
  if (flat.kind === "strip") return [measure("strip", "the strip between its cut ends", flat.length)];
  const across = 2 * flat.outer;
  if (flat.sweep > TURN - 1e-9) return [measure("ring", "the outside diameter", across)];
  return [
    measure("arc", "the outer edge, along its arc", flat.outer * flat.sweep),
    flat.sweep < Math.PI
      ? measure("chord", "the outer edge, straight from corner to corner", across * Math.sin(flat.sweep / 2))
      : measure("chord", "the outer edge, straight across its widest", across),
  ];
}

/** What may be off of a length along the marks, or across them, mm: of a piece its share of what the whole may be. */
function slackOf(wanted: number, { chosen, second }: Scales, units: LengthUnit): number {
  const perTurn = Math.max(chosen.divisionsPerTurn, second?.chosen.divisionsPerTurn ?? 0);
  const { step, least } = fineness[units];
  return mmPer[units] * Math.max(least, step * Math.floor(wanted / perTurn / 5 / mmPer[units] / step + 1e-9));
}

type Scales = { readonly chosen: DialFinding["chosen"]; readonly second?: DialFinding["second"] | undefined };

/** One of the pieces in which a dial is printed. */
export type PartOfDial = { readonly piece: number; readonly pieces: number; readonly length: number };

const wholeLength = ({ flat }: Pick<DialFinding, "flat">, length: number): number =>
  flat === undefined ? length : flat.kind === "strip" ? flat.length : flat.outer * flat.sweep;

/** By what one piece of a dial is checked: its edge from joint to joint, a tab for glue not counted. */
export const measureOfPiece = (
  dial: Pick<DialFinding, "flat" | "chosen" | "second">,
  { piece, pieces, length }: PartOfDial,
  units: LengthUnit,
): Measure => ({
  by: dial.flat?.kind === "ring" ? "arc" : "strip",
  what:
    dial.flat?.kind === "ring"
      ? `piece ${piece} of ${pieces}, along its outer edge from end to end, a tab not counted,`
      : `piece ${piece} of ${pieces}, from end to end, a tab not counted,`,
  wanted: length,
  whole: wholeLength(dial, length),
  slack: slackOf(length, dial, units),
});

/** By what all pieces of a dial are checked at once: of a ring their edges one after the other, however it is measured once it is stuck
 *  together. */
export const measureOfAll = (
  dial: Pick<DialFinding, "flat" | "chosen" | "second">,
  pieces: number,
  units: LengthUnit,
): Measure => ({
  by: dial.flat?.kind === "ring" ? "arc" : "strip",
  what: `the whole of ${pieces} pieces, ${dial.flat?.kind === "ring" ? "along their outer edges" : "the strip between its cut ends"},`,
  wanted: wholeLength(dial, 0),
  slack: slackOf(wholeLength(dial, 0), dial, units),
});

/** What a caliper's word on a printed dial means; mm. */
export type PieceVerdict = {
  /** measured − wanted. */
  readonly off: number;
  readonly good: boolean;
  /** Error of a reading at the worst place, as parts of a turn. Of a strip or a cone's ring the gap or overlap at the joint;
   *  of a flat ring what two readings may be out against each other if it is off in this direction alone: an ellipse of
   *  diameters D and D + e turns its marks by e/2D · sin 2θ, so by e/D radians from one extreme to the other at most. */
  readonly turns: number;
  /** Measured ÷ wanted. */
  readonly ratio: number;
};

/** `measured`: mm, of what `measure` says. */
export function verdictOn({ by, wanted, slack, whole = wanted }: Measure, measured: number): PieceVerdict {
  const off = measured - wanted;
  const ratio = measured / wanted;
  return {
    off,
    good: Math.abs(off) <= slack + 1e-9,
    turns: by === "ring" ? Math.abs(ratio - 1) / TURN : Math.abs(off) / whole,
    ratio,
  };
}
