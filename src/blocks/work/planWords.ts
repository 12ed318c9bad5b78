import type { HandwheelFinding } from "../../findings/findings.js";
import { figureUnit, shownAt } from "../../findings/settingWords.js";
import type { Units } from "../../machine/machine.js";
import type { PlannedSize, PlannedStep } from "../../plan/plannedStep.js";
import type { Show } from "../../plan/words.js";
import type { Reading, Zero } from "../../plan/zero.js";
import { figureWithin, formatBound, formatFixed, plural, trimmed, trimmedSize } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";

/** What the plan says of a zero: what is touched, and what the dial is then set to. `label`: of the blank, on a dial that cannot
 *  be set. */
export function zeroWords(zero: Zero, step: PlannedStep, label: string, units: Units): string {
  const { wheel, of, at } = zero;
  const { tool } = step;
  const name = wheel.handwheel.name;
  const blade = tool.startsWith("blade") ? " with the blade's chuck-side edge" : "";
  const where: Readonly<Record<Zero["of"], string>> = {
    diameter: `Touch the ${figureWithin(at, undefined, units)} ${units} diameter lightly, coming inward`,
    bore: `Touch the bore of ${figureWithin(at, undefined, units)} ${units} lightly, coming outward`,
    end: Math.abs(at) < 1e-6 ? `Touch the finished face lightly${blade}` : `Touch the end as it is lightly${blade}`,
    "raw end": "Touch the raw end lightly",
    corner: "Touch the edge lightly",
    mouth: /^(tap|die)/.test(tool)
      ? "Where the first thread bites"
      : `Where the full diameter just enters the ${Math.abs(at) < 1e-6 ? "finished face" : "end as it is"}`,
    begin: "With the tip where the cut begins (the reading “begin at”, where one stands below), everything else locked",
    tip: "Where its tip touches the end",
  };
  const set = isFixed(wheel)
    ? `leave its dial alone and write down what it reads: ${label} = __________, turn 0`
    : wheel.dial === undefined
      ? "mark where the handwheel stands: turns count from there"
      : "set its dial to 0";
  return `${name}: ${where[of]}; ${set}.${otherDiameter(zero, units)}${windBack(zero, step, units)}`;
}

/** A short slide that measures lengths must have them all before it. */
function windBack({ wheel, of }: Zero, { places, passes, depthWheel }: PlannedStep, units: Units): string {
  const { travel } = wheel.handwheel;
  if (travel === undefined || (of !== "end" && of !== "raw end" && of !== "begin")) return "";
  const farthest = Math.max(
    0,
    ...places.filter((place) => place.wheel === wheel).map(({ reading }) => reading.travel),
    ...(depthWheel === wheel ? passes.map((pass) => pass.travel) : []),
  );
  return farthest > travel / 2
    ? ` It goes on by ${figureWithin(farthest, undefined, units)} ${units} of its ${figureWithin(travel, undefined, units)}: wind it well back before you touch.`
    : "";
}

/** Stock is rarely what it is sold as: the dial makes up for it. Inward its readings grow by what the diameter loses, outward they
 *  fall by what the bore gains, so that both are set by the same difference. */
function otherDiameter({ wheel, of, at }: Zero, units: Units): string {
  if (of !== "diameter" && of !== "bore") return "";
  const size = figureWithin(at, undefined, units);
  const difference = `${size} − measured${wheel.handwheel.reads === "diameter" ? "" : ", halved"}`;
  return isFixed(wheel)
    ? ` Measures it other than ${size}? Take ${difference}, off what you write down.`.replace(
        "measured, off",
        "measured off",
      )
    : ` Measures it other than ${size}? Set ${difference}, instead of 0; below nothing, by so much short of 0.`.replace(
        "measured, instead",
        "measured instead",
      );
}

export const isFixed = ({ handwheel: { dial } }: HandwheelFinding): boolean => dial?.fixed === true;

export type ReadingWords = { readonly turns: string; readonly figure: string };

