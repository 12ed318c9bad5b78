import { dialToRead } from "../../findings/dialToRead.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { onDial } from "../../findings/onDial.js";
import { dialGain } from "../../findings/settings.js";
import { dialTurnWords, figureOf, figureUnit, shownAt } from "../../findings/settingWords.js";
import { notCorrectedWords, placeOfTurn0 } from "../../findings/travelWords.js";
import type { Units } from "../../machine/machine.js";
import type { PlannedSize, PlannedStep } from "../../plan/plannedStep.js";
import { marginOf } from "../../plan/reached.js";
import type { Show } from "../../plan/words.js";
import type { Reading, Zero } from "../../plan/zero.js";
import { largestOf } from "../../quantity/extremes.js";
import { figureWithin, formatBound, formatFixed, trimmedSize, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";

/** What the plan says of a zero: what is touched, and what the dial is then set to. `label`: of the blank, on a dial that cannot
 *  be set. */
export function zeroWords(zero: Zero, step: PlannedStep, label: string, units: Units): string {
  const { wheel } = zero;
  const touch = touchWords(zero, step, units);
  const set = isFixed(wheel)
    ? say("plan.zero written down", { label })
    : dialToRead(wheel) === undefined
      ? say("plan.zero marked")
      : say("plan.zero set");
  return [
    say("plan.zero", { wheel: wheel.handwheel.name, touch, set }),
    ...otherDiameter(zero, units),
    ...windBack(zero, step, units),
  ].join(" ");
}

function touchWords({ of, at }: Zero, { stage: { step } }: PlannedStep, units: Units): string {
  const size = `${figureWithin(at, undefined, units)} ${unitName(units)}`;
  const finished = Math.abs(at) < 1e-6;
  switch (of) {
    case "diameter":
      return say("plan.touch diameter", { size });
    case "bore":
      return say("plan.touch bore", { size });
    case "end":
      return step.do === "part" || step.do === "groove"
        ? say(finished ? "plan.touch face with blade" : "plan.touch end with blade")
        : say(finished ? "plan.touch face" : "plan.touch end");
    case "raw end":
      return say("plan.touch raw end");
    case "corner":
      return say("plan.touch edge");
    case "mouth":
      if (step.do === "tap" || step.do === "die") return say("plan.touch first thread");
      return say(finished ? "plan.touch mouth" : "plan.touch mouth as it is");
    case "begin":
      return say("plan.touch begin");
    case "tip":
      return say("plan.touch tip");
  }
}

/** A wheel's zero that holds at a step: of which blank, where its dial cannot be set to 0, and in which step it was touched. */
export type ZeroInForce = { readonly zero: Zero; readonly label: string; readonly since: PlannedStep };

/** What a wheel's readings count from, or are added to. */
export type ZeroOf = (wheel: HandwheelFinding) => ZeroInForce | undefined;

/** At a step: of each of its zeros the letter of its blank, and of each wheel the zero in force. */
export type Labels = {
  readonly zeros: readonly string[];
  readonly zerosAfter: readonly string[];
  readonly now: ReadonlyMap<string, ZeroInForce>;
  /** Zeros of the whole plan at which a rule is laid to a worn slide. */
  readonly ruled: ReadonlySet<Zero>;
};

/** Where the slide stands at a zero, for all that is dialled from it by that place; or that nobody can tell. */
export function ruleWords(zero: Zero, ruled: ReadonlySet<Zero>, units: Units): string[] {
  const { wheel } = zero;
  const told = { wheel: wheel.handwheel.name, where: placeOfTurn0(wheel) ?? "", unit: unitName(units) };
  return ruled.has(zero) ? [say("plan.lay the rule", told)] : [notCorrectedWords(wheel) ?? []].flat();
}

/** The heading of a wheel's readings: which wheel, in which unit, and from which zero. */
export function readingsOf(
  wheel: HandwheelFinding,
  from: ZeroInForce | undefined,
  step: PlannedStep,
  units: Units,
): string {
  const named = wheelWords(wheel);
  if (from === undefined) return named;
  const zero = zeroName(from, units);
  return from.since === step
    ? say("plan.readings from", { wheel: named, zero })
    : say("plan.readings from, step", { wheel: named, zero, number: from.since.number });
}

function zeroName({ zero: { of, at }, since }: ZeroInForce, units: Units): string {
  const size = `${figureWithin(at, undefined, units)} ${unitName(units)}`;
  const finished = Math.abs(at) < 1e-6;
  switch (of) {
    case "diameter":
      return say("plan.from diameter", { size });
    case "bore":
      return say("plan.from bore", { size });
    case "end":
      return say(finished ? "plan.from face" : "plan.from end");
    case "raw end":
      return say("plan.from raw end");
    case "corner":
      return say("plan.from edge");
    case "mouth":
      return say(["tap", "die"].includes(since.stage.step.do) ? "plan.from first thread" : "plan.from mouth");
    case "begin":
      return say("plan.from begin");
    case "tip":
      return say("plan.from tip");
  }
}

/** A short slide that measures lengths must have them all before it. */
function windBack({ wheel, of }: Zero, { places, passes, depthWheel }: PlannedStep, units: Units): string[] {
  const { travel } = wheel.handwheel;
  if (travel === undefined || (of !== "end" && of !== "raw end" && of !== "begin")) return [];
  const farthest = Math.max(
    0,
    largestOf(places.filter((place) => place.wheel === wheel).map(({ reading }) => reading.travel)),
    largestOf(depthWheel === wheel ? passes.map((pass) => pass.travel) : []),
  );
  return farthest > travel / 2
    ? [
        say("plan.wind back", {
          by: `${figureWithin(farthest, undefined, units)} ${unitName(units)}`,
          travel: figureWithin(travel, undefined, units),
        }),
      ]
    : [];
}

/** Stock is rarely what it is sold as: the dial makes up for it. Inward its readings grow by what the diameter loses, outward they
 *  fall by what the bore gains, so that both are set by the same difference. Without a dial the turns do, and those are counted
 *  outward too: each way by its own. */
function otherDiameter({ wheel, of, at }: Zero, units: Units): string[] {
  if (of !== "diameter" && of !== "bore") return [];
  const size = figureWithin(at, undefined, units);
  const reckoned = onDial(wheel, "diameter", units);
  if (dialToRead(wheel) === undefined) return reckoned ? [say(`plan.other ${of}, turns`, { size, ...reckoned })] : [];
  const how = isFixed(wheel) ? "written" : "set";
  return [
    reckoned === undefined
      ? say(`plan.other diameter ${how}`, { size })
      : say(`plan.other diameter ${how}, reckoned`, { size, ...reckoned }),
  ];
}

/** Whether what a dial reads is added to what it read at the touch: not where there is none to read. */
export const isFixed = (wheel: HandwheelFinding): boolean => dialToRead(wheel)?.fixed === true;

/** `row`: which row of the dial it stands in, or why it has none. */
export type ReadingWords = { readonly turns: string; readonly figure: string; readonly row?: string };

/** A reading in cells: whole turns from the zero, what the dial then reads, and in which row; on a dial that cannot be set to 0, what
 *  it has gone on by beyond the whole turns. */
export function readingWords(
  wheel: HandwheelFinding,
  { setting, back }: Pick<Reading, "setting" | "back">,
): ReadingWords {
  const { reading } = wheel;
  const dial = dialToRead(wheel);
  const sensed = (turns: string) => (back ? say("plan.back", { turns }) : turns);
  if (dial === undefined || reading === undefined)
    return { turns: sensed(formatFixed(setting.turns, 2)), figure: "", row: say("plan.no dial") };
  const turns = sensed(String(setting.wholeTurns));
  if (isFixed(wheel)) return { turns, figure: figureOf(dial, dialGain(wheel, setting) ?? 0) };
  const shown = shownAt(wheel, setting, back);
  const figure = shown?.figure ?? "";
  return shown?.row === undefined ? { turns, figure } : { turns, figure, row: say("plan.row", { row: shown.row }) };
}

/** How sums on dials that cannot be set to 0 are made, with one turn of each such wheel; nothing where all can be set. */
export function sumRules(wheels: readonly HandwheelFinding[]): string[] {
  const turns = wheels.filter(isFixed).flatMap((wheel) => {
    const turn = dialTurnWords(wheel);
    return turn === undefined ? [] : [`${wheel.handwheel.name} ${turn}`];
  });
  if (turns.length === 0) return [];
  return [say("plan.sums on fixed dials", { turns: turns.join("; ") })];
}

/** With what its dial counts in. */
export const wheelWords = (wheel: HandwheelFinding): string => {
  const unit = figureUnit(wheel);
  return unit === "" ? wheel.handwheel.name : `${wheel.handwheel.name}, ${unit}`;
};

/** What can be promised of a step's sizes, as one sentence; nothing where nobody measured the feed. */
export function promiseWords({ sizes }: PlannedStep, show: Show, units: Units): string | undefined {
  const words = sizes.flatMap((size) => (size.doubt === undefined ? [] : [sizeWords(size, show, units)]));
  return words.length === 0 ? undefined : say("plan.comes out", { sizes: words.join("; ") });
}

function sizeWords(size: PlannedSize, show: Show, units: Units): string {
  const { what, aim, doubt = 0, alike } = size;
  const short = doubt > (marginOf(size) ?? Number.POSITIVE_INFINITY) + 1e-9;
  return [
    say(`plan.promised ${what}`, { size: `${show(aim)} ± ${formatBound(doubt, units)}` }),
    ...(size.byRule ? [say("plan.promised by the rule")] : []),
    ...(short ? [say("plan.more than the tolerance")] : []),
    ...(alike === undefined ? [] : [say("plan.parts alike to", { to: formatBound(alike, units) })]),
  ].join(", ");
}

/** Of several drills each with its own, where they differ. */
export function feedWords({ feed, feedWheel, byHand, drills }: PlannedStep): string | undefined {
  if (feed === undefined || feedWheel === undefined || byHand) return undefined;
  const counts = drills.map(({ name, feed: own = feed }) => ({ name, count: own.count }));
  const count = new Set(counts.map((one) => one.count)).size > 1 ? undefined : (counts[0]?.count ?? feed.count);
  return say("plan.feed by", {
    wheel: feedWheel,
    count: count ?? counts.map((one) => say("plan.feed of a drill", { drill: one.name, count: one.count })).join("; "),
  });
}

/** Minutes as one speaks of them. */
export const minutesWords = (minutes: number): string =>
  minutes < 90
    ? say("plan.minutes", { n: Math.max(1, Math.round(minutes)) })
    : say("plan.hours", { hours: formatFixed(minutes / 60, 1) });

export const within = (least: number, most: number, units: Units): string =>
  say("plan.within", {
    least: trimmedSize(least, units, 4).replace(` ${unitName(units)}`, ""),
    most: trimmedSize(most, units, 4),
  });
