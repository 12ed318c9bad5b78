/** What `check --json` tells of a machine of which nothing is known. */
export const nothingKnown = { name: null, handwheels: [], speeds: [], slip: null };

/** The whole object where the file could not even be read, or the command was wrongly used: a program that asked for JSON gets JSON. */
export const unreadJson = (code: "refused" | "usage", told: readonly string[]): string =>
  JSON.stringify(
    { ...nothingKnown, problems: [{ severity: "error", line: null, column: null, code, message: told.join("\n") }] },
    null,
    2,
  );

/** Whether a command line asks for it, right or wrong as the rest may be. */
export const asksForJson = (words: readonly string[]): boolean => {
  const own = words.slice(0, words.includes("--") ? words.indexOf("--") : undefined);
  return own.find((word) => !word.startsWith("-")) === "check" && own.some((word) => /^--json(=true)?$/.test(word));
};
