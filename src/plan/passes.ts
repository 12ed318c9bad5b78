import { readingFactor, readingPerTurn } from "../dial/reading.js";
import { divisionWorth, type Setting, settingFor } from "../dial/setting.js";
import type { HandwheelFinding } from "../findings/findings.js";

/** One pass: mm of the slide's travel. `depth` is what this pass takes, `total` where the tool then stands from the touch. */
export type Pass = {
  readonly kind: "rough" | "finish" | "spring";
  readonly depth: number;
  readonly total: number;
  /** From the dial's zero at the touch; absent where no handwheel with a feed sets it. */
  readonly setting?: Setting;
};

/** Passes down to `depth`: equal rough cuts, then what `finish` leaves, then (`spring`) once more at the same setting. Depths
 *  are those that the dial can be set to, to the tenth of a division; so rough cuts are planned a tenth lighter than `cut`,
 *  and none comes out deeper. All mm of travel, > 0. */
export function passes(
  depth: number,
  cut: number,
  finish: number,
  wheel: HandwheelFinding | undefined,
  spring: boolean,
): Pass[] {
  const last = Math.min(finish, cut, depth);
  const rough = depth - last;
  const tenth = wheel === undefined ? 0 : tenthOfDivision(wheel);
  const most = Math.max(cut - tenth, cut / 2);
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
    const setting = wheel && settingOf(wheel, wanted);
    const total = setting ? wanted + setting.error / readingFactor(wheel.handwheel) : wanted;
    const pass = { kind: kinds[index] ?? "rough", depth: total - before, total, ...(setting && { setting }) };
    before = total;
    return pass;
  });
}

/** As travel of the slide; 0 without a dial. */
export function tenthOfDivision(wheel: HandwheelFinding): number {
  const { feed, dial, handwheel } = wheel;
  if (feed === undefined || dial === undefined) return 0;
  return divisionWorth(dial.chosen, readingPerTurn(feed, handwheel.reads)) / 10 / readingFactor(wheel.handwheel);
}

/** How to move the slide by `travel`, mm; undefined where the handwheel has no feed. */
export function settingOf(wheel: HandwheelFinding, travel: number): Setting | undefined {
  const { feed, dial, handwheel } = wheel;
  if (feed === undefined) return undefined;
  return settingFor(travel * readingFactor(wheel.handwheel), readingPerTurn(feed, handwheel.reads), dial?.chosen);
}

/** What the dial's own numbers say at a setting, mm; undefined without a dial. A tool that feeds outwards (boring) runs the
 *  dial backwards from its zero. */
export function dialReading({ feed, dial, handwheel }: HandwheelFinding, setting: Setting, outwards: boolean) {
  if (feed === undefined || dial === undefined || setting.divisions === undefined) return undefined;
  const { closure, divisions, divisionValue, rows } = dial.chosen;
  const round = closure === "even" ? divisions * divisionValue : readingPerTurn(feed, handwheel.reads) * rows;
  const forward = setting.reading ?? setting.divisions * divisionValue;
  return outwards && forward > 1e-9 ? round - forward : forward;
}
