import { closest } from "../machine/closest.js";
import { Unanswered } from "./unanswered.js";

/** The handwheel that is meant, as the file spells it: by its name, or by a part of it that is in no other's. @throws Unanswered */
export function wheelNamed(name: string, known: readonly string[]): string {
  const typed = name.trim().toLowerCase();
  const same = known.find((other) => other.toLowerCase() === typed);
  if (same !== undefined) return same;
  const fitting = typed === "" ? [] : known.filter((other) => other.toLowerCase().includes(typed));
  const [only] = fitting;
  if (only !== undefined && fitting.length === 1) return only;
  const quoted = (names: readonly string[]) => names.map((other) => `"${other}"`).join(", ");
  if (fitting.length > 1) throw new Unanswered(`"${name}" is a part of several names: ${quoted(fitting)}`);
  const nearest = closest(name, known);
  throw new Unanswered(
    `there is no handwheel "${name}"; ${nearest ? `did you mean "${nearest}"?` : `there are ${quoted(known) || "none in this file"}`}`,
  );
}
