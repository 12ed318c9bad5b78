import type { Readings } from "../machine/machine.js";
import type { LostMotion } from "./finding.js";
import { contradiction } from "./lostMotion.js";
import { miscountedFrom, type Wild, wildReadings } from "./outliers.js";

/** What the readings on the way back show to be wrong among themselves, or with the way out. */
export type ReturnStudy = {
  readonly wild: readonly Wild[];
  readonly miscounted?: { readonly index: number; readonly turns: number };
  /** A lost motion that cannot be; it serves nothing. */
  readonly contradiction?: LostMotion & { readonly why: "negative" | "over half a turn" | "scattered" };
};

/** A lag that differs by more than this part of a turn from place to place is none: no nut is worn so unevenly. Common practice. */
const UNEVEN = 0.25;

/** Undefined without return readings. They are judged by the same tests as those on the way out. `curve`: how
 *  far off its line the way out stands at each reading, mm, where the screw is worn: the way back bends as it does. */
export function returnStudy(
  readings: Readings,
  lost: LostMotion | undefined,
  curve?: ArrayLike<number>,
): ReturnStudy | undefined {
  const { turns, back, gauge, unit } = readings;
  if (back === undefined || lost === undefined) return undefined;
  const miscounted = miscountedFrom(turns, back);
  const straight = curve === undefined ? back : back.map((reading, i) => reading - (curve[i] ?? 0));
  const wild = miscounted ? [] : wildReadings(turns, straight, gauge, unit);
  const lags = back.map((reading, i) => reading - (readings.travel[i] ?? 0));
  const apart =
    lags.reduce((most, lag) => Math.max(most, lag), -Infinity) -
    lags.reduce((least, lag) => Math.min(least, lag), Infinity);
  // Beside a miscounted turn the lag of a worst stretch is that turn, and says nothing more.
  const found =
    (miscounted && lost.worst ? undefined : contradiction(lost)) ??
    (apart > UNEVEN * Math.abs(lost.travel / lost.turn) ? "scattered" : undefined);
  // What single readings have scattered is told at those.
  const why = found === "scattered" && (miscounted || wild.length > 0) ? undefined : found;
  return {
    wild,
    ...(miscounted && { miscounted }),
    ...(why && { contradiction: { ...lost, why } }),
  };
}
