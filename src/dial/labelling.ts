import { trimmed, unitName } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { inUnit, leadingDigits } from "./divisionValue.js";
import type { DialChoice, DialFinding } from "./finding.js";

/** Em width of a figure on the strip and the least clear space between two numbers, mm. Figures 2 mm high are the
 *  least for marking that people read (MIL-STD-130, 0.08 in); a figure is about three fifths as wide. */
const FIGURE_WIDTH = 1.25;
const CLEAR_BESIDE = 1;
/** Distance of numbered marks that is aimed at: about ten numbers on a drum of 25 to 30 mm (common practice). */
const WANTED_GAP = 8;
/** Unnumbered marks between numbered ones are at most nine (MIL-HDBK-759B), so every tenth mark bears a number. */
export const MOST_MARKS_TO_A_NUMBER = 10;
/** Fewer numbers than these round a dial are few. */
const FEW_NUMBERS = 4;

/** Counted in divisions: which marks are long, which are middling, and at which steps numbers may stand. */
type Pattern = { readonly long: number; readonly middle: number; readonly numbered: readonly number[] };

/** So that numbered marks bear round values: 10, 20 of a dial of 1; 1, 2 of 0.2; 0.1, 0.2 of 0.025; 5, 10 of 0.5. */
const PATTERNS = new Map<number, Pattern>([
  [1, { long: 10, middle: 5, numbered: [1, 5, 10, 20, 50, 100] }],
  [2, { long: 10, middle: 5, numbered: [1, 5, 10, 20, 50, 100] }],
  [2.5, { long: 4, middle: 2, numbered: [1, 2, 4, 8, 20, 40, 80] }],
  [5, { long: 10, middle: 2, numbered: [1, 2, 4, 10, 20, 40, 100] }],
]);
const ANY_VALUE: Pattern = { long: 10, middle: 5, numbered: [1, 5, 10, 20, 50, 100] };

export type Labelling = {
  readonly pattern: Pattern;
  /** A number stands at every so many divisions. */
  readonly every: number;
  /** "mm" or "in", or what one counts for: "1 = 0.01 mm". */
  readonly labelUnit: string;
  /** What a figure of 1 counts, mm. */
  readonly labelWorth: number;
  /** The number that stands at a mark so many divisions from zero. */
  readonly labelAt: (division: number) => string;
  /** Room, mm, that the widest number needs for itself and the clear space beside it. */
  readonly room: number;
};

/** What the numbers count, "1 = 0.01 mm"; undefined where they are simply in the dial's unit. */
export const countedAs = ({ labelUnit, chosen }: Pick<DialFinding, "labelUnit" | "chosen">): string | undefined =>
  labelUnit === chosen.unit ? undefined : labelUnit;

/** What the numbers of a dial count, and how densely they stand: as near to the wanted distance as they fit. */
export function labelling(choice: DialChoice): Labelling {
  const pattern = PATTERNS.get(leadingDigits(inUnit({ value: choice.divisionValue, unit: choice.unit }))) ?? ANY_VALUE;
  const offWanted = (every: number) => Math.abs(Math.log((every * choice.spacing) / WANTED_GAP));
  // By fours only where tens would leave a small dial with two or three numbers.
  const byFours = choice.divisionsPerTurn < FEW_NUMBERS * MOST_MARKS_TO_A_NUMBER;
  const dense = pattern.numbered.filter(
    (every) => every <= MOST_MARKS_TO_A_NUMBER && (every !== 4 || pattern.long === 4 || byFours),
  );
  const sparse = pattern.numbered.filter((every) => every > MOST_MARKS_TO_A_NUMBER);
  for (const every of [...dense.sort((a, b) => offWanted(a) - offWanted(b)), ...sparse]) {
    const numbers = numbering(choice, pattern, every);
    if (every * choice.spacing >= numbers.room) return numbers;
  }
  return numbering(choice, pattern, pattern.numbered.at(-1) as number);
}

/** The shortest way to write the numbers: in the dial's unit, or counting hundredths and thousandths of a millimetre or
 *  thousandths and ten-thousandths of an inch. Of equals the plain unit, which needs no multiplying. */
function numbering(choice: DialChoice, pattern: Pattern, every: number): Labelling {
  const counted = choice.unit === "in" ? [0.001, 0.0001] : [0.01, 0.001];
  const value = choice.divisionValue / mmPer[choice.unit];
  const ways = [1, ...counted.filter((worth) => isWhole((value * every) / worth))].map((worth) => {
    const labelAt = (division: number) => trimmed((division * value) / worth, 5);
    const widest = numberedDivisions(choice, every).reduce(
      (most, division) => Math.max(most, labelAt(division).length),
      1,
    );
    const labelUnit = worth === 1 ? choice.unit : `1 = ${trimmed(worth, 4)} ${unitName(choice.unit)}`;
    return {
      // Numbers by fours on a dial of long tens: the numbered ones are the long ones.
      pattern: every % pattern.long === 0 || pattern.long % every === 0 ? pattern : { ...pattern, long: every },
      every,
      labelUnit,
      labelWorth: worth * mmPer[choice.unit],
      labelAt,
      room: widest * FIGURE_WIDTH + CLEAR_BESIDE,
    };
  });
  return ways.reduce((best, way) => (way.room < best.room ? way : best));
}

function numberedDivisions(choice: DialChoice, every: number): number[] {
  return Array.from({ length: Math.ceil(choice.divisions / every) }, (_, index) => index * every);
}

function isWhole(quotient: number): boolean {
  return Math.abs(quotient - Math.round(quotient)) < 1e-6;
}
