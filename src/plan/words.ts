/** A size in the plan's words, mm. */
export const shown = (mm: number): string => `${Number(mm.toFixed(3))} mm`;
