import { TURN } from "../quantity/angle.js";

/** A once-per-turn error as a share of the feed: at a fraction f of the turn the slide stands ahead by
 *  share · cos 2π(f − crest) turns' worth. */
export type Wave = { readonly share: number; readonly crest: number };

/** Where a mark must stand for the slide truly to have gone what it says: the angle a with
 *  a/2π + share · (cos 2π(a/2π − crest) − cos 2π crest) = even/2π. `even`: its angle without the error, radians. The zero stays.
 *  By bisection: the left side rises with a as long as share < 1/2π, beyond which a screw would run backwards. */
export function waveAngle(even: number, { share, crest }: Wave): number {
  const limited = Math.min(Math.abs(share), 0.9 / TURN) * Math.sign(share);
  const gone = (angle: number): number =>
    angle + TURN * limited * (Math.cos(angle - TURN * crest) - Math.cos(TURN * crest));
  let [low, high] = [even - TURN / 2, even + TURN / 2];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (gone(middle) < even) low = middle;
    else high = middle;
  }
  return ((((low + high) / 2) % TURN) + TURN) % TURN;
}
