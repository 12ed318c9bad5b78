import type { Context, Raw } from "./context.js";
import type { Moves } from "./machine.js";

export const movedWords: Readonly<Record<Moves, string>> = {
  across: "the slide across the work",
  along: "the slide along the bed",
  angled: "the slide that swivels",
  barrel: "the tailstock's barrel",
  quill: "the drill's quill",
};

/** A machine has one of each, or the sheets would not know which to go by; and only what goes across changes a diameter. */
export function judgeMoves(wheels: Raw<"handwheels">, { error, warn }: Context): void {
  const first = new Map<Moves, string>();
  for (const [index, { name, moves, reads }] of wheels.entries()) {
    if (moves === undefined) continue;
    const other = first.get(moves);
    if (other === undefined) first.set(moves, name);
    else
      error(
        ["handwheels", index, "moves"],
        "same-moves",
        `"${other}" and "${name}" both say moves: ${moves}`,
        "leave it at the one that the sheets are to go by, and take it out at the other",
      );
    if (reads === "diameter" && moves !== "across")
      warn(
        ["handwheels", index, "reads"],
        "reads-diameter",
        `"${name}" moves ${movedWords[moves]}, and no diameter changes by twice that`,
        "take reads: diameter out, or say moves: across",
      );
  }
}
