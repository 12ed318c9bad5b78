import type { Readings } from "../machine/machine.js";
import { type AxisFinding, positioning } from "./iso230.js";

/** Positioning after ISO 230-2 of a handwheel whose run was repeated: the target is turns × `slope` (the fitted travel
 *  per turn with its sign). Undefined where the readings hold no return, or no position was come to twice each way.
 *  Positions read less often than the others are left out. */
export function positioningOf(readings: Readings, slope: number, intercept: number): AxisFinding | undefined {
  const { turns, travel, back } = readings;
  if (back === undefined || back.length !== travel.length) return undefined;
  const sense = Math.sign(slope) || 1;
  const deviation = (reading: number, turn: number) => sense * (reading - intercept - slope * turn);
  const places = new Map<number, { up: number[]; down: number[] }>();
  for (const [i, turn] of turns.entries()) {
    const place = places.get(turn) ?? { up: [], down: [] };
    place.up.push(deviation(travel[i] ?? 0, turn));
    place.down.push(deviation(back[i] ?? 0, turn));
    places.set(turn, place);
  }
  const all = [...places.entries()].sort(([a], [b]) => a - b).map(([, place]) => place);
  const runs = all.reduce((most, { up }) => Math.max(most, up.length), 0);
  const whole = all.filter(({ up }) => up.length === runs);
  if (runs < 2 || whole.length < 2) return undefined;
  return positioning({ up: whole.map(({ up }) => up), down: whole.map(({ down }) => down) });
}
