import type { DialChoice } from "./finding.js";

/** How to move a distance: whole turns of the handwheel from zero, then so many divisions more. All lengths in mm of what the
 *  dial reads, as is `perTurn`, what one turn truly moves. */
export type Setting = {
  readonly turns: number;
  readonly wholeTurns: number;
  /** To the tenth that an eye can split; absent without a dial. */
  readonly divisions?: number;
  /** On a dial of several rows: the row then in force (from 1), and what its own numbers say. */
  readonly row?: number;
  readonly reading?: number;
  /** What setting to the tenth leaves: moved − wanted. */
  readonly error: number;
};

/** A hair under a whole turn (0.9999999) is that whole turn. */
const hair = 1e-9;

export function settingFor(distance: number, perTurn: number, dial: DialChoice | undefined): Setting {
  const turns = distance / perTurn;
  const wholeTurns = Math.floor(turns + hair);
  if (dial === undefined) return { turns, wholeTurns, error: 0 };
  const worth = divisionWorth(dial, perTurn);
  const rest = Math.max(0, distance - wholeTurns * perTurn);
  const divisions = Math.round((rest / worth) * 10) / 10;
  const error = wholeTurns * perTurn + divisions * worth - distance;
  if (dial.rows === 1) return { turns, wholeTurns, divisions, error };
  const cycle = dial.rows * perTurn;
  const reading = Math.max(0, distance - Math.floor(distance / cycle + hair) * cycle);
  return { turns, wholeTurns, divisions, error, row: (wholeTurns % dial.rows) + 1, reading };
}

/** What one printed division truly moves: an equal part of the turn on an even dial, its own worth on the others. */
export const divisionWorth = (dial: DialChoice, perTurn: number): number =>
  dial.closure === "even" ? perTurn / dial.divisions : dial.divisionValue;

/** What an old dial must be turned to, that shows `shows` in a turn of `perTurn`: whole turns, then its own reading, and what it
 *  would have been wrong by, had it been believed. mm, of what the old dial reads. */
export function oldDialSetting(
  distance: number,
  perTurn: number,
  shows: number,
): { wholeTurns: number; reading: number; wrongBy: number } {
  const turns = distance / perTurn;
  const wholeTurns = Math.floor(turns + hair);
  return {
    wholeTurns,
    reading: Math.max(0, turns - wholeTurns) * shows,
    wrongBy: distance * (perTurn / shows - 1),
  };
}
