import type { HandwheelFinding } from "../../findings/findings.js";
import { correctedSetting } from "../../findings/settings.js";
import { fromZero, startsOver, zeroWords } from "../../findings/travelWords.js";
import type { Units } from "../../machine/machine.js";
import { type Reading, readingAt } from "../../plan/zero.js";
import { formatFixed, formatLength, MINUS } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import type { Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { kept } from "../shared/runs.js";
import { size } from "../shared/style.js";
import { type Cell, type Column, table } from "../shared/table.js";
import { isFixed, readingWords, wheelWords } from "./planWords.js";

/** A movement by a wheel, mm of the slide; less than 0: backwards, as a bore is enlarged. */
export type Movement = { readonly wheel: HandwheelFinding; readonly travel: number };

/** Where on a slide that was found worn or wavy a movement begins, turns of its readings, and what is then to be dialled. */
type Corrected = { readonly starts: readonly number[]; readonly shown: Shown };
type Shown = { readonly turns: string; readonly figure: string; readonly row: string };

/** By the curve that was measured. Empty where the travel is even, and where all of it comes to the reading of the table as far as
 *  the dial can be read. */
export function correctedReadings({ wheel, travel }: Movement): Corrected[] {
  const back = travel < 0;
  const plain = readingAt(wheel, travel);
  const found: Corrected[] = [];
  for (const from of startsOver(wheel, back)) {
    const setting = correctedSetting(wheel, travel * (wheel.reading?.factor ?? 1), from);
    if (setting === undefined) continue;
    const shown = shownFor(wheel, { setting, back, travel });
    const same = found.findIndex((one) => alike(one.shown, shown));
    const before = found[same];
    if (before === undefined) found.push({ starts: [from], shown });
    else found[same] = { shown, starts: [...before.starts, from] };
  }
  const own = plain && shownFor(wheel, plain);
  return own !== undefined && found.every(({ shown }) => alike(shown, own)) ? [] : found;
}

/** On a dial that cannot be set to 0: what it goes on by from wherever it stood, or goes back by. */
function shownFor(wheel: HandwheelFinding, reading: Reading): Shown {
  const { turns, figure, row = "" } = readingWords(wheel, reading);
  return { turns, figure: isFixed(wheel) ? `${reading.back ? MINUS : "+"} ${figure}` : figure, row };
}

const alike = (one: Shown, other: Shown): boolean =>
  one.turns === other.turns && one.figure === other.figure && one.row === other.row;

/** What takes the place of a step's own readings on a slide that is not even, as a small table; each movement once. */
export function correctedStep(movements: readonly Movement[], units: Units, width: number): Run[] {
  const titles = new Map<number, string>();
  const told = new Set<string>();
  const found: (Corrected & { readonly wheel: HandwheelFinding })[] = [];
  for (const { wheel, travel } of movements) {
    const title = say("plan.corrected movement", {
      distance: formatLength(Math.abs(travel * (wheel.reading?.factor ?? 1)), units, units === "mm" ? 2 : 4),
      wheel: wheelWords(wheel),
    });
    const corrected = correctedReadings({ wheel, travel });
    if (corrected.length === 0 || told.has(title)) continue;
    told.add(title);
    titles.set(found.length, title);
    found.push(...corrected.map((one) => ({ ...one, wheel })));
  }
  if (found.length === 0) return [];
  const zeros = new Set(found.map(({ wheel }) => zeroWords(wheel)));
  const inRows = found.some(({ shown }) => shown.row !== "");
  const columns: Column[] = [
    { heading: [say("plan.column starts at turn")], align: "start", key: true },
    { heading: [say("plan.column from turn 0")], align: "start" },
    { heading: [say("plan.column turns")], align: "end" },
    { heading: [say("plan.column dial")], align: "decimal" },
    ...(inRows ? [{ heading: [""], align: "start" } as const] : []),
  ];
  const rows = found.map(({ starts, shown, wheel }): Cell[] => [
    { text: starts.map((turn) => formatFixed(turn, 0)).join(", ") },
    { text: starts.map((turn) => fromZero(wheel, turn, units)).join(", ") },
    { text: shown.turns, weight: "bold" },
    { text: shown.figure, weight: "bold" },
    ...(inRows ? [{ text: shown.row }] : []),
  ]);
  return [
    ...kept(paragraph([say("plan.corrected"), ...zeros].join(" "), width, { gap: 0.7 })),
    ...table(columns, rows, { width, size: size.text, titles }),
  ];
}
