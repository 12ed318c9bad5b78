import { noSuchWheel } from "../machine/noSuchWheel.js";
import { Unanswered } from "./unanswered.js";

/** The handwheel that is meant, as the file spells it: by its name, or by a part of it that is in no other's. @throws Unanswered */
export function wheelNamed(name: string, known: readonly string[]): string {
  const typed = name.trim().toLowerCase();
  const same = known.find((other) => other.toLowerCase() === typed);
  if (same !== undefined) return same;
  const fitting = typed === "" ? [] : known.filter((other) => other.toLowerCase().includes(typed));
  const [only] = fitting;
  if (only !== undefined && fitting.length === 1) return only;
  const quoted = fitting.map((other) => `"${other}"`).join(", ");
  if (fitting.length > 1) throw new Unanswered(`"${name}" is a part of several names: ${quoted}`);
  const { what, remedy } = noSuchWheel(name, known);
  throw new Unanswered(`${what}; ${remedy}`);
}
