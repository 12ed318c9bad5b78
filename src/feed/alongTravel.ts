import type { Readings } from "../machine/machine.js";
import { chanceOfRatio } from "./chance.js";
import { NO_SCATTER, roundingDeviation } from "./gauge.js";
import { type Regression, regress } from "./regress.js";
import { studentT95 } from "./studentT.js";

/** Less likely than this by chance counts as real, for a worn zone and for a once-per-turn wave alike. A tool that looks
 *  at every handwheel must not cry worn at each twentieth sound one; one in a hundred is common practice. */
export const REAL_BELOW = 0.01;

/** One stretch of the travel. Turns of the handwheel; mm. */
export type Zone = {
  readonly fromTurn: number;
  readonly toTurn: number;
  /** Travel per turn in this stretch, and its half-width at 95 %. */
  readonly perTurn: number;
  readonly uncertainty: number;
  /** How far the slide stands ahead of (turns × mean feed) at the end of the stretch, counted from the first turn. */
  readonly aheadAtEnd: number;
  readonly aheadUncertainty: number;
};

/** A wave over the turn: the slide stands ahead by amplitude · cos(2π (turn − crest)). */
export type OncePerTurn = {
  readonly amplitude: number;
  /** Half-width at 95 % of the amplitude. */
  readonly uncertainty: number;
  /** Part of a turn, 0 to 1, from turn 0 of the readings, at which the slide is furthest ahead. */
  readonly crest: number;
};

/** A statement with the probability that chance alone makes as much of sound parts. */
export type Judged<T> = {
  readonly chance: number;
  readonly real: boolean;
  readonly found: T;
};

export type Shape = {
  /** Absent with too few readings to tell. */
  readonly alongTravel?: Judged<readonly Zone[]>;
  /** Absent where the readings do not part the turn: all at the same place of it, or too few. */
  readonly oncePerTurn?: Judged<OncePerTurn>;
};

const ZONES = 5;

/** One term of a fitted curve, over the turn. */
type Term = (turn: number) => number;

/** What the way out tells beyond a straight line: a bend along the travel (a worn zone) and a wave once per turn (an
 *  eccentric dial or thrust face). Each is tested with the other allowed for: the ratio of the variance that it
 *  explains to that which is left, the latter never taken below what the gauge's rounding leaves.
 *  `slope` is the fitted travel per turn with its sign. */
export function shape(readings: Readings, slope: number): Shape {
  const { turns } = readings;
  const sense = Math.sign(slope) || 1;
  const travel = readings.travel.map((value) => sense * value);
  const first = least(turns);
  const half = (greatest(turns) - first) / 2;
  const centred = (turn: number): number => (turn - first - half) / half;
  const waves = partsTheTurn(turns) && turns.length >= 8;
  const bends = bendColumns(new Set(turns).size, turns.length - (waves ? 2 : 0));
  const line: Term[] = [() => 1, centred];
  const bend = Array.from(
    { length: bends },
    (_, k): Term =>
      (turn) =>
        centred(turn) ** (k + 2),
  );
  const wave: Term[] = waves ? [(turn) => Math.cos(2 * Math.PI * turn), (turn) => Math.sin(2 * Math.PI * turn)] : [];
  // Readings may be a million: each column is made once, for all three fits.
  const columns = new Map([...line, ...bend, ...wave].map((term) => [term, Float64Array.from(turns, term)]));
  const fitOf = (...terms: Term[]) =>
    regress(
      terms.flatMap((term) => columns.get(term) ?? []),
      travel,
    );

  const whole = fitOf(...line, ...bend, ...wave);
  if (whole === undefined) return {};
  const deviation = Math.max(whole.deviation, roundingDeviation(readings.gauge ?? 0), NO_SCATTER);
  const judge = (without: Regression | undefined, added: number): number =>
    without === undefined
      ? 1
      : chanceOfRatio(
          Math.max(0, without.residualSquares - whole.residualSquares) / added / deviation ** 2,
          added,
          whole.degreesOfFreedom,
        );
  const t = studentT95(whole.degreesOfFreedom) * deviation;

  const alongTravel = (): Judged<readonly Zone[]> => {
    const chance = judge(fitOf(...line, ...wave), bends);
    const weights = (turn: number) => [...[...line, ...bend].map((term) => term(turn)), ...wave.map(() => 0)];
    const value = (w: readonly number[]) => w.reduce((sum, part, k) => sum + part * (whole.coefficients[k] ?? 0), 0);
    const between = (from: number, to: number) => {
      const ends = [weights(from), weights(to)] as const;
      const w = ends[1].map((part, k) => part - (ends[0][k] ?? 0));
      return { travel: value(w), doubt: t * Math.sqrt(whole.spreadOf(w)) };
    };
    const step = (2 * half) / ZONES;
    const found = Array.from({ length: ZONES }, (_, k): Zone => {
      const [fromTurn, toTurn] = [first + k * step, first + (k + 1) * step];
      const own = between(fromTurn, toTurn);
      const far = between(first, toTurn);
      return {
        fromTurn,
        toTurn,
        perTurn: own.travel / step,
        uncertainty: own.doubt / step,
        aheadAtEnd: far.travel - Math.abs(slope) * (toTurn - first),
        aheadUncertainty: far.doubt,
      };
    });
    return { chance, real: chance < REAL_BELOW, found };
  };
  const oncePerTurn = (): Judged<OncePerTurn> => {
    const chance = judge(fitOf(...line, ...bend), 2);
    const [a = 0, b = 0] = whole.coefficients.slice(-2);
    const amplitude = Math.hypot(a, b);
    // The doubt of the amplitude is that of the wave along its own crest.
    const along = [...[...line, ...bend].map(() => 0), a / amplitude, b / amplitude];
    const found = {
      amplitude,
      uncertainty: amplitude > 0 ? t * Math.sqrt(whole.spreadOf(along)) : 0,
      crest: (((Math.atan2(b, a) / (2 * Math.PI)) % 1) + 1) % 1,
    };
    return { chance, real: chance < REAL_BELOW, found };
  };
  return {
    ...(bends > 0 && { alongTravel: alongTravel() }),
    ...(waves && { oncePerTurn: oncePerTurn() }),
  };
}

/** A bend of more terms needs more readings: two more of them for each term, at least. */
function bendColumns(places: number, readings: number): number {
  const few = Math.min(places, readings);
  return few >= 12 ? 3 : few >= 8 ? 2 : few >= 6 ? 1 : 0;
}

/** A wave of one crest needs three places in the turn. */
function partsTheTurn(turns: readonly number[]): boolean {
  const places = new Set(turns.map((turn) => Math.round((turn - Math.floor(turn)) * 1e6) % 1e6));
  return places.size >= 3;
}

const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
const greatest = (values: readonly number[]): number =>
  values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
