import { useComputed } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { ExerciseSeen, Given } from "../../work/protocol.js";
import type { Desk } from "../desk.js";
import { newest, useStopped } from "../worker.js";
import { type InHand, stand, type Try } from "./inHand.js";

/** The exercises, the one in hand and what came of it, and what may be done with it. */
export type Practising = {
  readonly all: readonly ExerciseSeen[];
  readonly at: number;
  readonly exercise: ExerciseSeen | undefined;
  readonly now: Try;
  readonly tryOf: (exercise: ExerciseSeen) => Try;
  readonly go: (to: number) => void;
  /** Puts the wheel of the exercise to where it stands to begin with. */
  readonly begin: () => void;
  readonly write: (words: string) => void;
  readonly mark: () => Promise<void>;
  /** Forgets all that was answered. */
  readonly anew: () => void;
  readonly solve: () => Promise<void>;
};

const untried: Try = { words: "" };

export function usePractising(desk: Desk, hand: InHand): Practising {
  const asking = useMemo(
    () => ({ exercises: newest(desk.asker, "exercises", () => ({ files: desk.files.value, asked: {} })) }),
    [desk],
  );
  useStopped(asking);
  const all = useComputed(() => asking.exercises.answer.value ?? []).value;
  const at = Math.min(hand.exercise.value, Math.max(0, all.length - 1));
  const exercise = all[at];
  const tries = hand.tries.value;
  const tryOf = ({ question }: ExerciseSeen): Try => tries.get(question) ?? untried;
  const set = (change: Partial<Try>): void => {
    if (exercise === undefined) return;
    const { question } = exercise;
    const last = hand.tries.peek().get(question) ?? untried;
    hand.tries.value = new Map(hand.tries.peek()).set(question, { ...last, ...change });
  };
  const begin = (one: ExerciseSeen | undefined): void => {
    if (one?.wheel !== undefined) stand(hand, one.from ?? 0, one.wheel);
  };
  const now = exercise ? tryOf(exercise) : untried;
  return {
    ...{ all, at, exercise, now, tryOf },
    go(to) {
      hand.exercise.value = to;
      begin(all[to]);
    },
    begin: () => begin(exercise),
    write: (words) => set({ words }),
    async mark() {
      const given: Given = exercise?.by === "turning" ? { turned: hand.turned.peek() } : { words: now.words };
      const marked = await desk.asker.ask("mark", desk.files.peek(), { at, given });
      set({
        marked,
        // What could not be read takes nothing back of what was tried before.
        ...(marked.right !== undefined && { tried: true }),
        ...(marked.right && now.answer === undefined && { counts: true }),
      });
    },
    anew() {
      hand.tries.value = new Map();
      hand.exercise.value = 0;
      begin(all[0]);
    },
    async solve() {
      set({ answer: await desk.asker.ask("solve", desk.files.peek(), { at }) });
    },
  };
}
