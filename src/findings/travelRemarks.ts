import type { Path, Remark } from "../machine/problem.js";
import { formatLength } from "../quantity/format.js";
import type { Findings } from "./findings.js";
import { wheelNamed } from "./roles.js";

/** Readings may run somewhat past the travel that one works over. */
const PAST_WORKING = 1.1;

/** Stops, distances and readings that lie beyond the travel of their slide. */
export function travelRemarks({ machine, handwheels }: Findings): Remark[] {
  const { units } = machine;
  const warn = (path: Path, what: string, remedy: string): Remark => ({
    severity: "warning",
    code: "beyond-travel",
    path,
    what,
    remedy,
  });
  const stops = (machine.stops ?? []).flatMap(({ name, handwheel, length }, index) => {
    const over = wheelNamed(handwheel, handwheels)?.reading?.overTravel;
    return over === undefined || length <= over * (1 + 1e-9)
      ? []
      : [
          warn(
            ["stops", index, "length"],
            `the stop "${name}" lies ${formatLength(length, units)} from zero, and the dial of "${handwheel}" goes only ${formatLength(over, units)}`,
            "check the length and its unit, the handwheel, and travel, which is how far the slide goes",
          ),
        ];
  });
  const wheels = handwheels.flatMap(({ handwheel, reading, feed }, index): Remark[] => {
    const path: Path = ["handwheels", index];
    const { travel, name, distances = [] } = handwheel;
    const over = reading?.overTravel;
    if (travel === undefined || over === undefined || feed === undefined) return [];
    const turns = handwheel.feed?.from === "readings" ? handwheel.feed.turns : [];
    const measured =
      turns.length === 0
        ? 0
        : (turns.reduce((a, b) => Math.max(a, b)) - turns.reduce((a, b) => Math.min(a, b))) * feed.perTurn;
    return [
      ...(measured > PAST_WORKING * travel
        ? [
            warn(
              [...path, "travel"],
              `"${name}" was measured over ${formatLength(measured, units)}, and its travel is only ${formatLength(travel, units)}`,
              "travel is how far the slide goes, not what the dial reads; check it, its unit and the count of turns",
            ),
          ]
        : []),
      ...distances.flatMap((distance, at) =>
        distance <= over * (1 + 1e-9)
          ? []
          : [
              warn(
                [...path, "distances", at],
                `${formatLength(distance, units)} is further than "${name}" goes, ${formatLength(over, units)} as its dial reads`,
                "check the distance and its unit, and travel, which is how far the slide goes",
              ),
            ],
      ),
    ];
  });
  return [...stops, ...wheels];
}
