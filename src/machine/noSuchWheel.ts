import { closest } from "./closest.js";

/** What is said wherever a handwheel is named that the machine has not: in its own file, in a template, on the command line. */
export function noSuchWheel(
  name: string,
  known: readonly string[],
): { readonly what: string; readonly remedy: string } {
  const nearest = closest(name, known);
  const all = known.map((other) => `"${other}"`).join(", ");
  return {
    what: `there is no handwheel "${name}"`,
    remedy: nearest
      ? `did you mean "${nearest}"?`
      : all === ""
        ? "the machine file has none: add it under handwheels:"
        : `there are ${all}`,
  };
}
