import { missingGlyphs } from "../drawing/text.js";
import type { Machine, Readings } from "../machine/machine.js";
import type { Path, Remark } from "../machine/problem.js";

/** Words of the file with letters that the font of the sheets lacks: an empty box would stand in their place. */
export const missingLetters = (machine: Machine): Remark[] => inValue(machine, []);

function inValue(value: unknown, path: Path): Remark[] {
  if (typeof value === "string") return inWords(value, path);
  if (typeof value !== "object" || value === null) return [];
  if (path.at(-1) === "feed") {
    // Perhaps a million readings, and words at one place alone.
    const { zeroAt } = value as Partial<Readings>;
    return zeroAt === undefined ? [] : inWords(zeroAt, [...path, "readings", "zeroAt"]);
  }
  return Object.entries(value).flatMap(([key, inner]) =>
    inValue(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

function inWords(words: string, path: Path): Remark[] {
  const missing = [...new Set(missingGlyphs(words, "regular"))];
  if (missing.length === 0) return [];
  return [
    {
      severity: "warning",
      code: "missing-letter",
      path,
      what: `the font of the sheets has no ${missing.map((letter) => JSON.stringify(letter)).join(", ")}, and an empty box would be printed instead`,
      remedy: "write it in Latin letters",
    },
  ];
}
