import type { HandwheelFinding } from "./findings.js";
import type { Use } from "./uses.js";

/** What a handwheel does in a job. `swivelled`: the slide that feeds a taper. */
export type Role = "across" | "along" | "barrel" | "swivelled";

const names: Readonly<Record<Role, RegExp>> = {
  across: /cross/i,
  along: /carriage|saddle|apron|lead ?screw/i,
  barrel: /tailstock|barrel|quill|down ?feed/i,
  swivelled: /top|compound/i,
};

const byName = (role: Role, handwheels: readonly HandwheelFinding[]): HandwheelFinding | undefined =>
  handwheels.find(({ handwheel, feed }) => feed !== undefined && names[role].test(handwheel.name));

/** The slide square to the bed, by its name alone. */
export const crossSlide = (handwheels: readonly HandwheelFinding[]): HandwheelFinding | undefined =>
  byName("across", handwheels);

/** The handwheel for a role, by the usual words in its name (common practice); without a carriage the top slide measures
 *  lengths. Undefined where the file has none with a feed. */
export function wheelFor(role: Role, handwheels: readonly HandwheelFinding[]): HandwheelFinding | undefined {
  const find = (wanted: Role) => byName(wanted, handwheels);
  if (role === "across")
    return crossSlide(handwheels) ?? handwheels.find(({ handwheel, feed }) => feed && isAcross({ handwheel }));
  return find(role) ?? (role === "along" ? find("swivelled") : undefined);
}

/** True of a wheel that makes round work thinner: by its name, or because its dial reads diameter. */
export const isAcross = ({ handwheel }: Pick<HandwheelFinding, "handwheel">): boolean =>
  names.across.test(handwheel.name) || handwheel.reads === "diameter";

/** The wheel that one learns to read a dial on: the one across, or that feeds the drill; else the first with a feed. */
export const wheelToLearnOn = (handwheels: readonly HandwheelFinding[], use: Use): HandwheelFinding | undefined =>
  wheelFor(use === "drilling" ? "barrel" : "across", handwheels) ?? handwheels.find(({ feed }) => feed !== undefined);

/** The wheel that feeds a drill: a barrel or a quill. */
export const drillingWheel = (handwheels: readonly HandwheelFinding[]): HandwheelFinding | undefined =>
  wheelFor("barrel", handwheels);

export const wheelNamed = (
  name: string | undefined,
  handwheels: readonly HandwheelFinding[],
): HandwheelFinding | undefined => handwheels.find(({ handwheel }) => handwheel.name === name);
