import type { Work } from "../machine/machine.js";

const aim = {
  light: "Light machine: no more than the middle of the published range.",
  firm: "Firm machine, says its file: up to the top of the published range.",
} as const;

/** Which part of the published cutting speeds was chosen from, a sentence each. */
export const aimWords = ({ firmness = "light", derating = 1 }: Work): string[] => [
  aim[firmness],
  ...(derating === 1 ? [] : [`Published speeds × ${derating}, as the machine file asks.`]),
];
