import { effect } from "@preact/signals";
import type { Desk } from "../desk.js";
import { inHandOf, type Try } from "./inHand.js";

/** Keeps in this browser how far one is with the exercises, as what is typed is kept: who reloads the page goes on where he was. */
export function keepTries(desk: Desk, key: string): void {
  const { tries, exercise } = inHandOf(desk);
  const own = `${key} exercises`;
  const { at, of } = kept(own);
  tries.value = new Map(of);
  exercise.value = at;
  effect(() => {
    const now = JSON.stringify({ at: exercise.value, of: [...tries.value] });
    try {
      if (tries.value.size === 0 && exercise.value === 0) localStorage.removeItem(own);
      else localStorage.setItem(own, now);
    } catch {
      // Whoever cannot keep the files is told so; that tries are lost then goes without saying.
    }
  });
}

function kept(key: string): { readonly at: number; readonly of: readonly (readonly [string, Try])[] } {
  try {
    const { at, of } = JSON.parse(localStorage.getItem(key) ?? "");
    if (Number.isInteger(at) && at >= 0 && Array.isArray(of) && of.every(isTry)) return { at, of };
  } catch {
    // Nothing was kept, or nothing that can be read.
  }
  return { at: 0, of: [] };
}

/** No more than what is shown of it. */
function isTry(one: unknown): one is readonly [string, Try] {
  if (!Array.isArray(one) || typeof one[0] !== "string") return false;
  const { words, marked, answer } = (one[1] ?? {}) as Partial<Try>;
  return (
    typeof words === "string" &&
    (marked === undefined || typeof marked?.said === "string") &&
    (answer === undefined || typeof answer === "string")
  );
}
