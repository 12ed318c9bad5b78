import type { Findings } from "../findings/findings.js";
import type { TaperWish, Units } from "../machine/machine.js";
import { toDegrees, toRadians } from "../quantity/angle.js";
import { formatFixed, formatLength } from "../quantity/format.js";
import { inMm } from "../quantity/length.js";
import {
  centresBear,
  diameterError,
  riseAlongAxis,
  setOver,
  sineBarStack,
  TOO_STEEP_FOR_CENTRES,
  taperOfHalfAngle,
} from "../taper/taper.js";
import type { Input, Subject, Working } from "./working.js";

/** What to swivel to for each taper of the file, and how to prove it. */
export const explainTaper = ({ machine }: Findings): Subject[] =>
  (machine.tapers ?? []).map((taper, index) => ({
    name: taper.name,
    explain: () => working(taper, index, machine.units),
  }));

/** Length of axis, and spacing of a sine bar's rolls, that the notes are told for, mm. */
const overIn: Readonly<Record<Units, number>> = { mm: 100, in: inMm(4, "in") };

function working(taper: TaperWish, index: number, units: Units): Working {
  const over = overIn[units];
  const { name, halfAngle, large, small, length } = taper;
  const path = ["tapers", index];
  const byDiameters = large !== undefined && small !== undefined && length !== undefined;
  const sizes: Input[] = byDiameters
    ? [
        { name: "large diameter D", value: large, unit: "mm", source: { from: "stated", path: [...path, "large"] } },
        { name: "small diameter d", value: small, unit: "mm", source: { from: "stated", path: [...path, "small"] } },
        { name: "length L", value: length, unit: "mm", source: { from: "stated", path: [...path, "length"] } },
      ]
    : [
        {
          name: "taper T, change of diameter per length",
          value: taperOfHalfAngle(halfAngle),
          unit: "",
          source: { from: "stated", path },
        },
      ];
  return {
    title: `${name}: angle to swivel`,
    formula: byDiameters
      ? "tan a = (D − d) ÷ (2 L), half of the included angle"
      : "tan a = T ÷ 2, half of the included angle",
    inputs: sizes,
    result: { name: "swivel a", value: toDegrees(halfAngle), unit: "degrees" },
    notes: [
      `the included angle, for a gauge, is ${formatFixed(2 * toDegrees(halfAngle), 3)} degrees`,
      `an indicator rises ${formatLength(riseAlongAxis(halfAngle, over), units)} over ${formatLength(over, units)} along the axis`,
      `a sine bar of ${formatLength(over, units)} wants ${formatLength(sineBarStack(halfAngle, over), units)} under one roll`,
      centresBear(halfAngle)
        ? `between centres instead: the tailstock over by ${formatLength(setOver(halfAngle, over), units)} for each ${formatLength(over, units)} of the work's whole length, L sin a`
        : TOO_STEEP_FOR_CENTRES,
      `a tenth of a degree wrong makes ${formatLength(diameterError(halfAngle, toRadians(0.1), over), units)} on diameter over ${formatLength(over, units)}`,
    ],
  };
}
