/** What a thread needs beside its full length, as DIN 76-1 gives it (memory): for a thread cut by a die the run-out towards a
 *  shoulder, or an undercut instead; for a tapped hole the depth that the tap's lead leaves unfinished below it. mm. */

type Row = {
  readonly pitch: number;
  /** Longest run-out of an outside thread. */
  readonly runOut: number;
  /** Undercut: its least width, and how far its floor lies below the major diameter. */
  readonly undercut: number;
  readonly floor: number;
  /** A blind hole is this much deeper than its full thread. */
  readonly blind: number;
};

const rows: readonly Row[] = [
  { pitch: 0.5, runOut: 1.25, undercut: 1.1, floor: 0.8, blind: 2.8 },
  { pitch: 0.7, runOut: 1.75, undercut: 1.5, floor: 1.1, blind: 3.8 },
  { pitch: 0.8, runOut: 2, undercut: 1.7, floor: 1.3, blind: 4.2 },
  { pitch: 1, runOut: 2.5, undercut: 2.1, floor: 1.6, blind: 5.1 },
  { pitch: 1.25, runOut: 3.2, undercut: 2.7, floor: 2, blind: 6.2 },
  { pitch: 1.5, runOut: 3.8, undercut: 3.2, floor: 2.3, blind: 7.3 },
  { pitch: 1.75, runOut: 4.3, undercut: 3.9, floor: 2.6, blind: 8.3 },
  { pitch: 2, runOut: 5, undercut: 4.5, floor: 3, blind: 9.3 },
  { pitch: 2.5, runOut: 6.3, undercut: 5.6, floor: 3.6, blind: 11.2 },
];

export const THREAD_ENDS_SOURCE = "DIN 76-1 (from memory)";

/** The table's row of a pitch; between two rows, and beyond them, in proportion. Threads of other systems go by their pitch. */
export function threadEnds(pitch: number): Row {
  const exact = rows.find((row) => Math.abs(row.pitch - pitch) < 0.005);
  if (exact !== undefined) return { ...exact, pitch };
  const above = rows.findIndex((row) => row.pitch > pitch);
  const upper = above < 0 ? rows.length - 1 : Math.max(1, above);
  const [low, high] = rows.slice(upper - 1, upper + 1) as [Row, Row];
  const share = (pitch - low.pitch) / (high.pitch - low.pitch);
  const mix = (key: Exclude<keyof Row, "pitch">): number => Math.max(0, low[key] + share * (high[key] - low[key]));
  return { pitch, runOut: mix("runOut"), undercut: mix("undercut"), floor: mix("floor"), blind: mix("blind") };
}

/** Threads that the lead of a bottoming tap leaves unfinished, in pitches: 2 to 3, DIN 2197 form C (memory). A hole with less room
 *  than this below its thread breaks the tap on its floor. */
export const BOTTOMING_LEAD = 2;

/** Threads that a die's lead leaves unfinished before a shoulder, in pitches. Common practice: about two, and one with the die
 *  turned over. */
export const DIE_LEAD = 2;
