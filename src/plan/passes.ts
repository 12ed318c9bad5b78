import type { Setting } from "../dial/setting.js";
import type { HandwheelFinding } from "../findings/findings.js";
import { settingToMove, tenthOfDivision } from "../findings/settings.js";

/** One pass: mm of the slide's travel. `depth` is what this pass takes, `total` where the tool then stands from the touch. */
export type Pass = {
  readonly kind: "rough" | "finish" | "spring";
  readonly depth: number;
  readonly total: number;
  /** From the dial's zero at the touch; absent where no handwheel with a feed sets it. */
  readonly setting?: Setting;
};

/** Passes down to `depth`: equal rough cuts, then what `finish` leaves (undefined: one as deep as the others), then (`spring`) once more at the same setting. Depths
 *  are those that the dial can be set to, to the tenth of a division; so rough cuts are planned a tenth lighter than `cut`,
 *  and none comes out deeper. All mm of travel, > 0. */
export function passes(
  depth: number,
  cut: number,
  finish: number | undefined,
  wheel: HandwheelFinding | undefined,
  spring: boolean,
): Pass[] {
  const tenth = wheel === undefined ? 0 : tenthOfDivision(wheel);
  const most = Math.max(cut - tenth, cut / 2);
  const last = finish === undefined ? depth / Math.ceil(depth / most - 1e-9) : Math.min(finish, cut, depth);
  const rough = depth - last;
  const count = rough < 1e-9 ? 0 : Math.max(1, Math.ceil(rough / most - 1e-9));
  const totals = Array.from({ length: count }, (_, index) => (rough * (index + 1)) / count);
  const kinds: Pass["kind"][] = totals.map(() => "rough");
  if (last > 1e-9) {
    totals.push(depth);
    kinds.push("finish");
  }
  if (spring) {
    totals.push(depth);
    kinds.push("spring");
  }
  let before = 0;
  return totals.map((wanted, index): Pass => {
    const setting = wheel && settingToMove(wheel, wanted);
    const total = setting ? wanted + setting.error / (wheel.reading?.factor ?? 1) : wanted;
    const pass = { kind: kinds[index] ?? "rough", depth: total - before, total, ...(setting && { setting }) };
    before = total;
    return pass;
  });
}
