import { parseTurns } from "../quantity/number.js";
import { inLanguage } from "../words/language.js";
import { languages } from "../words/languages.generated.js";
import { say } from "../words/say.js";

/** What turns are counted in, by every name that a language has for it. A bare number is in turns. */
const parts = [
  { key: "student.turns", worth: 1 },
  { key: "student.eighths", worth: 1 / 8 },
] as const;

const named = (): Map<string, number> =>
  new Map(
    languages.flatMap((code) =>
      inLanguage(code, () =>
        parts.flatMap(({ key, worth }) =>
          [1, 2].map((n) => [say(key, { n }).replace(String(n), "").trim().toLowerCase(), worth] as const),
        ),
      ),
    ),
  );

const joints = (): string[] =>
  languages.map((code) => inLanguage(code, () => say("student.turns and eighths", { turns: "", eighths: "" }).trim()));

/** Turns as someone writes them: `2 5/8`, `2,6`, `29 eighths`, `2 turns and 5 eighths`, in whichever language. What stands behind a
 *  colon is beside it. Undefined where some of it cannot be read: half of an answer is another one. */
export function readTurns(words: string): number | undefined {
  const names = named();
  const joint = new RegExp(`\\s+(?:${joints().join("|")})\\s+|(?<=\\p{L})\\s+(?=\\d)`, "u");
  const [said = ""] = words.split(":");
  let turns = 0;
  for (const part of said.trim().split(joint)) {
    const [, figure = "", unit = ""] = /^(.*?)\s*(\p{L}*)$/u.exec(part) ?? [];
    // A comma is always decimal here: 2,625 turns are no thousands.
    const number = parseTurns(figure);
    const worth = unit === "" ? 1 : names.get(unit.toLowerCase());
    if (number === undefined || worth === undefined) return undefined;
    turns += number * worth;
  }
  return turns;
}
