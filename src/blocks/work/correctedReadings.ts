import { type ByPlace, byTheRule } from "../../findings/byPlace.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import type { PlannedStep } from "../../plan/plannedStep.js";
import { type Reading, readingAt } from "../../plan/zero.js";
import { formatBound, formatLength, MINUS, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { kept } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { onTheRule } from "./onTheRule.js";
import { isFixed, readingWords, wheelWords, type ZeroOf } from "./planWords.js";

/** A movement by a wheel, mm of the slide; less than 0: backwards, as a bore is enlarged. */
export type Movement = { readonly wheel: HandwheelFinding; readonly travel: number };

/** What takes the place of a reading on a worn slide; undefined where it is dialled as it stands. */
export const correctedReadings = ({ wheel, travel }: Movement, units: Units): ByPlace | undefined =>
  byTheRule(wheel, travel, units);

/** The movements of a step that must come out: the last cut's, and to every place. */
export const movementsOf = ({ depthWheel, passes, places }: PlannedStep): Movement[] => {
  const last = passes.at(-1);
  return [
    ...(depthWheel && last?.reading ? [{ wheel: depthWheel, travel: last.travel }] : []),
    ...places.map(({ wheel, reading }) => ({ wheel, travel: reading.travel })),
  ];
};

/** On a dial that cannot be set to 0: what it goes on by from wherever it stood, or goes back by. */
function shownFor(wheel: HandwheelFinding, reading: Pick<Reading, "setting" | "back">): Cell[] {
  const { turns, figure, row = "" } = readingWords(wheel, reading);
  const told = isFixed(wheel) ? `${reading.back ? MINUS : "+"} ${figure}` : figure;
  return [{ text: turns, weight: "bold" }, { text: told, weight: "bold", size: size.card }, { text: row }];
}

/** What is dialled on worn slides instead of a step's own readings: a row for every stretch in which the rule may have stood when the
 *  zero was touched; each movement once. `promised`:
 *  whether the step says how good its last cut comes out. */
export function correctedStep(
  step: PlannedStep,
  zeroOf: ZeroOf,
  units: Units,
  width: number,
  promised: boolean,
): Run[] {
  const titles = new Map<number, string>();
  const rows: Cell[][] = [];
  for (const { wheel, travel } of movementsOf(step)) {
    const corrected = correctedReadings({ wheel, travel }, units);
    const since = zeroOf(wheel)?.since;
    const factor = wheel.reading?.factor ?? 1;
    const title = {
      distance: formatLength(Math.abs(travel * factor), units, units === "mm" ? 2 : 4),
      wheel: wheelWords(wheel),
      within: formatBound((corrected?.placed[0]?.within ?? 0) * factor, units),
    };
    const told =
      since === undefined || since === step
        ? say("plan.corrected movement", title)
        : say("plan.corrected movement, step", { ...title, number: since.number });
    if (corrected === undefined || [...titles.values()].includes(told)) continue;
    titles.set(rows.length, told);
    const back = travel < 0;
    for (const [index, stretch] of corrected.stretches.entries()) {
      const setting = corrected.placed[0]?.settings[index];
      if (setting) rows.push([{ text: onTheRule(stretch, units) }, ...shownFor(wheel, { setting, back })]);
    }
    const even = readingAt(wheel, travel);
    if (even) rows.push([{ text: say("plan.elsewhere") }, ...shownFor(wheel, even)]);
  }
  if (rows.length === 0) return [];
  const inRows = rows.some((row) => row[3]?.text !== "");
  const columns: Column[] = [
    { heading: [say("plan.column rule"), unitName(units)], align: "start", key: true },
    { heading: [say("plan.column turns")], align: "end" },
    { heading: [say("plan.column dial")], align: "decimal" },
    ...(inRows ? [{ heading: [""], align: "start" } as const] : []),
  ];
  const shown = inRows ? rows : rows.map((row) => row.slice(0, 3));
  const words = [
    say("plan.corrected"),
    ...(step.passes.length > 0 ? [say(promised ? "plan.measured before, promised" : "plan.measured before")] : []),
  ];
  return [
    ...kept(paragraph(words.join(" "), width, { gap: 0.7 })),
    ...table(columns, shown, { width, size: size.text, titles }),
  ];
}
