/** What stands on one line: a figure and its unit, a whole number and its fraction, a sign and what it belongs to or stands for, a number and its "no.", the letters and
 *  numerals that name a position of the belts. */

/** Units in every language of the paper; what follows one without a letter ("mm/turn", "mm,") belongs to it. */
const unit = /^\(?(mm|cm|m|µm|in|ft|thou|tpi|DP|rpm|U\/min|div|Skt|s|h|min|Hz|%|°)(?!\p{L})/u;
const figure = /[\d½¼¾]$/;
const fraction = /^\d+\/\d/;
/** Of a figure behind it, and of what stands before it too. */
const before = /^[×±−+:]$/;
const between = /^[×:]$/;

/** "II A", "B 2": alone at a line's end "II" is read as a number or as two strokes. */
const label = /^[(“„]?(?:[IVX]+|[A-Z])$/;
const labelAfter = /^(?:[IVX]+|[A-Z]|\d+)(?![\p{L}\d])/u;

/** "no. 3", "Nr. 41". */
const numbered = /^(no|nr)\.$/i;

/** Whether a line may not end between two words. */
function belong(one: string, next: string): boolean {
  if (between.test(next)) return true;
  // What a sign stands for.
  if (next === "=" || one === "=") return true;
  if (numbered.test(one)) return /^\d/.test(next);
  if (label.test(one) && labelAfter.test(next)) return true;
  if (before.test(one)) return /^[\d(]/.test(next);
  return figure.test(one) && (fraction.test(next) || unit.test(next));
}

/** A text in the pieces between which a line may end: most are one word. */
export function piecesOf(text: string): string[] {
  const pieces: string[] = [];
  let last: string | undefined;
  for (const word of text.split(/\s+/)) {
    if (last !== undefined && belong(last, word)) pieces[pieces.length - 1] += ` ${word}`;
    else pieces.push(word);
    last = word;
  }
  return pieces;
}
