import { formatFixed } from "../quantity/format.js";

/** "702", or "200–2000" of a variable motor, without the unit. */
export function rpmWords({ rpm, slowestRpm }: { readonly rpm: number; readonly slowestRpm: number }, to = "–"): string {
  const [slowest, fastest] = [formatFixed(slowestRpm, 0), formatFixed(rpm, 0)];
  return slowest === fastest ? fastest : `${slowest}${to}${fastest}`;
}
