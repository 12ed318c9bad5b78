/** Where a word that must break anyhow does so with a hyphen. A rule small enough for every language: no dictionary, no promise. */

const vowel = /[aeiouyäöüáàâéèêíîóôúûåøæœ]/i;
const letter = /\p{L}/u;
/** Letters that are one sound are not parted. */
const onset = /^(sch|ch|ph|th|sh|qu|[^\d])/i;
/** Letters that stay on either side, at least. */
const LEAST = 3;

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

/** How many letters stand before the hyphen, between `from` and `most` of the word: up to the last syllable there, else to the last
 *  letter; undefined where it is not letters that meet there. */
export function hyphenAt(letters: readonly string[], from: number, most: number): number | undefined {
  const fits = (at: number) =>
    at - from >= LEAST - 1 && letters.length - at >= LEAST - 1 && isLetter(letters[at - 1]) && isLetter(letters[at]);
  for (let at = most; at - from >= LEAST - 1; at--)
    if (fits(at) && letters.slice(from, at).some(isVowel) && beginsSyllable(letters, at)) return at;
  return fits(most) ? most : undefined;
}
