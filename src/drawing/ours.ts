/** Stands in every file that witnessmark writes, so that it may replace its own work and nothing else. */
export const mark = "made-by-witnessmark";

/** True for bytes that an earlier run wrote. */
export function isOurOutput(bytes: Uint8Array): boolean {
  return new TextDecoder("latin1").decode(bytes).includes(mark);
}
