import type { Machine } from "../machine/machine.js";
import { capital } from "../quantity/format.js";
import { say } from "../words/say.js";

type Driven = Pick<Machine, "drive">;

/** What drives the spindle: a motor where nothing else is said. */
export const drivenBy = ({ drive }: Driven): "motor" | "treadle" | "hand" => drive?.motor.by ?? "motor";

/** Why nothing drives the spindle, in the midst of a sentence: its plug is out, or nobody at treadle or crank. */
export const powerOff = (machine: Driven): string => say(`cautions.power off ${drivenBy(machine)}`);

/** The same where a sentence begins. */
export const powerOffFirst = (machine: Driven): string => capital(powerOff(machine));
