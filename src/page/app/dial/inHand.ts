import { type Signal, signal } from "@preact/signals";
import { type Turned, turnedBy } from "../../../student/marking.js";
import type { DialSeen, Marked } from "../../work/protocol.js";
import type { Desk } from "../desk.js";

/** A wheel that one has in hand, and how far one is with the exercises: it stays while one looks at another place of the page. */
export type InHand = {
  /** A handwheel's name; undefined while none was chosen. */
  readonly wheel: Signal<string | undefined>;
  readonly turned: Signal<Turned>;
  /** Whether the exercises are worked on it: then what the dial means is not told beside it. */
  readonly practising: Signal<boolean>;
  readonly exercise: Signal<number>;
  /** What came of each exercise, by its question: so that a file that is changed brings no other one's mark. */
  readonly tries: Signal<ReadonlyMap<string, Try>>;
};

export type Try = {
  readonly words: string;
  readonly marked?: Marked;
  /** Whether it was ever marked right or wrong. */
  readonly tried?: boolean;
  /** The answer, once it was looked at: what is right after that counts no more. */
  readonly answer?: string;
  readonly counts?: boolean;
};

const ofDesk = new WeakMap<Desk, InHand>();

export function inHandOf(desk: Desk): InHand {
  const known = ofDesk.get(desk);
  if (known) return known;
  const made: InHand = {
    wheel: signal(undefined),
    turned: signal({ turns: 0, slack: 0 }),
    practising: signal(false),
    exercise: signal(0),
    tries: signal(new Map()),
  };
  ofDesk.set(desk, made);
  return made;
}

/** Puts a wheel where it stands after it was come on to from one side. */
export function stand({ wheel, turned }: InHand, turns: number, name?: string): void {
  if (name !== undefined) wheel.value = name;
  turned.value = { turns, slack: 0 };
}

export function turn({ turned }: InHand, more: number, { lost }: DialSeen): void {
  turned.value = turnedBy(turned.peek(), more, lost.turns);
}

/** Of a line: what a drag leaves beside one is told from that. */
const HAIR = 1e-3;

/** By how many turns the next line lies further on (`way` 1) or back (−1). Lines are counted from where the marks begin again: the last
 *  division there may be a short one. */
export function toNextLine(
  turns: number,
  { division, round }: Pick<DialSeen, "division" | "round">,
  way: 1 | -1,
): number {
  let begins = Math.floor(turns / round + HAIR * division) * round;
  let lines = (turns - begins) / division;
  if (way < 0 && lines < HAIR) {
    begins -= round;
    lines = Math.ceil(round / division - HAIR);
  } else lines = way > 0 ? Math.floor(lines + HAIR) : Math.ceil(lines - HAIR);
  return begins + Math.min(round, (lines + way) * division) - turns;
}
