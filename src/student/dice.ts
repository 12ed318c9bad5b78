/** Numbers that look thrown but are the same for the same words, so that a class shares its exercises: the "minimal standard"
 *  generator, 16807 · n modulo 2³¹ − 1 (Park and Miller, Communications of the ACM, 1988; from memory). */
export type Dice = {
  /** A whole number from `least` to `most`, both included. */
  readonly whole: (least: number, most: number) => number;
  /** One of a list that is not empty. */
  readonly pick: <T>(list: readonly [T, ...T[]]) => T;
};

const modulus = 2147483647;

export function dice(words: string): Dice {
  let state = 1;
  for (const char of words) state = ((state * 31 + (char.codePointAt(0) ?? 0)) % (modulus - 1)) + 1;
  const next = (): number => {
    state = (state * 16807) % modulus;
    return state / modulus;
  };
  // The first throws of neighbouring seeds are alike.
  for (let count = 0; count < 5; count++) next();
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return { whole, pick: (list) => list[whole(0, list.length - 1)] ?? list[0] };
}
