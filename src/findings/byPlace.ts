import type { Setting } from "../dial/setting.js";
import { correctedTurns } from "../feed/uneven.js";
import type { Units } from "../machine/machine.js";
import { largestOf, smallestOf } from "../quantity/extremes.js";
import { inMm } from "../quantity/length.js";
import type { HandwheelFinding } from "./findings.js";
import { doubtCorrected, doubtToRead, settingToMove, tenthOfDivision } from "./settings.js";
import { placeOfTurn0 } from "./travelWords.js";

/** Where on a worn slide movements begin, mm from turn 0 of its readings as a rule tells. */
export type Stretch = { readonly from: number; readonly to: number };

/** A movement of the slide, mm, less than 0: backwards, as a bore is enlarged; and what is to be turned for it from each stretch, nothing
 *  where it would end beyond what was measured. `within`: what it may then be off by, half-width, mm of the slide. */
export type Placed = {
  readonly travel: number;
  readonly settings: readonly (Setting | undefined)[];
  readonly within: number;
};
export type ByPlace = { readonly stretches: readonly Stretch[]; readonly placed: readonly Placed[] };

/** A rule laid to a slide is read to this, mm, either way. Own choice. */
const RULED = 0.5;
const READ = [-RULED, 0, RULED];
/** At these marks of a rule a stretch may end, mm: finer ones nobody reads at a machine. Own choice. */
const MARK: Readonly<Record<Units, number>> = { mm: 1, in: inMm(1 / 16, "in") };
/** On a slide with more of them, at every second, every third … */
const MOST_MARKS = 120;
/** Of what is in doubt of a movement anyhow, the share that is let be, either way, where the stretches are few. Own choice. */
const FINEST = 0.5;

/** What to turn on a slide that was found worn, by the stretch on which the movement begins: all that is right for the places of a stretch
 *  differs by less than is in doubt anyhow, or where that would be more stretches than `most`, by as little as so many allow; so one
 *  setting serves a stretch, and nothing is reckoned between two. Without the movements that an even slide makes as well, and those that come out no better by their place; undefined
 *  where none is left, or where nobody said at which place turn 0 is. */
export function settingsByPlace(
  wheel: HandwheelFinding,
  movements: readonly number[],
  { units, most }: { readonly units: Units; readonly most: number },
): ByPlace | undefined {
  const { feed } = wheel;
  const { measured, perTurn } = feed ?? {};
  if (perTurn === undefined || measured?.uneven?.ahead === undefined || placeOfTurn0(wheel) === undefined)
    return undefined;
  const turnsFrom = (travel: number, place: number): number | undefined =>
    correctedTurns(travel, Math.min(measured.to, Math.max(measured.from, place / perTurn)), perTurn, measured);
  const marks = marksOver(measured.from * perTurn, measured.to * perTurn, MARK[units]);
  const ways = movements.flatMap((travel): Way[] => {
    const doubt = doubtCorrected(wheel, travel);
    const even = settingToMove(wheel, Math.abs(travel))?.turns;
    if (!doubt || even === undefined) return [];
    const way: Way = {
      travel,
      doubt,
      at: marks.map((mark) => rangeAt(READ.map((off) => turnsFrom(travel, mark + off)))),
    };
    const worn = endsOfStretches([way], FINEST / perTurn).some(([first, last]) => {
      const { least, most } = rangeOver(way, first, last) ?? { least: even, most: even };
      return Math.abs((least + most) / 2 - even) * perTurn > FINEST * doubt;
    });
    return worn ? [way] : [];
  });
  if (ways.length === 0) return undefined;

  for (let share = FINEST; ; share *= 1.2) {
    const ends = endsOfStretches(ways, share / perTurn);
    if (ends.length > most) continue;
    const stretches = ends.map(([first, last]) => ({ from: marks[first] ?? 0, to: marks[last] ?? 0 }));
    const placed = ways.map((way): Placed => {
      const ranges = ends.map(([first, last]) => rangeOver(way, first, last));
      const widest = largestOf(ranges.map((range) => (range ? range.most - range.least : 0)));
      return {
        travel: way.travel,
        settings: ranges.map((one) => one && settingToMove(wheel, ((one.least + one.most) / 2) * perTurn)),
        within: way.doubt + (widest / 2) * perTurn + tenthOfDivision(wheel) / 2,
      };
    });
    // Not by its place where that is no better known than by the plain figure: what is told of the rest then needs no heed of it.
    const better = placed.filter(({ travel, within }) => within < doubtPlain(wheel, travel));
    return better.length === placed.length
      ? { stretches, placed }
      : settingsByPlace(
          wheel,
          better.map(({ travel }) => travel),
          { units, most },
        );
  }
}

