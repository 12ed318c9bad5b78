import type { Work } from "../machine/machine.js";
import { say } from "../words/say.js";

/** Which part of the published cutting speeds was chosen from, a sentence each. */
export const aimWords = ({ firmness = "light", derating = 1 }: Work): string[] => [
  say(`remarks.aim ${firmness}`),
  ...(derating === 1 ? [] : [say("remarks.derated", { factor: derating })]),
];
