import { otherMains, plate } from "../drive/motor.js";
import type { Drive } from "../machine/machine.js";
import type { Path, Remark } from "../machine/problem.js";
import { trimmed } from "../quantity/format.js";
import { say } from "../words/say.js";

/** Plate speeds, rpm, between which motors of small machines lie, and those of a treadle or a hand wheel. Common practice. */
const usual = { motor: [200, 10_000], treadle: [20, 300], hand: [10, 300] } as const;

/** A motor that none is, or not on those mains. */
export function motorRemarks({ motor, stages }: Drive): Remark[] {
  const path: Path = ["drive", "motor"];
  const remark = (code: string, what: string, remedy: string): Remark => ({
    severity: "warning",
    code,
    path,
    what,
    remedy,
  });
  const { slowestRpm, fastestRpm, hertz, by = "motor" } = motor;
  const [least, most] = usual[by];
  if (fastestRpm < least || fastestRpm > most)
    return [
      remark(
        "unlikely-motor",
        say(`remarks.unusual ${by}`, { rpm: trimmed(fastestRpm, 3), least, most }),
        fastestRpm < 10
          ? "a point parts decimals, never thousands: write 1425, not 1.425"
          : "count its figures, and mind the decimal point",
      ),
    ];
  // A motor of variable speed is not bound to its mains.
  if (hertz === undefined || slowestRpm !== fastestRpm) return [];
  const speeds = [
    fastestRpm,
    ...stages.flatMap(({ steps }) =>
      steps.flatMap((step) => (step.kind === "motor" ? [step.factor * fastestRpm] : [])),
    ),
  ];
  const strange = speeds.find((rpm) => plate(rpm, hertz) === undefined);
  if (strange === undefined) return [];
  const other = otherMains(hertz);
  return [
    remark(
      "not-these-mains",
      say("remarks.not on these mains", { rpm: trimmed(strange, 0), hertz }),
      plate(strange, other)
        ? `its plate is for ${other} Hz: write mains: ${other} Hz, and see with --suppose "${hertz} Hz" what it does here`
        : "read its plate again; a motor with brushes or its own drive has no mains here",
    ),
  ];
}
