import type { Handwheel, Moves } from "../machine/machine.js";
import type { Findings, HandwheelFinding } from "./findings.js";
import { isDrill, type Use } from "./uses.js";
import { movesByName } from "./wheelNames.js";

/** What a handwheel does in a job. `swivelled`: the slide that feeds a taper. */
export type Role = "across" | "along" | "barrel" | "swivelled";

/** What serves for each role. */
export const movesFor: Readonly<Record<Role, readonly Moves[]>> = {
  across: ["across"],
  along: ["along"],
  barrel: ["barrel", "quill"],
  swivelled: ["angled"],
};

type Wheels = readonly HandwheelFinding[];

/** Those with a feed of which the file says so. */
export const saidToMove = (moves: readonly Moves[], handwheels: Wheels): HandwheelFinding[] =>
  handwheels.filter(({ handwheel, feed }) => feed && handwheel.moves && moves.includes(handwheel.moves));

/** Those with a feed that are likely to move so, by name, and by that alone. None where the file says it of any wheel, though
 *  that one had no feed yet: another would pass for it. */
function namedToMove(moves: Moves, handwheels: Wheels): HandwheelFinding[] {
  if (handwheels.some(({ handwheel }) => handwheel.moves === moves)) return [];
  return unsaid(handwheels).filter(({ handwheel }) => movesByName(handwheel.name) === moves);
}

/** Those with a feed of which the file does not say what they move. */
const unsaid = (handwheels: Wheels): HandwheelFinding[] =>
  handwheels.filter(({ handwheel, feed }) => feed && handwheel.moves === undefined);

/** Those that are guessed to move so, the likeliest first. What reads diameter goes across: after those that are named so, and
 *  one that is named for another slide only where nothing else does. */
export function guessedToMove(moves: Moves, handwheels: Wheels): HandwheelFinding[] {
  const named = namedToMove(moves, handwheels);
  if (moves !== "across" || handwheels.some(({ handwheel }) => handwheel.moves === moves)) return named;
  const reading = unsaid(handwheels).filter(({ handwheel }) => handwheel.reads === "diameter");
  const likely = [...named, ...reading.filter(({ handwheel }) => movesByName(handwheel.name) === undefined)];
  return likely.length > 0 ? likely : reading;
}

/** The slide square to the bed, as the file says or by its name alone. */
export const crossSlide = (handwheels: Wheels): HandwheelFinding | undefined =>
  saidToMove(movesFor.across, handwheels)[0] ?? namedToMove("across", handwheels)[0];

/** The handwheel for a role: of which the file says so, else by the usual words in its name; without a carriage the top slide
 *  measures lengths. Undefined where the file has none with a feed. */
export function wheelFor(role: Role, handwheels: Wheels): HandwheelFinding | undefined {
  const guessed = movesFor[role].flatMap((moves) => guessedToMove(moves, handwheels).slice(0, 1));
  return (
    saidToMove(movesFor[role], handwheels)[0] ??
    handwheels.find((wheel) => guessed.includes(wheel)) ??
    (role === "along" ? wheelFor("swivelled", handwheels) : undefined)
  );
}

/** True of a wheel that makes round work thinner: as the file says, else by its name, or because its dial reads diameter. */
export const isAcross = ({
  handwheel: { moves, name, reads },
}: {
  readonly handwheel: Pick<Handwheel, "moves" | "name" | "reads">;
}): boolean => (moves === undefined ? movesByName(name) === "across" || reads === "diameter" : moves === "across");

/** The wheel that one learns to read a dial on: the one across, or that feeds the drill; else the first with a feed. */
export const wheelToLearnOn = (handwheels: Wheels, use: Use): HandwheelFinding | undefined =>
  wheelFor(use === "drilling" ? "barrel" : "across", handwheels) ?? handwheels.find(({ feed }) => feed !== undefined);

/** The wheel that feeds a drill: a barrel or a quill. */
export const drillingWheel = (handwheels: Wheels): HandwheelFinding | undefined => wheelFor("barrel", handwheels);

/** True of a wheel that moves a quill, as the file says or by its name; on a drill the one that feeds it. */
export const movesQuill = (
  finding: Pick<HandwheelFinding, "handwheel">,
  { machine, handwheels }: Pick<Findings, "machine" | "handwheels">,
): boolean => {
  const { moves, name } = finding.handwheel;
  return (moves ?? movesByName(name)) === "quill" || (isDrill(machine) && finding === drillingWheel(handwheels));
};

export const wheelNamed = (name: string | undefined, handwheels: Wheels): HandwheelFinding | undefined =>
  handwheels.find(({ handwheel }) => handwheel.name === name);
