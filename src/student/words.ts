import { drivenBy } from "../findings/powerOff.js";
import type { Use } from "../findings/uses.js";
import type { Machine } from "../machine/machine.js";
import { say } from "../words/say.js";

/** The student's sheet in plain words, one idea a line. Common practice of training workshops. */
const neverAtAll = (machine: Machine): string[] => [
  say("student.never key in chuck"),
  say("student.never gloves"),
  say("student.never long hair"),
  say("student.never without eye cover"),
  say("student.never touch chips"),
  say("student.never measure turning"),
  say(`student.never move belt ${drivenBy(machine)}`),
  say("student.never too fast"),
  say("student.never breathe iron"),
];

/** What one never does. */
export const never = (use: Use, machine: Machine): string[] =>
  use === "turning"
    ? [...neverAtAll(machine), say("student.never long bar")]
    : [say("student.never hold work"), ...neverAtAll(machine)];

export const beltSteps = (machine: Machine): string[] => [
  ...(drivenBy(machine) === "motor" ? [say("student.belt switch off")] : []),
  say(`student.belt off ${drivenBy(machine)}`),
  say("student.belt open cover"),
  say("student.belt put"),
  say("student.belt turn by hand"),
  say(`student.belt close ${drivenBy(machine)}`),
];

/** `use`: in whose words the wheel is told of. */
export const lostMotionLines = (use: Use, hasDial: boolean, back: "half" | "little"): string[] => [
  say(`student.lost loose ${use}`),
  say(`student.lost waits ${use}`),
  say("student.lost is"),
  say(hasDial ? "student.lost one side" : "student.lost one side, no dial"),
  say(`student.lost too far ${back}`),
];

export const askLines = (): string[] => [say("student.ask before"), say("student.ask teacher")];
