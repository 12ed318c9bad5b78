import type { Step, WantedNumber, WantedPosition, WantedSetting } from "./wanted.js";

/** How a wheel stands: turns from zero, and by how many of them it was turned back without the slide following: what is lost then is to be
 *  taken up again before the dial is true. */
export type Turned = { readonly turns: number; readonly slack: number };

/** How far a wheel goes back before its zero, turns: room to come on to the first lines from. */
export const BEFORE_ZERO = 1;

/** A wheel turned on or back (less than nothing) from where it stands. `lost`: turns of lost motion. */
export function turnedBy({ turns, slack }: Turned, more: number, lost: number): Turned {
  const to = Math.max(-BEFORE_ZERO, Math.round((turns + more) * 1e9) / 1e9);
  return { turns: to, slack: Math.min(lost, Math.max(0, slack - (to - turns))) };
}

/** What is wrong about a place that a wheel was turned to: whole turns miscounted, and lines beside the right one, both more than
 *  nothing where it is too far; and whether the slide has not followed there. */
export type MarkedSetting = {
  readonly right: boolean;
  readonly turnsOff: number;
  readonly linesOff: number;
  readonly turnedBack: boolean;
};

export function markSetting({ turns: wanted, within, division, from }: WantedSetting, turned: Turned): MarkedSetting {
  const off = turned.turns - wanted;
  const turnsOff = Math.round(off);
  const left = off - turnsOff;
  const linesOff = Math.abs(left) <= within ? 0 : left / division;
  // A slide that lags by less than the place may be off is there; who went too far must come on anew, however little is lost.
  const turnedBack = turned.slack > (from > 0 ? 1e-9 : within);
  return { right: turnsOff === 0 && linesOff === 0 && !turnedBack, turnsOff, linesOff, turnedBack };
}

/** `off`: more than nothing where too much; `steps`: the same in what is counted, where it is so many of them. */
export type MarkedNumber = { readonly right: boolean; readonly off: number; readonly steps?: number };

export function markNumber({ value, within, step }: WantedNumber, given: number): MarkedNumber {
  const off = given - value;
  if (Math.abs(off) <= within) return { right: true, off };
  const steps = step && wholeSteps(off, step, within);
  return { right: false, off, ...(steps !== undefined && { steps }) };
}

function wholeSteps(off: number, { worth }: Step, within: number): number | undefined {
  const steps = Math.round((off / worth) * 2) / 2;
  return steps !== 0 && Math.abs(off - steps * worth) <= within ? steps : undefined;
}

/** `places`: how many positions further up, where it is faster, than the nearest that is right; absent where there is none, or none was
 *  given. */
export type MarkedPosition = { readonly right: boolean; readonly places?: number };

/** `given`: a position's name; undefined for none at all. */
export function markPosition({ right, positions }: WantedPosition, given: string | undefined): MarkedPosition {
  if (given === undefined) return { right: right.length === 0 };
  if (right.includes(given)) return { right: true };
  const at = (name: string) => positions.findIndex((one) => one.name === name);
  const away = right.map((name) => at(name) - at(given)).sort((a, b) => Math.abs(a) - Math.abs(b));
  return { right: false, ...(away[0] !== undefined && { places: away[0] }) };
}
