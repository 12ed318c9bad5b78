/** Degrees, minutes and seconds of an angle ≥ 0, the seconds to `places` decimals, carried over so that none reaches 60.
 *  @example degreesMinutesSeconds(2 * Math.PI / 127)   // 2° 50′ 04.7″ */
export function degreesMinutesSeconds(
  radians: number,
  places = 1,
): { degrees: number; minutes: number; seconds: number } {
  const parts = 10 ** places;
  const total = Math.round((radians / (2 * Math.PI)) * 360 * 3600 * parts);
  const degrees = Math.floor(total / (3600 * parts));
  const minutes = Math.floor((total - degrees * 3600 * parts) / (60 * parts));
  return { degrees, minutes, seconds: (total - (degrees * 60 + minutes) * 60 * parts) / parts };
}

/** "2° 50′ 04.7″", every part with its leading zero, so that columns line up. */
export function writeDegrees(radians: number, places = 1): string {
  const { degrees, minutes, seconds } = degreesMinutesSeconds(radians, places);
  const two = (value: number, decimals = 0) => value.toFixed(decimals).padStart(decimals > 0 ? 3 + decimals : 2, "0");
  return `${degrees}° ${two(minutes)}′ ${two(seconds, places)}″`;
}
