import { greatest } from "../../part/outline.js";
import { endsOf, type Workpiece } from "../../part/workpiece.js";
import type { Stage } from "../../plan/stage.js";
import { largestOf } from "../../quantity/extremes.js";
import type { Part } from "./partFeatures.js";
import type { View } from "./workView.js";

export const JAW = { reach: 8, height: 4.5 } as const;

/** Beside the stock's end, for a centre and a leader. */
export const BESIDE = 6;

export type Layout = {
  readonly view: View;
  /** Of what is drawn, on paper. */
  readonly radius: number;
  /** Where the work is drawn to, along it. */
  readonly to: number;
  /** So far its surfaces are to be seen. */
  readonly seen: number;
  /** Where jaws begin, as drawn; absent where there are none. */
  readonly reach?: number;
  /** Between these places the bar is left out. */
  readonly gap?: { readonly from: number; readonly to: number };
};

/** Room for the part, its stock and jaws at that scale; undefined where it is too wide. */
export function layOut(scale: number, part: Part, stages: readonly Stage[], width: number): Layout | undefined {
  const finished = endsOf(part.finished);
  const stock = endsOf(part.stock);
  const free = Math.min(finished.from, part.block ? finished.from : stock.from);
  const held = part.block ? undefined : stages[0]?.holding.jaws;
  const end = part.bounded || held === undefined ? finished.to : Math.min(finished.to, lastCut(part) ?? finished.to);
  const widest = Math.max(
    greatest(part.finished.outside, finished.from, finished.to),
    part.block ? 0 : greatest(part.stock.outside, stock.from, stock.to),
  );
  const radius = (widest / 2) * scale;
  const place = (left: number): View | undefined => {
    const drawn = (left - free) * scale;
    const spare = width - drawn - 2 * BESIDE;
    return spare < 0 ? undefined : { x: width - BESIDE - spare / 2 + free * scale, y: 0, scale };
  };
  if (held === undefined) {
    const view = place(end);
    return view && { view, radius, to: end, seen: end };
  }
  const stub = JAW.reach / scale;
  const beyond = held - end;
  const near = 14 / scale;
  const full = farEnd(Math.max(held + stub, end + 3 / scale), part.stock, scale, stages[0]?.openEnded ?? true);
  const whole = place(full);
  const seen = (to: number) => (part.bounded ? to : Math.min(to, Math.max(held, end)));
  if (whole !== undefined && beyond * scale < 40)
    return { view: whole, radius, to: full, seen: seen(full), reach: held };
  if (beyond <= near) return whole && { view: whole, radius, to: full, seen: seen(full), reach: held };
  // Nothing happens between here and the jaws: the bar is broken off there and goes on nearer.
  const short = end + near + stub;
  const view = place(short);
  const gap = { from: end + near * 0.5, to: end + near * 0.62 };
  return view && { view, radius, to: short, seen: seen(gap.from), reach: end + near, gap };
}

/** A blank is drawn to its end where that is not much further. */
function farEnd(to: number, stock: Workpiece, scale: number, openEnded: boolean): number {
  const end = endsOf(stock).to;
  return !openEnded && (end - to) * scale < 12 ? end : to;
}

/** Where the last that is said of an unbounded part lies. */
function lastCut({ features, lengths, finished, stock }: Part): number | undefined {
  const bar = greatest(stock.outside, 0, Number.POSITIVE_INFINITY);
  const shaped = [
    ...finished.outside.filter(({ start, end }) => Math.min(start, end) < bar - 1e-9),
    ...finished.bore.filter(({ start }) => start !== stock.bore[0]?.start),
  ];
  const ends = [
    ...shaped.map(({ to }) => to),
    ...lengths.map(({ place }) => place),
    ...features.filter(({ stage }) => stage !== undefined).map(({ to }) => to),
  ];
  return ends.length === 0 ? undefined : largestOf(ends) + bar / 3;
}
