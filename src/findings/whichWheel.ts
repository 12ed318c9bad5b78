import { movedWords } from "../machine/judgeMoves.js";
import type { Moves } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import type { Findings, HandwheelFinding } from "./findings.js";
import { guessedToMove, movesFor, type Role, saidToMove, wheelFor } from "./roles.js";
import { type Use, usesOf } from "./uses.js";

/** On a drill no sheet asks what goes across or along. */
const rolesIn: Readonly<Record<Use, readonly Role[]>> = {
  turning: ["across", "along", "swivelled", "barrel"],
  drilling: ["barrel"],
};

/** Wheels between which only a guess chose: the sheets go by one of them, and nobody said that it is the right one. */
export const whichWheel = ({ machine, handwheels }: Findings): Remark[] =>
  [...new Set(usesOf(machine).flatMap((use) => rolesIn[use]))].flatMap((role) =>
    saidToMove(movesFor[role], handwheels).length > 0
      ? []
      : movesFor[role].flatMap((moves) => inDoubt(moves, role, handwheels)),
  );

function inDoubt(moves: Moves, role: Role, handwheels: readonly HandwheelFinding[]): Remark[] {
  const [taken, ...others] = guessedToMove(moves, handwheels);
  // Where a barrel feeds the drill it is all one which of two is the quill.
  if (taken === undefined || taken !== wheelFor(role, handwheels)) return [];
  return others.map((other) => ({
    severity: "warning",
    code: "which-wheel",
    path: ["handwheels", handwheels.indexOf(other), "name"],
    what: `both "${taken.handwheel.name}" and "${other.handwheel.name}" may be ${movedWords[moves]}, and the sheets take "${taken.handwheel.name}"`,
    remedy: `add moves: ${moves} to one of them`,
  }));
}
