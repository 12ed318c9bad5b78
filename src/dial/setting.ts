import type { DialChoice } from "./finding.js";

/** How to move a distance: whole turns of the handwheel from zero, then so many divisions more. All lengths in mm of what the
 *  dial reads, as is `perTurn`, what one turn truly moves. What is shown on the dial is divisions times their printed value, never
 *  the way itself: where divisions are equal parts of a turn the two differ. */
export type Setting = {
  readonly turns: number;
  readonly wholeTurns: number;
  /** To the tenth that an eye can split, less than a turn; of a dial of several rows what is beyond the whole turns. Absent
   *  without a dial. */
  readonly divisions?: number;
  /** On a dial of several rows: the row then in force (from 1), and what its own numbers say. */
  readonly row?: number;
  readonly reading?: number;
  /** What setting to the tenth leaves: moved − wanted. */
  readonly error: number;
};

/** What of a way to divide a turn says how a dial is read; of an old dial, whose divisions nobody counted, their number may be a
 *  fraction. */
export type Scale = Pick<DialChoice, "closure" | "divisionValue" | "divisions" | "rows" | "unit">;

/** A hair under a whole turn (0.9999999) is that whole turn. */
const hair = 1e-9;

export function settingFor(distance: number, perTurn: number, dial: Scale | undefined): Setting {
  const turns = distance / perTurn;
  if (dial === undefined) return { turns, wholeTurns: Math.floor(turns + hair), error: 0 };
  // Rows are read on from the first through the last, so that what is set to a tenth is the reading within one round of them.
  const round = dial.rows * perTurn;
  const worth = divisionWorth(dial, perTurn);
  const [rounds, tenths] = nearest(distance, round, worth / 10);
  const moved = (tenths * worth) / 10;
  const turnsOfRound = Math.floor(moved / perTurn + hair);
  const wholeTurns = rounds * dial.rows + turnsOfRound;
  const error = rounds * round + moved - distance;
  if (dial.rows === 1) return { turns, wholeTurns, divisions: tenths / 10, error };
  const divisions = Math.max(0, moved - turnsOfRound * perTurn) / worth;
  return { turns, wholeTurns, divisions, error, row: turnsOfRound + 1, reading: (tenths * dial.divisionValue) / 10 };
}

/** Whole rounds and whole steps beyond them that come nearest, a half going up; steps that would fill a round are the next one. */
function nearest(distance: number, round: number, step: number): readonly [rounds: number, steps: number] {
  const rounds = Math.floor(distance / round + hair);
  const steps = Math.round(Math.max(0, distance - rounds * round) / step + hair);
  return steps * step >= round - hair ? [rounds + 1, 0] : [rounds, steps];
}

/** What one printed division truly moves: its own worth on true marks; others share their round of turns out equally. */
export const divisionWorth = (dial: Scale, perTurn: number): number =>
  dial.closure === "true" ? dial.divisionValue : (dial.rows * perTurn) / dial.divisions;

/** What the dial's own numbers go on by in one turn, whatever the slide truly moves meanwhile. */
export const readsPerTurn = (dial: Scale, perTurn: number): number =>
  dial.closure === "true" ? perTurn : (dial.divisions * dial.divisionValue) / dial.rows;
