import type { Readings } from "../machine/machine.js";
import type { LostMotion } from "./finding.js";
import { contradiction } from "./lostMotion.js";
import { miscountedFrom, type Wild, wildReadings } from "./outliers.js";

/** What the readings on the way back show to be wrong among themselves, or with the way out. */
export type ReturnStudy = {
  readonly wild: readonly Wild[];
  readonly miscounted?: { readonly index: number; readonly turns: number };
  /** A lost motion that cannot be; it serves nothing. */
  readonly contradiction?: LostMotion & { readonly why: "negative" | "over half a turn" };
};

/** Undefined without return readings. They are judged by the same tests as those on the way out. */
export function returnStudy(readings: Readings, lost: LostMotion | undefined): ReturnStudy | undefined {
  const { turns, back, gauge } = readings;
  if (back === undefined || lost === undefined) return undefined;
  const miscounted = miscountedFrom(turns, back);
  const why = contradiction(lost);
  return {
    wild: miscounted ? [] : wildReadings(turns, back, gauge),
    ...(miscounted && { miscounted }),
    ...(why && { contradiction: { ...lost, why } }),
  };
}
