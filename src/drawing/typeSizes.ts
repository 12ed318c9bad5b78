const POINT = 25.4 / 72;

/** Four type sizes (em, mm), one job each: what the hand needs; card text and headings; tables and text; where a number comes
 *  from. 20, 13, 9 and 7 pt. Nothing is smaller, save inside a stuck-on piece, which is read from close by. */
export const size = { hand: 20 * POINT, card: 13 * POINT, text: 9 * POINT, source: 7 * POINT } as const;

/** The least em inside a stuck-on piece less than 8 mm wide. */
export const leastOnPiece = 5 * POINT;

/** Digits stand this part of the em size above the baseline. */
export const digitHeight = 0.76;
