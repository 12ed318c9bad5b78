import type { CuttingSpeed } from "../../cutting/finding.js";
import { isThreaded } from "../../cutting/operations.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { burns } from "../../findings/chipFire.js";
import type { Findings } from "../../findings/findings.js";
import { choiceDoubt, measureFirst } from "../../findings/limits.js";
import { roundedServed, type Served, servedDiameters } from "../../findings/servedDiameters.js";
import { bandFor, speedForHole } from "../../findings/speedChoice.js";
import type { Limits } from "../../machine/machine.js";
import { formatFixed, trimmed } from "../../quantity/format.js";
import { fromMm, inMm } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import type { Axis } from "./barAxis.js";

/** A part of a bar: the diameters over `from`, up to and with `to`, mm, that one position serves. */
export type Piece = {
  readonly from: number;
  readonly to: number;
  /** Absent where no position serves. */
  readonly position?: string;
  /** The speed, or what a variable motor is set to give from the smaller end to the larger. */
  readonly rpm?: string;
  readonly sign: Sign;
  /** Why no position serves. */
  readonly none?: None;
};
export type Sign = "" | "~" | "!" | "?";
export type None = "too fast" | "no figures" | "by hand";

export type Bar = {
  readonly material: string;
  readonly pieces: readonly Piece[];
  /** Diameters at the cuts, each in the machine's unit and rounded into the faster of its two pieces. */
  readonly cuts: readonly { readonly at: number; readonly words: string }[];
  readonly band?: CuttingSpeed;
  /** The small end would bear more than the machine gives. */
  readonly slow: boolean;
  /** Of a variable motor. */
  readonly set: boolean;
};

/** Which position serves which diameter in a material, over the axis; undefined where nothing is known of it with the file's tool. */
export function barOf(material: string, operation: string, axis: Axis, findings: Findings): Bar | undefined {
  const { from, to } = axis;
  // A tap rubs: where fine chips burn it is turned by hand.
  if (operation === "tapping" && burns(material))
    return { material, pieces: [{ from, to, sign: "", none: "by hand" }], cuts: [], slow: false, set: false };
  const served = servedDiameters(material, operation, findings);
  if (served === undefined) return undefined;
  const within = served.flatMap((one): Served[] => {
    const [low, high] = [Math.max(one.from, from), Math.min(one.to, to)];
    return high - low > 1e-9 ? [{ ...one, from: low, to: high }] : [];
  });
  const pieces = within.map((one) => pieceOf(one, material, operation, findings));
  const last = axis.sizes.findLast(({ diameter }) => bandFor({ material, operation, diameter }, findings));
  const band = last && bandFor({ material, operation, diameter: last.diameter }, findings);
  const verdict = speedForHole({ material, operation, diameter: axis.sizes[0]?.diameter ?? from }, findings)?.verdict;
  return {
    material,
    pieces,
    cuts: cutsOf(within, findings),
    ...(band && { band }),
    slow: verdict === "slower than the band" && !isThreaded(operation),
    set: pieces.some(({ rpm = "" }) => rpm.includes("–")),
  };
}

function pieceOf(served: Served, material: string, operation: string, findings: Findings): Piece {
  const { from, to, speed } = served;
  const rpmAt = (diameter: number) => speedForHole({ material, operation, diameter }, findings)?.rpm;
  if (speed === undefined) {
    const known = bandFor({ material, operation, diameter: Math.sqrt(from * to) }, findings) !== undefined;
    const tooFast = isThreaded(operation) ? "by hand" : "too fast";
    return { from, to, sign: "", none: known ? tooFast : "no figures" };
  }
  const [at, end] = [from * (1 + 1e-9), to].map((diameter) => formatFixed(rpmAt(diameter) ?? speed.rpm, 0));
  return {
    ...{ from, to },
    position: speed.position.name || say("drilling card.only position"),
    rpm: at === end || at === undefined ? (end ?? rpmWords(speed)) : `${at}–${end}`,
    sign: signOf(speed, findings.machine.limits),
  };
}

/** What to mind of a speed, behind its number. */
export function signOf(speed: SpeedFinding, limits: Limits): Sign {
  if (choiceDoubt(speed, limits) !== "") return measureFirst(speed, limits) ? "!" : "?";
  return speed.from === "measured" ? "" : "~";
}

/** Told by tenths of a millimetre, or thousandths of an inch, as a caliper shows them. */
function cutsOf(served: readonly Served[], { machine: { units } }: Findings): Bar["cuts"] {
  const places = units === "mm" ? 1 : 3;
  const step = 10 ** -places;
  const round = (mm: number, by: (value: number) => number, slack: number) =>
    inMm(by(fromMm(mm, units) / step + slack) * step, units);
  // An end that only the last digit of a double keeps from its step is on it.
  const told = roundedServed(
    served,
    (mm) => round(mm, Math.floor, 1e-6),
    (mm) => round(mm, Math.ceil, -1e-6),
  );
  return told.slice(0, -1).flatMap(({ to, speed }) => {
    const own = served.findLast((one) => one.speed === speed && one.from < to);
    return own === undefined ? [] : [{ at: own.to, words: trimmed(fromMm(to, units), places) }];
  });
}
