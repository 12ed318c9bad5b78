import type { Units, Work } from "../machine/machine.js";
import { roundIn } from "../quantity/length.js";
import { say } from "../words/say.js";

/** How deep a cut a machine bears, mm on the radius, and why that is taken. */
export type Deepest = { readonly deepest: number; readonly why: string };

/** Without a word in the file. Common practice: beyond about a millimetre on the radius a light lathe's belt slips and its slides
 *  give; a firm one bears twice that. */
const usual = { light: roundIn(1, 0.04), firm: roundIn(2, 0.08) } as const;

/** `units`: of the job, whose figures are held against it. */
export function firmnessOf({ deepest, firmness = "light" }: Pick<Work, "deepest" | "firmness">, units: Units): Deepest {
  if (deepest !== undefined) return { deepest, why: "work: deepest" };
  return {
    deepest: usual[firmness][units],
    why: say("plan findings.usually bears", {
      firmness: say(firmness === "firm" ? "plan findings.firm" : "plan findings.light"),
    }),
  };
}
