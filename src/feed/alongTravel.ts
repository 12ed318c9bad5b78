import type { Readings } from "../machine/machine.js";
import { chanceOfRatio, type Effect, powerOf, sizeShown } from "./chance.js";
import { gaugeErrorOver95, NO_SCATTER, roundingDeviation } from "./gauge.js";
import { lessMeans, levelsOf, meansOf } from "./levels.js";
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
  /** How far the slide stands ahead of (turns × the feed that is stated) at the end of the stretch, counted from the first turn; as it was read. */
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
  /** How far the slide stands ahead of turns × slope, at `STEPS` equal steps of the travel; with `alongTravel`. */
  readonly ahead?: readonly number[];
  /** How far what `ahead` gains from one place to another may be off, half-width at 95 %, mm: no curve is better known than what was read at
   *  both. */
  readonly aheadDoubt?: number;
  /** Scatter that is left when line, bend and wave are taken off; absent where they could not be fitted. */
  readonly left?: { readonly deviation: number; readonly degreesOfFreedom: number };
};

const ZONES = 5;
/** Steps of the curve along the travel. */
const STEPS = 40;

/** One term of a fitted curve, over the turn. */
type Term = (turn: number) => number;

/** The terms that tell a bend along the travel and a wave once per turn from a straight line over these turns. */
function termsOver(turns: readonly number[]): {
  line: Term[];
  bend: Term[];
  wave: Term[];
  first: number;
  half: number;
} {
  const first = least(turns);
  const half = (greatest(turns) - first) / 2;
  const centred = (turn: number): number => (turn - first - half) / half;
  const waves = partsTheTurn(turns) && turns.length >= 8;
  const bends = bendColumns(turns.length - (waves ? 2 : 0));
  return {
    first,
    half,
    line: [() => 1, centred],
    bend: Array.from(
      { length: bends },
      (_, k): Term =>
        (turn) =>
          centred(turn) ** (k + 2),
    ),
    wave: waves ? [(turn) => Math.cos(2 * Math.PI * turn), (turn) => Math.sin(2 * Math.PI * turn)] : [],
  };
}

/** Fits any of the terms to `values` over `turns`. Readings may be a million: each column is made once, for all fits. */
function fitting(turns: readonly number[], all: readonly Term[], values: readonly number[]) {
  const columns = new Map(all.map((term) => [term, Float64Array.from(turns, term)]));
  return (...terms: Term[]) =>
    regress(
      terms.flatMap((term) => columns.get(term) ?? []),
      values,
    );
}

/** The mean reading of each place, every run brought to one zero of the gauge; in the sense of the travel. A place that was
 *  read often is still one place: what is wrong there was wrong each time. */
function atPlaces({ turns, travel }: Readings, slope: number): { turns: readonly number[]; travel: readonly number[] } {
  const sense = Math.sign(slope) || 1;
  const levels = levelsOf(turns);
  if (levels.places === turns.length) return { turns, travel: travel.map((value) => sense * value) };
  const off = Float64Array.from(travel, (value, i) => sense * value - Math.abs(slope) * (turns[i] ?? 0));
  const { means } = meansOf(lessMeans(off, levels.run, levels.runs), levels.place, levels.places);
  const places = [...new Set(turns)];
  return { turns: places, travel: places.map((turn, i) => Math.abs(slope) * turn + (means[i] ?? 0)) };
}

/** What the way out tells beyond a straight line: a bend along the travel (a worn zone) and a wave once per turn (an
 *  eccentric dial or thrust face). Each is tested with the other allowed for: the ratio of the variance that it
 *  explains to that which is left, the latter never taken below what the gauge's rounding leaves.
 *  `slope` is the fitted travel per turn with its sign. */
