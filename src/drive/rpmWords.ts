import { formatFixed } from "../quantity/format.js";
import type { SpeedFinding } from "./finding.js";

type Speed = { readonly rpm: number; readonly slowestRpm: number; readonly from?: SpeedFinding["from"] };

/** "702", or "200–2000" of a variable motor, without the unit; "?" of a speed that is not known. */
export function rpmWords({ rpm, slowestRpm, from }: Speed, to = "–"): string {
  if (from === "unknown") return "?";
  const [slowest, fastest] = [formatFixed(slowestRpm, 0), formatFixed(rpm, 0)];
  return slowest === fastest ? fastest : `${slowest}${to}${fastest}`;
}
