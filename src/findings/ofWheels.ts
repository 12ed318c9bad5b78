import type { AngleScale, LinearScale } from "../machine/machine.js";
import type { Findings } from "./findings.js";

type Asked = Pick<Findings, "machine" | "handwheels" | "onlyWheels">;

/** The straight scales that belong to what was asked for: to certain handwheels those of their turns, else all. */
export const scalesOf = ({ machine, handwheels, onlyWheels }: Asked): readonly LinearScale[] =>
  (machine.scales ?? []).filter(
    ({ turnsOf }) => !onlyWheels || handwheels.some(({ handwheel }) => handwheel.name === turnsOf),
  );

/** The scales of degrees; none belongs to a handwheel. */
export const angleScalesOf = ({ machine, onlyWheels }: Asked): readonly AngleScale[] =>
  onlyWheels ? [] : (machine.angleScales ?? []);