export function shape(readings: Readings, slope: number): Shape {
  const { turns, travel } = atPlaces(readings, slope);
  const { line, bend, wave, first, half } = termsOver(turns);
  const [bends, waves] = [bend.length, wave.length > 0];
  if (turns.length <= line.length + bends + wave.length) return {};
  const fitOf = fitting(turns, [...line, ...bend, ...wave], travel);

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
  const t95 = studentT95(whole.degreesOfFreedom);
  const t = t95 * deviation;

  const value = (w: readonly number[]) => w.reduce((sum, part, k) => sum + part * (whole.coefficients[k] ?? 0), 0);
  const fitted = (turn: number) => value([...line, ...bend, ...wave].map((term) => term(turn)));
  const { beside, read, scatter } = besideCurve(turns, (turn, i) => (travel[i] ?? 0) - fitted(turn), whole.deviation);

  // What a reading strays by is told by its neighbours, where the curve does not follow them.
  const single =
    scatter === undefined ? deviation : Math.max(scatter, roundingDeviation(readings.gauge ?? 0), NO_SCATTER);

  const alongTravel = (): Pick<Shape, "alongTravel" | "ahead" | "aheadDoubt"> => {
    const chance = judge(fitOf(...line, ...wave), bends);
    const weights = (turn: number) => [...[...line, ...bend].map((term) => term(turn)), ...wave.map(() => 0)];
    const smooth = (turn: number) => value(weights(turn));
    // A stretch is told by what was read at its two ends: the curve through all readings is out where a hollow has edges that it does
    // not follow, and no scatter about it tells by how much. Each end strays as a reading does.
    const ends = Math.hypot(Math.SQRT2 * t95 * single, gaugeErrorOver95(readings.gaugeError ?? 0));
    const between = (from: number, to: number) => {
      const [one, other] = [read(from), read(to)];
      return {
        travel: smooth(to) + other.off - smooth(from) - one.off,
        doubt: ends + one.bent + other.bent,
      };
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
    const ahead = Array.from({ length: STEPS + 1 }, (_, k) => {
      const gone = (2 * half * k) / STEPS;
      return smooth(first + gone) + beside(first + gone) - smooth(first) - beside(first) - Math.abs(slope) * gone;
    });
    return { alongTravel: { chance, real: chance < REAL_BELOW, found }, ahead, aheadDoubt: ends };
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
    ...(bends > 0 && alongTravel()),
    ...(waves && { oncePerTurn: oncePerTurn() }),
    left: { deviation: single, degreesOfFreedom: whole.degreesOfFreedom },
  };
}

/** Of white noise a difference of neighbours scatters as much as √2 values; of what a curve does not follow, by much less (J. von Neumann,
 *  Annals of Mathematical Statistics 12, 1941: the ratio of the mean square successive difference to the variance; from memory). Below
 *  this part of it the readings know better than the curve: of 16 readings without a pattern one set in two hundred lies there (20 000
 *  drawn, of normal scatter). Own choice. */
const FOLLOWS = 0.55;

/** What the readings lie beside their curve at a turn, straight on from reading to reading. `beside`: the same where they do so in a
 *  pattern, a hollow with edges being no smooth curve, and one laid through it errs most near the ends; nothing where chance scatters them.
 *  `bent`: by what it bends from reading to reading there, so much may be missed between two. `scatter`: of one reading, by its
 *  neighbours, where there is a pattern. */
function besideCurve(
  turns: readonly number[],
  offAt: (turn: number, index: number) => number,
  deviation: number,
): {
  readonly beside: (turn: number) => number;
  readonly read: (turn: number) => { readonly off: number; readonly bent: number };
  readonly scatter?: number;
} {
  const places = turns.map((turn, i) => ({ turn, off: offAt(turn, i) })).sort((one, other) => one.turn - other.turn);
  const steps = places.slice(1).map(({ off }, i) => off - (places[i]?.off ?? 0));
  const neighbours = steps.reduce((sum, one) => sum + one ** 2, 0) / 2 / steps.length;
  const read = (turn: number) => {
    const found = places.findIndex((place) => place.turn >= turn - 1e-9);
    const after = Math.max(1, found < 0 ? places.length - 1 : found);
    const [from, to] = [places[after - 1], places[after]];
    if (from === undefined || to === undefined || to.turn - from.turn < 1e-9) return { off: to?.off ?? 0, bent: 0 };
    const part = Math.min(1, Math.max(0, (turn - from.turn) / (to.turn - from.turn)));
    const step = (at: number) => steps[at] ?? steps[after - 1] ?? 0;
    const bend = Math.max(Math.abs(step(after) - step(after - 1)), Math.abs(step(after - 1) - step(after - 2)));
    // A parabola through three readings stands off its chord by so much of their second difference.
    return { off: from.off + part * (to.off - from.off), bent: (part * (1 - part) * bend) / 2 };
  };
  if (!(neighbours < FOLLOWS * deviation ** 2)) return { beside: () => 0, read };
  return { beside: (turn) => read(turn).off, read, scatter: Math.sqrt(neighbours) };
}

/** The same where the mean feed turned out `steeper`, mm a turn: what lies ahead of it does so by less. */
export function steepened(found: Shape, steeper: number, first: number, last: number): Shape {
  const { alongTravel, ahead } = found;
  if (alongTravel === undefined || ahead === undefined) return found;
  const zones = alongTravel.found.map((zone) => ({
    ...zone,
    aheadAtEnd: zone.aheadAtEnd - steeper * (zone.toTurn - first),
  }));
  return {
    ...found,
    alongTravel: { ...alongTravel, found: zones },
    ahead: ahead.map((mm, k) => mm - (steeper * (last - first) * k) / (ahead.length - 1)),
  };
}

/** A worn stretch must be told from chance this often for a number of readings to be called enough. */
const POWER = 0.8;

/** How deep a worn stretch must be, mm, to be called real in 80 of 100 cases in which these turns are read once and each
 *  reading scatters by `scatter`. Undefined where the turns are too few to show any. */
export function wearShown(turns: readonly number[], scatter: number): number | undefined {
  const effect = hollowOver(turns);
  const size = effect && sizeShown(POWER, REAL_BELOW, effect);
  return size === undefined ? undefined : scatter * size;
}

/** Whether a worn stretch so many scatters deep is called real as often. */
export function showsWear(turns: readonly number[], scatters: number): boolean {
  const effect = hollowOver(turns);
  return effect !== undefined && powerOf(scatters, REAL_BELOW, effect) >= POWER;
}

/** What the test makes of a hollow in the middle of the travel, one scatter deep, four tenths of it wide between the places where
 *  it is 1/e deep (common practice: wear is where the work is). */
function hollowOver(turns: readonly number[]): Effect | undefined {
  const { line, bend, wave, first, half } = termsOver(turns);
  const freedom = turns.length - line.length - bend.length - wave.length;
  if (bend.length === 0 || freedom < 1) return undefined;
  const hollow = turns.map((turn) => -Math.exp(-(((turn - first - half) / (0.4 * half)) ** 2)));
  const fitOf = fitting(turns, [...line, ...bend, ...wave], hollow);
  const [flat, bent] = [fitOf(...line, ...wave), fitOf(...line, ...bend, ...wave)];
  if (flat === undefined || bent === undefined) return undefined;
  return {
    taken: flat.residualSquares - bent.residualSquares,
    left: bent.residualSquares,
    over: bend.length,
    under: freedom,
  };
}

/** A bend of more terms needs more places: two more of them for each term, at least. */
function bendColumns(few: number): number {
  return few >= 12 ? 3 : few >= 8 ? 2 : few >= 6 ? 1 : 0;
}

/** A wave of one crest needs three places in the turn. */
export function partsTheTurn(turns: readonly number[]): boolean {
  const places = new Set(turns.map((turn) => Math.round((turn - Math.floor(turn)) * 1e6) % 1e6));
  return places.size >= 3;
}

export const least = (values: readonly number[]): number =>
  values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
export const greatest = (values: readonly number[]): number =>
  values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
