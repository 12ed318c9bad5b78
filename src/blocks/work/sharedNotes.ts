import { burns } from "../../findings/chipFire.js";
import type { Plan } from "../../plan/plan.js";

/** A note that holds for several steps, said once: a letter stands for it at each of them. */
export type SharedNote = { readonly sign: string; readonly words: string; readonly steps: readonly number[] };

/** From so many steps on a note is not read again at each. */
const OFTEN = 3;

/** In the order of their first step. Where fine chips burn everything stands at its step. */
export function sharedNotes({ job, steps }: Plan): SharedNote[] {
  if (burns(job.material)) return [];
  const alike = new Map<string, number[]>();
  for (const { notes, number } of steps)
    for (const words of new Set(notes)) alike.set(words, [...(alike.get(words) ?? []), number]);
  return [...alike]
    .filter(([, numbers]) => numbers.length >= OFTEN)
    .map(([words, numbers], index) => ({ sign: letters(index), words, steps: numbers }));
}

/** a to z, then aa, ab … */
const letters = (index: number): string =>
  (index < 26 ? "" : letters(Math.floor(index / 26) - 1)) + String.fromCharCode(97 + (index % 26));