/** A reading in two cells: whole turns from the zero, and what the dial then reads; on a dial that cannot be set to 0, what it has gone
 *  on by beyond the whole turns. */
export function readingWords(wheel: HandwheelFinding, { setting, back }: Reading): ReadingWords {
  const { dial, reading } = wheel;
  const sense = back ? "back " : "";
  if (dial === undefined || reading === undefined)
    return { turns: `${sense}${formatFixed(setting.turns, 2)}`, figure: "no dial" };
  if (isFixed(wheel)) {
    const beyond = (setting.divisions ?? 0) * dial.divisionWorth;
    return { turns: `${sense}${setting.wholeTurns}`, figure: onDial(wheel, beyond) };
  }
  const shown = shownAt(wheel, setting, back);
  const row = shown?.row === undefined ? "" : ` row ${shown.row}`;
  return { turns: `${sense}${setting.wholeTurns}`, figure: `${shown?.figure ?? ""}${row}` };
}

/** So many mm of what a dial reads, in the figures that are printed on it, to a tenth of a division. */
export function onDial({ dial }: HandwheelFinding, mm: number): string {
  if (dial === undefined) return "";
  const worth = dial.labelWorth ?? mmPer[dial.chosen.unit];
  const places = 1 + (trimmed(dial.chosen.divisionValue / worth, 6).split(".")[1]?.length ?? 0);
  return formatFixed(mm / worth, places);
}

/** How sums on dials that cannot be set to 0 are made, with one turn of each such wheel; nothing where all can be set. */
export function sumRules(wheels: readonly HandwheelFinding[]): string[] {
  const fixed = wheels.filter(isFixed);
  if (fixed.length === 0) return [];
  const turns = fixed.map(
    (wheel) => `${wheel.handwheel.name} ${onDial(wheel, wheel.reading?.perTurn ?? 0)} ${figureUnit(wheel)}`,
  );
  return [
    `Dials that cannot be set to 0: at the touch write down what the dial reads (S1, S2 …). For a reading count a whole turn each time the dial comes round to that figure again, then go on to the sum. One whole turn is: ${turns.join("; ")}. A sum of more than a turn is read less one turn, one below 0 plus one turn.`,
  ];
}

/** The heading of a wheel's readings. */
export const wheelWords = (wheel: HandwheelFinding): string => {
  const unit = figureUnit(wheel);
  return unit === "" ? wheel.handwheel.name : `${wheel.handwheel.name}, ${unit}`;
};

/** What can be promised of a step's sizes, as one sentence; nothing where nobody measured the feed. */
export function promiseWords({ sizes }: PlannedStep, show: Show, units: Units): string | undefined {
  const words = sizes.flatMap((size) => (size.doubt === undefined ? [] : [sizeWords(size, show, units)]));
  return words.length === 0 ? undefined : `Comes out: ${words.join("; ")}.`;
}

function sizeWords({ what, aim, doubt = 0, alike, least, most }: PlannedSize, show: Show, units: Units): string {
  const same = alike === undefined ? "" : `, parts alike to ${formatBound(alike, units)}`;
  const half = least === undefined || most === undefined ? undefined : Math.min(aim - least, most - aim);
  const short =
    half !== undefined && doubt > half + 1e-9 ? " (more than the tolerance: measure again before the last cut)" : "";
  return `${what} ${show(aim)} ± ${formatBound(doubt, units)}${short}${same}`;
}

export const feedWords = ({ feed, feedWheel, byHand }: PlannedStep): string | undefined =>
  feed === undefined || feedWheel === undefined || byHand ? undefined : `Feed by the ${feedWheel}: ${feed.count}.`;

/** Minutes as one speaks of them. */
export const minutesWords = (minutes: number): string =>
  minutes < 90 ? plural(Math.max(1, Math.round(minutes)), "minute") : `${formatFixed(minutes / 60, 1)} hours`;

export const within = (least: number, most: number, units: Units): string =>
  `${trimmedSize(least, units, 4).replace(` ${units}`, "")} to ${trimmedSize(most, units, 4)}`;
