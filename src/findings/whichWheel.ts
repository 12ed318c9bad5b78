import { movedWords } from "../machine/judgeMoves.js";
import type { Moves } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import type { Findings, HandwheelFinding } from "./findings.js";
import { guessedToMove, movesFor, type Role, saidToMove, wheelFor } from "./roles.js";
import { type Use, usesOf } from "./uses.js";
import { movesByName } from "./wheelNames.js";

/** On a drill no sheet asks what goes across or along. */
const rolesIn: Readonly<Record<Use, readonly Role[]>> = {
  turning: ["across", "along", "swivelled", "barrel"],
  drilling: ["barrel"],
};

/** Wheels between which only a guess chose: the sheets go by one of them, and nobody said that it is the right one. */
export const whichWheel = ({ machine, handwheels }: Findings): Remark[] =>
  [...new Set(usesOf(machine).flatMap((use) => rolesIn[use]))].flatMap((role) =>
    saidToMove(movesFor[role], handwheels).length > 0
      ? movesFor[role].flatMap((moves) => saidAgainstNames(moves, handwheels))
      : [...movesFor[role].flatMap((moves) => inDoubt(moves, role, handwheels)), ...readsAgainstName(role, handwheels)],
  );

/** A slide that the file says to move so, though its name tells another, beside one that is named for it: one of the two words is
 *  a slip, and diameters would be set by it. */
function saidAgainstNames(moves: Moves, handwheels: readonly HandwheelFinding[]): Remark[] {
  const [said] = saidToMove([moves], handwheels);
  if (said === undefined || [undefined, moves].includes(movesByName(said.handwheel.name))) return [];
  return handwheels
    .filter(({ handwheel }) => handwheel.moves === undefined && movesByName(handwheel.name) === moves)
    .map(({ handwheel: { name } }) => ({
      severity: "warning",
      code: "which-wheel",
      path: ["handwheels", handwheels.indexOf(said), "moves"],
      what: `"${said.handwheel.name}" says moves: ${moves}, and by its name "${name}" is ${movedWords[moves]}; the sheets take "${said.handwheel.name}"`,
      remedy: `say moves: ${moves} at the one that does`,
    }));
}

/** No slide is said or named to go across, and one is taken since its dial reads diameter, though its name tells another. */
function readsAgainstName(role: Role, handwheels: readonly HandwheelFinding[]): Remark[] {
  const taken = role === "across" ? wheelFor(role, handwheels) : undefined;
  const other = taken && movesByName(taken.handwheel.name);
  if (taken === undefined || other === undefined || other === "across") return [];
  return [
    {
      severity: "warning",
      code: "which-wheel",
      path: ["handwheels", handwheels.indexOf(taken), "reads"],
      what: `"${taken.handwheel.name}" is by its name ${movedWords[other]}, and the sheets take it for ${movedWords.across}, since its dial reads diameter`,
      remedy: "say moves: across where it does, or take reads: diameter out",
    },
  ];
}

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