/** Through more rows of stretches nobody looks. Own choice. */
const MOST_ROWS = 12;

/** The same for one movement of a plan, whose stretches stand in rows; undefined where it is dialled as it stands. */
export const byTheRule = (wheel: HandwheelFinding, travel: number, units: Units): ByPlace | undefined =>
  settingsByPlace(wheel, [travel], { units, most: MOST_ROWS });

/** What a movement set by the plain figure may be off by, half-width, mm of the slide. */
const doubtPlain = (wheel: HandwheelFinding, travel: number): number =>
  (doubtToRead(wheel, Math.abs(travel) * (wheel.reading?.factor ?? 1)) ?? 0) / (wheel.reading?.factor ?? 1);

/** Turns that are right where the rule may have been read; `whole`: all of that lies within what was measured. */
type Range = { readonly least: number; readonly most: number; readonly whole: boolean };
/** `at`: for every mark, nothing where the movement ends beyond what was measured. */
type Way = { readonly travel: number; readonly doubt: number; readonly at: readonly (Range | undefined)[] };

function rangeAt(turns: readonly (number | undefined)[]): Range | undefined {
  const known = turns.flatMap((one) => (one === undefined ? [] : [Math.abs(one)]));
  return known.length === 0
    ? undefined
    : { least: smallestOf(known), most: largestOf(known), whole: known.length === turns.length };
}

const both = (one: Range | undefined, other: Range | undefined): Range | undefined =>
  one && other
    ? { least: Math.min(one.least, other.least), most: Math.max(one.most, other.most), whole: one.whole && other.whole }
    : (one ?? other);

const rangeOver = ({ at }: Way, first: number, last: number): Range | undefined =>
  at.slice(first, last + 1).reduce(both, undefined);

/** First and last mark of each stretch; on none what is right strays by more than its doubt times `share`, turns for mm, unless from one
 *  mark to the next. They lie where some movement can be made from all places that the rule may mean. */
function endsOfStretches(ways: readonly Way[], share: number): (readonly [first: number, last: number])[] {
  const found: (readonly [number, number])[] = [];
  const used = [...(ways[0]?.at.keys() ?? [])].filter((mark) => ways.some(({ at }) => at[mark]?.whole));
  let first = used[0] ?? 0;
  let ranges = ways.map(({ at }) => at[first]);
  for (const [index, mark] of used.entries()) {
    const next = used[index + 1];
    if (next === undefined) {
      if (mark !== first) found.push([first, mark]);
      break;
    }
    const longer = ways.map(({ at }, way) => both(ranges[way], at[next]));
    const serves = longer.every(
      (one, way) => one === undefined || one.most - one.least <= 2 * share * (ways[way]?.doubt ?? 0),
    );
    if (mark === first || serves) {
      ranges = longer;
      continue;
    }
    found.push([first, mark]);
    first = mark;
    ranges = ways.map(({ at }) => both(at[mark], at[next]));
  }
  return found;
}

function marksOver(from: number, to: number, mark: number): number[] {
  const step = mark * Math.max(1, Math.ceil((to - from) / mark / MOST_MARKS));
  const [first, last] = [Math.floor(from / step + 1e-6), Math.ceil(to / step - 1e-6)];
  return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
}
