import type { HandwheelFinding } from "../findings/findings.js";
import { type Reading, readingAt } from "./zero.js";

/** One pass: mm of the slide's travel. `depth` is what this pass takes, `travel` where the slide then stands from its zero. */
export type Pass = {
  readonly kind: "rough" | "finish" | "spring";
  readonly depth: number;
  readonly travel: number;
  /** Absent where no handwheel with a feed sets it. */
  readonly reading?: Reading;
};

/** From where the metal begins to where it is to end, both travel of the slide from its zero; towards less where the tool goes
 *  outward. `finish` is what is left for the last cut (undefined: one as deep as the others); `spring` once more at the same
 *  reading. */
export type Depths = {
  readonly from: number;
  readonly to: number;
  readonly cut: number;
  readonly finish: number | undefined;
  readonly spring: boolean;
};

/** More passes than anyone takes. */
export const MOST_PASSES = 200;

/** How many cuts a depth takes, without the spring pass; to be asked before they are made. */
export function cutsNeeded({ from, to, cut: most, finish }: Depths): number {
  const depth = Math.abs(to - from);
  return Math.ceil((depth - Math.min(finish ?? 0, depth)) / most - 1e-9) + 1;
}

/** Equal rough cuts, then the finishing one, each as the dial can be set: to a tenth of a division, so that none is deeper than asked
 *  by more than that. None where they would be more than anyone takes. */
export function passes(depths: Depths, wheel: HandwheelFinding | undefined): Pass[] {
  const { from, to, cut, finish, spring } = depths;
  const depth = Math.abs(to - from);
  if (depth < 1e-9 || cutsNeeded(depths) > MOST_PASSES) return [];
  const sense = Math.sign(to - from);
  const last = finish === undefined ? depth / Math.max(1, Math.ceil(depth / cut - 1e-9)) : Math.min(finish, cut, depth);
  const rough = depth - last;
  const count = rough < 1e-9 ? 0 : Math.max(1, Math.ceil(rough / cut - 1e-9));
  const totals = Array.from({ length: count }, (_, index) => (rough * (index + 1)) / count);
  const kinds: Pass["kind"][] = totals.map(() => "rough");
  if (last > 1e-9) {
    totals.push(depth);
    kinds.push("finish");
  }
  if (spring && last > 1e-9) {
    totals.push(depth);
    kinds.push("spring");
  }
  let before = from;
  return totals.map((total, index): Pass => {
    const wanted = from + sense * total;
    const reading = wheel && readingAt(wheel, wanted);
    const travel = reading?.travel ?? wanted;
    const pass = {
      kind: kinds[index] ?? "rough",
      depth: Math.max(0, (travel - before) * sense),
      travel,
      ...(reading && { reading }),
    };
    before = travel;
    return pass;
  });
}
