/** Where each whole turn of a dial that begins again at zero stands: add it to what the dial shows. `turn`: what the dial
 *  reads in one turn; up to `travel` (as the dial reads it), at most `most` turns. mm. */
export function startReadings(turn: number, travel: number, most = 40): number[] {
  const turns = Math.min(most, Math.floor(travel / turn + 1e-9));
  return Array.from({ length: turns + 1 }, (_, index) => index * turn);
}
