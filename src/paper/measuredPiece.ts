import type { HandwheelFinding } from "../findings/findings.js";
import type { Printer } from "../machine/machine.js";

/** What a caliper's word on a printed dial means; mm. */
export type PieceVerdict = {
  /** What was measured: "the strip", "the outside diameter". */
  readonly what: string;
  readonly wanted: number;
  /** measured − wanted. */
  readonly off: number;
  /** As much may be off: a fifth of a division, but no caliper asks less than 0.05 mm of paper. */
  readonly slack: number;
  readonly good: boolean;
  /** Error of a reading at the end of a turn, in what the dial reads; it starts anew with each turn. */
  readonly perTurn: number;
  readonly divisions: number;
  /** The across factor (measured ÷ nominal) that the printer turns out to have. */
  readonly across: number;
};

/** `measured` is a drum's strip between its cut ends, or a face dial's outside diameter, printed with the correction of `printer`. */
export function verdictOn(
  { handwheel, reading, dial }: HandwheelFinding,
  measured: number,
  printer: Printer | undefined,
): PieceVerdict | { readonly missing: string } {
  if (dial === undefined || reading === undefined)
    return { missing: `"${handwheel.name}" has no dial: give it a feed and a dial` };
  const shape = handwheel.dial;
  const piece =
    shape?.shape === "face"
      ? { what: "the outside diameter", wanted: shape.outside, round: Math.PI * shape.outside }
      : dial.stripLength === undefined
        ? undefined
        : { what: "the strip", wanted: dial.stripLength, round: dial.stripLength };
  if (piece === undefined)
    return { missing: `a ${dial.shape} dial is checked with the check bars on its page, not with one length` };
  const ratio = measured / piece.wanted;
  const { divisionsPerTurn } = dial.chosen;
  const slack = Math.max(0.05, piece.wanted / divisionsPerTurn / 5);
  const off = measured - piece.wanted;
  const before = printer?.across === undefined ? 1 : printer.across.measured / printer.across.nominal;
  return {
    what: piece.what,
    wanted: piece.wanted,
    off,
    slack,
    good: Math.abs(off) <= slack,
    // A ring that is too large or small all round still divides its turn evenly; a strip leaves a gap or an overlap at the joint.
    perTurn: shape?.shape === "face" ? 0 : Math.abs(ratio - 1) * reading.perTurn,
    divisions: shape?.shape === "face" ? 0 : Math.abs(ratio - 1) * divisionsPerTurn,
    across: before * ratio,
  };
}
