import type { FeedStudy } from "../feed/study.js";
import type { Units } from "../machine/machine.js";
import type { Path, Remark } from "../machine/problem.js";
import { formatFixed, formatSize, plural } from "../quantity/format.js";

/** What the readings on the way back show to be wrong. `path`: of the readings. */
export function returnRemarks(name: string, { back }: FeedStudy, path: Path, units: Units): Remark[] {
  if (back === undefined) return [];
  const warn = (code: string, at: Path, what: string, remedy: string): Remark => ({
    severity: "warning",
    code,
    path: [...path, "return", ...at],
    what,
    remedy,
  });
  const { wild, miscounted, contradiction } = back;
  return [
    ...(miscounted
      ? [
          warn(
            "miscounted",
            [miscounted.index],
            `on the way back ${plural(Math.abs(miscounted.turns), "turn")} too ${miscounted.turns > 0 ? "many" : "few"} ${Math.abs(miscounted.turns) === 1 ? "seems" : "seem"} to have been made between this reading and the one before (${name})`,
            "take the return readings again; until then no lost motion is told",
          ),
        ]
      : []),
    ...wild.map(({ index, off, like }) =>
      warn(
        "wild-reading",
        [index],
        `this return reading lies ${formatSize(Math.abs(off), units, 3)} ${off > 0 ? "above" : "below"} the line of the others${like ? ` (${like})` : ""}`,
        "take it again; until then no lost motion is told",
      ),
    ),
    ...(contradiction
      ? [
          contradiction.why === "negative"
            ? warn(
                "negative-lost-motion",
                [],
                `the return readings of "${name}" lie ${formatSize(-contradiction.travel, units, 3)} short of the way out, which no lost motion can do: a slide lags on the way back`,
                "see whether travel and return are changed about, or the gauge was moved between them; until then no lost motion is told",
              )
            : contradiction.why === "scattered"
              ? warn(
                  "uneven-lost-motion",
                  [],
                  `the return readings of "${name}" lag by ${formatSize(contradiction.travel, units, 3)} in the mean, but from place to place by more than that more or less`,
                  "see whether some were written down wrongly, or the way back has another slope; until then no lost motion is told",
                )
              : warn(
                  "much-lost-motion",
                  [],
                  `lost motion of "${name}" would be ${formatSize(contradiction.travel, units, 3)}, ${formatFixed(contradiction.turn, 2)} of a turn`,
                  "see whether both ways were counted from the same turn and read from the same zero; until then no lost motion is told",
                ),
        ]
      : []),
  ];
}
