/** Where a word that must break anyhow does so with a hyphen. A rule small enough for every language, and the parts
 *  of the trade's own words: no dictionary, no promise. */

import { tradeParts } from "./tradeParts.js";

const vowel = /[aeiouyäöüáàâéèêíîóôúûåøæœ]/i;
const letter = /\p{L}/u;
/** Letters that are one sound are not parted. */
const onset = /^(sch|ch|ph|th|sh|qu|[^\d])/i;
/** Letters that stay on either side, at least. */
const LEAST = 3;
/** A joint is taken where it fills this part of the line. */
const SHORT_LINE = 0.6;

const isVowel = (one = ""): boolean => vowel.test(one);
const isLetter = (one = ""): boolean => letter.test(one);

/** Whether a syllable begins with that letter: one consonant, or what sounds as one, with a vowel behind it. */
function beginsSyllable(letters: readonly string[], at: number): boolean {
  const [before, first] = [letters[at - 1] ?? "", letters[at] ?? ""];
  if (isVowel(first) || /^(ch|ck|ph|th|sh|qu)$/i.test(before + first)) return false;
  const [sound = first] = onset.exec(letters.slice(at, at + 3).join("")) ?? [];
  if (/^ch/i.test(sound) && /s/i.test(before)) return false;
  return isVowel(letters[at + sound.length]);
}

/** The parts of the trade that a word is made of, those which cover the most of it: where they meet or begin, where their syllables do, and
 *  which letters they leave to the rule. */
type Seams = {
  readonly joints: ReadonlySet<number>;
  readonly syllables: ReadonlySet<number>;
  readonly ruled: readonly boolean[];
};

const known = tradeParts.map((part) => ({
  letters: part.replaceAll("-", ""),
  syllables: [...part.matchAll(/-/g)].map(({ index }, before) => index - before),
}));

function seamsOf(letters: readonly string[]): Seams {
  const word = letters.map((one) => one.toLowerCase()).join("");
  type Way = { readonly covered: number; readonly parts: readonly { at: number; part: (typeof known)[number] }[] };
  const best: Way[] = [{ covered: 0, parts: [] }];
  for (let end = 1; end <= word.length; end++) {
    let way = best[end - 1] as Way;
    for (const part of known) {
      const at = end - part.letters.length;
      const before = best[at];
      if (before === undefined || !word.startsWith(part.letters, at)) continue;
      const covered = before.covered + part.letters.length;
      const parts = [...before.parts, { at, part }];
      if (covered > way.covered || (covered === way.covered && parts.length < way.parts.length))
        way = { covered, parts };
    }
    best.push(way);
  }
  const { parts } = best[word.length] as Way;
  const ruled = letters.map(
    (_, index) => !parts.some(({ at, part }) => index >= at && index < at + part.letters.length),
  );
  // A letter or two that link two parts stay with the first.
  const links = (from: number) => {
    const next = parts.find(({ at }) => at >= from)?.at ?? word.length;
    return next > from && !letters.slice(from, next).some(isVowel);
  };
  const ends = parts.map(({ at, part }) => at + part.letters.length).filter((end) => !links(end));
  const joints = new Set([...parts.map(({ at }) => at), ...ends]);
  return { joints, syllables: new Set(parts.flatMap(({ at, part }) => part.syllables.map((one) => at + one))), ruled };
}

/** How many letters stand before the hyphen, between `from` and `most` of the word: up to the last joint of its parts there, where that
 *  leaves the line not too short, then up to the last syllable, else to the last letter; undefined where it is not letters that meet there. */
export function hyphenAt(letters: readonly string[], from: number, most: number): number | undefined {
  const fits = (at: number, least: number) =>
    at - from >= least && letters.length - at >= LEAST && isLetter(letters[at - 1]) && isLetter(letters[at]);
  const { joints, syllables, ruled } = seamsOf(letters);
  const last = Math.max(-1, ...[...joints].filter((at) => at <= most && fits(at, LEAST)));
  if (last - from >= SHORT_LINE * (most - from)) return last;
  const ends = (at: number) =>
    joints.has(at) || syllables.has(at) || (ruled[at - 1] && ruled[at] && beginsSyllable(letters, at));
  for (const least of [LEAST, LEAST - 1])
    for (let at = most; at - from >= least; at--)
      if (fits(at, least) && letters.slice(from, at).some(isVowel) && ends(at)) return at;
  return fits(most, LEAST - 1) ? most : undefined;
}
