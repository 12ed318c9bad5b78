import { roundedUp, rowsTooLow } from "../dial/bandRoom.js";
import { bandOf } from "../dial/development.js";
import type { DialFinding } from "../dial/finding.js";
import type { Handwheel, Units } from "../machine/machine.js";
import type { Remark } from "../machine/problem.js";
import { formatSize } from "../quantity/format.js";

/** Rows that nobody could tell apart, and rows that were asked for where one is as good. */
export function rowsRemarks(
  { name, dial: wish }: Handwheel,
  dial: DialFinding,
  units: Units,
  path: Remark["path"],
): Remark[] {
  return [...tooLow(name, wish, dial, units, path), ...oneRow(name, wish, dial, path)];
}

function tooLow(
  name: string,
  wish: Handwheel["dial"],
  dial: DialFinding,
  units: Units,
  path: Remark["path"],
): Remark[] {
  const low = rowsTooLow(dial);
  if (low === undefined || dial.flat === undefined) return [];
  const { rows, least, fit } = low;
  const each = formatSize(bandOf(dial.flat) / rows, units);
  const width = formatSize(roundedUp(least, units), units);
  const [bands, tell] = dial.second
    ? [`the ${rows} bands of two scales`, "what is read"]
    : [`${rows} rows`, "which turn it is for"];
  const fewer = dial.second
    ? ", or one scale alone"
    : fit < 1
      ? ""
      : fit === 1
        ? ", or one row: closure: even or true"
        : `, or ${fit} rows at most: another division, or closure: even or true`;
  return [
    {
      severity: "error",
      code: "rows-too-low",
      path: [...path, wish?.shape === "face" ? "inside" : "width"],
      what: `on "${name}" each of ${bands} would be ${each} high, too low for the numbers that tell ${tell}`,
      remedy: `make it at least ${width} from edge to edge${fewer}`,
    },
  ];
}

function oneRow(name: string, wish: Handwheel["dial"], { chosen }: DialFinding, path: Remark["path"]): Remark[] {
  if (wish?.closure !== "rows" || chosen.closure === "rows") return [];
  const exact = chosen.errorPerTurn === 0;
  return [
    {
      severity: "warning",
      code: "one-row",
      path: [...path, "closure"],
      what: `divisions of ${chosen.divisionLabel} ${exact ? "close" : "come as near to closing"} on "${name}" in one row${exact ? "" : " as in several"}, so that it gets one`,
      remedy: "say closure: even, or give divisions: that close in several rows",
    },
  ];
}
